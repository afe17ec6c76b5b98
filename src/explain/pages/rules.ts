/** Pages of causes and their rules. */

import { type FactId, factSpec, isFactId } from '../../facts/catalog.js';
import { COMPLAINTS, type ComplaintId } from '../../facts/complaints.js';
import { HOWS } from '../../facts/spec.js';
import { curesWord } from '../../reasoning/plan.js';
import { variablesOfRule } from '../../reasoning/rule-index.js';
import { remedyId } from '../../reasoning/trials.js';
import type { Cause, Remedy, Rule } from '../../rules/cause.js';
import { SEVERITIES } from '../../rules/cause.js';
import { CAUTIONS } from '../../rules/cautions.js';
import type { VarId } from '../../rules/condition.js';
import { DERIVED } from '../../rules/derived/table.js';
import { ruleId } from '../../rules/evidence.js';
import { CAUSES } from '../../rules/index.js';
import { LIMITS, type LimitId } from '../../rules/limits.js';
import { SOURCES, type SourceId } from '../../rules/sources.js';
import { type AnswerWeight, STRENGTHS } from '../../rules/strength.js';
import { absentDb, CLAMP_DB, capDb, givenDb } from '../../rules/weight.js';
import { priorText, signed } from '../confidence.js';
import {
  type Block,
  bullets,
  caution,
  heading,
  type Inline,
  type Item,
  itemList,
  type Line,
  lines,
  pairs,
  paragraph,
  table,
  withoutEmpty,
} from '../document.js';
import {
  capital,
  effortText,
  factText,
  howText,
  idText,
  markText,
  minutesText,
  sentence,
  variableLabel,
} from '../words.js';
import { conditionText, limitWords, templateText } from './condition-words.js';
import { linkTo, type Page } from './page.js';

/** Priors that solved cases gave: the causes with them, and where they come from in words. */
export interface Learned {
  readonly causes: readonly Cause[];
  readonly priors: string;
}

export const causePages = (learned?: Learned): Page[] => CAUSES.map((cause) => causePage(cause, learned));
export const rulePages = (): Page[] =>
  CAUSES.flatMap((cause) => cause.rules.map((rule) => rulePage(cause, rule)));

export function causePage(cause: Cause, learned?: Learned): Page {
  const after = learned?.causes.find(({ id }) => id === cause.id);
  return {
    kind: 'cause',
    id: cause.id,
    title: capital(cause.title),
    blocks: withoutEmpty([
      paragraph(cause.story),
      pairs([
        ['Not when', cause.notWhen],
        ...(cause.inVain ? ([['In vain', cause.inVain]] as const) : []),
        ['If true', `${capital(cause.severity)}: ${SEVERITIES[cause.severity]}.`],
        ['How common', commonText(cause)],
        ...(learned && after
          ? [['In use', `${capital(priorText(after.priorDb))} (${learned.priors}).`] as [string, string]]
          : []),
        ['Applies', appliesText(cause)],
      ]),
      heading(2, 'What the owner hears'),
      bullets(complaintLines(cause)),
      heading(2, 'What speaks for and against it'),
      itemList(cause.rules.map((rule) => ruleItem(cause, rule))),
      heading(2, 'Tests that confirm it'),
      bullets(cause.confirm.map((confirm) => confirmLine(confirm.test, confirm.outcomes))),
      heading(2, 'What to do'),
      paragraph(
        'What was done and did not help goes into the case file by its name, as ',
        { code: `"tried": ["${remedyId(cause, cause.remedies[0])}"]` },
        '.',
      ),
      itemList(
        cause.remedies.map((remedy) => remedyItem(remedy, remedyId(cause, remedy))),
        'number',
      ),
      heading(2, 'Sources'),
      bullets([...new Set(cause.rules.map((rule) => rule.source))].map(sourceLine)),
    ]),
  };
}

function commonText({ priorDb, priorBecause, priorSource }: Cause): string {
  const from = priorSource ? SOURCES[priorSource].cite : 'our judgment';
  return `${capital(priorText(priorDb))} (${from}). ${priorBecause}`;
}

function appliesText({ applies, appliesIn }: Cause): string {
  if (!applies) return 'In every system.';
  const share =
    appliesIn === undefined
      ? ''
      : ` While nobody has told, it counts as in ${Math.round(appliesIn * 100)}% of systems (our judgment).`;
  return `Only where ${conditionText(applies)}.${share}`;
}

function complaintLines(cause: Cause): Line[] {
  return Object.entries(cause.links)
    .sort(([, a], [, b]) => b - a)
    .map(([id, chance]) => [
      linkTo('complaint', id, capital(COMPLAINTS[id as ComplaintId].title)),
      `: in about ${Math.round(chance * 100)}% of the systems that have it (our judgment).`,
    ]);
}

function ruleItem(cause: Cause, rule: Rule): Item {
  return {
    line: [
      linkTo('rule', ruleId(cause, rule), capital(idText(rule.id))),
      `: ${sentence(templateText(rule.says.yes))}`,
    ],
    below: lines(rule.because),
  };
}

const confirmLine = (test: FactId, outcomes: readonly string[]): Line => [
  linkTo('test', test, capital(factSpec(test).label)),
  ` (${minutesText(factSpec(test).minutes)}): ${outcomes.map((value) => factText(test, value, 'metric')).join(', or ')}.`,
];

function remedyItem(remedy: Remedy, name: string): Item {
  return {
    line: [{ strong: capital(remedy.title) }, ` (${effortText(remedy.minutes, remedy.cost, remedy.final)})`],
    below: [
      ...lines(
        ['Name: ', { code: name }],
        ...(remedy.when ? [`Where ${conditionText(remedy.when)}.`] : []),
        ...(remedy.gain ? [`Where it makes this clearly smaller: ${variableLabel(remedy.gain.of)}.`] : []),
      ),
      caution(remedy.cautions.map((id) => CAUTIONS[id])),
      ...lines(
        `How: ${templateText(remedy.steps.join(' '))}`,
        `Puts it right ${curesWord(remedy.cures)}: in about ${Math.round(20 * remedy.cures) * 5}% of the systems that have it (our judgment).`,
        `Expect: ${templateText(remedy.expect)}`,
        `Check: ${templateText(remedy.verify)}`,
      ),
    ],
  };
}

export const sourceLine = (id: SourceId): Line => [
  linkTo('source', id, capital(SOURCES[id].cite)),
  ` [${markText(SOURCES[id].mark)}].`,
];

export function rulePage(cause: Cause, rule: Rule): Page {
  return {
    kind: 'rule',
    id: ruleId(cause, rule),
    title: `${capital(idText(rule.id))}`,
    blocks: withoutEmpty([
      paragraph('A rule about the cause ', linkTo('cause', cause.id, capital(cause.title)), '.'),
      pairs([
        ['Asks', `Whether ${conditionText(rule.when)}.`],
        [
          'Bears on',
          rule.applies
            ? `Systems where ${conditionText(rule.applies)}.`
            : 'Every system the cause applies to.',
        ],
        ['If yes', templateText(rule.says.yes)],
        ['If no', templateText(rule.says.no)],
        ['Reason', rule.because],
        ['Group', groupText(cause, rule)],
      ]),
      heading(2, 'How much it weighs'),
      paragraph('In decibans, a measure of evidence: 10 make the odds ten times longer.'),
      ...weightBlocks(rule),
      heading(2, 'What it reads'),
      bullets([
        ...variablesOfRule(cause, rule).map((id): Line => [variableLink(id)]),
        ...limitsOf(rule).map((id): Line => [linkTo('threshold', id, `threshold: ${LIMITS[id].label}`)]),
      ]),
      heading(2, 'Source'),
      bullets([sourceLine(rule.source)]),
    ]),
  };
}

/** Thresholds of the table that a rule compares with. */
export function limitsOf(rule: Rule): LimitId[] {
  const found = JSON.stringify([rule.applies, rule.when, rule.weigh]).matchAll(/"limit\.(\w+)\./g);
  return [...new Set([...found].map((match) => match[1] as LimitId))];
}

const GROUP_NOTES = {
  'same-quantity': 'rules of one quantity: the most telling counts',
  'same-mechanism': 'rules of one mechanism: they count less than their sum (correlation 0.7)',
  'same-session': 'remarks of one session: they count a little less than their sum (correlation 0.3)',
  independent: 'independent of the others: it counts in full',
} as const;
const groupText = (cause: Cause, rule: Rule): string =>
  `${capital(idText(rule.group))}, ${GROUP_NOTES[cause.groups[rule.group] ?? 'independent']}.`;

function weightBlocks({ weigh }: Rule): Block[] {
  if (weigh.kind === 'match')
    return [
      paragraph(`Told: ${variableLabel(weigh.of)}. Computed: ${variableLabel(weigh.with)}.`),
      paragraph(
        'Where both agree within what they may be off, it speaks for the cause, by some 10 decibans where both were measured; where they do not, against it by up to 5.',
      ),
    ];
  if (weigh.kind === 'deviation') {
    const bound = Math.min(CLAMP_DB, weigh.maxDb ?? CLAMP_DB);
    const ratio = weigh.lowIsBad ? 'limit / value' : 'value / limit';
    const limit = weigh.limit.startsWith('limit.')
      ? limitWords(weigh.limit, 'metric')
      : `“${variableLabel(weigh.limit as VarId)}”`;
    const heard = weigh.heard ? ` The value is first multiplied by “${variableLabel(weigh.heard)}”.` : '';
    const only = weigh.only ? ` It only ever speaks ${weigh.only} the cause.` : '';
    return [
      paragraph(`Value: ${variableLabel(weigh.of)}. Limit: ${limit}.${heard}${only}`),
      paragraph(
        { code: `weight = 20 log10(${ratio}) decibans` },
        `: 0 at the limit, 6 for each doubling, within ${bound}.`,
      ),
      paragraph(
        `An uncertain value weighs less, and never more than the weakest answer behind it allows: ${HOWS.map((how) => `${howText(how)} ${capDb(how).toFixed(1)}`).join(', ')}.`,
      ),
    ];
  }
  const { tp, fp, only } = weigh;
  const cell = (db: number, silent: boolean): string => (silent ? '0' : signed(db));
  return [
    paragraph(tellsText(weigh)),
    table(
      ['how it was obtained', 'if yes', 'if no'],
      HOWS.map((how) => [
        howText(how),
        cell(givenDb(tp, fp, how), only === 'against'),
        cell(absentDb(tp, fp, how), only === 'for'),
      ]),
    ),
  ];
}

const STRENGTH_WORDS = {
  slight: 'slight',
  hint: 'a hint',
  telling: 'telling',
  strong: 'strong',
  proof: 'a proof',
};
/** How telling the two outcomes are, in the words of the scale. */
function tellsText({ tells, tp, fp }: AnswerWeight): string {
  const chances = `Chance of this answer if the cause is true: ${Number(tp.toFixed(2))}; otherwise: ${Number(fp.toFixed(2))} (our judgment).`;
  if (!tells) return chances;
  const side = (outcome: 'yes' | 'no', speaksFor: boolean): string => {
    const strength = tells[outcome];
    if (strength === undefined) return `${capital(outcome)} says nothing.`;
    const means = STRENGTHS[strength].means;
    const [way, words] = speaksFor
      ? ['for', means]
      : ['against', means.replace(/\bwith(out)? the cause/, (_, out) => `with${out ? '' : 'out'} the cause`)];
    return `${capital(outcome)} is ${STRENGTH_WORDS[strength]} ${way} it: ${words}.`;
  };
  return `${side('yes', tells.against !== true)} ${side('no', tells.against === true)} ${chances}`;
}

export function variableLink(id: VarId): Inline {
  if (!isFactId(id)) return linkTo('computed', id, DERIVED[id].label);
  return linkTo(id.startsWith('test') ? 'test' : 'fact', id, variableLabel(id));
}
