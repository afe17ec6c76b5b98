/**
 * The triangle of mains and seat is out of shape: too wide, too narrow, off the middle, or left and right
 * unequal. A sound that both mains share then leans toward the nearer or louder one (time and level law of
 * the phantom image), and the center is blamed for it. Left out: reflections of unequal side walls, and the
 * direction in which the mains are turned, which no fact asks for.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, any, atLeast, atMost, below, is, isNot, noneOf, oneOf } from '../condition.js';
import { ENTRIES } from '../outdated.js';

/** Only what the mains play can lean toward one of them. */
const MAINS_PLAY_VOICE = oneOf('mainsVoice', 'all', 'part');
/** What holds for the main seat clears nothing that only the seats beside it hear. */
const MAIN_SEAT_COUNTS = is('troubleAtSide', 'no');

export const mainsLayout = defineCause({
  id: 'mains-layout',
  title: 'Left and right stand wrong for the seat',
  severity: 'clear',
  priorDb: -12,
  priorBecause: 'Rooms bend the triangle often, but seldom so far that it is the main trouble.',
  story:
    'Left and right make the stage, and the center only holds its middle. If the mains stand very wide or very close, or a seat is much nearer to one of them, everything they share leans to the near one: the voice is pulled aside, or a loud near main covers it.',
  notWhen:
    'A voice that only the center plays cannot be pulled by the mains: in films the center holds it at every seat. A few degrees more or less than the textbook angle are no fault.',
  links: {
    'voice-pulled-aside': 0.55,
    'no-middle': 0.3,
    'voice-unclear-off-side': 0.25,
    'image-collapses-to-center': 0.15,
    'swishes-with-head-movement': 0.1,
    hollow: 0.1,
    'voice-unclear': 0.25,
    'gaps-between-speakers': 0.4,
    'image-follows-head': 0.4,
  },
  pictures: ['room-above'],
  groups: {
    triangle: 'same-quantity',
    pull: 'same-mechanism',
    'carried-by': 'independent',
    direction: 'independent',
    seats: 'independent',
    'without-center': 'independent',
  },
  rules: [
    answers({
      id: 'base-too-wide',
      group: 'triangle',
      when: atLeast('mainsBaseDeg', 'baseWideDeg'),
      tells: { yes: 'strong' },
      yes: 'From the main seat left and right are {mainsBaseDeg} apart, so wide that the stage tears.',
      no: 'From the main seat left and right are {mainsBaseDeg} apart, which is not too wide.',
      because:
        'About 60 degrees is the reference; much wider, sounds between center and mains lose their place and small moves of the head shift them.',
      source: 'layout-standard',
    }),
    answers({
      id: 'wide-for-two',
      group: 'triangle',
      applies: is('twoAlone', 'yes'),
      when: atLeast('mainsBaseDeg', 'baseWideDeg.noticeable'),
      tells: { yes: 'telling' },
      yes: 'No center plays, and from the main seat left and right are {mainsBaseDeg} apart: the middle between them gets thin.',
      no: 'No center plays, and left and right are {mainsBaseDeg} apart, near enough to hold a middle.',
      because: 'A center fills a wide front. Two loudspeakers alone hold a middle up to about 60 degrees.',
      source: 'layout-standard',
    }),
    answers({
      id: 'base-too-narrow',
      group: 'triangle',
      when: atMost('mainsBaseDeg', 'baseNarrowDeg'),
      tells: { yes: 'telling' },
      yes: 'From the main seat left and right are only {mainsBaseDeg} apart, so the whole stage is hardly wider than the center.',
      no: 'From the main seat left and right are {mainsBaseDeg} apart, which is not too narrow.',
      because:
        'With the mains close together everything seems to come from the middle, with or without a center.',
      source: 'layout-standard',
    }),
    answers({
      id: 'triangle-is-ordinary',
      group: 'triangle',
      applies: MAIN_SEAT_COUNTS,
      when: all(
        atLeast('mainsBaseDeg', 'baseNarrowDeg.noticeable'),
        atMost('mainsBaseDeg', 'baseWideDeg.noticeable'),
        below('mainSeatPullDeg', 'pullDeg'),
      ),
      tells: { yes: 'telling', against: true },
      yes: 'The angle of {mainsBaseDeg} between left and right is close to the reference and the main seat is near the middle, so the triangle is innocent.',
      no: 'The triangle of left, right and main seat departs from the reference.',
      because:
        'Close to 60 degrees and near the middle, left and right arrive together and the stage stands as it was mixed.',
      source: 'layout-standard',
    }),
    deviates({
      id: 'main-seat-pulled',
      group: 'triangle',
      // A seat in the middle clears no front that is too wide for two.
      applies: all(
        MAINS_PLAY_VOICE,
        MAIN_SEAT_COUNTS,
        any(is('twoAlone', 'no'), atMost('mainsBaseDeg', 'baseWideDeg.noticeable')),
      ),
      of: 'mainSeatPullDeg',
      limit: 'pullDeg',
      // Every sofa with an even number of places has it.
      maxDb: 5,
      yes: 'At the main seat a shared sound leans by {mainSeatPullDeg} toward one main; {limit} is clearly heard.',
      no: 'At the main seat a shared sound leans by {mainSeatPullDeg} only; it takes {limit} to be clearly heard.',
      because:
        'The ear follows the sound that comes first: a hand width off the middle already moves a shared voice by about ten degrees.',
      source: 'time-image',
    }),
    deviates({
      id: 'side-seat-pulled',
      group: 'pull',
      of: 'mainsPullDeg',
      limit: 'pullDeg',
      // Nearly every sofa has such a seat, so that it tells little by itself.
      only: 'for',
      maxDb: 4,
      yes: 'At the worst seat what the mains share leans by {mainsPullDeg} toward the near one, and the center does not hold it.',
      no: 'At every seat the center holds the shared sound well enough.',
      because:
        'Only sound that the mains play can be pulled: a voice left to the center alone does not move at all.',
      source: 'time-image',
    }),
    deviates({
      id: 'left-right-unequal',
      group: 'pull',
      applies: MAINS_PLAY_VOICE,
      of: 'mainsLevelErrorDb',
      limit: 'mainsLevelDb',
      // Bounded: a difference of many decibels is a slip of the meter or a dead box, not the triangle.
      only: 'for',
      maxDb: 6,
      yes: 'At the seat left and right differ by {mainsLevelErrorDb}; {limit} clearly tilts the stage.',
      no: 'At the seat left and right differ by {mainsLevelErrorDb}, too little to tilt the stage.',
      because: 'Each decibel between left and right moves a shared sound by some two degrees.',
      source: 'time-image',
    }),
    answers({
      id: 'voice-is-the-centers',
      group: 'carried-by',
      when: is('mainsVoice', 'none'),
      tells: { yes: 'telling', against: true },
      yes: 'What is played gives the voice to the center alone, and what the mains do not play they cannot pull.',
      no: 'The mains play the voice, or a part of it.',
      because:
        'A film has a center channel of its own. With the center silenced its voice is gone, however the mains stand.',
      source: 'upmix-arithmetic',
    }),
    answers({
      id: 'voice-heard-aside',
      group: 'direction',
      // One direction is told: a voice that is low can be aside as well.
      applies: all(noneOf('voiceDirection', 'low', 'high'), MAINS_PLAY_VOICE),
      when: is('voiceDirection', 'aside'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'The voice is off to one side.',
      no: 'The voice is not off to one side.',
      because: 'A bent triangle shifts the voice sideways; it does not make it low, dull or soft.',
      source: 'azimuth-blur',
    }),
    answers({
      id: 'better-in-the-middle',
      group: 'seats',
      when: is('testSitMiddle', 'clear-in-middle'),
      tells: { yes: 'slight', no: 'hint' },
      yes: 'In the middle the voice is clear and at the end of the row it is worse.',
      no: 'The middle of the row is no better than its end.',
      because: 'The pull of the near main grows with every hand width off the middle.',
      source: 'time-image',
    }),
    answers({
      id: 'stays-without-center',
      group: 'without-center',
      when: oneOf('testPhantom', 'same', 'worse'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'With the center set to none the trouble stays or gets worse, so left, right and seat make it.',
      no: 'With the center set to none the trouble is gone, so left, right and seat are sound.',
      because: 'Without the center only the mains are left; a trouble of theirs cannot go with it.',
    }),
  ],
  telltales: [
    {
      id: 'one-main-at-fault',
      when: oneOf('faultyMain', 'left', 'right'),
      telling: 'telling',
      yes: 'One main is at fault: {faultyMain}.',
      no: 'Neither main alone is at fault.',
      because: 'One weak main pulls everything shared to the other side.',
    },
    {
      id: 'trims-apart',
      when: is('mainsTrims', 'apart'),
      telling: 'hint',
      yes: 'Left and right need trims that are far apart.',
      no: 'Left and right have about the same trim.',
      because:
        'Two alike boxes at equal distances need equal trims; where they do not, something about one of them is wrong.',
    },
    {
      id: 'pointed-past-the-seat',
      when: is('mainsPointed', 'past-seat'),
      telling: 'hint',
      yes: 'The mains point well past the main seat.',
      no: 'The mains point about at the main seat.',
      because: 'Mains that point elsewhere lose treble at the seat and leave gaps beside the center.',
    },
    {
      id: 'mains-changed-last',
      when: is('changedExactly', 'mains'),
      telling: 'telling',
      yes: 'The mains changed last, or were moved.',
      no: 'It was not the mains that changed last.',
      because: 'The last change is the first suspect.',
    },
  ],
  confirm: [confirmedBy('testPhantom', 'same', 'worse'), confirmedBy('testSitMiddle', 'clear-in-middle')],
  acts: { 'seat-moved-back': 0.3 },
  remedies: [
    {
      id: 'let-center-hold-voice',
      title: 'Give the voice to the center, for all seats',
      when: all(MAINS_PLAY_VOICE, isNot('centerCount', 'none'), isNot('seating', 'single-seat')),
      steps: [
        'Where the center is set to none, set it to present, with its distance and level.',
        'Where two channels play straight, switch on an upmix that feeds the center.',
        'Turn its center spread down or off, so that the mains keep little of the voice.',
        'Listen at the end seat, then in the middle, and decide which seat counts.',
      ],
      minutes: 4,
      expect:
        'The voice stands at the picture from every seat; for music the price is a narrower stage in the middle seat.',
      verify: 'From the end seat the voice stands at the picture and not in the near main.',
      cautions: ['photograph-menu'],
      changes: [
        'centerMode',
        'upmixUse',
        'centerSpread',
        'centerSpreadAmount',
        'testSpreadOn',
        'testSitMiddle',
        'upmixCommonPart',
      ],
      cures: 0.6,
    },
    {
      id: 'main-seat-to-middle',
      forbiddenBy: ['seats-stay'],
      act: 'seat-moved-to-middle',
      title: 'Move the main seat to the middle',
      when: all(atLeast('mainSeatPullDeg', 'pullDeg.noticeable'), MAIN_SEAT_COUNTS),
      steps: [
        'Tape the distance from the seat to the left and to the right tweeter.',
        'Move the seat sideways until both agree within a hand width, best within a finger.',
        'Run the distances and levels of the setup again from that seat.',
      ],
      minutes: 10,
      expect: 'The pull of {mainSeatPullDeg} at the main seat goes; the seats beside it keep theirs.',
      verify: 'A singer recorded in the middle stands over the center with the upmix off.',
      cautions: ['laser'],
      changes: [...ENTRIES, 'mainSeatOffset', 'tapedMains', 'tapedCenter', 'voiceDirection', 'testSitMiddle'],
      cures: 0.7,
    },
    {
      id: 'level-left-right',
      title: 'Set left and right to equal level at the seat',
      when: atLeast('mainsLevelErrorDb', 'mainsLevelDb.noticeable'),
      steps: [
        'Volume down, then start the test noise.',
        'Hold a phone meter at ear height in the main seat.',
        'Trim left and right until they read the same, then the center to match them.',
      ],
      minutes: 6,
      expect: 'The difference of {mainsLevelErrorDb} goes, and the stage stops leaning.',
      verify: 'Mono speech over left and right only stands in the middle.',
      cautions: ['photograph-menu', 'volume-down', 'test-noise'],
      changes: [
        'measuredLeftLevel',
        'measuredRightLevel',
        'measuredCenterLevel',
        'centerTrim',
        'voiceDirection',
      ],
      cures: 0.6,
    },
    {
      id: 'reshape-triangle',
      forbiddenBy: ['mains-stay'],
      act: 'mains-moved-closer',
      title: 'Bring left and right to about the distance of the seat',
      when: any(atLeast('mainsBaseDeg', 'baseWideDeg'), atMost('mainsBaseDeg', 'baseNarrowDeg')),
      steps: [
        'Tape the distance from the main seat to the line between left and right.',
        'Move left and right (or the seat) until the mains are about as far apart as each is from you.',
        'Keep them alike to both sides, then run distances and levels again.',
      ],
      minutes: 30,
      expect: 'The angle goes from {mainsBaseDeg} toward 60 degrees; the stage closes up or opens.',
      verify: 'With two-channel music the singer stands in the middle and the sides reach out to both mains.',
      cautions: ['lifting'],
      changes: [
        'mainsBase',
        'seatDistance',
        'tapedMains',
        'enteredLeft',
        'enteredRight',
        'testSitMiddle',
        'testPhantom',
      ],
      cures: 0.6,
    },
    {
      id: 'turn-mains-across',
      forbiddenBy: ['mains-stay'],
      act: 'mains-toed-in',
      title: 'Turn left and right so that they cross in front of the middle seat',
      steps: [
        'Turn each main inward until you see its outer side from the middle seat.',
        'Play speech and sit at each end of the row.',
        'Keep the angle at which the ends are best and the middle still good.',
      ],
      minutes: 10,
      expect:
        'At a side seat the far main gets louder against the near one, which takes back part of the pull; it cannot take back all of it, and the treble in the middle gets a little softer.',
      verify: 'At the end seat a shared voice moves less toward the near main than before.',
      cautions: [],
      changes: ['testSitMiddle', 'testNoiseEach', 'voiceDirection', 'responseLeft', 'responseRight'],
      cures: 0.35,
    },
  ],
});
