/** Distances and units that do not fit together. */
import { LEAST_ENTRY_M, type UnitSlip, unitErrorRatio, unitSlip } from '../../acoustics/arrival.js';
import { DISTANCE_STEPS_M } from '../../acoustics/practice.js';
import { type FactBook, told } from '../book.js';
import type { NumberFactId } from '../catalog.js';
import { formatValue } from '../format.js';
import { type Check, clash, numberOf, toldMainSeat, withNumbers } from './clash.js';

/** Taped and laid-out distance may differ by so much before it is told. Judgement: a pace or a slanted tape. */
const TAPE_SHARE = 0.15;
const TAPE_LEAST_M = 0.3;
/** Entries compared with the tape "agree within 10 cm" in the home test. */
const AGREE_M = 0.1;

/** The unit slip two distances show; none where the second is no distance at all. */
const slipOf = (enteredM: number, realM: number): UnitSlip | null =>
  realM >= LEAST_ENTRY_M ? unitSlip(unitErrorRatio(enteredM, realM)) : null;

const UNIT_NOTES: Readonly<Record<UnitSlip, string>> = {
  'feet-as-meters': 'The one is about three times the other, as when feet are typed where meters are meant.',
  'meters-as-feet': 'The one is about a third of the other, as when meters are typed where feet are meant.',
};

/** The distance an entry is held against: taped, or else straight from seat to loudspeaker line. */
function realDistance(
  book: FactBook,
  entry: NumberFactId,
): { valueM: number; fact?: NumberFactId } | undefined {
  const taped = entry === 'enteredCenter' ? 'tapedCenter' : 'tapedMains';
  const tapedM = numberOf(book, taped);
  if (tapedM !== undefined) return { valueM: tapedM, fact: taped };
  const seat = toldMainSeat(book);
  if (seat === undefined) return undefined;
  const halfBase = entry === 'enteredCenter' ? 0 : (numberOf(book, 'mainsBase') ?? 0) / 2;
  return { valueM: Math.hypot(seat.yM, halfBase), ...quotable(book) };
}

export const wrongUnit: Check = (book) => {
  const entries = ['enteredLeft', 'enteredCenter', 'enteredRight'] as const;
  return entries.flatMap((entry) => {
    const entered = numberOf(book, entry);
    const real = realDistance(book, entry);
    if (entered === undefined || real === undefined) return [];
    const slip = slipOf(entered, real.valueM);
    return slip === null
      ? []
      : [
          clash(
            book,
            `wrong-unit-${entry}`,
            'hard',
            real.fact === undefined ? [entry] : [entry, real.fact],
            UNIT_NOTES[slip],
          ),
        ];
  });
};

/** The told distance, to be quoted, where seats are not listed one by one. */
function quotable(book: FactBook): { fact?: NumberFactId } {
  return told(book, 'seatDistance') === undefined ? {} : { fact: 'seatDistance' };
}

/** Between two entries, where neither is known to be wrong by a true distance: one slip is told once. */
export const mixedUnits: Check = (book) =>
  withNumbers(book, ['enteredCenter', 'enteredLeft'], (center = 0, left = 0) => {
    const pair = ['enteredCenter', 'enteredLeft'] as const;
    const isTold = wrongUnit(book).some(({ facts }) => pair.some((entry) => facts.includes(entry)));
    const slip = slipOf(center, left);
    return slip === null || isTold ? [] : [clash(book, 'mixed-units', 'hard', pair, UNIT_NOTES[slip])];
  });

/** Told 3 cm, a step of 0.1 ft is meant: a menu step within this part of what was told counts as well. */
const MEANT_WITHIN = 0.05;
/** A figure rounded as it is written lies within this part of a step of a multiple. Our own choice. */
const OFF_STEP = 0.2;

/** Entries that their menu cannot show: then they were rounded or converted, or the step is another. */
export const offTheStep: Check = (book) =>
  withNumbers(book, ['entryStep'], (stepM = 1) => {
    const meant = DISTANCE_STEPS_M.filter((step) => Math.abs(step / stepM - 1) < MEANT_WITHIN);
    const isShown = (enteredM: number): boolean =>
      [stepM, ...meant].some((step) => {
        const steps = enteredM / step;
        return Math.abs(steps - Math.round(steps)) < OFF_STEP;
      });
    const off = (['enteredLeft', 'enteredCenter', 'enteredRight'] as const).filter((entry) => {
      const enteredM = numberOf(book, entry);
      return enteredM !== undefined && !isShown(enteredM);
    });
    const note = 'An entry is a multiple of its step: one was rounded, or converted from another unit.';
    return off.length === 0 ? [] : [clash(book, 'off-the-step', 'soft', [...off, 'entryStep'], note)];
  });

export const tapeAgainstLayout: Check = (book) =>
  withNumbers(book, ['tapedCenter'], (tapedM = 0) => {
    const seat = toldMainSeat(book);
    if (seat === undefined) return [];
    const depthM = seat.yM + (numberOf(book, 'centerBehindMains') ?? 0);
    const sideM = seat.xM - (numberOf(book, 'centerSideOffset') ?? 0);
    const earM = seat.earHeightM ?? numberOf(book, 'earHeight');
    const heightM = (numberOf(book, 'centerTweeterHeight') ?? earM ?? 0) - (earM ?? 0);
    const laidOutM = Math.hypot(depthM, sideM, earM === undefined ? 0 : heightM);
    const apartM = Math.abs(tapedM - laidOutM);
    if (apartM < TAPE_LEAST_M || apartM < laidOutM * TAPE_SHARE) return [];
    const way = tapedM < laidOutM ? 'shorter' : 'longer';
    const should = formatValue(laidOutM, 'm', { units: book.units });
    const note = `The tape is ${way} than the ${should} that follows from where seat and center are.`;
    const { fact } = quotable(book);
    const facts = fact === undefined ? (['tapedCenter'] as const) : (['tapedCenter', fact] as const);
    return [clash(book, 'tape-against-layout', 'soft', facts, note)];
  });

export const tapeTest: Check = (book) =>
  withNumbers(
    book,
    ['tapedCenter', 'tapedMains', 'enteredCenter', 'enteredLeft'],
    (tapedC = 0, tapedL = 0, enteredC = 0, enteredL = 0) => {
      const errorM = Math.abs(tapedC - tapedL - (enteredC - enteredL));
      const outcome = told(book, 'testTape');
      const facts = ['testTape', 'tapedCenter', 'tapedMains', 'enteredCenter', 'enteredLeft'] as const;
      const shown = formatValue(errorM, 'm', { units: book.units, written: 'small-length' });
      const note = `By these figures the center differs from the mains by ${shown}.`;
      if (outcome === 'agrees' && errorM > 2 * AGREE_M) {
        return [clash(book, 'tape-test-agrees-figures-not', 'hard', facts, note)];
      }
      return outcome === 'off' && errorM < AGREE_M / 2
        ? [clash(book, 'tape-test-off-figures-agree', 'hard', facts, note)]
        : [];
    },
  );

export const obstacleBeyondSeat: Check = (book) =>
  withNumbers(book, ['obstacleDistance', 'seatDistance'], (obstacle = 0, seat = 0) =>
    obstacle > seat + (numberOf(book, 'centerBehindMains') ?? 0) + (numberOf(book, 'rowSpacing') ?? 0)
      ? [clash(book, 'obstacle-beyond-seat', 'hard', ['obstacleDistance', 'seatDistance'])]
      : [],
  );
