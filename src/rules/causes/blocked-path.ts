/**
 * A seat row, a table or an object stands in the line from the center to a seat and shades its treble, or mirrors
 * it from just below the line. The owner hears a dull voice at that seat, often the second row.
 * A single head in front costs next to nothing, for sound goes around it on all sides; a wide edge already costs
 * some 5 dB of treble when it only touches the line. Left out: upholstery that absorbs, sound off walls and
 * ceiling that fills the shadow.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { is, isNot, oneOf } from '../condition.js';
import { measuredAt } from '../measured.js';
import { PLACE } from '../outdated.js';
import { staysInPlace } from '../swap.js';

export const blockedPath = defineCause({
  id: 'blocked-path',
  title: 'Something stands between the center and a seat',
  severity: 'clear',
  priorDb: -6,
  priorBecause:
    'What people see in the way is seldom wide enough, or near enough to the line, to be the trouble.',
  story:
    'Something wide stands between the center and the ears, or just under the line between them: the backs of a row in front, a table, a lid. The treble of the voice does not get around it.',
  notWhen:
    'Wrongly blamed when one head or a vase is in front, which costs half a decibel at most, for open cloth, and when everything in the way is well below the line from the center to the ear.',
  applies: isNot('obstacle', 'none'),
  // Something in the way of a seat: one system in five (judgement).
  appliesIn: 0.2,
  links: {
    dull: 0.5,
    'voice-unclear-everywhere': 0.3,
    'voice-unclear-off-side': 0.15,
    'voice-changes-tone': 0.3,
    'voice-too-quiet': 0.2,
    hollow: 0.15,
    'voice-unclear': 0.3,
    'voice-unclear-back-row': 0.6,
  },
  pictures: ['room-side'],
  block: {
    group: 'shade',
    facts: [
      'obstacle',
      'obstacleHeight',
      'obstacleDistance',
      'obstacleWidth',
      'centerTweeterHeight',
      'earHeight',
      'seatDistance',
    ],
  },
  groups: {
    shade: 'same-quantity',
    'where-heard': 'same-session',
    tone: 'independent',
    'near-by': 'same-mechanism',
    history: 'independent',
    table: 'independent',
    cloth: 'independent',
    swapped: 'independent',
    measured: 'independent',
    dropped: 'independent',
  },
  rules: [
    deviates(
      {
        id: 'speech-in-the-shade',
        group: 'shade',
        says: {
          yes: 'What is in the way costs the worst seat {blockedSpeechLossDb} of speech; {limit} is clear.',
          no: 'What is in the way costs the worst seat {blockedSpeechLossDb} of speech; it takes {limit} to be clear.',
        },
        because:
          'Only what is wider than the first zone around the line shades: at the line it already takes 5 dB, deeper in the shadow much more. Sound goes around a head or a vase, and through open cloth.',
        source: 'barrier',
      },
      'blockedSpeechLossDb',
      'barrierDb',
    ),
    answers(
      {
        id: 'one-place-suffers',
        group: 'where-heard',
        says: {
          yes: 'Whoever sits in a certain place hears it, as with a shadow.',
          no: 'It is not tied to a certain place, as a shadow would be.',
        },
        because: 'A shadow belongs to a place; it moves neither with the person nor with the title.',
        source: 'geometry',
      },
      is('whoHears', 'one-place'),
      { yes: 'telling', no: 'hint' },
    ),
    answers(
      {
        id: 'single-seat-trouble',
        group: 'where-heard',
        says: {
          yes: 'It is heard at one seat or in the back row and nowhere else, as behind an obstacle.',
          no: 'It is not confined to one seat or row.',
        },
        because: 'Only the seats behind the obstacle lose treble. Where all sit behind it, all hear it.',
        source: 'geometry',
      },
      oneOf('troubleSeats', 'one-seat', 'back-row'),
      { yes: 'telling' },
    ),
    answers(
      {
        id: 'duller-noise',
        group: 'tone',
        says: {
          yes: 'Steady noise from the center is duller than from the mains, as in a shadow.',
          no: 'Steady noise from the center is not duller than from the mains, and a shadow takes treble first.',
        },
        because: 'Short waves are shaded first; the lower voice bends around furniture.',
        source: 'barrier',
      },
      is('testNoiseEach', 'duller'),
      { yes: 'telling', no: 'hint' },
    ),
    answers(
      {
        id: 'good-in-front-of-it',
        group: 'near-by',
        says: {
          yes: 'One meter from the center, with nothing in between, the voice is good.',
          no: 'One meter from the center, with nothing in between, the voice is still not right.',
        },
        because:
          'Close up the obstacle is behind the listener or out of the line; what is still wrong there is not a shadow.',
      },
      is('testNearCenter', 'good-near'),
      { yes: 'hint', no: 'telling' },
    ),
    answers(
      {
        id: 'better-when-lifted',
        group: 'near-by',
        says: {
          yes: 'Raised for a moment, the center sounded better.',
          no: 'Raised for a moment, the center sounded as before.',
        },
        because:
          'Raising the box lifts the line to the ears over whatever stands in it; the tone may clear though the place stays.',
      },
      oneOf('testLift', 'improves', 'tone-only'),
      { yes: 'hint', no: 'telling' },
    ),
    answers(
      {
        id: 'new-furniture',
        group: 'history',
        says: {
          yes: 'Furniture, seats or floor changed before it began.',
          no: 'Something else, or nothing, changed before it began.',
        },
        because: 'What stands in the way now may have come with the last change of the room.',
      },
      is('lastChange', 'furniture'),
      { yes: 'telling' },
    ),
    deviates(
      {
        id: 'table-mirrors',
        group: 'table',
        says: {
          yes: 'The table top mirrors the voice from just below the line; the two copies cancel by {tableDipDb} at the main seat, and {limit} is clear.',
          no: 'A table top costs the main seat no more than {tableDipDb}.',
        },
        because:
          'A table top below the line of sight sends a second voice a little late, and at some pitches the two cancel.',
        source: 'shelf-strip',
      },
      'tableDipDb',
      'dipDb',
      { only: 'for', maxDb: 8 },
    ),
    answers(
      {
        id: 'clearer-with-cloth',
        group: 'cloth',
        applies: is('obstacle', 'table'),
        says: {
          yes: 'With something soft laid in front of the center the voice became clearer.',
          no: 'With something soft laid in front of the center the voice did not change.',
        },
        because: 'Thick cloth takes the upper part of what a table mirrors, and nothing else.',
      },
      is('testCoverShelf', 'clearer'),
      { yes: 'telling', no: 'hint' },
    ),
    staysInPlace('swapped'),
    measuredAt('measured', 'hole', { what: 'the table top', at: 'tableHoleHz', source: 'shelf-strip' }),
    measuredAt('dropped', 'drop', { what: 'the obstacle', at: 'shadeDropDb', source: 'barrier' }),
  ],
  telltales: [
    {
      id: 'fine-in-front',
      when: is('fineSeats', 'front-row'),
      telling: 'strong',
      says: 'It is fine in the front row.',
      otherwise: 'The front row is not where it is fine.',
      because: 'Whoever sits in front has nothing in the way.',
    },
    {
      id: 'furniture-in-between',
      when: oneOf('changedExactly', 'furniture-center', 'seats'),
      telling: 'hint',
      says: 'Furniture or seats were changed last.',
      otherwise: 'It was neither furniture nor seats that changed last.',
      because: 'New things between box and ears shade the treble.',
    },
  ],
  confirm: [confirmedBy('testLift', 'improves', 'tone-only'), confirmedBy('testNearCenter', 'good-near')],
  acts: { 'ears-raised': 0.7, 'seat-moved-to-middle': 0.2, 'center-set-to-none': 0.7 },
  remedies: [
    {
      id: 'clear-the-line',
      forbiddenBy: ['furniture-stays'],
      act: 'obstacle-removed',
      title: 'Take what is in the way out of the line',
      when: oneOf('obstacle', 'table', 'object'),
      steps: [
        'Sit in the seat that suffers and look at the center.',
        'Move the table, lid or object until you see the whole face of the box, with a hand of air below the line.',
        'Listen to the same minute again.',
      ],
      minutes: 5,
      cost: 'free',
      expect: 'The {blockedSpeechLossDb} of speech lost at that seat come back.',
      verify: 'Put it back for a moment: the voice dulls again.',
      cautions: ['lifting'],
      changes: [
        'obstacle',
        'obstacleHeight',
        'obstacleDistance',
        'troubleSeats',
        'whoHears',
        'testNoiseEach',
      ],
      cures: 0.85,
    },
    {
      id: 'cover-table',
      act: 'surface-covered',
      title: 'Lay a thick cloth on the table',
      when: is('obstacle', 'table'),
      steps: [
        'Fold a thick blanket over the table top, up to the edge that faces the center.',
        'Listen again.',
      ],
      minutes: 3,
      cost: 'free',
      expect: 'What the table mirrors gets weaker; what it shades stays shaded.',
      verify: 'Take the cloth away and put it back while a voice plays.',
      cautions: [],
      changes: ['testNoiseEach', 'testCoverShelf'],
      cures: 0.3,
    },
    {
      id: 'raise-center',
      forbiddenBy: ['cannot-stay-raised', 'center-stays'],
      act: 'center-raised',
      title: 'Raise the center until the worst seat sees it',
      gain: { of: 'blockedSpeechLossDb', to: { centerTweeterHeight: { by: 0.4 } } },
      steps: [
        'Raise it in steps, or move it above the picture and point it down at the ears.',
        'Check the line from the worst seat; it lacks {sightClearanceM} of clearance where this figure is negative.',
        'Secure the box.',
      ],
      minutes: 45,
      cost: 'low',
      expect:
        'The line clears the obstacle and the {blockedSpeechLossDb} of speech come back; the voice moves up with the box.',
      verify: 'The back seat hears the same voice as the front seat.',
      cautions: ['thin-display', 'lifting', 'heat'],
      changes: [...PLACE, 'obstacle'],
      cures: 0.7,
    },
    {
      id: 'raise-back-row',
      forbiddenBy: ['seats-stay'],
      act: 'ears-raised',
      title: 'Raise the back row',
      when: isNot('seating', 'single-seat'),
      gain: { of: 'blockedSpeechLossDb', to: { rowRiser: { by: 0.4 } } },
      steps: [
        'Build a firm riser under the second row.',
        'Behind a center below the picture it takes about half a meter; with a higher center a third of a meter.',
      ],
      minutes: 480,
      cost: 'high',
      expect: 'The line from a higher center clears the first row; a very low center stays in its shade.',
      verify: 'From the back row the whole face of the center is in view.',
      cautions: ['lifting'],
      changes: ['rowRiser', 'obstacle', 'obstacleHeight', 'troubleSeats', 'whoHears'],
      cures: 0.5,
    },
  ],
});
