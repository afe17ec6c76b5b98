/**
 * One large surface near the center, mostly floor or wall, returns a copy of the voice a millisecond late. Every
 * loudspeaker at home has such reflections; they tell against the center only when they hit it at another pitch
 * than the mains, as with a center near the floor, or when one is uncommonly strong. The owner hears a thin or
 * thick voice at every seat, one that changes when the box is lifted. A carpet does little: the nulls lie where
 * carpets reflect. Left out: furniture that breaks the path, and the ear's habit of hearing through a room.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { is, isNot, oneOf } from '../condition.js';
import { clearedByPerson } from '../person.js';
import { recordedReflection } from '../recorded.js';
import { staysInPlace } from '../swap.js';

export const nearSurface = defineCause({
  id: 'near-surface',
  title: 'A floor or wall reflection colors the voice',
  severity: 'mild',
  // Present in every room, seldom the main trouble.
  priorDb: -12,
  story:
    'The floor or a wall close to the center sends a second voice a moment after the first. At some pitches the two cancel, and for a low center these lie in the middle of the voice while those of the mains lie below it.',
  notWhen:
    'Wrongly blamed when center and mains stand at the same height over the same floor, for then all three are colored alike, and for a box right at the wall, whose null lies where it hardly radiates backward.',
  links: {
    'voice-changes-tone': 0.4,
    hollow: 0.3,
    boomy: 0.3,
    'voice-unclear-everywhere': 0.25,
    dull: 0.1,
    'voice-unclear': 0.25,
    thin: 0.1,
    boxy: 0.3,
  },
  pictures: ['room-side'],
  groups: {
    floor: 'same-mechanism',
    wall: 'same-quantity',
    moved: 'same-session',
    tone: 'same-session',
    'near-by': 'independent',
    'where-heard': 'independent',
    recorded: 'independent',
    person: 'independent',
    swapped: 'independent',
  },
  rules: [
    deviates(
      {
        id: 'floor-ripple',
        group: 'floor',
        says: {
          yes: 'The floor roughens the voice by {floorRippleDb} from peak to dip, its first hole near {floorNullHz}; {limit} stands out from other rooms.',
          no: 'The floor roughens the voice by {floorRippleDb} from peak to dip, as it does in any room.',
          unknown: 'The height of the center and the floor cover are needed to compute the floor reflection.',
        },
        because:
          'Every loudspeaker at home has a floor reflection and people hear through it; only a stronger one than usual stands out.',
        source: 'floor-image',
      },
      'floorRippleDb',
      'floorRippleDb',
      { only: 'for', maxDb: 6 },
    ),
    deviates(
      {
        id: 'another-pitch-than-the-mains',
        group: 'floor',
        says: {
          yes: 'The floor takes a hole out of the center near {floorNullHz} and out of the mains near {floorNullMainsHz}, so the two differ in tone.',
          no: 'The floor takes its hole out of center and mains at nearly the same pitch, {floorNullHz} and {floorNullMainsHz}.',
          unknown: 'The heights of center and mains are needed to compare their floor reflections.',
        },
        because:
          'Lowering a loudspeaker moves the floor hole up, from below the voice into the middle of it. Holes at the same pitch in all three are no mismatch.',
        source: 'floor-image',
      },
      'floorNullRatio',
      'floorNullRatio',
      // Every low center has it, and ears hear through a room: it seldom is the main trouble.
      { maxDb: 6 },
    ),
    deviates(
      {
        id: 'wall-behind',
        group: 'wall',
        says: {
          yes: 'The wall behind takes {wallDipDb} out of the lower voice near {wallNullHz}; beyond {limit} it stands out.',
          no: 'The wall behind takes no more than {wallDipDb} out of the lower voice, as walls do everywhere.',
          unknown: 'The distance to the wall behind is needed to compute its reflection.',
        },
        because:
          'Low sound goes around the box, meets the wall and comes back half a wave late. Right at the wall that pitch is so high that the box hardly radiates backward.',
        source: 'wall-image',
      },
      'wallDipDb',
      'wallDipDb',
      { only: 'for', maxDb: 6 },
    ),
    answers(
      {
        id: 'clearer-with-blanket',
        group: 'moved',
        applies: isNot('centerPlacement', 'shelf-top'),
        says: {
          yes: 'With a folded blanket on the floor in front of the center the voice became clearer.',
          no: 'With a folded blanket on the floor in front of the center the voice did not change.',
          unknown: 'Nobody has covered the floor in front of the center yet.',
        },
        because:
          'A reflection that is covered is weaker while one listens; thick cloth works from about 1 kHz up.',
        source: 'practice',
      },
      is('testCoverShelf', 'clearer'),
      0.65,
      0.12,
    ),
    answers(
      {
        id: 'tone-changes-when-lifted',
        group: 'moved',
        says: {
          yes: 'Raised for a moment, the center changed its tone but not its place.',
          no: 'Raising the center did not change its tone alone.',
          unknown: 'Nobody has raised the center for a moment yet.',
        },
        because:
          'Lifting moves the floor hole down and out of the voice, whatever it does to the place of the image.',
        source: 'practice',
      },
      is('testLift', 'tone-only'),
      0.65,
      0.12,
    ),
    answers(
      {
        id: 'thin-or-boxy-noise',
        group: 'tone',
        says: {
          yes: 'Steady noise from the center is thin or boxy against the mains.',
          no: 'Steady noise from the center is neither thin nor boxy against the mains.',
          unknown: 'Nobody has compared the three fronts with steady noise.',
        },
        because:
          'A hole or a hump in the lower voice is heard as thin or boxy beside a main that has none there.',
        source: 'practice',
      },
      oneOf('testNoiseEach', 'thin', 'boxy'),
      0.6,
      0.2,
    ),
    answers(
      {
        id: 'good-close-up',
        group: 'near-by',
        says: {
          yes: 'One meter in front the voice is good or better: near by, reflections count for less.',
          no: 'One meter in front the voice is as bad as at the seat, where the floor hardly reaches.',
          unknown: 'Nobody has listened one meter in front of the center.',
        },
        because: 'Close to the box its direct sound outweighs every reflection.',
        source: 'floor-image',
      },
      oneOf('testNearCenter', 'good-near', 'better'),
      0.88,
      0.6,
    ),
    answers(
      {
        id: 'only-off-the-middle',
        group: 'where-heard',
        says: {
          yes: 'It is worse at the seats off to the side, while floor and wall color a row alike.',
          no: 'It is not worse at the seats off to the side, as floor or wall would have it.',
          unknown: 'It is not known at which seats the trouble is heard.',
        },
        because: 'Heights and the wall behind are the same for all seats of a row.',
        source: 'geometry',
      },
      is('troubleSeats', 'off-middle'),
      0.15,
      0.35,
    ),
    recordedReflection('recorded'),
    clearedByPerson('person'),
    staysInPlace('swapped'),
  ],
  telltales: [
    {
      id: 'deep-voices-worst',
      when: is('whichVoices', 'low'),
      telling: 'hint',
      says: 'Deep voices are worst.',
      otherwise: 'It is not the deep voices that are worst.',
      because: 'Floor, wall and corner lift the low voice.',
    },
  ],
  confirm: [confirmedBy('testLift', 'tone-only'), confirmedBy('testCoverShelf', 'clearer')],
  remedies: [
    {
      id: 'shift-from-wall',
      title: 'Change the distance to the wall behind',
      steps: [
        'Push the center close to the wall, or pull it well away: both move the hole out of the lower voice.',
        'Listen to a low male voice each time.',
        'Measure its distance again and enter it.',
      ],
      minutes: 10,
      cost: 'free',
      reversible: true,
      expect:
        'The hole near {wallNullHz} moves: up and away when close to the wall, down below the voice when far.',
      verify: 'A low male voice sounds as full as from the mains.',
      cautions: ['heat'],
      changes: ['wallDistance', 'centerBehindMains', 'tapedCenter', 'testNoiseEach'],
      cures: 0.4,
    },
    {
      id: 'equalize-the-rise',
      title: 'Take the rise of the lower voice down, leave the hole alone',
      steps: [
        'With equalization by hand, lower the hump of the center, by no more than 5 dB.',
        'Never fill the hole: it eats power and stays a hole at the next seat.',
      ],
      minutes: 20,
      cost: 'free',
      reversible: true,
      expect: 'The boxy part goes; the hole remains and is heard less.',
      verify: 'Steady noise from the center is closer to that of the mains.',
      cautions: ['photograph-menu', 'test-noise'],
      changes: ['equalization', 'responseCenter', 'testNoiseEach', 'toneAcrossPan'],
      cures: 0.4,
    },
    {
      id: 'raise-center',
      title: 'Raise the center toward the height of the mains',
      steps: [
        'Use a firm stand or shelf; point the box at the ears.',
        'Compare steady noise from center and mains again.',
      ],
      minutes: 20,
      cost: 'low',
      reversible: true,
      expect:
        'The floor hole moves from {floorNullHz} toward {floorNullMainsHz}, where the mains have theirs.',
      verify: 'Steady noise changes less as it steps left, center, right.',
      cautions: ['thin-display', 'lifting'],
      changes: [
        'centerTweeterHeight',
        'centerTilt',
        'centerPlacement',
        'testLift',
        'testNoiseEach',
        'tapedCenter',
      ],
      cures: 0.6,
    },
    {
      id: 'soften-floor',
      title: 'Lay a thick rug where the floor mirrors the center',
      steps: [
        'Let somebody slide a mirror along the floor until you see the center in it from your seat.',
        'Lay a thick rug with a pad there.',
      ],
      minutes: 15,
      cost: 'medium',
      reversible: true,
      expect:
        'A calmer upper voice; the hole near {floorNullHz} shrinks little, because carpets reflect there.',
      verify: 'Roll the rug away and back while a voice plays.',
      cautions: [],
      changes: ['floorCover', 'testCoverShelf', 'clapRing'],
      cures: 0.25,
    },
  ],
});
