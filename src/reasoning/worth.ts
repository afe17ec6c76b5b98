/** What an open question or home test is worth: expected minutes saved, and minutes it costs. */

import { type FactId, factSpec } from '../facts/catalog.js';
import { largestFirst } from '../lib/ties.js';
import type { Rule } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import { reported } from '../rules/weight.js';
import type { Audit } from './audit.js';
import { canBeAsked, isTest, makesSense } from './hypotheses.js';
import { knownChance } from './knows.js';
import { priceMinutes, shownMinutes } from './minutes.js';
import { answerChances, baseRates, type Hypothesis, hypothesesOf, movablePlaces } from './predict.js';
import { confirmMinutes, faultProbabilities, minutesToFind, UNTESTED_VERDICT_MINUTES } from './suspects.js';
import { outlook } from './troubleshoot.js';

export interface Candidate {
  readonly fact: FactId;
  readonly kind: 'question' | 'test';
  /** Minutes it takes, as they are written everywhere. */
  readonly minutes: number;
  /** Minutes that an answer saves on average on the way to the cause, its own left out. */
  readonly savesMinutes: number;
  /** The same times the chance that it can be answered, less what putting it costs; more than 0 where it pays. */
  readonly netMinutes: number;
  /** The causes it can move, most first: decibans at best and at worst for the cause. */
  readonly moves: readonly { readonly cause: CauseId; readonly upDb: number; readonly downDb: number }[];
  /** Other open questions that must be answered too before this one tells anything; empty if it speaks alone. */
  readonly together: readonly FactId[];
}

/** Bundles of more open questions than this are too far from telling anything. */
const MOST_TOGETHER = 6;
/** A computed deviation that is clearly there or clearly not: twice or half its threshold, in decibans. */
const TYPICAL_DEVIATION_DB = 6;
/** Smaller movements, decibans, are not worth naming. */
const NAMED_FROM_DB = 0.5;

/** The state of belief that all candidates of one step are weighed against. */
interface Outset {
  readonly audit: Audit;
  readonly p: readonly number[];
  readonly confirm: readonly number[];
  readonly now: number;
  /** Minutes saved by knowing which of the causes at these places is the one, or that none of them is. */
  readonly mostSaved: (places: readonly number[]) => number;
}

function outsetOf(audit: Audit): Outset {
  const p = faultProbabilities(audit);
  const confirm = audit.causes.map((cause) => confirmMinutes(audit.heard, cause));
  const now = minutesToFind(p, confirm);
  const known = new Map<string, number>();
  const mostSaved = (places: readonly number[]): number => {
    const key = places.join(' ');
    const saved = known.get(key) ?? now - minutesKnowing(new Set(places), p, confirm);
    known.set(key, saved);
    return saved;
  };
  return { audit, p, confirm, now, mostSaved };
}

function minutesKnowing(
  places: ReadonlySet<number>,
  p: readonly number[],
  confirm: readonly number[],
): number {
  const rest = p.map((q, i) => (places.has(i) ? 0 : q));
  const left = rest.reduce((a, b) => a + b, 0);
  const found = confirm.reduce((sum, minutes, i) => (places.has(i) ? sum + (p[i] ?? 0) * minutes : sum), 0);
  return left > 0
    ? found +
        left *
          minutesToFind(
            rest.map((q) => q / left),
            confirm,
          )
    : found;
}

/** The worth of every given open fact, best first; facts that can move nothing, or can never pay, are left out. */
export function candidatesOf(audit: Audit, facts: readonly FactId[]): Candidate[] {
  const { outset, bundles, found } = weighingOf(audit);
  const weighed = (fact: FactId): Candidate | undefined => {
    if (!found.has(fact)) found.set(fact, candidateOf(outset, fact, bundles.get(fact)));
    return found.get(fact);
  };
  return facts
    .flatMap((fact) => weighed(fact) ?? [])
    .sort((a, b) => largestFirst(a.netMinutes, b.netMinutes));
}

/** What has been weighed of an audit: on the way to one question the same facts are asked for more than once. */
interface Weighing {
  readonly outset: Outset;
  readonly bundles: ReadonlyMap<FactId, Share>;
  readonly found: Map<FactId, Candidate | undefined>;
}
const weighings = new WeakMap<Audit, Weighing>();

function weighingOf(audit: Audit): Weighing {
  const known = weighings.get(audit);
  if (known) return known;
  const outset = outsetOf(audit);
  const weighing = { outset, bundles: bundlesOf(outset), found: new Map() };
  weighings.set(audit, weighing);
  return weighing;
}

function candidateOf(outset: Outset, fact: FactId, bundle: Share | undefined): Candidate | undefined {
  const known = knownChance(outset.audit.heard, fact);
  const price = priceMinutes(outset.audit.heard, fact, known);
  // No answer saves more than knowing for certain; cheap, and spares looking into questions that cannot pay.
  if (!bundle && !isTest(fact) && known * outset.mostSaved(movablePlaces(outset.audit, fact)) <= price)
    return undefined;
  const hypotheses = hypothesesOf(outset.audit, fact);
  const moves = movesOf(outset.audit, hypotheses);
  if (moves.length === 0 && !bundle) return undefined;
  const alone = moves.length > 0 ? savedBy(outset, hypotheses, isTest(fact)) : 0;
  const shared = bundle?.savesMinutes ?? 0;
  const isShared = shared * (bundle?.known ?? 0) > alone * known;
  return {
    fact,
    kind: isTest(fact) ? 'test' : 'question',
    minutes: shownMinutes(fact),
    savesMinutes: isShared ? shared : alone,
    netMinutes: Math.max(alone * known, shared * (bundle?.known ?? 0)) - price,
    moves: moves.length > 0 ? moves : (bundle?.moves ?? []),
    together: isShared ? (bundle?.together ?? []) : [],
  };
}

function movesOf(audit: Audit, hypotheses: readonly Hypothesis[]): Candidate['moves'] {
  return audit.causes
    .flatMap(({ id: cause }, i) => {
      let [upDb, downDb] = [0, 0];
      for (const { movesDb } of hypotheses) {
        upDb = Math.max(upDb, movesDb[i] ?? 0);
        downDb = Math.min(downDb, movesDb[i] ?? 0);
      }
      return upDb - downDb >= NAMED_FROM_DB ? [{ cause, upDb, downDb }] : [];
    })
    .sort((a, b) => b.upDb - b.downDb - (a.upDb - a.downDb));
}

function savedBy(
  { audit, p, confirm, now }: Outset,
  hypotheses: readonly Hypothesis[],
  byTest: boolean,
): number {
  const chances = answerChances(hypotheses, baseRates(hypotheses), audit.causes.length);
  const wrong = byTest ? UNTESTED_VERDICT_MINUTES : undefined;
  const worth = (q: readonly number[]): number => -minutesToFind(q, confirm, wrong);
  return Math.max(0, outlook(p, chances, worth, byTest ? undefined : -now).gain);
}

interface Share {
  readonly savesMinutes: number;
  /** Chance that all of them can be answered: that of the hardest. */
  readonly known: number;
  readonly moves: Candidate['moves'];
  readonly together: readonly FactId[];
}

/**
 * Questions that tell something only together (four lengths make one angle). For every rule that is still
 * open the whole set of its missing answers is weighed as one question with the two outcomes of the rule;
 * where the set pays, each of its questions that can be put now gets its part of the gain, by minutes.
 * Parts from different causes add up: one length serves them all.
 */
function bundlesOf(outset: Outset): Map<FactId, Share> {
  const { audit, p } = outset;
  const shares = new Map<FactId, Share>();
  audit.causes.forEach((cause, i) => {
    if ((p[i] ?? 0) <= 0) return;
    const mostSaved = outset.mostSaved([i]);
    const best = new Map<FactId, Share>();
    (audit.byCause.get(cause.id) ?? []).forEach((item, place) => {
      const rule = cause.rules[place];
      const open = item.open.filter((id) => canBeAsked(audit.heard, id));
      if (!rule || item.outcome !== 'unknown' || open.length < item.open.length) return;
      if (open.length < 2 || open.length > MOST_TOGETHER) return;
      const minutes = open.reduce((sum, id) => sum + priceMinutes(audit.heard, id), 0);
      if (mostSaved <= minutes) return;
      const { savesMinutes, upDb, downDb } = bundleWorth(outset, i, rule, open);
      const known = Math.min(...open.map((id) => knownChance(audit.heard, id)));
      if (known * savesMinutes <= minutes) return;
      for (const id of open) {
        if (!makesSense(audit.heard, id)) continue;
        const part = (savesMinutes * priceMinutes(audit.heard, id)) / minutes;
        if (part <= (best.get(id)?.savesMinutes ?? 0)) continue;
        const together = open.filter((other) => other !== id);
        best.set(id, { savesMinutes: part, known, moves: [{ cause: cause.id, upDb, downDb }], together });
      }
    });
    for (const [id, share] of best) {
      const sum = shares.get(id);
      const larger = !sum || share.savesMinutes > sum.savesMinutes ? share : sum;
      shares.set(id, {
        savesMinutes: Math.min(outset.now, (sum?.savesMinutes ?? 0) + share.savesMinutes),
        known: Math.min(sum?.known ?? 1, share.known),
        moves: [...(sum?.moves ?? []), ...share.moves],
        together: larger.together,
      });
    }
  });
  return shares;
}

/** Expected minutes saved when a rule of cause `i` is settled either way. */
function bundleWorth({ p, confirm, now }: Outset, i: number, rule: Rule, open: readonly FactId[]) {
  const { tp, fp } = ratesOf(rule, open);
  const yes = p.map((_, k) => (k === i ? tp : fp));
  const seen = outlook(p, [yes, yes.map((q) => 1 - q)], (q) => -minutesToFind(q, confirm), -now);
  return {
    savesMinutes: Math.max(0, seen.gain),
    upDb: 10 * Math.log10(tp / fp),
    downDb: 10 * Math.log10((1 - tp) / (1 - fp)),
  };
}

/** Decibans that a rule adds once it is settled, whichever way the cause is: the mean of both (Good's expected weight). */
export function tellsDb(rule: Rule, open: readonly FactId[]): number {
  const { tp, fp } = ratesOf(rule, open);
  return 5 * (tp - fp) * (Math.log10(tp / fp) - Math.log10((1 - tp) / (1 - fp)));
}

/** Chances of the outcome yes with and without the cause, as they will be reported. */
function ratesOf(rule: Rule, open: readonly FactId[]): { tp: number; fp: number } {
  const { weigh } = rule;
  if (weigh.kind === 'answer') {
    const how = open.some((id) => factSpec(id).usually === 'recalled') ? 'recalled' : 'read';
    return { tp: reported(weigh.tp, how), fp: reported(weigh.fp, how) };
  }
  const odds = 10 ** (TYPICAL_DEVIATION_DB / 10);
  return { tp: odds / (1 + odds), fp: 1 / (1 + odds) };
}
