/**
 * One large surface near the center, mostly floor or wall, returns a copy of the voice a millisecond late. Every
 * loudspeaker at home has such reflections; they tell against the center only when they hit it at another pitch
 * than the mains, as with a center near the floor, or when one is uncommonly strong. The owner hears a thin or
 * thick voice at every seat, one that changes when the box is lifted. A carpet does little: the nulls lie where
 * carpets reflect. Left out: furniture that breaks the path, and the ear's habit of hearing through a room.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, atLeast, is, isNot, noneOf, oneOf } from '../condition.js';
import { alikeAlongTheRow, mainWrongThereToo, placeNotBox, staysInPlace } from '../home-tests.js';
import { lowRiseRemedies } from '../low-rise.js';
import { measuredAt } from '../measured.js';
import { PLACE } from '../outdated.js';
import { recordedReflection } from '../recorded.js';
import { heard, toldTale } from '../remarks.js';

export const nearSurface = defineCause({
  id: 'near-surface',
  title: 'A floor, wall or ceiling close by colors the voice',
  severity: 'mild',
  priorDb: -12,
  priorBecause: 'Present in every room, seldom the main trouble.',
  story:
    'The floor, the ceiling or a wall close to the center sends a second voice a moment after the first. At some pitches the two cancel, and for a low center these lie in the middle of the voice while those of the mains lie below it. A wall close behind, or a corner, lifts the low voice.',
  notWhen:
    'Wrongly blamed when center and mains stand at the same height over the same floor, for then all three are colored alike, and where an automatic correction has taken the rise of a wall back.',
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
    rise: 'same-quantity',
    exchanged: 'same-session',
    moved: 'same-session',
    tone: 'same-session',
    'near-by': 'independent',
    'where-heard': 'independent',
    recorded: 'same-quantity',
    measured: 'independent',
    swapped: 'independent',
  },
  rules: [
    deviates({
      id: 'floor-ripple',
      group: 'floor',
      of: 'floorRippleDb',
      limit: 'floorRippleDb',
      only: 'for',
      maxDb: 6,
      yes: 'The floor roughens the voice by {floorRippleDb} from peak to dip, its first hole near {floorNullHz}; {limit} stands out from other rooms.',
      no: 'The floor roughens the voice by {floorRippleDb} from peak to dip, as it does in any room.',
      because:
        'Every loudspeaker at home has a floor reflection and people hear through it; only a stronger one than usual stands out.',
      source: 'floor-image',
    }),
    deviates({
      id: 'another-pitch-than-the-mains',
      group: 'floor',
      of: 'surfaceNullRatio',
      limit: 'surfaceNullRatio',
      // Every low center has it, and ears hear through a room: it seldom is the main trouble.
      maxDb: 6,
      yes: 'The {nearestSurface} takes a hole out of the center near {surfaceNullHz}, the floor out of the mains near {floorNullMainsHz}, so the two differ in tone.',
      no: 'The hole of the center from the {nearestSurface} lies no higher in the voice, near {surfaceNullHz}, than that of the mains near {floorNullMainsHz}.',
      because:
        'Close to floor or ceiling the hole moves up, from below the voice into the middle of it. A hole lower than that of the mains harms less, and one at the same pitch is no mismatch.',
      source: 'floor-image',
    }),
    deviates({
      id: 'walls-lift-the-low-voice',
      group: 'rise',
      of: 'wallRiseDb',
      limit: 'bandDb',
      only: 'for',
      maxDb: 8,
      yes: 'The walls close to the center lift its low voice by {wallRiseDb}, and nothing takes that back; {limit} is clear.',
      no: 'The walls close to the center lift its low voice by {wallRiseDb} only.',
      because:
        'A box made to stand free sends its low voice to all sides; a wall close behind sends that part forward in step, a corner twice.',
      source: 'low-rise',
    }),
    deviates({
      id: 'wall-behind',
      group: 'wall',
      of: 'wallDipDb',
      limit: 'wallDipDb',
      only: 'for',
      maxDb: 6,
      yes: 'The wall behind takes {wallDipDb} out of the lower voice near {wallNullHz}; beyond {limit} it stands out.',
      no: 'The wall behind takes no more than {wallDipDb} out of the lower voice, as walls do everywhere.',
      because:
        'Low sound goes around the box, meets the wall and comes back half a wave late. Right at the wall that pitch is so high that the box hardly radiates backward.',
      source: 'wall-image',
    }),
    answers({
      id: 'clearer-with-blanket',
      group: 'moved',
      applies: isNot('centerPlacement', 'shelf-top'),
      when: is('testCoverShelf', 'clearer'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'With a folded blanket on the floor in front of the center the voice became clearer.',
      no: 'With a folded blanket on the floor in front of the center the voice did not change.',
      because:
        'A reflection that is covered is weaker while one listens; thick cloth works from about 1 kHz up.',
    }),
    answers({
      id: 'tone-changes-when-lifted',
      group: 'moved',
      when: is('testLift', 'tone-only'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'Raised for a moment, the center changed its tone but not its place.',
      no: 'Raising the center did not change its tone alone.',
      because:
        'Lifting moves the floor hole down and out of the voice, whatever it does to the place of the image.',
    }),
    answers({
      id: 'thin-or-boxy-noise',
      group: 'tone',
      when: oneOf('testNoiseEach', 'thin', 'boxy'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'Steady noise from the center is thin or boxy against the mains.',
      no: 'Steady noise from the center is neither thin nor boxy against the mains.',
      because:
        'A hole or a hump in the lower voice is heard as thin or boxy beside a main that has none there.',
    }),
    heard(
      'boxy-pan',
      'tone',
      { yes: 'hint', no: 'slight' },
      'Mains that stand free beside a center close to a wall or a corner differ in the low voice.',
    ),
    mainWrongThereToo('exchanged', { yes: 'telling', no: 'telling' }),
    placeNotBox('exchanged'),
    answers({
      id: 'good-close-up',
      group: 'near-by',
      when: oneOf('testNearCenter', 'good-near', 'better'),
      tells: { yes: 'slight', no: 'telling' },
      yes: 'One meter in front the voice is good or better: near by, reflections count for less.',
      no: 'One meter in front the voice is as bad as at the seat, where the floor hardly reaches.',
      because: 'Close to the box its direct sound outweighs every reflection.',
      source: 'floor-image',
    }),
    alikeAlongTheRow(
      'where-heard',
      'a floor or a wall',
      'Heights and the wall behind are the same for all seats of a row.',
    ),
    recordedReflection('recorded'),
    measuredAt('recorded', 'reflection', {
      what: 'the nearest surface',
      at: 'surfaceDelayMs',
      source: 'floor-image',
    }),
    measuredAt('measured', 'hole', {
      what: 'the nearest surface',
      at: 'surfaceHoleHz',
      source: 'floor-image',
    }),
    staysInPlace('swapped'),
  ],
  telltales: [
    {
      id: 'hole-stays',
      when: is('holeFollows', 'nothing'),
      telling: 'telling',
      speaks: 'against',
      yes: 'Nothing moves the measured hole, neither box nor seat nor cover.',
      no: 'Something moves the measured hole.',
      because: 'A hole made by a surface changes its pitch with every hand width of the box.',
    },
    toldTale(
      'hole-follows-the-box',
      'telling',
      'A reflection off a surface has its pitch from the distance to it.',
    ),
    toldTale('deep-voices-worst', 'hint', 'Floor, wall and corner lift the low voice.'),
  ],
  confirm: [
    confirmedBy('testLift', 'tone-only'),
    confirmedBy('testCoverShelf', 'clearer'),
    confirmedBy('testBesideMain', 'alike'),
  ],
  acts: { 'center-taken-out': 0.4, 'center-set-to-none': 0.7, 'seat-moved-back': 0.2 },
  remedies: [
    ...lowRiseRemedies('wallRiseDb', { by: 'the walls', at: 'wall' }),
    {
      id: 'pull-from-wall',
      title: 'Pull the center away from the wall',
      gain: { of: 'wallRiseDb', to: { wallDistance: { by: 0.3 } } },
      steps: [
        'Pull it forward by a foot (30 cm) or more where furniture and picture allow, still under the picture.',
        'Listen to a low male voice, then measure its distance again and enter it.',
      ],
      minutes: 10,
      expect:
        'The rise of the low voice falls from {wallRiseDb} to {after}. The price: off the wall a hole comes into the lower voice, lower in pitch the farther the box stands.',
      verify: 'A low male voice sounds as full as from the mains, not fuller.',
      cautions: ['thin-display', 'lifting'],
      changes: ['wallDistance', 'centerBehindMains', 'tapedCenter', 'testNoiseEach'],
      cures: 0.5,
    },
    {
      id: 'shift-from-wall',
      forbiddenBy: ['center-stays'],
      title: 'Change the distance to the wall behind',
      // Close to the wall the hole leaves the voice, but the low voice rises: nothing for a voice that booms.
      when: all(atLeast('wallDipDb', 'wallDipDb.noticeable'), noneOf('testNoiseEach', 'boxy')),
      steps: [
        'Move the center by a hand width toward the wall, or well away from it: both move the hole.',
        'Listen to a low male voice each time.',
        'Measure its distance again and enter it.',
      ],
      minutes: 10,
      expect:
        'The hole near {wallNullHz} moves: up when closer, at the price of more bass, and down below the voice when far.',
      verify: 'A low male voice sounds as full as from the mains.',
      cautions: ['heat'],
      changes: ['wallDistance', 'centerBehindMains', 'tapedCenter', 'testNoiseEach'],
      cures: 0.3,
    },
    {
      id: 'raise-center',
      forbiddenBy: ['cannot-stay-raised', 'center-stays'],
      act: 'center-raised',
      title: 'Bring the center toward the height of the mains',
      gain: { of: 'surfaceNullRatio', to: { centerTweeterHeight: { like: 'mainsTweeterHeight' } } },
      steps: [
        'Use a firm stand or shelf; point the box at the ears.',
        'Compare steady noise from center and mains again.',
      ],
      minutes: 20,
      cost: 'low',
      expect: 'The hole moves from {surfaceNullHz} toward {floorNullMainsHz}, where the mains have theirs.',
      verify: 'Steady noise changes less as it steps left, center, right.',
      cautions: ['thin-display', 'lifting'],
      changes: [...PLACE],
      cures: 0.6,
    },
    {
      id: 'soften-floor',
      act: 'surface-covered',
      title: 'Lay a thick rug where the floor mirrors the center',
      steps: [
        'Let somebody slide a mirror along the floor until you see the center in it from your seat.',
        'Lay a thick rug with a pad there.',
      ],
      minutes: 15,
      cost: 'medium',
      expect:
        'A calmer upper voice; the hole near {floorNullHz} shrinks little, because carpets reflect there.',
      verify: 'Roll the rug away and back while a voice plays.',
      cautions: [],
      changes: ['floorCover', 'testCoverShelf', 'clapRing'],
      cures: 0.25,
    },
  ],
});
