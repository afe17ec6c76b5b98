/**
 * A box inside an open bay of furniture: the air in the gaps around it moves against the air behind it, like
 * blowing over a bottle, and a recessed face speaks through a short tunnel. The owner hears a chesty, boxy voice
 * at every seat. It is the bay's neck and volume that set the note, not a quarter wave of its depth.
 * Flush with the furniture front and closed around, the same bay is the best place of all, given a low shelf cut.
 * Doors and panels that buzz along show under a flat hand. Left out:
 * a port at the back, close to a panel. The note is good to some 20 percent, the peak to its order.
 */

import { answers, confirmedBy, defineCause, deviates, type Remedy } from '../cause.js';
import { all, atLeast, below, is, not } from '../condition.js';
import { alikeAlongTheRow, mainWrongThereToo, placeNotBox, staysInPlace } from '../home-tests.js';
import { lowRiseRemedies } from '../low-rise.js';
import { measuredAt } from '../measured.js';
import { PLACE } from '../outdated.js';
import { heard, toldTale } from '../remarks.js';

const FILLING_HELPS: Remedy['gain'] = { of: 'bayPeakDb', to: { bayStuffing: 'filled' } };

export const cabinetBay = defineCause({
  id: 'cabinet-bay',
  title: 'The bay around the center colors its voice',
  severity: 'clear',
  priorDb: -6,
  priorBecause: 'Open bays under a display are common; most are left open around the box.',
  story:
    'The center stands inside an open bay. The air in the gaps around it swings against the air behind it, and a face set back speaks through a tunnel. The lower voice gets a note of its own.',
  notWhen:
    'Wrongly blamed when the gaps are loosely filled, or when the face is flush with the furniture and closed around it: that is a good place which only asks for less bass. A buzz that stops under a flat hand is a door or panel; felt dots quiet it.',
  applies: is('centerPlacement', 'bay'),
  // A quarter of the centers stand in a bay (judgement).
  appliesIn: 0.25,
  links: {
    boomy: 0.7,
    hollow: 0.4,
    'voice-unclear-everywhere': 0.4,
    'voice-changes-tone': 0.4,
    rattles: 0.15,
    dull: 0.15,
    'voice-unclear': 0.4,
    boxy: 0.6,
  },
  block: { group: 'cavity', facts: ['bayRecess', 'bayWidth', 'bayHeight', 'bayDepth'] },
  groups: {
    // Gaps and recess are two ways to the same chesty note: the louder one counts.
    cavity: 'same-quantity',
    front: 'same-quantity',
    tone: 'same-session',
    moved: 'same-quantity',
    exchanged: 'same-session',
    'where-heard': 'independent',
    measured: 'independent',
  },
  rules: [
    deviates({
      id: 'cavity-note',
      group: 'cavity',
      // A quiet cavity does not clear a front that lifts the low voice.
      applies: not(all(below('cavityPeakDb', 'resonanceDb'), atLeast('frontRiseDb', 'bandDb'))),
      of: 'cavityPeakDb',
      limit: 'resonanceDb',
      yes: 'As it stands now, the cavity adds a note of {cavityPeakDb} to the voice; {limit} is clearly audible. The air around the box swings near {bayResonanceHz}. The recess in front swings near {recessResonanceHz}.',
      no: 'As it stands now, neither the gaps nor the recess add more than {cavityPeakDb}, so the cavity is innocent.',
      because:
        'A bay harms by open gaps or by a recessed face. With both out of the way, filled or flush and closed, it is as good a place as any.',
      source: 'bay-resonator',
    }),
    deviates({
      id: 'front-rise',
      group: 'front',
      of: 'frontRiseDb',
      limit: 'bandDb',
      only: 'for',
      yes: 'A face flush with the furniture front lifts the low voice by {frontRiseDb} over one that stands free, and nothing takes it back; {limit} is clear.',
      no: 'The furniture front lifts the low voice by {frontRiseDb} only.',
      because:
        'A box made to stand free sends its low voice to all sides. With furniture all around, that part comes forward too: half the space, up to twice the pressure.',
      source: 'low-rise',
    }),
    answers({
      id: 'boxy-noise',
      group: 'tone',
      when: is('testNoiseEach', 'boxy'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'Steady noise from the center is boxy or boomy against the mains.',
      no: 'Steady noise from the center is not boxy or boomy against the mains.',
      because: 'A cavity adds its own note to everything the box plays, and steady noise shows it best.',
    }),
    heard(
      'boxy-pan',
      'tone',
      { yes: 'telling', no: 'telling' },
      'The mains stand free and the center speaks out of a cavity, so the voice changes as it passes.',
    ),
    answers({
      id: 'clearer-pulled-forward',
      group: 'moved',
      when: is('testPullForward', 'clearer'),
      tells: { yes: 'strong' },
      yes: 'Pulled forward to the edge, the center became clearer.',
      no: 'Pulled forward to the edge, the center sounded the same; the gaps around it may still sing.',
      because:
        'Pulling it forward takes the tunnel in front away; the air in the gaps swings on, and can swing louder.',
    }),
    answers({
      id: 'no-clearer-at-the-edge',
      group: 'moved',
      applies: is('edgeShows', 'the-note'),
      when: is('testPullForward', 'clearer'),
      tells: { no: 'telling' },
      yes: 'In this bay a flush face takes {flushGainDb} off the note, and pulled forward the center did become clearer.',
      no: 'In this bay a flush face takes {flushGainDb} off the note, yet pulled forward the center sounded the same.',
      because:
        'Where the tunnel makes the note, it must go with the tunnel. Where the gaps make it, pulling forward proves nothing.',
      source: 'bay-resonator',
    }),
    answers({
      id: 'no-clearer-in-an-untold-bay',
      group: 'moved',
      applies: is('edgeShows', 'perhaps'),
      when: is('testPullForward', 'clearer'),
      tells: { no: 'hint' },
      yes: 'Pulled forward to the edge, the center became clearer.',
      no: 'Pulled forward to the edge, the center sounded the same: no tunnel in front makes it, the gaps around the box still can.',
      because:
        'A flush face ends the tunnel and the edges in front of it. As nobody has told how deep the face sat, that half of the bays is out.',
      source: 'bay-resonator',
    }),
    mainWrongThereToo('exchanged', { yes: 'telling', no: 'telling' }),
    alikeAlongTheRow(
      'where-heard',
      'a bay',
      'The wave of the lower voice is far longer than the sofa, so all seats hear the same note.',
    ),
    placeNotBox('exchanged'),
    staysInPlace('exchanged'),
    measuredAt('measured', 'peak', { what: 'the bay', at: 'bayNoteHz', source: 'bay-resonator' }),
  ],
  // Pulled forward, only a bay with a deep recess gets better: that is its first remedy, and no test for all.
  telltales: [
    toldTale('deep-voices-worst', 'telling', 'A bay rings in the lower voice range, where deep voices live.'),
    {
      id: 'furniture-changed',
      when: is('changedExactly', 'furniture-center'),
      telling: 'telling',
      yes: 'The furniture around the center was changed last.',
      no: 'It was not the furniture around the center that changed last.',
      because: 'The furniture is the resonator.',
    },
    {
      id: 'port-into-the-bay',
      when: is('rearPort', 'yes'),
      telling: 'hint',
      yes: 'The center has its port at the back.',
      no: 'The center has no port at the back.',
      because: 'A port pumps the air of the bay and makes it sing.',
    },
  ],
  confirm: [
    confirmedBy('testNoiseEach', 'boxy'),
    confirmedBy('testBesideMain', 'alike'),
    confirmedBy('testMainInPlace', 'wrong'),
  ],
  acts: { 'center-set-to-none': 0.8, 'surface-covered': 0.3 },
  remedies: [
    {
      id: 'pull-forward',
      forbiddenBy: ['center-stays'],
      act: 'center-pulled-forward',
      title: 'Pull the center forward until its face is flush or a little proud',
      gain: { of: 'cavityPeakDb', to: { bayRecess: 0 } },
      steps: [
        'Slide the box forward until its face is level with the furniture front or a finger beyond it.',
        'Secure it so that it cannot tip.',
        'Listen to the same minute of speech.',
      ],
      minutes: 3,
      expect:
        'The note of {cavityPeakDb} falls to {after}; what is left is the air around the box, until the gaps are filled.',
      verify: 'Steady noise from the center loses its boxy color.',
      cautions: ['thin-display'],
      changes: ['bayRecess', 'testPullForward', 'testNoiseEach', 'toneAcrossPan', 'tapedCenter'],
      cures: 0.5,
    },
    {
      id: 'try-filling',
      title: 'Fill the gaps around the box, with towels for a trial',
      gain: FILLING_HELPS,
      steps: [
        'Lay towels or soft cloth loosely beside and above the box, and behind it where there is room.',
        'Keep ports and ventilation slots free.',
        'Listen to the same minute of speech, then take them out and listen again.',
        'Where it helped, loose polyester wadding does the same for good.',
      ],
      minutes: 5,
      expect:
        'The peak of {bayPeakDb} near {bayResonanceHz} falls to about {after}: loose filling brakes the air in the gaps.',
      verify: 'Steady noise from the center loses its boxy color while the towels are in.',
      cautions: ['ventilation', 'heat', 'fiber'],
      changes: ['bayStuffing', 'testNoiseEach', 'toneAcrossPan', 'testPullForward'],
      cures: 0.7,
    },
    ...lowRiseRemedies('frontRiseDb', { by: 'furniture fronts', at: 'furniture' }),
    {
      id: 'move-out',
      forbiddenBy: ['center-stays', 'furniture-stays'],
      act: 'center-taken-out',
      title: 'Move the center out of the bay, onto the top or a stand',
      steps: [
        'Set it on top of the furniture with its face at the front edge, or on a low stand in front.',
        'Point it at the ears.',
        'Measure its distance again and enter it.',
      ],
      minutes: 20,
      expect: 'The bay is out of play altogether.',
      verify: 'The voice keeps its tone as it crosses the front.',
      cautions: ['thin-display', 'lifting', 'heat'],
      changes: [...PLACE, 'testPullForward'],
      cures: 0.8,
    },
    {
      id: 'close-flush',
      title: 'Close the gaps flush with the furniture front and cut the bass a little',
      steps: [
        'Set the face flush with the front of the furniture.',
        'Close the gaps with a thin panel or dense foam strips, level with the front; leave ports open.',
        'Lower the bass of the center by 3 to 5 dB with a low shelf at 250 to 400 Hz, or run the equalization again.',
      ],
      minutes: 90,
      cost: 'low',
      expect:
        'The best placement in a bay: no cavity and no edges. The bass rises by up to 5 dB because the sound has only half the space to go to, hence the cut.',
      verify: 'Steady noise from the center is close to that of the mains.',
      cautions: ['ventilation', 'heat', 'photograph-menu'],
      changes: [
        'bayRecess',
        'bayStuffing',
        'equalization',
        'testNoiseEach',
        'toneAcrossPan',
        'responseCenter',
        'testPullForward',
      ],
      cures: 0.85,
    },
  ],
});
