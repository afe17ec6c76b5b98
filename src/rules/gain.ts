/**
 * Whether a remedy suits this very system: its condition, and what it claims to make smaller computed again with the
 * facts as they would stand after it. What would not get better by it is not offered.
 */
import { withAnswer } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { Cause, Remedy, Setting } from './cause.js';
import { viewOf } from './derived/view.js';
import { verdictOf } from './plain.js';
import type { Truth } from './verdict.js';
import type { View } from './view.js';

interface Offer {
  readonly truth: Truth;
  /** The value of the remedy's gain after it, where it can be computed. */
  readonly after?: number;
}

/** Part of a value by which it must fall: a fifth weighs some two decibans, which is what a listener can tell. Judgement. */
const LEAST_GAIN = 0.2;

const known = new WeakMap<View, Map<Remedy, Offer>>();

/** Settled no where it does not suit or does not help here; unknown where that cannot be told yet. */
export function offerOf(remedy: Remedy, view: View): Offer {
  const offers = known.get(view) ?? new Map<Remedy, Offer>();
  known.set(view, offers);
  let offer = offers.get(remedy);
  if (offer === undefined) {
    offer = computed(remedy, view);
    offers.set(remedy, offer);
  }
  return offer;
}

/** Remedies of a cause that suit the system or may, in the order of its file. */
export const offered = (cause: Cause, view: View): Remedy[] =>
  cause.remedies.filter((remedy) => offerOf(remedy, view).truth !== 'no');

function computed(remedy: Remedy, view: View): Offer {
  const suits = remedy.when ? verdictOf(remedy.when, view).truth : 'yes';
  if (suits === 'no' || !remedy.gain) return { truth: suits };
  const gain = gained(remedy.gain, view);
  return gain.truth === 'yes' ? { ...gain, truth: suits } : gain;
}

function gained({ of, to }: NonNullable<Remedy['gain']>, view: View): Offer {
  const settings = (Object.entries(to) as [FactId, Setting][]).map(
    ([id, setting]) => [id, settled(id, setting, view)] as const,
  );
  if (settings.every(([id, value]) => value !== undefined && view.read(id).value === value))
    return { truth: 'no' };
  const before = view.read(of);
  if (typeof before.value !== 'number') return { truth: 'unknown' };
  if (before.value <= 0) return { truth: 'no' };
  let { book } = view;
  const changed: FactId[] = [];
  for (const [id, value] of settings) {
    if (value === undefined) return { truth: 'unknown' };
    book = withAnswer(book, id, { value, how: 'measured' });
    changed.push(id);
  }
  // Seats listed one by one, say, do not move with the distance of the row: then nothing can be told.
  if (!changed.some((id) => before.facts.includes(id))) return { truth: 'unknown' };
  const after = viewOf(book, { view, changed }).read(of).value;
  if (typeof after !== 'number') return { truth: 'unknown' };
  return { truth: after <= (1 - LEAST_GAIN) * before.value ? 'yes' : 'no', after };
}

function settled(id: FactId, setting: Setting, view: View): number | string | undefined {
  if (typeof setting !== 'object') return setting;
  if ('like' in setting) return view.read(setting.like).value;
  const now = view.read(id).value;
  if (typeof now !== 'number') return undefined;
  return 'times' in setting ? now * setting.times : now + setting.by;
}
