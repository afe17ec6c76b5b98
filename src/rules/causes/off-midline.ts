/**
 * The center stands to the side of the middle between the mains and of the line to the main seat. The voice comes
 * from there, away from the picture and from the phantom middle of the music. Where it stands
 * far aside its arrival changes too, but entries do not cure that; the place itself is heard.
 * Left out: an asymmetrical room, which can pull an image aside with everything in its place.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { atLeast, is, noneOf, oneOf } from '../condition.js';
import { staysInPlace } from '../home-tests.js';

export const offMidline = defineCause({
  id: 'off-midline',
  title: 'The center stands off the middle',
  severity: 'clear',
  priorDb: -15,
  priorBecause: 'Seldom far enough to matter: six degrees are 30 cm at a seat 3 m away.',
  story:
    'The center is not on the line between the middle of the mains and the main seat. The voice comes from its side, while picture and phantom middle stay where they are.',
  notWhen:
    'Wrongly blamed for a few centimeters, for a center right under a picture that hangs off the middle itself, and for a pull that stays when the center is silent: then the mains, their wiring or the seat are to blame.',
  links: {
    'voice-pulled-aside': 0.8,
    'voice-changes-tone': 0.1,
    'gaps-between-speakers': 0.15,
  },
  pictures: ['room-above'],
  groups: {
    offset: 'same-quantity',
    'where-heard': 'same-quantity',
    silenced: 'independent',
    room: 'independent',
    person: 'independent',
    swapped: 'independent',
  },
  rules: [
    deviates({
      id: 'seen-from-the-seat',
      group: 'offset',
      of: 'centerOffsetDeg',
      limit: 'offsetDeg',
      only: 'for',
      yes: 'Seen from the main seat the center is {centerOffsetDeg} off the middle; picture and voice part company from {limit}.',
      no: 'Seen from the main seat the center is {centerOffsetDeg} off the middle; it takes {limit} to be clearly noticed.',
      because:
        'The ear places a voice sideways to within some six degrees, and a picture hides less than that. Entries can right its arrival, not its place.',
      source: 'azimuth-blur',
    }),
    answers({
      id: 'off-by-something',
      group: 'offset',
      when: atLeast('centerOffsetDeg', 'offsetDeg.noticeable'),
      tells: { no: 'proof' },
      yes: 'Seen from the main seat the center is {centerOffsetDeg} off the middle.',
      no: 'Seen from the main seat the center is {centerOffsetDeg} off the middle, which nobody notices.',
      because: 'A box within a few degrees of the middle is heard in the middle.',
      source: 'azimuth-blur',
    }),
    answers({
      id: 'voice-to-one-side',
      group: 'where-heard',
      // One direction is told: a voice that is low can be aside as well.
      applies: noneOf('voiceDirection', 'low', 'high'),
      when: is('voiceDirection', 'aside'),
      tells: { yes: 'strong', no: 'telling' },
      yes: 'The voice is heard off to one side.',
      no: 'The voice is not heard off to one side.',
      because: 'A real loudspeaker off the middle is heard where it stands.',
      source: 'azimuth-blur',
    }),
    answers({
      id: 'voice-at-the-picture',
      group: 'where-heard',
      when: is('voiceDirection', 'picture'),
      tells: { yes: 'hint', against: true },
      yes: 'The voice comes from the picture, so its offset does no harm.',
      no: 'The voice does not come from the picture.',
      because: 'Whatever the tape says, a voice that is heard at the picture is near enough to the middle.',
    }),
    answers({
      id: 'wall-on-one-side',
      group: 'room',
      when: is('sideWalls', 'one-side'),
      tells: { yes: 'slight', against: true },
      yes: 'A wall stands close beside one of the mains only; that leans the front to its side, wherever the center stands.',
      no: 'The walls beside the mains are alike on both sides.',
      because: 'A strong reflection from one side alone draws a voice toward it and changes its tone there.',
    }),
    answers({
      id: 'straight-without-center',
      group: 'silenced',
      when: is('testPhantom', 'gone'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'With the center set to none the voice came back to the middle.',
      no: 'With the center set to none the trouble stayed, so the place of the center is not it.',
      because:
        'Left and right alone put the voice midway; a pull that stays comes from them or from the seat.',
    }),
    answers({
      id: 'goes-with-the-person',
      group: 'person',
      when: oneOf('testSwapSeats', 'goes-with-person', 'no-one'),
      tells: { yes: 'hint', no: 'slight', against: true },
      yes: 'After changing places the trouble went with the person, not with the place.',
      no: 'After changing places the trouble did not go with the person.',
      because: 'The place of a box is the same for everybody who sits in that seat.',
    }),
    staysInPlace('swapped'),
  ],
  telltales: [
    {
      id: 'one-side-only',
      when: oneOf('troubleSide', 'left', 'right'),
      telling: 'hint',
      yes: 'It is worse on one side.',
      no: 'It is not worse on one side.',
      because: 'A center off the middle is nearer to one end of the row.',
    },
  ],
  confirm: [confirmedBy('testPhantom', 'gone')],
  acts: { 'center-unplugged': 0.5 },
  remedies: [
    {
      id: 'move-to-middle',
      forbiddenBy: ['center-stays'],
      act: 'center-moved-to-midline',
      title: 'Move the center to the middle between the mains',
      gain: { of: 'centerOffsetDeg', to: { centerSideOffset: 0 } },
      steps: [
        'Mark the middle between the two mains on the furniture or floor.',
        'Set the tweeter of the center on that mark; a lying box with its tweeter to one side goes by the tweeter.',
        'Measure its distance again.',
      ],
      minutes: 10,
      expect: 'The offset falls from {centerOffsetDeg} to {after}, and the voice stands in the middle.',
      verify: 'Point at the voice with eyes closed, then at the middle of the picture.',
      cautions: ['thin-display', 'lifting'],
      changes: ['centerSideOffset', 'voiceDirection', 'tapedCenter', 'testPhantom'],
      cures: 0.9,
    },
    {
      id: 'move-the-rest',
      forbiddenBy: ['mains-stay'],
      title: 'Move mains, picture or main seat so that their middle meets the center',
      steps: [
        'Where the center cannot move, shift both mains sideways by the same amount, or the main seat.',
        'Keep left and right equally far from the main seat.',
        'Measure and enter the distances again.',
      ],
      minutes: 30,
      expect: 'The offset of {centerOffsetDeg} shrinks without touching the center.',
      verify: 'The phantom middle of a song and the voice of the center fall on the same spot.',
      cautions: ['lifting'],
      changes: [
        'centerSideOffset',
        'mainSeatOffset',
        'mainsBase',
        'tapedCenter',
        'tapedMains',
        'voiceDirection',
      ],
      cures: 0.7,
    },
    {
      id: 'do-without',
      act: 'center-set-to-none',
      title: 'Set the center to none where it can only stand far to the side',
      steps: [
        'Photograph the loudspeaker page.',
        'Set the center to none, so left and right carry the voice.',
      ],
      minutes: 3,
      expect:
        'The voice stands in the middle for the main seat; outer seats hear it from the nearer main instead.',
      verify: 'The voice is at the picture in the main seat.',
      cautions: ['photograph-menu'],
      changes: ['centerMode', 'voiceDirection', 'testPhantom'],
      cures: 0.6,
    },
  ],
});
