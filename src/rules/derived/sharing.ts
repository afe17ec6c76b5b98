/**
 * What center and mains play together, by content. The voice of a film with its own center comes from the center
 * alone, while its pans, effects and score are shared; music upmixed shares what the upmix leaves in the mains; music
 * played straight leaves the center silent. One notion for every rule on delay, polarity, level, pull, comb and
 * image; where the content or the upmix is not told, it cannot be told either.
 */
import {
  offSeatImage,
  sharedContent,
  type UpmixSetting,
  upmixGains,
  widthRetained,
} from '../../acoustics/upmix.js';
import { choice, derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';
import { BEARING_FACTS, bearings } from './places.js';

export const SHARING_FACTS = [
  'playedContent',
  'sourceFormat',
  'centerMode',
  'centerCount',
  'upmixUse',
  'upmixCommonPart',
  'upmixMainsDrop',
  'upmixCenterControl',
  'centerSpread',
  'centerSpreadAmount',
  'upmixAmbience',
] as const;
type SharingFact = (typeof SHARING_FACTS)[number];

/** Who carries a voice in the middle: the center of the mix, mains alone, or what the upmix makes of it. */
type VoiceBy = 'center' | 'mains' | UpmixSetting;

/**
 * Part of all that is heard in a film which center and mains play together: sounds that pass the center, effects and
 * score. Common practice, no source: the voice stands in the center alone, the rest is mixed by taste.
 */
const FILM_SHARE = { least: 0.1, most: 0.4 } as const;

export function voiceBy(r: Reader<SharingFact>): VoiceBy {
  if (r.from(twoAlone)) return 'mains';
  if (hasDiscreteCenter(r)) return 'center';
  return r.from(upmixUse) === 'off' ? 'mains' : r.from(upmixSetting);
}

const MENU_FACTS = ['centerMode', 'channelCheck'] as const;
/** As read there; a center that plays its own test noise is in the menu as well. */
function centerInMenu(r: Reader<(typeof MENU_FACTS)[number]>): 'present' | 'none' {
  const mode = r.toldChoice('centerMode');
  if (mode !== undefined) return mode === 'none' ? 'none' : 'present';
  return r.toldChoice('channelCheck') === 'right' ? 'present' : r.stop('centerMode');
}

/** True where the mix itself has a center channel, whatever the mode of the receiver. */
function hasDiscreteCenter(r: Reader<SharingFact>): boolean {
  const played = r.toldChoice('playedContent');
  const format = r.toldChoice('sourceFormat');
  if (played === 'two-channel-music') return false;
  if (format !== undefined) return format === 'multichannel' && played !== 'everything';
  if (played === 'multichannel-film') return true;
  if (played === 'everything' || (played === undefined && musicIsMeant(r))) return false;
  return r.stop(
    ...(played === undefined ? (['playedContent', 'sourceFormat'] as const) : (['sourceFormat'] as const)),
  );
}

/** Who tells what an upmix does to a singer, or how it can be set, is likely to use it and to speak of music. */
const speaksOfUpmix = (r: Reader<SharingFact>): boolean =>
  r.toldChoice('upmixUse') !== 'off' &&
  (r.toldChoice('upmixAmbience') === 'yes' ||
    (['upmixCommonPart', 'upmixCenterControl', 'centerSpread'] as const).some(
      (id) => r.toldChoice(id) !== undefined,
    ));

const musicIsMeant = (r: Reader<SharingFact>): boolean =>
  speaksOfUpmix(r) && r.choiceOr('playedContent', 'two-channel-music') === 'two-channel-music';

const upmixUse = (r: Reader<SharingFact>) =>
  speaksOfUpmix(r) ? r.choiceOr('upmixUse', 'on') : r.choice('upmixUse');

/** Films that come with a center of their own, and nothing else, give no upmix anything to do. */
const onlyFilms = (r: Reader<SharingFact>): boolean =>
  r.toldChoice('playedContent') === 'multichannel-film' && r.toldChoice('sourceFormat') !== 'two-channel';

function upmixInUse(r: Reader<SharingFact>): 'yes' | 'no' {
  return r.from(onlyFilms) || r.from(upmixUse) === 'off' ? 'no' : 'yes';
}

/** Whether an upmix is in use and has two channels to work on. */
function upmixWorks(r: Reader<SharingFact>): 'yes' | 'no' {
  if (r.toldChoice('upmixUse') === 'off' || hasDiscreteCenter(r)) return 'no';
  return r.from(upmixInUse);
}

/** What the upmix leaves of the middle in the mains: as it was heard there, else as the center spread shows. */
function middleLeft(r: Reader<SharingFact>): 'leaves' | 'shares' | 'takes-out' {
  const heard = r.toldChoice('upmixCommonPart');
  if (heard !== undefined) return heard;
  const spread = r.toldChoice('centerSpread');
  if (spread !== undefined) return spread === 'on' ? 'shares' : 'takes-out';
  return r.stop('upmixCommonPart');
}

function upmixSetting(r: Reader<SharingFact>): UpmixSetting {
  if (r.toldChoice('upmixCommonPart') === 'leaves') return { law: 'add', extraction: 1 };
  if (r.toldChoice('centerSpread') === 'on') return { extraction: 1 - r.number('centerSpreadAmount') };
  if (r.from(middleLeft) === 'takes-out') return { extraction: 1 };
  return { extraction: 1 - 10 ** (-r.number('upmixMainsDrop') / 20) };
}

/** Amplitudes of a voice in the middle, from each main and from the center. */
export function voiceGains(r: Reader<SharingFact>): { readonly side: number; readonly center: number } {
  const by = r.from(voiceBy);
  if (by === 'center') return { side: 0, center: 1 };
  if (by === 'mains') return { side: upmixGains(45, { extraction: 0 }).left, center: 0 };
  const { sideGain, centerGain } = sharedContent(by);
  return { side: sideGain, center: centerGain };
}

/** The weaker part of the voice over the stronger, as much as can comb. */
function sharedVoice(r: Reader<SharingFact>): number {
  // Without an upmix the center or the mains have the voice alone, whatever is played.
  if (r.toldChoice('upmixUse') === 'off') return 0;
  const by = r.from(voiceBy);
  if (by === 'center' || by === 'mains') return 0;
  if (by.law === 'add') return 1;
  const ratio = sharedContent(by).ratio ?? 0;
  return ratio > 1 ? 1 / ratio : ratio;
}

const twoAlone = (r: Reader<'centerMode' | 'centerCount'>): boolean =>
  r.toldChoice('centerMode') === 'none' || r.toldChoice('centerCount') === 'none';

/** Where a film is played and the center is in use, its pans and effects are shared, whatever its voice does. */
function playsFilm(r: Reader<SharingFact>): boolean {
  if (r.from(twoAlone)) return false;
  return r.toldChoice('playedContent') === 'everything'
    ? r.toldChoice('sourceFormat') !== 'two-channel'
    : r.from(hasDiscreteCenter);
}

/** Of all that is heard where the trouble is. A range becomes its middle, and its width the doubt. */
export function sharedSound(r: Reader<SharingFact>): number {
  const film = r.from(playsFilm);
  const { least, most } = FILM_SHARE;
  const filmPart = Math.sqrt(least * most);
  if (film && r.toldChoice('playedContent') !== 'everything') {
    r.doubt(Math.log(most / least) / 2);
    return filmPart;
  }
  if (film && r.toldChoice('upmixUse') === 'off') return filmPart;
  return Math.max(r.from(sharedVoice), film ? filmPart : 0);
}

/** Whose the voice is by what is set, whatever was heard with the center silenced. */
function voiceMeantFor(r: Reader<SharingFact>): 'center' | 'both' | 'mains' {
  const by = r.from(voiceBy);
  if (by === 'mains') return 'mains';
  return by === 'center' || (by.law !== 'add' && by.extraction === 1) ? 'center' : 'both';
}

const settingOf = (by: VoiceBy): UpmixSetting =>
  by === 'center' ? { extraction: 1 } : by === 'mains' ? { extraction: 0 } : by;

/** Part of the common content that is taken out of the mains by an upmix; the mix's own center is none. */
function extraction(r: Reader<SharingFact>): number {
  const by = r.from(voiceBy);
  if (by === 'center' || by === 'mains' || by.law === 'add') return 0;
  return by.extraction ?? 0;
}

/** Kinds of upmix by what can be done about them. */
const KIND_FACTS = ['upmixUse', 'upmixAmbience', 'upmixCenterControl', 'testSpreadOn'] as const;
function upmixKind(r: Reader<(typeof KIND_FACTS)[number]>) {
  if (r.toldChoice('upmixUse') === 'off') return r.stop();
  if (r.toldChoice('upmixAmbience') === 'yes') return 'ambience';
  const control =
    r.toldChoice('testSpreadOn') === undefined
      ? r.choice('upmixCenterControl')
      : r.choiceOr('upmixCenterControl', 'present');
  return control === 'present' ? 'adjustable-center' : 'fixed-center';
}

const OFF_SEAT_FACTS = [...SHARING_FACTS, ...BEARING_FACTS, 'mainsBase'] as const;
function offSeatImageShare(r: Reader<(typeof OFF_SEAT_FACTS)[number]>): number {
  const setting = settingOf(r.from(voiceBy));
  const halfBaseM = r.number('mainsBase') / 2;
  const moved = r.worst(r.from(bearings), ({ seat }) =>
    Math.abs(offSeatImage({ ...setting, seatXM: seat.xM, distanceM: seat.yM, halfBaseM }).imageM),
  );
  return Math.min(1, moved.badness / halfBaseM);
}

/** How far an image leans, in words only: the model behind it ranks settings and is not to be quoted. */
const LEANS = { hardly: 0.15, 'in-part': 0.6 } as const;
function offSeatLean(r: Reader<(typeof OFF_SEAT_FACTS)[number]>) {
  const share = offSeatImageShare(r);
  if (share < LEANS.hardly) return 'hardly';
  return share < LEANS['in-part'] ? 'in-part' : 'most-of-the-way';
}

export const sharing = {
  twoAlone: derive(
    choice('left and right told to play without a center', ['yes', 'no'] as const),
    ['centerMode', 'centerCount'],
    (r) => (r.from(twoAlone) ? 'yes' : 'no'),
  ),
  sharedContent: derive(
    number('1', 'part of the voice that center and mains play together, 0 to 1'),
    SHARING_FACTS,
    sharedVoice,
  ),
  sharedSound: derive(
    number(
      '1',
      'part of all that is heard, voice, pans, effects or music, that center and mains play together, 0 to 1',
    ),
    SHARING_FACTS,
    sharedSound,
  ),
  sharesMuch: derive(
    choice('center and mains play half of the sound together, or more', ['yes', 'no', 'untold'] as const),
    SHARING_FACTS,
    (r) => {
      if (!r.canTell(sharedSound)) return 'untold';
      return r.from(sharedSound) < LIMITS.sharedPart.clear ? 'no' : 'yes';
    },
  ),
  voiceMeantFor: derive(
    choice('whose the voice is by what is set', ['center', 'both', 'mains'] as const),
    SHARING_FACTS,
    voiceMeantFor,
  ),
  extraction: derive(
    number('1', 'part of the common content taken out of the mains, 0 to 1'),
    SHARING_FACTS,
    extraction,
  ),
  widthLossPct: derive(number('1', 'stage width lost by the upmix, percent'), SHARING_FACTS, (r) => {
    const by = r.from(voiceBy);
    if (by === 'center' || by === 'mains') return 0;
    return Math.max(0, 100 * (1 - widthRetained(by).energy));
  }),
  offSeatImageShare: derive(
    number(
      '1',
      'how far a centered voice moves to the near main at the worst seat, 0 to 1, with the present upmix',
    ),
    OFF_SEAT_FACTS,
    offSeatImageShare,
  ),
  offSeatLean: derive(
    choice('how far a centered voice leans to the near main at the worst seat', [
      'hardly',
      'in-part',
      'most-of-the-way',
    ] as const),
    OFF_SEAT_FACTS,
    offSeatLean,
  ),
  centerInMenu: derive(
    choice('center in the menu, as read or as its test noise shows', ['present', 'none'] as const),
    MENU_FACTS,
    centerInMenu,
  ),
  upmixInUse: derive(
    choice('upmix in use, now and then at least, where the trouble is', ['yes', 'no'] as const),
    SHARING_FACTS,
    upmixInUse,
  ),
  upmixWorks: derive(
    choice('upmix in use with two channels to work on', ['yes', 'no'] as const),
    SHARING_FACTS,
    upmixWorks,
  ),
  upmixMiddle: derive(
    choice('middle that the upmix leaves in the mains', ['leaves', 'shares', 'takes-out'] as const),
    SHARING_FACTS,
    middleLeft,
  ),
  upmixKind: derive(
    choice('kind of upmix (without ambience unless told)', [
      'adjustable-center',
      'fixed-center',
      'ambience',
    ] as const),
    KIND_FACTS,
    upmixKind,
  ),
};
