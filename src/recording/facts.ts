/** What a trusted measurement says in facts of a case. */
import { type FactBook, told, withAnswer } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import { seatsOf } from '../facts/seats.js';
import type { Measurement } from './measurement.js';

/** A stereo recording holds both channels in the center: an upmix that keeps the power plays it so much louder, dB. */
const BOTH_CHANNELS_DB = 10 * Math.log10(2);

interface MeasuredFact {
  readonly id: FactId;
  readonly value: number | string;
}

/** Facts that a recording can tell, by id, as they are written into a case; in the order of the catalog. */
function measuredFacts(m: Measurement, main: boolean): readonly MeasuredFact[] {
  const facts: MeasuredFact[] = [];
  const put = (id: FactId, value: number | string | null): void => {
    if (value === null) return;
    facts.push({ id, value: typeof value === 'number' ? rounded(value) : value });
  };
  const level = m.levelDb.centerMinusMains;
  const fair = level === null ? null : level - (m.signal === 'stereo' ? BOTH_CHANNELS_DB : 0);
  if (!main) {
    put('centerAgainstMainsSideDb', fair);
    return facts;
  }
  put('arrivalMeasuredMs', meanDelay(m));
  put('centerAgainstMainsDb', fair);
  put('polarityMeasured', polarityChoice(m));
  put('reflectionMeasuredMs', m.reflection.delayMs);
  put('reflectionMeasuredDb', m.reflection.levelDb);
  put('clarityMeasuredDb', m.clarity.c50Db);
  put('distortionCenter', m.distortionPercent.center);
  put('distortionMains', largest(m.distortionPercent.left, m.distortionPercent.right));
  const tone = worstBand(m);
  put('toneMeasuredDb', tone?.db ?? null);
  put('toneMeasuredHz', tone?.hz ?? null);
  put('upmixCommonPart', m.middleFrom === null ? null : COMMON_PART[m.middleFrom]);
  return facts;
}

/** Bands that voices and the ear's judgment of tone rest on, Hz; with the edge bands of 200 Hz and 8 kHz. */
const JUDGED_HZ = { from: 190, to: 8200 } as const;

function worstBand({
  toneDb: { hz, centerMinusMains },
}: Measurement): { hz: number; db: number } | undefined {
  let worst: { hz: number; db: number } | undefined;
  for (const [i, band] of hz.entries()) {
    const db = centerMinusMains[i] ?? null;
    if (db === null || band < JUDGED_HZ.from || band > JUDGED_HZ.to) continue;
    if (worst === undefined || Math.abs(db) > Math.abs(worst.db)) worst = { hz: Math.round(band), db };
  }
  return worst;
}

const COMMON_PART = { center: 'takes-out', all: 'shares', mains: 'leaves' } as const;

/** Thousandths: what lies beyond was not measured. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000;

function meanDelay({ delayMs: { centerMinusLeft, centerMinusRight } }: Measurement): number | null {
  return centerMinusLeft === null || centerMinusRight === null
    ? null
    : (centerMinusLeft + centerMinusRight) / 2;
}

const largest = (a: number | null, b: number | null): number | null =>
  a === null ? b : b === null ? a : Math.max(a, b);

function polarityChoice({ polarity: { left, center, right, undecided } }: Measurement): string | null {
  if (left === null || center === null || right === null || undecided.length > 0) return null;
  if (left === -1) return 'left-inverted';
  if (center === -1) return 'center-inverted';
  return right === -1 ? 'right-inverted' : 'alike';
}

interface TakenIn {
  readonly book: FactBook;
  readonly facts: readonly MeasuredFact[];
  readonly clashes: ReturnType<typeof contradicted>;
}

/**
 * A book with what one recording tells: the facts as measured, and a note with their source.
 * @param seat its name; null where the recording was made at the main seat or nobody said
 * @param day as in 2031-05-17
 */
export function withMeasurement(
  book: FactBook,
  {
    file,
    seat,
    measurement,
  }: { readonly file: string; readonly seat: string | null; readonly measurement: Measurement },
  day: string,
): TakenIn {
  const main = seat === null || (seatsOf(book).seats.find((each) => each.name === seat)?.main ?? true);
  const facts = measuredFacts(measurement, main);
  if (facts.length === 0) return { book, facts, clashes: [] };
  const clashes = contradicted(book, facts);
  const at = seat === null ? '' : ` at “${seat}”`;
  const note = `Measured on ${day} from ${file}${at}: ${facts.map(({ id }) => id).join(', ')}.`;
  const answered = facts.reduce(
    (all, { id, value }) => withAnswer(all, id, { value, how: 'measured' }),
    book,
  );
  return { book: { ...answered, notes: [...answered.notes, note] }, facts, clashes };
}

/** Facts that the case told otherwise: what was told, and what the recording says. */
function contradicted(
  book: FactBook,
  facts: readonly MeasuredFact[],
): readonly { readonly id: FactId; readonly told: number | string; readonly measured: number | string }[] {
  return facts.flatMap(({ id, value: measured }) => {
    const before = told(book, id);
    if (before === undefined) return [];
    const same =
      typeof before === 'number' && typeof measured === 'number'
        ? Math.abs(before - measured) <= (AGREE[id] ?? DEFAULT_AGREE)
        : before === measured;
    return same ? [] : [{ id, told: before, measured }];
  });
}

/** Two measurements agree within, in the unit of the fact. */
const DEFAULT_AGREE = 0.5;
const AGREE: Readonly<Record<string, number>> = {
  arrivalMeasuredMs: 0.2,
  centerAgainstMainsDb: 1.5,
  centerAgainstMainsSideDb: 1.5,
  clarityMeasuredDb: 1.1,
  reflectionMeasuredDb: 2,
  reflectionMeasuredMs: 0.3,
  distortionCenter: 1,
  distortionMains: 1,
  toneMeasuredDb: 2.5,
  // Which of two bands that differ alike is the worst is chance: only its size can contradict.
  toneMeasuredHz: Number.POSITIVE_INFINITY,
};
