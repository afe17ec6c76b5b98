/**
 * Answers on which several causes rest, each said once: the condition and the sentences here, how telling it is and why
 * in the file of the cause.
 */
import { answers, type Rule, type Telltale } from './cause.js';
import { type Condition, is, noneOf, oneOf } from './condition.js';
import type { SourceId } from './sources.js';
import type { Strength, Tells } from './strength.js';

interface Remark {
  readonly when: Condition;
  readonly yes: string;
  readonly no: string;
  readonly source?: SourceId;
}

const REMARKS = {
  'mains-are-empty': {
    when: is('testUnplugged', 'voice-gone'),
    yes: 'With the center silenced at the loudspeaker the singer is gone: the mains carry nothing of the middle.',
    no: 'With the center silenced the singer is still there: the mains are not empty.',
    source: 'upmix-arithmetic',
  },
  'upmix-off-cures': {
    when: is('testUpmixOff', 'gone'),
    yes: 'With the upmix off the trouble is gone.',
    no: 'With the upmix off the trouble stays, so the upmix does not make it.',
    source: 'upmix-arithmetic',
  },
  'from-the-small-box': {
    when: is('voiceDirection', 'center-box'),
    yes: 'The voice is heard from the center box itself, small.',
    no: 'The voice is not heard from the center box itself.',
    source: 'stage-width',
  },
  'music-is-played': {
    when: oneOf('playedContent', 'two-channel-music', 'everything'),
    yes: 'The trouble is heard with two-channel music.',
    no: 'The trouble is heard with films or television, where a voice in the middle is as it should be.',
    source: 'upmix-arithmetic',
  },
  'films-are-fine': {
    when: is('fineContent', 'multichannel-film'),
    yes: 'Films with their own center channel are fine.',
    no: 'It is not films with their own center channel that are fine.',
  },
  'two-channels-are-fine': {
    when: is('fineContent', 'two-channel-music'),
    yes: 'Two-channel music is fine.',
    no: 'It is not two-channel music that is fine.',
  },
  'noise-differs': {
    when: oneOf('testNoiseEach', 'duller', 'brighter', 'thin', 'boxy'),
    yes: 'Steady noise has another tone in the center than in the mains.',
    no: 'Steady noise has no other color in the center than in the mains.',
    source: 'band-match',
  },
  'tone-steps-across': {
    when: noneOf('toneAcrossPan', 'no-change'),
    yes: 'A moving sound changes its tone as it passes the center.',
    no: 'A moving sound keeps its tone across the front.',
    source: 'band-match',
  },
  'boxy-pan': {
    when: is('toneAcrossPan', 'boxier'),
    yes: 'A voice that crosses the front gets boxy, nasal or boomy in the center.',
    no: 'A voice that crosses the front does not get boxy, nasal or boomy in the center.',
  },
  'follows-the-channel': {
    when: is('testSwapAtAmplifier', 'moves-left'),
    yes: 'With left and center swapped at the amplifier the trouble moves to the left loudspeaker: it belongs to the channel.',
    no: 'With left and center swapped at the amplifier the trouble does not move to the left: it does not belong to the channel.',
  },
  'measured-elsewhere': {
    when: oneOf('calibrationSpot', 'elsewhere', 'changed-since'),
    yes: 'The setup was not run at the main seat as it is now.',
    no: 'The setup was run at the main seat, and nothing has moved since.',
  },
  'deep-voices-worst': {
    when: is('whichVoices', 'low'),
    yes: 'Deep voices are worst.',
    no: 'It is not the deep voices that are worst.',
  },
  'soft-voices-worst': {
    when: is('whichVoices', 'soft'),
    yes: 'Soft voices are worst.',
    no: 'It is not the soft voices that are worst.',
  },
  'settings-from-elsewhere': {
    when: is('settingsFromElsewhere', 'yes'),
    yes: 'The settings were made elsewhere or for other loudspeakers.',
    no: 'The settings were made here and with these loudspeakers.',
  },
  'hole-follows-the-box': {
    when: oneOf('holeFollows', 'box', 'cover'),
    yes: 'The measured hole moves with the place of the box, or shrinks under something soft.',
    no: 'The measured hole moves neither with the box nor under something soft.',
  },
} as const satisfies Record<string, Remark>;
type RemarkId = keyof typeof REMARKS;

/** The remark as a rule of a cause. */
export function heard<const G extends string>(
  id: RemarkId,
  group: G,
  tells: Tells,
  because: string,
  more: Pick<Rule, 'applies'> & { readonly source?: SourceId } = {},
): Rule & { readonly group: G } {
  const remark: Remark = REMARKS[id];
  return answers({ id, group, tells, because, ...remark, ...more });
}

/** The same as a tell-tale: that it was not remarked says nothing. */
export function toldTale(
  id: RemarkId,
  telling: Strength,
  because: string,
  speaks?: 'against',
): Telltale<never> {
  const { when, yes, no } = REMARKS[id];
  return { id, when, telling, yes, no, because, ...(speaks ? { speaks } : {}) };
}
