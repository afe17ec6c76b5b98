/**
 * The center stands well below or above the mains and the picture, so voices come from the furniture or the
 * ceiling and sink or jump as they pass the middle. Height is heard far more coarsely than side to side, and a
 * picture draws the voice to itself, so some degrees are forgiven.
 * Left out: the coloring by the outer ear that lets a bright voice seem higher than it is.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, is, isNot, noneOf, oneOf } from '../condition.js';
import { staysInPlace } from '../home-tests.js';
import { PLACE } from '../outdated.js';

export const height = defineCause({
  id: 'height',
  title: 'The center is at another height than mains and picture',
  severity: 'clear',
  priorDb: -9,
  priorBecause: 'Most centers lie on furniture well below the ears.',
  story:
    'The center sits well below or above the left and right loudspeakers and the picture. The voice comes from there, and whatever moves across the front sinks or climbs in the middle.',
  notWhen:
    'Wrongly blamed for a few degrees, which the eye forgives, and for a voice that is merely dull: that is the aim of the box or the surface it lies on. A wedge under the box turns its tone to the ears and leaves the voice where the box stands.',
  links: {
    'voice-low-or-high': 0.8,
    'image-collapses-to-center': 0.15,
    'voice-changes-tone': 0.15,
    'just-prefer-two-channels': 0.05,
    'voice-unclear-back-row': 0.08,
  },
  pictures: ['room-side'],
  groups: {
    // Mains and picture are two ways to be out of place: the larger gap counts.
    angle: 'same-quantity',
    'where-heard': 'same-quantity',
    lifted: 'independent',
    silenced: 'independent',
    swapped: 'independent',
  },
  rules: [
    deviates({
      id: 'apart-in-height',
      group: 'angle',
      of: 'heightApartDeg',
      limit: 'heightDeg',
      yes: 'Seen from the ear the center is up to {heightApartDeg} away in height from mains or picture; {limit} is clearly noticed.',
      no: 'Seen from the ear the center is within {heightApartDeg} of mains and picture in height; it takes {limit} to be clearly noticed.',
      because:
        'Height is innocent only where the center is near to both the mains and the picture; one large gap is enough to tear the voice off.',
      source: 'elevation-blur',
    }),
    deviates({
      id: 'apart-from-the-mains',
      group: 'angle',
      of: 'heightMismatchDeg',
      limit: 'heightDeg',
      only: 'for',
      yes: 'Seen from the ear the center is {heightMismatchDeg} above or below the mains; {limit} is clearly noticed.',
      no: 'Seen from the ear center and mains differ by {heightMismatchDeg} in height; it takes {limit} to be clearly noticed.',
      because:
        'The best listeners tell about four degrees in height, a voice is placed to within some ten. A farther seat makes the same height a smaller angle.',
      source: 'elevation-blur',
    }),
    deviates({
      id: 'apart-from-the-picture',
      group: 'angle',
      applies: isNot('playedContent', 'two-channel-music'),
      of: 'pictureMismatchDeg',
      limit: 'heightDeg',
      only: 'for',
      yes: 'Seen from the ear the center is {pictureMismatchDeg} away from the middle of the picture; beyond {limit} voice and mouth part company.',
      no: 'Seen from the ear the center is {pictureMismatchDeg} away from the middle of the picture, which the eye forgives.',
      because:
        'A voice is expected at the mouth that speaks. The eye pulls it over some degrees, not over many.',
      source: 'elevation-blur',
    }),
    answers({
      id: 'voice-from-below-or-above',
      group: 'where-heard',
      // One direction is told: a voice that is aside can be low as well.
      applies: isNot('voiceDirection', 'aside'),
      when: oneOf('voiceDirection', 'low', 'high'),
      tells: { yes: 'strong', no: 'telling' },
      yes: 'The voice is heard {voiceDirection}.',
      no: 'The voice is not heard from below or above the picture.',
      because: 'Closing the eyes takes the picture away; what is left is where the sound really comes from.',
      source: 'elevation-blur',
    }),
    answers({
      id: 'voice-at-the-picture',
      group: 'where-heard',
      when: is('voiceDirection', 'picture'),
      tells: { yes: 'telling', against: true },
      yes: 'The voice comes from the picture, so its height does no harm here.',
      no: 'The voice does not come from the picture.',
      because: 'Whatever the tape says, a voice that is heard at the picture is high enough.',
    }),
    answers({
      id: 'better-when-lifted',
      group: 'lifted',
      when: is('testLift', 'improves'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'Raised toward ear height for a moment, the image clearly improved.',
      no: 'Raised toward ear height for a moment, the image stayed where it was.',
      because:
        'Raising the box changes its height for free; if the image does not follow, height was not the trouble.',
    }),
    answers({
      id: 'gone-without-center',
      group: 'silenced',
      when: is('testPhantom', 'gone'),
      tells: { yes: 'hint', no: 'strong' },
      yes: 'With the center set to none the voice came up to the height of the mains.',
      no: 'With the center set to none the voice stayed where it was, so the height of the center is not it.',
      because:
        'Left and right alone put the voice at their own height; what stays does not come from the center.',
    }),
    staysInPlace('swapped'),
  ],
  telltales: [
    {
      id: 'at-the-same-height',
      when: is('heightAgainstMains', 'same'),
      telling: 'strong',
      speaks: 'against',
      yes: 'The center is at about the height of the mains.',
      no: 'The center is not at the height of the mains.',
      because: 'At one height nothing sinks or climbs on its way across.',
    },
    {
      id: 'at-another-height',
      when: oneOf('heightAgainstMains', 'lower', 'higher'),
      telling: 'hint',
      yes: 'The center is {heightAgainstMains} than the mains.',
      no: 'The center is at about the height of the mains.',
      because: 'How far is not told, so it is a hint only.',
    },
  ],
  confirm: [confirmedBy('testLift', 'improves'), confirmedBy('testPhantom', 'gone')],
  acts: {
    'center-lowered': 0.7,
    'center-taken-out': 0.3,
    'ears-lowered': 0.3,
    'ears-raised': 0.3,
    'center-set-to-none': 0.8,
  },
  remedies: [
    {
      id: 'do-without',
      act: 'center-set-to-none',
      title: 'Set the center to none: one seat in the middle does not need it',
      when: all(
        is('seating', 'single-seat'),
        noneOf('testPhantom', 'same', 'worse'),
        isNot('centerMode', 'none'),
      ),
      steps: [
        'Photograph the loudspeaker page, then set the center to none.',
        'Listen to a newscast with eyes closed, for a few evenings.',
      ],
      minutes: 4,
      expect:
        'Left and right put the voice between them, at their height: {heightMismatchDeg} higher or lower than now. It holds for the middle seat alone.',
      verify: 'Point at the voice with eyes closed, before and after.',
      cautions: ['photograph-menu'],
      changes: ['centerMode', 'testPhantom', 'voiceDirection'],
      cures: 0.8,
    },
    {
      id: 'lift-by-receiver',
      title: 'Let the receiver lift the voice',
      when: noneOf('voiceLift', 'none', 'on'),
      steps: [
        'Look in the sound menu for a setting that lifts or raises the voice.',
        'Raise it step by step until the voice meets the picture, and stop before it thins.',
      ],
      minutes: 3,
      expect: 'The voice rises toward the loudspeakers that share it, at some cost in tone and firmness.',
      verify: 'Point at the voice with eyes closed, before and after.',
      cautions: ['photograph-menu'],
      changes: ['voiceLift', 'voiceDirection'],
      cures: 0.4,
    },
    {
      id: 'share-with-mains',
      title: 'Let the mains carry part of the voice',
      when: all(is('upmixCenterControl', 'present'), isNot('playedContent', 'multichannel-film')),
      steps: [
        'Open the center setting of the upmix and switch spread on, or open it halfway.',
        'Listen in the main seat, then at the end of the row.',
      ],
      minutes: 3,
      expect:
        'In the main seat the voice rises toward the mains, for two-channel music only. Off the middle the three fronts no longer arrive together, so the outer seats pay with a hollow, shifting voice.',
      verify: 'Point at the voice with eyes closed in the main seat.',
      cautions: ['photograph-menu'],
      changes: ['centerSpread', 'centerSpreadAmount', 'testSpreadOn', 'voiceDirection'],
      cures: 0.3,
    },
    {
      id: 'raise-or-lower',
      forbiddenBy: ['cannot-stay-raised', 'center-stays'],
      act: 'center-raised',
      title: 'Bring the center to the height of the mains, as near the picture as possible',
      gain: { of: 'heightApartDeg', to: { centerTweeterHeight: { like: 'mainsTweeterHeight' } } },
      steps: [
        'Use a firm stand or a raised shelf right under (or over) the picture.',
        'Take out at least half of the mismatch: {heightMismatchDeg} now, under 10 degrees is the aim.',
        'Point the box at the ears again.',
      ],
      minutes: 30,
      cost: 'low',
      expect:
        'The difference to mains or picture falls from {heightApartDeg} to {after} with the center as high as the mains, and voices no longer dip in the middle.',
      verify: 'Let a voice cross the front with eyes closed: it keeps its height.',
      cautions: ['thin-display', 'lifting', 'heat'],
      changes: [...PLACE, 'voiceDirection'],
      cures: 0.8,
    },
    {
      id: 'lower-the-picture',
      forbiddenBy: ['screen-stays'],
      title: 'Lower the picture, or the mains, toward the center',
      steps: [
        'Where the center cannot move, bring picture and center closer together instead.',
        'Leave the tweeters of the mains near ear height.',
      ],
      minutes: 60,
      cost: 'low',
      expect: 'Voice and mouth come together; {pictureMismatchDeg} is the present gap.',
      verify: 'Watch a newsreader and close the eyes: the voice does not jump.',
      cautions: ['lifting', 'licensed-trade'],
      changes: ['displayMiddleHeight', 'mainsTweeterHeight', 'voiceDirection'],
      cures: 0.5,
    },
  ],
});
