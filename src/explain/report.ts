/** From an audit to the report: plain JSON, the only input of the renderers. */

import { actSpec, isActId } from '../facts/acts.js';
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
import { remedyId } from '../reasoning/tried.js';
import { type Cause, SEVERITIES } from '../rules/cause.js';
import { SOURCES, type SourceId } from '../rules/sources.js';
import { glossaryFor } from './glossary.js';
import { reportCauses } from './report-causes.js';
import { asides, reportAssumed, reportSeats, reportUnknown } from './report-open.js';
import { cautionsOf, reportNext, reportPlan } from './report-plan.js';
import type { Report, ReportCause, ReportComplaint, ReportSource, ReportTold } from './report-types.js';
import { reportVerdict } from './report-verdict.js';
import { seamlessSwitch } from './seamless.js';
import { factText, howText, markText } from './words.js';

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
  const steps = reportPlan(planned, causes);
  const shown = causes.filter((cause) => cause.place !== 'aside');
  return {
    format: 'center-audit/report',
    version: 1,
    verdict: reportVerdict(audit, causes, steps),
    causes,
    plan: steps,
    seats: reportSeats(audit).map((seat) => ({ ...seat, name: plainLine(seat.name) })),
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
    tried: triedTitles(audit),
    next: reportNext(proposed),
    planMinutes: { thisOrder: planned.minutes, checklist: planned.checklistMinutes },
    askAgain: planned.askAgain.map((fact) => ({ fact, label: factSpec(fact).label })),
    ...asides(audit, causes),
    remarks: view.remarks().map(plainLine),
    sources: sourcesOf(shown),
    glossary: glossaryFor(textsOf(shown)),
    severities: SEVERITIES,
    temperature: ranking.temperature,
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

function triedTitles({ book, causes }: Audit): string[] {
  const titles = new Map<string, string>(
    causes.flatMap((cause: Cause) => cause.remedies.map((remedy) => [remedyId(cause, remedy), remedy.title])),
  );
  return book.trials.map(({ act }) => titles.get(act) ?? (isActId(act) ? actSpec(act).done : plainLine(act)));
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
