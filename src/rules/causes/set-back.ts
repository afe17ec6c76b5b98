/**
 * The face of the center stands behind the front edge of the shelf or cabinet top it lies on. The strip of shelf
 * in front throws part of the voice up to the ears: a shallow wave from 1 to 4 kHz and a rise of some 3 to 4 dB
 * around 400 Hz. The owner hears a slightly nasal, thick voice at every seat.
 * The deep textbook null exists only where the strip reaches the mirror point, some 40 to 70 cm in front of the
 * box; an ordinary set-back is mild. Left out: the finite width of the shelf.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { is } from '../condition.js';
import { alikeAlongTheRow, mainWrongThereToo, staysInPlace } from '../home-tests.js';
import { measuredAt } from '../measured.js';
import { heard, toldTale } from '../remarks.js';

export const setBack = defineCause({
  id: 'set-back',
  title: 'The center is pushed back on its shelf',
  severity: 'mild',
  priorDb: -9,
  priorBecause: 'Very common as a habit, seldom the main trouble.',
  story:
    'The center stands some way behind the front edge of the shelf. The strip in front of it reflects part of the voice, thickens its low part and roughens its upper part.',
  notWhen:
    'Wrongly blamed for deep holes: an ordinary set-back of 10 or 20 cm makes a shallow wave. A shelf at or above ear height reflects nothing toward the ears.',
  applies: is('centerPlacement', 'shelf-top'),
  // Half of the centers stand on a shelf or cabinet top (judgement).
  appliesIn: 0.5,
  links: {
    'voice-changes-tone': 0.4,
    boomy: 0.3,
    hollow: 0.3,
    'voice-unclear-everywhere': 0.25,
    harsh: 0.15,
    'voice-unclear': 0.25,
    thin: 0.2,
    boxy: 0.3,
  },
  block: {
    group: 'shelf',
    facts: ['shelfSetback', 'centerAboveShelf', 'centerTweeterHeight', 'earHeight', 'seatDistance'],
  },
  groups: {
    shelf: 'same-mechanism',
    moved: 'same-mechanism',
    tone: 'same-session',
    exchanged: 'same-session',
    'where-heard': 'independent',
    measured: 'independent',
  },
  rules: [
    deviates({
      id: 'shelf-ripple',
      group: 'shelf',
      of: 'shelfRippleDb',
      limit: 'shelfRippleDb',
      yes: 'The strip of shelf in front lifts the voice by {shelfRiseDb} around 400 Hz and takes {shelfDipDb} out near {shelfDipHz}: {shelfRippleDb} from peak to dip, {limit} is clear.',
      no: 'The strip of shelf in front makes {shelfRippleDb} from peak to dip, what a correction takes off the peak left out; it takes {limit} to be clear.',
      because:
        'For long waves even a short shelf is a wall that the low part of the voice cannot spread through; for shorter ones it throws a weak copy to the ears. Both together are heard, not each alone.',
      source: 'shelf-strip',
    }),
    deviates({
      id: 'reaches-the-mirror-point',
      group: 'shelf',
      of: 'shelfReach',
      limit: 'shelfReach',
      only: 'for',
      maxDb: 6,
      yes: 'The bare shelf reaches the spot from which it mirrors the voice to the ears, so a deep cancellation exists.',
      no: 'The bare shelf ends before the spot from which it would mirror the voice to the ears, so there is no deep cancellation.',
      because:
        'A plane mirrors sound at one spot only, some 40 to 70 cm in front of a center on furniture. Where the shelf ends before it, the textbook null does not exist.',
      source: 'shelf-strip',
    }),
    answers({
      id: 'clearer-pulled-forward',
      group: 'moved',
      when: is('testPullForward', 'clearer'),
      tells: { yes: 'strong', no: 'telling' },
      yes: 'Pulled forward to the edge, the center became clearer.',
      no: 'Pulled forward to the edge, the center sounded the same, so the strip in front did no harm.',
      because: 'At the edge there is no strip left to reflect.',
    }),
    answers({
      id: 'clearer-with-blanket',
      group: 'moved',
      when: is('testCoverShelf', 'clearer'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'With a folded blanket on the shelf the voice became clearer.',
      no: 'With a folded blanket on the shelf the voice did not change.',
      because: 'Thick cloth swallows the upper part of the reflection while it lies there.',
    }),
    heard(
      'boxy-pan',
      'tone',
      { yes: 'hint', no: 'slight' },
      'The mains have no shelf in front of them, so the added lower voice is heard in the middle only.',
    ),
    mainWrongThereToo('exchanged', { yes: 'telling', no: 'telling' }),
    alikeAlongTheRow(
      'where-heard',
      'a shelf',
      'The height of the box and of the ears decides, and that is the same along a row.',
    ),
    staysInPlace('exchanged'),
    measuredAt('measured', 'hole', { what: 'the shelf in front', at: 'shelfHoleHz', source: 'shelf-strip' }),
  ],
  telltales: [
    toldTale(
      'hole-follows-the-box',
      'telling',
      'The strip in front makes it, and the strip goes with the place of the box.',
    ),
    {
      id: 'furniture-moved',
      when: is('changedExactly', 'furniture-center'),
      telling: 'hint',
      yes: 'The furniture around the center was changed last.',
      no: 'It was not the furniture around the center that changed last.',
      because: 'A shelf in front of a box is a mirror for its voice.',
    },
  ],
  confirm: [confirmedBy('testPullForward', 'clearer'), confirmedBy('testCoverShelf', 'clearer')],
  acts: { 'center-set-to-none': 0.8, 'center-taken-out': 0.6 },
  remedies: [
    {
      id: 'pull-forward',
      forbiddenBy: ['center-stays'],
      act: 'center-pulled-forward',
      title: 'Pull the center to the front edge, a finger beyond it',
      gain: { of: 'shelfRippleDb', to: { shelfSetback: 0 } },
      steps: [
        'Slide the box forward until its face is flush with the edge or a finger over it.',
        'Secure it so that it cannot tip.',
        'Measure its distance again and enter it if it moved by more than 2 in (5 cm).',
      ],
      minutes: 3,
      expect: 'The {shelfDipDb} wave and the {shelfRiseDb} rise around 400 Hz go.',
      verify: 'Slide it back and forth once while somebody reads the news.',
      cautions: ['thin-display'],
      changes: ['shelfSetback', 'testPullForward', 'testCoverShelf', 'toneAcrossPan', 'tapedCenter'],
      cures: 0.9,
    },
    {
      id: 'cover-strip',
      act: 'surface-covered',
      title: 'Lay something soft on the strip in front',
      steps: [
        'Lay thick felt or a folded blanket on the shelf in front of the center.',
        'Keep it clear of ports, vents and heat.',
      ],
      minutes: 5,
      expect: 'The wave from 1 to 4 kHz shrinks to a third; the rise around 400 Hz mostly stays.',
      verify: 'Take the cloth away and put it back while a voice plays.',
      cautions: ['heat', 'ventilation'],
      changes: ['testCoverShelf', 'toneAcrossPan'],
      cures: 0.5,
    },
    {
      id: 'raise-and-tilt',
      forbiddenBy: ['cannot-stay-raised', 'center-stays'],
      act: 'center-raised',
      title: 'Raise the box off the shelf and tilt it to the ears',
      // By blocks as high as a hand is wide; on some shelves that makes the wave deeper.
      gain: {
        of: 'shelfRippleDb',
        to: { centerAboveShelf: { by: 0.08 }, centerTweeterHeight: { by: 0.08 } },
      },
      steps: [
        'Put firm blocks or a wedge under the front edge.',
        'Make sure that it cannot slide or tip.',
        'Listen again.',
      ],
      minutes: 5,
      cost: 'low',
      expect: 'Less treble meets the shelf: the wave falls from {shelfRippleDb} to {after}.',
      verify: 'The voice is closer to that of the mains in steady noise.',
      cautions: ['thin-display'],
      changes: ['centerAboveShelf', 'centerTweeterHeight', 'centerTilt', 'toneAcrossPan', 'testTilt'],
      cures: 0.4,
    },
  ],
});
