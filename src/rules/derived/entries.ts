/** What the processor was told about distances and delays. */
import type { Triple } from '../../acoustics/arrival.js';
import type { Reader } from '../../compute/reader.js';

const DISTANCES = ['enteredLeft', 'enteredCenter', 'enteredRight'] as const;
const DELAYS = ['delayLeft', 'delayCenter', 'delayRight'] as const;
/** What the menu shows for the three, as distances or as delays. */
export const ENTERED = [...DISTANCES, ...DELAYS] as const;
export const ENTRY_FACTS = [
  'alignmentBy',
  'entryKind',
  ...ENTERED,
  'centerPowered',
  'centerLatency',
  'mainsPowered',
  'mainsLatency',
] as const;
type EntriesFact = (typeof ENTRY_FACTS)[number];

const EQUAL: Triple<number> = { left: 0, center: 0, right: 0 };

type Known = Triple<number | undefined>;
const NOTHING: Known = { left: undefined, center: undefined, right: undefined };

/** Whose entries matter. */
type Channels = 'all' | 'mains';

export interface Entries {
  readonly entered?: Triple<number>;
  readonly delaysMs: Triple<number>;
}

/** What the processor was told; nobody telling it anything is the same as telling it equal distances. */
function entriesFor(r: Reader<EntriesFact>, channels: Channels): Entries {
  const delays = three(r, DELAYS);
  const distances = three(r, DISTANCES);
  const told = (values: Known) => Object.values(values).some((v) => v !== undefined);
  if (told(delays)) return { delaysMs: complete(r, delays, 'delay', channels) };
  if (told(distances)) return { entered: complete(r, distances, 'entered', channels), delaysMs: EQUAL };
  if (r.toldChoice('alignmentBy') === 'nobody') return { delaysMs: EQUAL };
  const kind = r.choice('entryKind') === 'delays' ? 'delay' : 'entered';
  return r.stop(...missingOf(NOTHING, kind, channels));
}

export const entries = (r: Reader<EntriesFact>): Entries => entriesFor(r, 'all');
export const mainsEntries = (r: Reader<EntriesFact>): Entries => entriesFor(r, 'mains');

/** As equal entries where not all three were told: for those who know the sum of entries and latencies anyway. */
export const entriesOrEqual = (r: Reader<EntriesFact>): Entries =>
  [DELAYS, DISTANCES].some((ids) => ids.every((id) => r.toldNumber(id) !== undefined))
    ? entriesFor(r, 'all')
    : { delaysMs: EQUAL };

type EntryFact = (typeof ENTERED)[number];

function three(
  r: Reader<EntryFact>,
  [left, center, right]: readonly [EntryFact, EntryFact, EntryFact],
): Known {
  return { left: r.toldNumber(left), center: r.toldNumber(center), right: r.toldNumber(right) };
}

function missingOf(known: Known, kind: 'delay' | 'entered', channels: Channels): EntryFact[] {
  const missing: EntryFact[] = [];
  if (known.center === undefined && channels === 'all') missing.push(`${kind}Center`);
  if (known.left === undefined) missing.push(`${kind}Left`);
  if (known.right === undefined) missing.push(`${kind}Right`);
  return missing;
}

/** All three, or the missing ones are named. For left against right alone, left stands for the center. */
function complete(
  r: Reader<EntryFact>,
  known: Known,
  kind: 'delay' | 'entered',
  channels: Channels,
): Triple<number> {
  const { left, right, center = channels === 'mains' ? left : undefined } = known;
  if (left !== undefined && center !== undefined && right !== undefined) return { left, center, right };
  return r.stop(...missingOf(known, kind, channels));
}
