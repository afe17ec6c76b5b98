/** The room of an audit as places that can be moved and settings that can be turned, with what each seat hears. */
import { display16x9 } from '../acoustics/practice.js';
import { type Reader, seatsIn } from '../compute/reader.js';
import { confidenceText } from '../explain/confidence.js';
import { assumedNotes, knownIn } from '../explain/plots/known.js';
import { reportSeats, seatsAssumed } from '../explain/report-open.js';
import { seatTable } from '../explain/seat-table.js';
import { capital, factText } from '../explain/words.js';
import { type FactBook, told } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import type { Audit } from '../reasoning/audit.js';
import { makesSense } from '../reasoning/hypotheses.js';
import { headAt, points } from '../rules/derived/places.js';
import type { RoomKnob, RoomView } from './protocol.js';

/** Settings that can be turned, with the steps of a menu where the case tells none; lengths in meters. */
const KNOBS: readonly { readonly fact: FactId; readonly step: number }[] = [
  { fact: 'enteredCenter', step: 0.03 },
  { fact: 'delayCenter', step: 0.1 },
  { fact: 'centerTrim', step: 0.5 },
  { fact: 'centerTilt', step: 1 },
  { fact: 'centerSpreadAmount', step: 0.1 },
  { fact: 'ambienceSize', step: 1 },
  { fact: 'shelfSetback', step: 0.01 },
  { fact: 'bayRecess', step: 0.01 },
  { fact: 'centerBassCrossover', step: 10 },
  { fact: 'wallDistance', step: 0.05 },
];

const scene = (r: Reader<FactId>) => ({
  places: r.from(points),
  heads: seatsIn(r).map((seat) => ({ ...headAt(r, seat), name: seat.name, main: seat.main })),
});

export function roomView(audit: Audit): RoomView {
  const { book, ranking } = audit;
  const known = knownIn(book)(scene);
  if (known === undefined) throw new RangeError('places have defaults, so they are always known');
  const { places, heads } = known.value;
  const [left, right] = [places.left, places.right];
  const [centerX = 0, centerY = 0, centerZ = 0] = places.center;
  const leader = ranking.causes.find(({ cause }) => cause === ranking.leader);
  const cause = audit.causes.find(({ id }) => id === ranking.leader);
  const diagonalM = told(book, 'displayDiagonal');
  const middleM = told(book, 'displayMiddleHeight');
  const display = typeof diagonalM === 'number' ? display16x9({ diagonalM }) : undefined;
  return {
    seats: heads.map(({ name, main, xM, yM, earHeightM }) => ({ name, main, xM, yM, earHeightM })),
    baseM: (right[0] ?? 0) - (left[0] ?? 0),
    mainsHeightM: left[2] ?? 0,
    ...(told(book, 'centerCount') === 'none'
      ? {}
      : { center: { xM: centerX, behindM: -centerY, heightM: centerZ } }),
    ...(display === undefined
      ? {}
      : {
          picture: {
            widthM: display.widthM,
            heightM: display.heightM,
            ...(typeof middleM === 'number' ? { middleM } : {}),
          },
        }),
    table: seatTable({ seats: reportSeats(audit), seatsAssumed: seatsAssumed(audit) }),
    knobs: knobsOf(book),
    assumed: assumedNotes(book.units, known)[0] ?? '',
    leader: {
      id: ranking.leader,
      title: capital(cause?.title ?? ranking.leader),
      confidence: confidenceText(leader?.probability ?? 0, leader?.verdict),
    },
  };
}

/** Only what this system has; a setting nobody told stands at what is usual and says so. */
function knobsOf(book: FactBook): RoomKnob[] {
  return KNOBS.flatMap(({ fact, step }): RoomKnob[] => {
    const spec = factSpec(fact);
    if (spec.kind !== 'number' || !makesSense(book, fact)) return [];
    const answer = told(book, fact);
    const value = typeof answer === 'number' ? answer : spec.assume?.value;
    if (value === undefined) return [];
    const [from, to] = spec.plausible;
    const ownStep = fact === 'enteredCenter' ? told(book, 'entryStep') : undefined;
    return [
      {
        fact,
        label: spec.label,
        value,
        text: factText(fact, value, book.units),
        from: Math.min(from, value),
        to: Math.max(to, value),
        step: typeof ownStep === 'number' ? ownStep : step,
        assumed: typeof answer !== 'number',
      },
    ];
  });
}
