/** What is open: unknown facts with how to find out, assumptions with what rests on them, the seats table. */

import { type FactId, factSpec } from '../facts/catalog.js';
import { seatsOf } from '../facts/seats.js';
import { plainLine } from '../lib/sanitize.js';
import { largestFirst } from '../lib/ties.js';
import type { Audit } from '../reasoning/audit.js';
import { couldMakeSense, isTest } from '../reasoning/hypotheses.js';
import { tellsDb } from '../reasoning/worth.js';
import type { Cause } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import { viewOf } from '../rules/derived/view.js';
import type {
  ReportAside,
  ReportAssumed,
  ReportCause,
  ReportEvidence,
  ReportSeat,
  ReportSince,
  ReportUnknown,
  SeatsAssumed,
} from './report-types.js';
import { stepCautions } from './step-cautions.js';
import { answerText, factText, gateText, listText, named, sentence } from './words.js';

/** A cause below this stated probability asks for nothing more to be found out (judgement: one in twenty). */
const WORTH_SETTLING_FROM = 0.05;
/** At most so many causes are named where an assumption bears on more. */
const MOST_NAMED = 3;

/** What was asked and not known, and what would settle open rules of causes still in question, most telling first. */
export function reportUnknown(audit: Audit, causes: readonly ReportCause[]): ReportUnknown[] {
  const { book } = audit;
  const probability = new Map(causes.map((cause) => [cause.id, cause.probability]));
  const telling = tellingOf(audit, causes);
  /** The causes that an answer settles, those first of which it tells most. */
  const settles = (id: FactId): CauseId[] =>
    [...(telling.get(id) ?? [])].sort(([, a], [, b]) => largestFirst(a, b)).map(([cause]) => cause);
  const worth = (id: FactId): number => [...(telling.get(id)?.values() ?? [])].reduce((a, b) => a + b, 0);
  const asked = [...book.answers].filter(([, answer]) => answer.how === 'unknown').map(([id]) => id);
  const notAsked = [...telling.keys()].filter(
    (id) =>
      !book.answers.has(id) &&
      couldMakeSense(book, id) &&
      settles(id).some((cause) => (probability.get(cause) ?? 0) >= WORTH_SETTLING_FROM),
  );
  return [...new Set([...asked, ...notAsked])]
    .sort((a, b) => largestFirst(worth(a), worth(b)))
    .map((id): ReportUnknown => {
      const spec = factSpec(id);
      return {
        fact: id,
        howToFindOut: spec.findOut.join(' '),
        settles: settles(id),
        label: spec.label,
        kind: isTest(id) ? 'test' : 'question',
        ask: spec.ask,
        minutes: spec.minutes,
        steps: spec.findOut,
        cautions: stepCautions(id),
        asked: book.answers.has(id),
      };
    });
}

/** What an open answer tells of each cause, decibans by the most telling rule that waits for it, times its probability. */
function tellingOf(audit: Audit, causes: readonly ReportCause[]): Map<FactId, Map<CauseId, number>> {
  const definitions = new Map<CauseId, Cause>(audit.causes.map((cause) => [cause.id, cause]));
  const telling = new Map<FactId, Map<CauseId, number>>();
  for (const { id: cause, probability, verdict } of causes) {
    if (verdict === 'not-applicable') continue;
    (audit.byCause.get(cause) ?? []).forEach(({ open }, place) => {
      const rule = definitions.get(cause)?.rules[place];
      if (!rule) return;
      const tells = probability * tellsDb(rule, open);
      for (const id of open) {
        const each = telling.get(id) ?? new Map<CauseId, number>();
        telling.set(id, each.set(cause, Math.max(each.get(cause) ?? 0, tells)));
      }
    });
  }
  return telling;
}

/** Defaults that went into a weight or into the seats, those that bear on the most probable causes first. */
export function reportAssumed(audit: Audit, causes: readonly ReportCause[]): ReportAssumed[] {
  const uses = new Map<FactId, string[]>();
  for (const cause of causes) {
    for (const item of audit.byCause.get(cause.id) ?? []) {
      if (item.decibans === 0) continue;
      for (const id of item.assumed) {
        const list = uses.get(id) ?? [];
        if (!list.includes(cause.title)) uses.set(id, [...list, cause.title]);
      }
    }
  }
  for (const id of seatsOf(audit.book).assumed) if (!uses.has(id)) uses.set(id, []);
  return [...uses].flatMap(([id, titles]): ReportAssumed[] => {
    const spec = factSpec(id);
    const assume =
      'assume' in spec && spec.assume
        ? spec.assume
        : { value: audit.view.assumedValue(id), note: 'usual here, going by other answers' };
    if (assume.value === undefined) return [];
    return [
      {
        fact: id,
        value: factText(id, assume.value, audit.book.units),
        effect: effectText(titles),
        label: spec.label,
        note: assume.note,
      },
    ];
  });
}

function effectText(titles: readonly string[]): string {
  if (titles.length === 0) return 'It places the seats.';
  const shown = titles.slice(0, MOST_NAMED).map(named);
  const rest = titles.length - shown.length;
  const all = rest > 0 ? [...shown, rest === 1 ? 'one other' : `${rest} others`] : shown;
  return `It bears on ${listText(all)}.`;
}

/** Finite, and never a negative zero, which JSON cannot say. */
const numberOrNull = (value: number | undefined): number | null =>
  value !== undefined && Number.isFinite(value) ? value + 0 : null;

/** What each seat hears. Dips are zero or negative. */
export function reportSeats({ view }: Pick<Audit, 'view'>): ReportSeat[] {
  return view.seatResults().map((result): ReportSeat => {
    const dipDb = numberOrNull(result.dipDb);
    return {
      name: plainLine(result.seat.name),
      azimuthDeg: numberOrNull(result.azimuthDeg),
      dipDb: dipDb === null ? null : 0 - Math.abs(dipDb),
      dipHz: numberOrNull(result.dipHz),
      speechLossDb: numberOrNull(result.speechLossDb),
      centerMinusMainsMs: numberOrNull(result.centerMinusMainsMs),
      main: result.seat.main,
      row: result.seat.row,
      xM: result.seat.xM + 0,
      yM: result.seat.yM + 0,
      distanceM: numberOrNull(result.distanceM),
      phantomPullDeg: numberOrNull(result.phantomPullDeg),
    };
  });
}

/** What is different today, where changes that stand made answers those of before. */
export function reportSince(audit: Audit): ReportSince | null {
  const { book } = audit;
  const facts = [...book.before.keys()].flatMap((fact) => {
    const heard = answerText({ ...book, answers: book.before }, fact) ?? 'not known';
    const today = answerText(book, fact) ?? 'not told';
    return heard === today ? [] : [{ fact, label: factSpec(fact).label, heard, today }];
  });
  if (facts.length === 0) return null;
  const view = viewOf(book);
  const seats = reportSeats({ view });
  const isSame = JSON.stringify(seats) === JSON.stringify(reportSeats(audit));
  return { facts, seats: isSame ? [] : seats, seatsAssumed: seatsAssumed({ view, book }) };
}

/** What the numbers of the seats rest on that nobody told, as labels. */
export function seatsAssumed({ view, book }: Pick<Audit, 'view' | 'book'>): SeatsAssumed {
  const labels = (ids: readonly FactId[]): string[] => ids.map((id) => factSpec(id).label);
  return {
    azimuthDeg: labels(seatsOf(book).assumed),
    dipDb: labels(view.read('layoutDipDb').assumed),
    speechLossDb: labels(view.read('layoutSpeechLossDb').assumed),
    centerMinusMainsMs: labels(view.read('delayErrorMs').assumed),
  };
}

/** Causes told in one line: checked and fine, not applicable, not to be judged. */
export function asides(audit: Audit, causes: readonly ReportCause[]) {
  const of = (wanted: (cause: ReportCause) => boolean, text: (cause: ReportCause) => string): ReportAside[] =>
    causes.filter(wanted).map((cause) => ({ cause: cause.id, title: cause.title, text: text(cause) }));
  const definitions = new Map<CauseId, Cause>(audit.causes.map((cause) => [cause.id, cause]));
  const low = (cause: ReportCause): boolean =>
    cause.place === 'aside' && (cause.verdict === 'unlikely' || cause.verdict === 'ruled-out');
  return {
    fine: of(
      (cause) => low(cause) && toldAgainst(cause) !== undefined,
      (cause) => toldAgainst(cause)?.text ?? '',
    ),
    notApplicable: of(
      (cause) => cause.verdict === 'not-applicable',
      (cause) => {
        const gate = definitions.get(cause.id)?.applies;
        const leaf = gate ? gateText(gate, audit.view, audit.book.units) : undefined;
        return leaf ? sentence(leaf) : 'It does not arise in this system.';
      },
    ),
    cannotTell: of(
      (cause) =>
        (cause.verdict === 'cannot-tell' && cause.place === 'aside') ||
        (low(cause) && toldAgainst(cause) === undefined),
      (cause) => notJudgedText(cause),
    ),
  };
}

/** What speaks against a cause and rests on more than what is usual. */
const toldAgainst = ({ evidence }: ReportCause): ReportEvidence | undefined =>
  evidence.find(
    ({ speaks, facts, assumedLabels }) => speaks === 'against' && facts.length > assumedLabels.length,
  );

function notJudgedText({ open, verdict }: ReportCause): string {
  if (open.length === 0)
    return verdict === 'cannot-tell'
      ? 'What would settle it cannot be computed from what was told.'
      : 'Nothing that was told speaks for or against it.';
  const labels = open.slice(0, MOST_NAMED).map((id) => factSpec(id).label);
  return `It would take: ${labels.join('; ')}.`;
}
