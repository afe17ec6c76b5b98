/**
 * Center and mains play the same content, and the center comes early or late: the entries do not match the
 * true arrival times. The owner hears a hollow voice, an image that jumps to whichever comes first, or no
 * firm middle; with a subwoofer also a hole where center and subwoofer meet, for those two share every low voice.
 * A latency belongs to the center, to the mains, or to all: what the entries make up for is no error, and an
 * automatic entry that is longer than the tape may be just that. It is judged at the seat the entries were made for, from the larger of center against left
 * and center against right: elsewhere even perfect entries leave half a millisecond. Left out: the room,
 * which fills the holes, and whole-system lateness against the picture, which is no error between channels.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { above, all, any, atLeast, atMost, below, is, noneOf, oneOf } from '../condition.js';
import { ENTERED } from '../derived/entries.js';
import { measuredAt } from '../measured.js';
import { ENTRIES } from '../outdated.js';
import { heard, toldTale } from '../remarks.js';

const WRONG_UNIT = oneOf('unitSlip', 'feet-as-meters', 'meters-as-feet');

/** So late by its own processing that no distance page can make up for it. */
const BEYOND_THE_MENU = above('neededEntryM', 'menuEntryM');

export const delay = defineCause({
  id: 'delay',
  title: 'Distance or delay entries do not match the true arrival times',
  severity: 'clear',
  priorDb: -12,
  priorBecause:
    'While it is open whether center and mains share anything; sharing found, it is one of the common causes.',
  story:
    'The center plays its part of a shared sound too early or too late. The two copies comb: the voice turns hollow, or the stage jumps to the loudspeaker that comes first.',
  notWhen:
    'It is blamed for unclear speech in films. A voice that only the center plays has nothing to be early or late against; pans, effects and score have. An automatic entry that is longer than the tape is right where the loudspeaker is powered or wireless. At seats off the middle every system is out of step by half a millisecond or more, however good the entries are.',
  links: {
    hollow: 0.4,
    'image-collapses-to-center': 0.3,
    'voice-changes-tone': 0.3,
    'no-middle': 0.15,
    'voice-pulled-aside': 0.12,
    'swishes-with-head-movement': 0.1,
    'voice-unclear-everywhere': 0.12,
    echo: 0.08,
    'voice-unclear': 0.12,
    thin: 0.1,
    'gaps-between-speakers': 0.15,
    'image-follows-head': 0.25,
  },
  pictures: ['arrivals', 'comb'],
  block: {
    group: 'arrival',
    facts: ['alignmentBy', 'entryKind', ...ENTERED, 'tapedCenter', 'tapedMains'],
  },
  groups: {
    arrival: 'same-quantity',
    entry: 'independent',
    audible: 'same-quantity',
    switching: 'same-mechanism',
    where: 'independent',
  },
  rules: [
    deviates({
      id: 'arrival-error',
      group: 'arrival',
      of: 'delayErrorMs',
      limit: 'delayMs',
      heard: 'sharedSound',
      yes: 'At the main seat the center and a main are {delayErrorMs} apart in what they play together; {limit} is clearly heard.',
      no: 'At the main seat center and mains are {delayErrorMs} apart, which is not clearly heard in what they share.',
      because:
        'Within the first millisecond each tenth shifts the image of a shared sound by about four degrees, and the two copies cancel at half the inverse of the delay. Only what both play can do so.',
      source: 'time-image',
    }),
    deviates({
      id: 'arrival-measured',
      group: 'arrival',
      of: 'arrivalMeasured',
      limit: 'delayMs',
      heard: 'sharedSound',
      yes: 'Center and mains were measured {arrivalMeasured} apart; {limit} is clearly heard in what they share.',
      no: 'Center and mains were measured {arrivalMeasured} apart, which is not clearly heard in what they share.',
      because: 'A microphone at the seat sees tape, entries and processing together; nothing is left out.',
      source: 'time-image',
    }),
    answers({
      id: 'heard-in-anything',
      group: 'arrival',
      // Where it is known what they share, the rules above weigh it.
      applies: is('sharesMuch', 'untold'),
      when: atLeast('delayErrorMs', 'grossDelayMs'),
      tells: { yes: 'proof' },
      yes: 'Center and a main are {delayErrorMs} apart: that is heard in the little that any film shares.',
      no: 'Center and mains are {delayErrorMs} apart, which is not heard in whatever is played.',
      because: 'Attacks and pans come twice then; only a voice that the center has to itself does not.',
      source: 'time-image',
    }),
    deviates({
      id: 'latency-found',
      group: 'arrival',
      of: 'latencyFoundMs',
      limit: 'delayMs',
      only: 'for',
      heard: 'sharedSound',
      yes: 'Of what was measured, {latencyFoundMs} follows from no distance and no entry: the center, or where it is early the mains, take that for their own processing.',
      no: 'What was measured follows from distances and entries; no latency is left to be entered.',
      because:
        'Tape and entries see no processing, a recording hears it. Where the two differ at one seat, they differ by the same time at every seat.',
      source: 'geometry',
    }),
    deviates({
      id: 'latency-left',
      group: 'arrival',
      applies: atLeast('sharedSound', 'sharedPart.noticeable'),
      of: 'latencyLeftMs',
      limit: 'delayMs',
      only: 'for',
      yes: 'No entry makes up for {latencyLeftMs} of what the center takes for its own processing; {limit} is clearly heard.',
      no: 'No more than {latencyLeftMs} is left of what the center takes for its own processing.',
      because:
        'A latency is stated by the maker and as certain as a number can be. Only an entry longer than the taped distance makes up for it.',
      source: 'geometry',
    }),
    deviates({
      id: 'step-too-coarse',
      group: 'arrival',
      of: 'entryStepErrorMs',
      limit: 'delayMs',
      only: 'for',
      heard: 'sharedSound',
      maxDb: 6,
      yes: 'The menu moves in steps that can leave {entryStepErrorMs} between two loudspeakers; {limit} is clearly heard.',
      no: 'The step of the menu leaves at most {entryStepErrorMs} between two loudspeakers.',
      because:
        'Each entry can be off by half a step. Steps of a foot leave as large an error as no entry at all.',
      source: 'geometry',
    }),
    answers({
      id: 'tape-disagrees',
      group: 'arrival',
      // A tape sees no latency, and says nothing where the menu itself moves in larger steps.
      applies: all(is('tapeTells', 'yes'), below('entryStepErrorMs', 'delayMs.severe')),
      when: oneOf('testTape', 'off', 'wrong-unit'),
      tells: { yes: 'telling', no: 'strong' },
      yes: 'Tape and entries disagree about center against mains.',
      no: 'Tape and entries agree about center against mains, within a hand width.',
      because:
        'Only the difference between center and mains counts. Ten centimeters are 0.3 ms, just above what is clearly heard.',
      source: 'geometry',
    }),
    answers({
      id: 'entry-plainly-false',
      group: 'entry',
      // Nobody enters a step more than the tape shows but by mistake, or for a latency; where little is shared it is mended, but not heard.
      applies: all(
        is('tapeTells', 'yes'),
        is('automaticLatency', 'none'),
        oneOf('sharesMuch', 'yes', 'untold'),
      ),
      when: is('entryMistake', 'yes'),
      tells: { yes: 'proof' },
      yes: 'The center is entered at {enteredCenter} and taped at {tapedCenter}: no tape is off by so much.',
      no: 'The center is entered at {enteredCenter} and taped at {tapedCenter}, which is no plain mistake.',
      because:
        'From 70 cm on, entry against tape, it is a mistake that is seen and not inferred; it is mended first.',
      source: 'geometry',
    }),
    deviates({
      id: 'against-the-subwoofer',
      group: 'arrival',
      of: 'entryBassHoleDb',
      limit: 'bassHoleDb',
      only: 'for',
      yes: 'The same error parts center and subwoofer: at their crossover it leaves a hole of {entryBassHoleDb}; {limit} is clearly heard.',
      no: 'At the crossover of center and subwoofer this error leaves no hole that is clearly heard.',
      because:
        'Below the crossover the subwoofer plays the voice of the center, in every film; a center that is out of step with it cancels there.',
      source: 'bass-sum',
    }),
    answers({
      id: 'something-is-shared',
      group: 'audible',
      when: atLeast('sharedSound', 'sharedPart.clear'),
      tells: { yes: 'hint' },
      yes: 'Center and mains play much of the sound together, so a delay error can be heard.',
      no: 'Center and mains play less than half of the sound together.',
      because:
        'Two copies are needed for a comb or for a shift of the image; a voice from one box has one. A film shares its pans, effects and score, music what the upmix leaves in the mains.',
      source: 'shared-part',
    }),
    deviates({
      id: 'little-is-shared',
      group: 'audible',
      // A gross error is heard in the little that a film shares: effects and pans come twice.
      applies: is('delayGross', 'no'),
      of: 'sharedSound',
      limit: 'sharedPart',
      only: 'against',
      maxDb: 12,
      yes: 'What center and mains share is enough to hear an error in it.',
      no: 'Center and mains play little together, so a delay error is hardly heard between them.',
      because: 'The less two loudspeakers share, the larger an error must be before it is heard.',
      source: 'shared-part',
    }),
    answers({
      id: 'wrong-unit',
      group: 'arrival',
      when: WRONG_UNIT,
      tells: { yes: 'proof' },
      yes: 'The entry of the center is {entryRatio} times its true distance, and the center is {delayErrorMs} out of step: it looks like feet in a meter field, or the reverse.',
      no: 'The entry of the center is no slip of the unit.',
      because: 'A foot is 0.305 m: one channel typed in the wrong unit ends up 6 to 20 ms from the others.',
      source: 'geometry',
    }),
    answers({
      id: 'only-center-is-powered',
      group: 'arrival',
      // An automatic run hears the latency and makes up for it.
      applies: is('setBy', 'people'),
      when: is('centerPowered', 'yes'),
      tells: { yes: 'telling' },
      yes: 'Of the three only the center is powered, and its own processing makes it late unless the entries make up for it.',
      no: 'The center is driven like the mains, so no latency of its own parts it from them.',
      because:
        'Digital filters inside a powered loudspeaker take one to ten milliseconds, and neither tape nor data sheet shows them.',
    }),
    // Where the arrival itself is known, the place of the microphone adds nothing.
    heard(
      'measured-elsewhere',
      'arrival',
      { yes: 'telling', no: 'hint' },
      'Arrival times hold for the spot where they were measured: 30 cm to the side are 0.4 ms.',
      { source: 'geometry' },
    ),
    answers({
      id: 'phantom-cures',
      group: 'switching',
      when: is('testPhantom', 'gone'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'With the center set to none the trouble is gone in the middle seat.',
      no: 'With the center set to none the trouble stays in the middle seat, so center against mains is not its cause.',
      because: 'Without a center nothing is left to be early or late against the mains.',
      source: 'comb',
    }),
    answers({
      id: 'middle-suffers-too',
      group: 'where',
      when: oneOf('testSitMiddle', 'same-everywhere', 'worse-in-middle'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'The middle seat suffers as much as the end, or more.',
      no: 'The middle seat is clear, the end is not: wrong entries would be heard in the middle first.',
      because:
        'Entries are made for the middle seat, so an error shows there. Trouble at the ends alone belongs to angles, or to the distance between loudspeakers, not to entries.',
      source: 'comb',
    }),
    // Of the center alone no curve shows it, and most measure the center alone.
    measuredAt('arrival', 'hole', {
      what: 'this delay between center and mains',
      at: 'combHoleHz',
      source: 'comb',
      only: 'for',
    }),
  ],
  // The second also shows a latency, which no tape does.
  telltales: [
    toldTale(
      'films-are-fine',
      'telling',
      'Films leave the voice to the center alone; a difference in time is heard only in what center and mains share, as an upmix of music does.',
    ),
    {
      id: 'wireless-came-last',
      when: is('changedExactly', 'wireless'),
      telling: 'strong',
      yes: 'A wireless link or an extra processor came last.',
      no: 'It was no wireless link or processor that came last.',
      because: 'Digital links take milliseconds that no distance page knows of.',
    },
    {
      id: 'another-receiver',
      when: oneOf('changedExactly', 'receiver', 'reset'),
      telling: 'hint',
      yes: 'Another receiver, an update or a reset came last.',
      no: 'It was neither a receiver nor a reset that came last.',
      because: 'With a new or emptied receiver the distances are those of nobody.',
    },
    toldTale('settings-from-elsewhere', 'telling', 'Distances fit one room only.'),
    {
      id: 'entry-changed-after-the-run',
      when: is('automaticEntry', 'changed'),
      telling: 'telling',
      yes: 'The entry of the center is no more what the automatic setup wrote.',
      no: 'The entry of the center is what the automatic setup wrote.',
      because: 'The automatic setup times what really arrives; a value typed over it knows only the tape.',
    },
  ],
  confirm: [
    {
      ...confirmedBy('testTape', 'off', 'wrong-unit'),
      unless: { centerPowered: ['yes'], mainsPowered: ['yes'] },
    },
    confirmedBy('testPhantom', 'gone'),
  ],
  acts: {
    'equalization-bypassed': 0.1,
    'center-set-to-none': 0.8,
    'center-unplugged': 0.7,
    'other-listening-mode': 0.3,
  },
  remedies: [
    {
      id: 'correct-unit',
      act: 'entry-corrected',
      title: 'Type the center distance in the unit of the menu',
      now: 'Enter {tapedCenter} for the center instead of {enteredCenter}, in the unit of the menu',
      when: WRONG_UNIT,
      seen: WRONG_UNIT,
      steps: [
        'Photograph the distance page.',
        'See which unit the page is in.',
        'Tape from your ear to the tweeter of the center and type that value in this unit.',
        'Check left and right in the same way.',
      ],
      minutes: 8,
      expect: 'The center moves by {delayErrorMs} into step with the mains.',
      verify: 'Play a voice that center and mains share: it becomes firm and full at the main seat.',
      cautions: ['photograph-menu'],
      changes: [...ENTRIES, 'testPhantom', 'voiceDirection'],
      cures: 0.95,
    },
    {
      id: 'look-for-latency',
      title: 'Look for a power cord or a wireless link before you touch an automatic entry',
      when: noneOf('automaticLatency', 'none'),
      steps: [
        'Leave the entries as the automatic setup wrote them.',
        'See whether center, left or right has a power cord or a wireless link.',
        'If so, an entry longer than the tape is its latency, and right. If none has, run the setup again.',
      ],
      minutes: 2,
      expect:
        'An automatic setup hears when the sound arrives and writes it as distance. Typed back to the tape, a right entry becomes an error.',
      verify: 'With the entries as they are, a clap in a film is heard once.',
      cautions: ['photograph-menu'],
      changes: ['centerPowered', 'mainsPowered'],
      cures: 0.2,
    },
    {
      id: 'lower-latency',
      title: 'Lower the latency of the center at its cause',
      when: BEYOND_THE_MENU,
      steps: [
        'Look in the menu or the manual of the center for a mode with low latency and switch it on.',
        'Connect it by wire instead of a wireless link.',
        'Where a device can delay left, right and all the others, delay them by what is left, and the picture with them.',
        'Tell the new latency here: no tape can show it.',
      ],
      minutes: 10,
      expect:
        'As it is, the center needs an entry of {neededEntryM}, and menus commonly end near 60 ft (18 m): about 45 ms of latency at most can be made up for there.',
      verify: 'A single clap in a film is heard once from center and mains, not twice.',
      cautions: ['photograph-menu'],
      changes: ['centerLatency', 'delayLeft', 'delayRight', 'lipSync', 'testPhantom'],
      cures: 0.5,
    },
    {
      id: 'enter-the-longest',
      act: 'entry-corrected',
      title: 'Enter the longest distance that the menu takes for the center',
      when: BEYOND_THE_MENU,
      steps: [
        'Photograph the distance page.',
        'Tape left and right and enter them.',
        'Raise the entry of the center until it stops.',
      ],
      minutes: 8,
      expect:
        'It does not reach: the center needs an entry of {neededEntryM}, and menus commonly end near 60 ft (18 m). Part of the {delayErrorMs} stays.',
      verify: 'A single clap in a film comes closer to being heard once.',
      cautions: ['photograph-menu', 'laser'],
      changes: [...ENTERED, 'arrivalMeasuredMs', 'testTape', 'testPhantom'],
      cures: 0.15,
    },
    {
      id: 'enter-taped-distances',
      act: 'entry-corrected',
      title: 'Tape all three distances and enter them',
      now: 'Enter {tapedCenter} for the center instead of {enteredCenter}, and left and right by tape as well',
      when: all(
        atMost('neededEntryM', 'menuEntryM'),
        is('automaticLatency', 'none'),
        above('delayErrorMs', { other: 'entryStepErrorMs' }),
      ),
      // Gross, or an entry that the tape shows to be false by more than the menu moves in.
      seen: all(
        any(
          atLeast('delayErrorMs', 'grossDelayMs'),
          all(
            atLeast('entryAgainstTapeMs', 'delayMs.severe'),
            above('entryAgainstTapeMs', { other: 'entryStepErrorMs' }),
            is('tapeTells', 'yes'),
          ),
        ),
        is('unitSlip', 'none'),
        is('automaticLatency', 'none'),
      ),
      steps: [
        'Photograph the distance page.',
        'Sit in the main seat and measure from your ear to the tweeter of left, center and right.',
        'Enter all three. Only their differences matter, so measure all three the same way.',
        'With a powered center add its latency as distance: 1 ms is 13.5 in (34 cm). With powered mains add theirs to left and right.',
        'With a subwoofer timed to the mains nothing else needs to move; one that was timed to the center needs its timing once more.',
        'If the menu counts in whole feet, round so that the differences come out best.',
      ],
      minutes: 12,
      expect:
        'The error at the main seat is now {delayErrorMs}. At best the step of the entries leaves nothing, at worst {entryStepErrorMs}. Seats off the middle still hear a comb in what is shared; no entry can remove that.',
      verify:
        'Switch the upmix on and off with a singer in the middle: at the main seat the voice stays in its place and keeps its body.',
      cautions: ['photograph-menu', 'laser'],
      changes: [...ENTERED, 'arrivalMeasuredMs', 'testTape', 'testPhantom', 'testPolarity', 'voiceDirection'],
      cures: 0.9,
    },
    {
      id: 'run-setup-again',
      act: 'correction-run-again',
      title: 'Run the automatic setup again, first position at the main seat',
      steps: [
        'Photograph every page of the present settings.',
        'Put the microphone on a stand at ear height in the main seat, away from the seat back.',
        'Run the setup in a quiet room.',
        'Compare its distances with a tape: center against left and right.',
      ],
      minutes: 25,
      expect:
        'Distances of loudspeakers without their own processing come out within a few centimeters. A powered center may show a longer distance than the tape: that is its latency, leave it.',
      verify: 'The differences between the new entries match the tape, latency aside.',
      cautions: ['photograph-menu', 'test-noise'],
      changes: [
        'alignmentBy',
        'calibrationSpot',
        ...ENTERED,
        'arrivalMeasuredMs',
        'centerTrim',
        'measuredCenterLevel',
        'measuredLeftLevel',
        'measuredRightLevel',
        'testTape',
        'equalization',
      ],
      cures: 0.8,
    },
    {
      id: 'empty-the-mains',
      title: 'Where the error cannot be set right: share less of the voice',
      when: is('centerSpread', 'on'),
      steps: [
        'Close the center spread, so that the voice plays from the center alone.',
        'Listen at the main seat and at the end seat.',
      ],
      minutes: 3,
      expect:
        'Nothing is left to comb at any seat. The price is a narrower stage for two-channel music: up to a third of its width.',
      verify: 'The voice is full at every seat; decide whether the narrower stage is worth it.',
      cautions: [],
      changes: ['centerSpread', 'centerSpreadAmount', 'upmixCommonPart', 'testUnplugged'],
      cures: 0.6,
    },
  ],
});
