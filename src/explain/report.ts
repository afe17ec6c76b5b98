/** From an audit to the report: plain JSON, the only input of the renderers. */

import { actSpec, isActId, OUTCOMES, type Trial } from '../facts/acts.js';
import type { UnitSystem } from '../facts/book.js';
import { FACT_IDS, type FactId, factSpec } from '../facts/catalog.js';
import { COMPLAINTS, type ComplaintId } from '../facts/complaints.js';
import { contradictions } from '../facts/contradictions.js';
import { plainLine, plainText } from '../lib/sanitize.js';
import type { Audit } from '../reasoning/audit.js';
import { complaintsOf } from '../reasoning/audit.js';
import { complaintShares } from '../reasoning/complaint-shares.js';
import { probabilityText } from '../reasoning/decibans.js';
import { next } from '../reasoning/next.js';
import { plan } from '../reasoning/plan.js';
import { isToStay, remedyId, solvedBy } from '../reasoning/trials.js';
import { SOURCES, type SourceId } from '../rules/sources.js';
import { glossaryFor } from './glossary.js';
import { reportCauses } from './report-causes.js';
import {
  asides,
  reportAssumed,
  reportSeats,
  reportSince,
  reportUnknown,
  seatsAssumed,
} from './report-open.js';
import { cautionsOf, reportNext, reportPlan } from './report-plan.js';
import type {
  Report,
  ReportCause,
  ReportComplaint,
  ReportSource,
  ReportTold,
  ReportTrial,
} from './report-types.js';
import { reportVerdict, separatorsOf } from './report-verdict.js';
import { seamlessSwitch } from './seamless.js';
import { capital, factText, howText, markText } from './words.js';

export interface ReportOptions {
  /** Unit system of the words; that of the case when left out. */
  readonly units?: UnitSystem;
}

export function buildReport(audited: Audit, options: ReportOptions = {}): Report {
  const audit = withUnits(audited, options.units);
  const { book, view, ranking } = audit;
  const proposed = next(audit);
  const planned = plan(audit, {}, proposed);
  const causes = reportCauses(audit);
  const separators = separatorsOf(audit, causes);
  const steps = reportPlan(planned, causes, separators, ranking.undecided);
  const settled = settledBy(audit);
  const shown = causes.filter((cause) => cause.place !== 'aside');
  return {
    format: 'center-audit/report',
    version: 1,
    verdict: reportVerdict(audit, causes, steps, separators, settled),
    causes,
    plan: steps,
    seats: reportSeats(audit),
    complaints: reportComplaints(audit),
    seamlessSwitch: seamlessSwitch(view, book.units),
    unknown: reportUnknown(audit, causes),
    assumed: reportAssumed(audit, causes),
    contradictions: contradictions(book).map(({ facts, text, kind }) => ({ facts, text, kind })),
    cautions: cautionsOf(steps),

    title: book.title ? plainLine(book.title) : null,
    words: book.words ? plainText(book.words) : null,
    notes: book.notes.map(plainText),
    units: book.units,
    told: reportTold(audit),
    notHeard: book.absentComplaints.map((id) => ({ id, title: COMPLAINTS[id].title })),
    trials: reportTrials(audit),
    solvedBy: settled,
    seatsAssumed: seatsAssumed(audit),
    since: reportSince(audit),
    next: reportNext(proposed),
    askAgain: planned.askAgain.map((fact) => ({ fact, label: factSpec(fact).label })),
    ...asides(audit, causes),
    remarks: view.remarks().map(plainLine),
    sources: sourcesOf(shown),
    glossary: glossaryFor(textsOf(shown)),
  };
}

/** Words in the other unit system: values are kept in SI, so only the book's preference changes. */
function withUnits(audit: Audit, units: UnitSystem | undefined): Audit {
  return units === undefined || units === audit.book.units
    ? audit
    : { ...audit, book: { ...audit.book, units } };
}

function reportComplaints(audit: Audit): ReportComplaint[] {
  return complaintShares(audit.causes, audit.own, complaintsOf(audit.book))
    .filter((share) => share.present)
    .map(({ id, leakShare = 0 }) => {
      const { title } = COMPLAINTS[id as ComplaintId];
      return {
        id,
        leakShare,
        title,
        text: `${title} (chance that nothing listed here explains it: ${probabilityText(leakShare)})`,
      };
    });
}

function reportTold({ book }: Audit): ReportTold[] {
  return FACT_IDS.flatMap((fact: FactId): ReportTold[] => {
    const answer = book.answers.get(fact);
    if (!answer) return [];
    const value = 'value' in answer ? factText(fact, answer.value, book.units) : 'not known';
    return [{ fact, label: factSpec(fact).label, value, how: howText(answer.how) }];
  });
}

type Titled = Pick<Audit, 'book' | 'causes'>;

function reportTrials(audit: Titled): ReportTrial[] {
  return audit.book.trials.map((trial) => {
    const title = trialTitle(audit, trial);
    return { title, text: `${capital(title)}: ${OUTCOMES[trial.outcome]}`, keep: isToStay(trial) };
  });
}

/** What settled the trouble and still stands; null while it is not gone. */
export function settledBy(audit: Titled): readonly string[] | null {
  const solved = solvedBy(audit.book);
  return solved ? solved.trials.map((trial) => trialTitle(audit, trial)) : null;
}

function trialTitle({ causes }: Titled, { act }: Trial): string {
  if (isActId(act)) return actSpec(act).done;
  const remedies = causes.flatMap((cause) => cause.remedies.map((remedy) => ({ cause, remedy })));
  return (
    remedies.find(({ cause, remedy }) => remedyId(cause, remedy) === act)?.remedy.title ?? plainLine(act)
  );
}

/** Sources of everything that is told in full, each once. */
function sourcesOf(causes: readonly ReportCause[]): ReportSource[] {
  const ids = new Set<SourceId>(
    causes.flatMap((cause) => cause.evidence.filter((e) => e.decibans !== 0).map((e) => e.sourceId)),
  );
  return [...ids].map((id) => ({ id, ...SOURCES[id], markText: markText(SOURCES[id].mark) }));
}

function textsOf(causes: readonly ReportCause[]): string[] {
  return causes.flatMap((cause) => [
    cause.title,
    cause.story,
    ...cause.evidence.flatMap((item) => [item.text, item.because]),
    ...cause.remedies.flatMap((remedy) => [remedy.title, ...remedy.steps, remedy.expect]),
  ]);
}
