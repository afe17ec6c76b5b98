/** Every cause with its balance sheet, evidence, confirming tests and remedies in words. */

import type { UnitSystem } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import type { Audit } from '../reasoning/audit.js';
import { curesWord } from '../reasoning/plan.js';
import type { Ranked, Ranking } from '../reasoning/rank.js';
import { GATE_GROUP, type GroupLine, TRIAL_GROUP } from '../reasoning/score.js';
import { confirmed } from '../reasoning/suspects.js';
import { isForbidden, isTried } from '../reasoning/trials.js';
import type { Cause, Confirm, Kinship, Remedy } from '../rules/cause.js';
import { SEVERITIES } from '../rules/cause.js';
import { CAUTIONS } from '../rules/cautions.js';
import { DERIVED } from '../rules/derived/table.js';
import { offerOf } from '../rules/gain.js';
import { verdictOf } from '../rules/plain.js';
import type { View } from '../rules/view.js';
import { carriedText, confidenceText, priorText, sharedText } from './confidence.js';
import { reportEvidence } from './report-evidence.js';
import type { CausePlace, ReportCause, ReportConfirm, ReportGroup, ReportRemedy } from './report-types.js';
import { stepCautions } from './step-cautions.js';
import {
  answerText,
  capital,
  effortText,
  factText,
  fill,
  fillKnown,
  fillNaming,
  idText,
  sentence,
} from './words.js';

export function reportCauses(audit: Audit): ReportCause[] {
  const causes = new Map(audit.causes.map((cause) => [cause.id, cause]));
  return audit.ranking.causes.flatMap((ranked) => {
    const cause = causes.get(ranked.cause);
    return cause ? [reportCause(audit, cause, ranked)] : [];
  });
}

function reportCause(audit: Audit, cause: Cause, ranked: Ranked): ReportCause {
  const { book, view, ranking } = audit;
  const evidence = reportEvidence(
    cause,
    audit.byCause.get(cause.id) ?? [],
    view,
    book.units,
    ranking.temperature,
  );
  const groups = ranked.groups.map((line) => reportGroup(cause, line));
  return {
    id: cause.id,
    title: capital(cause.title),
    probability: ranked.probability,
    decibans: ranked.decibans,
    verdict: ranked.verdict,
    severity: cause.severity,
    evidence,
    remedies: cause.remedies.flatMap((remedy) => reportRemedy(audit, cause, remedy)),
    confidence: confidenceText(ranked.probability, ranked.verdict),
    severityText: SEVERITIES[cause.severity],
    story: cause.story,
    because: evidence.find(({ speaks }) => speaks === 'for')?.because ?? '',
    carriedBy: carriedText(ranked, groups, evidence),
    priorDb: ranked.priorDb,
    priorText: priorText(ranked.priorDb),
    groups,
    sharedDb: ranked.sharedDb,
    sharedText: sharedText(ranked.sharedDb, book.complaints.length + book.absentComplaints.length),
    open: [...new Set(evidence.flatMap((item) => item.open))],
    confirm: cause.confirm.map((confirm) => reportConfirm(audit, confirm)),
    place: placeOf(ranking, ranked),
  };
}

function placeOf(ranking: Ranking, ranked: Ranked): CausePlace {
  if (ranking.contenders.includes(ranked.cause) || ranked.verdict === 'likely') return 'leading';
  return ranked.verdict === 'possible' ? 'possible' : 'aside';
}

const KINSHIP_NOTES: Readonly<Record<Kinship, string>> = {
  'same-quantity': 'one quantity seen in several ways: the most telling counts',
  'same-mechanism': 'one mechanism seen in several ways: counted less than their sum',
  'same-session': 'remarks of one session: counted a little less than their sum',
  independent: '',
};

function reportGroup(cause: Cause, line: GroupLine): ReportGroup {
  const own = { id: line.group, decibans: line.decibans, rules: line.evidence.map((item) => item.rule) };
  if (line.group === GATE_GROUP) return { ...own, title: 'does not arise in this system', note: '' };
  if (line.group === TRIAL_GROUP) return { ...own, title: 'what was tried, and what it did', note: '' };
  const note = line.evidence.length > 1 ? KINSHIP_NOTES[cause.groups[line.group] ?? 'independent'] : '';
  return { ...own, title: idText(line.group), note };
}

function reportConfirm({ book }: Audit, confirm: Confirm): ReportConfirm {
  const spec = factSpec(confirm.test);
  return {
    test: confirm.test,
    label: spec.label,
    minutes: spec.minutes,
    steps: spec.findOut,
    cautions: stepCautions(confirm.test),
    outcomes: confirm.outcomes.map((value) => factText(confirm.test, value, book.units)),
    confirmed: confirmed(book, confirm) ?? null,
    result: answerText(book, confirm.test as FactId) ?? null,
  };
}

/** What was seen to be wrong is put right in its own numbers, where they are known. */
export function remedyTitle({ title, now, seen }: Remedy, view: View, units: UnitSystem): string {
  const isSeen = now && seen && verdictOf(seen, view).truth === 'yes';
  return (isSeen ? fill(now, view, units) : undefined) ?? title;
}

/** A remedy in words; none where it does not suit the system or must not be done. */
function reportRemedy({ book, view }: Audit, cause: Cause, remedy: Remedy): ReportRemedy[] {
  const { truth: suits, after } = offerOf(remedy, view);
  if (suits === 'no' || isForbidden(book, remedy)) return [];
  const filling =
    remedy.gain && after !== undefined ? { after: { value: after, unit: DERIVED[remedy.gain.of].unit } } : {};
  return [
    {
      id: remedy.id,
      title: capital(remedyTitle(remedy, view, book.units)),
      steps: remedy.steps.map((step) => sentence(fillNaming(step, view, book.units))),
      minutes: remedy.minutes,
      cost: remedy.cost,
      expect: sentence(
        fillKnown(
          remedy.expect,
          view,
          book.units,
          'How much it changes cannot be computed from what is known',
          filling,
        ),
      ),
      verify: sentence(
        fillKnown(remedy.verify, view, book.units, 'Listen to the same minute before and after'),
      ),
      cautions: remedy.cautions.map((id) => CAUTIONS[id]),
      helps: curesWord(remedy.cures),
      effort: effortText(remedy.minutes, remedy.cost, remedy.final),
      tried: isTried(book, cause, remedy),
      maybe: suits === 'unknown',
    },
  ];
}
