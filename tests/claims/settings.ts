/** What an upmix and its settings make of two-channel music. */
import {
  leads,
  leaves,
  likely,
  lowers,
  notApplicable,
  outweighs,
  raises,
  type Table,
  tellsMore,
  undecided,
  unlikely,
} from './claim.js';

const SHRUNK = {
  complaints: ['image-collapses-to-center'],
  playedContent: 'two-channel-music',
  sourceFormat: 'two-channel',
  upmixUse: 'on',
} as const;
const ADJUSTABLE = { ...SHRUNK, upmixCenterControl: 'present' } as const;
const CLOSED = { ...ADJUSTABLE, centerSpread: 'off' } as const;
const FIXED = { ...SHRUNK, upmixCenterControl: 'none' } as const;
const HALL = { ...SHRUNK, upmixAmbience: 'yes' } as const;

export const SETTINGS_CLAIMS: Table = {
  'an upmix on music': [
    [
      'a closed spread is the reason of a stage in one box',
      CLOSED,
      leads('spread-off'),
      likely('spread-off'),
    ],
    [
      'not where the trouble stays with the upmix off and with the center set to none',
      { ...CLOSED, testUpmixOff: 'same', testPhantom: 'same' },
      unlikely('spread-off'),
    ],
    [
      'each of the two speaks against it',
      CLOSED,
      lowers('spread-off', { testUpmixOff: 'same' }, 6),
      lowers('spread-off', { testPhantom: 'same' }, 6),
      raises('spread-off', { testPhantom: 'gone' }),
    ],
    [
      'an answer counts while the setting is not told',
      ADJUSTABLE,
      lowers('spread-off', { testUpmixOff: 'same' }, 6),
      raises('spread-off', { testSpreadOn: 'opens' }, 6),
    ],
    [
      'and while the kind of upmix is not told, for all kinds',
      SHRUNK,
      raises('spread-off', { testUpmixOff: 'gone' }, 0.4),
      raises('fixed-extraction', { testUpmixOff: 'gone' }, 0.4),
      lowers('spread-off', { testUpmixOff: 'same' }, 6),
      lowers('fixed-extraction', { testUpmixOff: 'same' }, 6),
    ],
    [
      'told that there is no control, it is the mode',
      SHRUNK,
      raises('fixed-extraction', { upmixCenterControl: 'none' }, 3),
      undecided,
    ],
    [
      'a spread that is on and takes little width is not what shrinks the stage; a wrong entry in what is shared may be',
      {
        ...ADJUSTABLE,
        upmixCommonPart: 'shares',
        centerSpread: 'on',
        fineContent: 'multichannel-film',
        alignmentBy: 'by-hand',
        entryKind: 'distances',
        enteredLeft: '3.6 m',
        enteredCenter: '3.6 m',
        enteredRight: '3.6 m',
        tapedMains: '3.6 m',
        tapedCenter: '3.1 m',
      },
      notApplicable('spread-off'),
      leads('delay'),
    ],
    [
      'fine films speak for all that only shared sound can tell',
      SHRUNK,
      raises('delay', { fineContent: 'multichannel-film' }, 2),
      raises('polarity', { fineContent: 'multichannel-film' }, 2),
      raises('spread-off', { fineContent: 'multichannel-film' }, 2),
    ],
    [
      'a spread opened by a fifth loses nearly as much as a closed one',
      { ...ADJUSTABLE, centerSpread: 'on', centerSpreadAmount: 0.2 },
      leads('spread-off'),
      lowers('spread-off', { centerSpreadAmount: 0.5 }, 1),
    ],
    [
      'opened fully it takes nothing',
      { ...ADJUSTABLE, centerSpread: 'on', centerSpreadAmount: 1 },
      notApplicable('spread-off'),
    ],
    [
      'a film with its own center passes by the upmix',
      { ...CLOSED, playedContent: 'multichannel-film', sourceFormat: 'multichannel' },
      notApplicable('spread-off', 'fixed-extraction'),
    ],
    [
      'no upmix, no spread',
      { ...CLOSED, upmixUse: 'off' },
      notApplicable('spread-off', 'fixed-extraction', 'ambience-setting'),
    ],
    [
      'a mode that leaves the singer in the mains shrinks nothing',
      { ...SHRUNK, upmixCommonPart: 'leaves' },
      notApplicable('spread-off'),
      unlikely('fixed-extraction'),
    ],
    [
      'the singer gone with the center silenced tells of empty mains',
      { ...CLOSED },
      raises('spread-off', { testUnplugged: 'voice-gone' }, 2),
      lowers('spread-off', { testUnplugged: 'voice-full' }, 4),
    ],
    ['a voice in the small box as well', CLOSED, raises('spread-off', { voiceDirection: 'center-box' }, 2)],
    [
      'a stage that opens with the spread tells more than one that opens without the upmix',
      CLOSED,
      tellsMore('spread-off', { testSpreadOn: 'opens' }, { testUpmixOff: 'gone' }),
    ],
    [
      'without a control the mode itself is the reason',
      { ...FIXED, upmixCommonPart: 'takes-out' },
      leads('fixed-extraction'),
      outweighs('fixed-extraction', 'spread-off'),
    ],
    [
      'television through it has its voice in the center as it should',
      { ...FIXED, upmixCommonPart: 'takes-out' },
      lowers('fixed-extraction', { playedContent: 'television' }, 4),
    ],
    [
      'what stays without the upmix is not made by it',
      { ...FIXED, upmixCommonPart: 'takes-out' },
      lowers('fixed-extraction', { testUpmixOff: 'same' }, 7),
      lowers('fixed-extraction', { testPhantom: 'same' }, 6),
    ],
  ],
  'a mode with a hall': [
    [
      'a small size that empties the mains is the reason',
      { ...HALL, ambienceSize: 'small', upmixCommonPart: 'takes-out' },
      leads('ambience-setting'),
    ],
    [
      'not in a mode that leaves the singer in the mains',
      { ...HALL, ambienceSize: 'small', upmixCommonPart: 'leaves' },
      notApplicable('ambience-setting'),
    ],
    [
      'a large one speaks against it',
      HALL,
      lowers('ambience-setting', { ambienceSize: 'large' }, 4),
      raises('ambience-setting', { ambienceSize: 'small' }, 3),
    ],
    [
      'a voice wide and vague is the opposite',
      { ...HALL, upmixCommonPart: 'takes-out' },
      lowers('ambience-setting', { voiceDirection: 'nowhere' }, 2),
      leaves('ambience-setting', { voiceDirection: 'picture' }),
    ],
    [
      'a mode without a hall has no size',
      { ...SHRUNK, upmixAmbience: 'no' },
      notApplicable('ambience-setting'),
    ],
  ],
};
