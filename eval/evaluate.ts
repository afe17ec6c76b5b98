/**
 * npm run eval: how good the audit is, as a Markdown table. `--quick` for fewer draws, `--owners 5000` interviews
 * other owners than usual, from that seed on; `--stories [FILE]` replays stories only, `--trace S09` (or `all`) with
 * every step; `--reading` scores the reading of free words only; `--recordings [SEEDS]` the
 * measurement of recordings only; `--fit` prints the temperature fitted on owners that are not scored.
 */

import { DIFFICULTIES } from '../src/facts/case-file.js';
import { auditSync } from '../src/reasoning/audit.js';
import { TEMPERATURE } from '../src/reasoning/temperature.js';
import { calibrate, fitTemperature, SCORED_FROM } from './calibration.js';
import { loadCases, type ShippedCase } from './load-cases.js';
import { mean, median } from './metrics.js';
import { type Interview, interview, minutesToConfirm, questionnaire } from './policies.js';
import { randomFrom } from './random.js';
import { readingPart } from './reading-part.js';
import { recordingsPart } from './recordings/table.js';
import { disturbed, hiddenScores, leaderChanges, namesOf, scoreCase } from './score-cases.js';
import { callOf, type Owner, simulateOwner } from './simulate.js';
import { storiesPart } from './stories-part.js';
import { percent, type Row, share, table } from './table.js';

const quick = process.argv.includes('--quick');
const ownersAt = process.argv.indexOf('--owners');
const FIRST_OWNER = ownersAt < 0 ? SCORED_FROM : Number(process.argv[ownersAt + 1]);
if (!Number.isInteger(FIRST_OWNER))
  throw new RangeError('--owners takes the seed of the first owner: --owners 5000');
const SIZES = quick
  ? { calibration: 400, fit: 400, owners: 60, hiddenSeeds: 5, flips: 5, noise: 3 }
  : { calibration: 2000, fit: 2000, owners: 150, hiddenSeeds: 20, flips: 20, noise: 10 };
/** Noise on every weight, dB (definition of the evaluation). */
const NOISE_DB = 3;
/** Equal accuracy: top-1 within two points (definition of the evaluation). */
const EQUAL_POINTS = 0.02;

function caseRow(name: string, cases: readonly ShippedCase[]): Row {
  const scores = cases.map(scoreCase);
  return [
    name,
    cases.length,
    percent(share(scores.map(({ top }) => top))),
    percent(share(scores.map(({ named }) => named))),
    percent(mean(scores.map(({ recall }) => recall))),
    mean(scores.map(({ reciprocal }) => reciprocal)).toFixed(3),
  ];
}

function casesPart(cases: readonly ShippedCase[]): string {
  const decidable = cases.filter(({ expect }) => !expect.undecided);
  const undecidable = cases.filter(({ expect }) => expect.undecided);
  const rows = [
    ...DIFFICULTIES.filter((d) => d !== 'undecidable').map((difficulty) =>
      caseRow(
        difficulty,
        decidable.filter((each) => each.difficulty === difficulty),
      ),
    ),
    caseRow('all', decidable),
    caseRow(
      'all, set aside',
      decidable.filter(({ heldOut }) => heldOut),
    ),
    caseRow(
      'all, seen',
      decidable.filter(({ heldOut }) => !heldOut),
    ),
  ];
  const missed = decidable.map(scoreCase).filter(({ top }) => !top);
  const named = cases.map(scoreCase).filter(({ wronglyNamed }) => wronglyNamed.length > 0);
  return [
    '## Shipped cases',
    table(['difficulty', 'cases', 'first', 'named', 'recall at 3', 'reciprocal rank'], rows),
    `Undecidable cases reported as undecided: ${undecidable.filter((c) => scoreCase(c).undecided).length} of ${undecidable.length}.`,
    `Excluded causes among the first three: ${named.length === 0 ? 'none' : named.map((s) => `${s.name} (${s.wronglyNamed.join(', ')})`).join('; ')}.`,
    missed.length === 0
      ? ''
      : `Another cause first: ${missed.map((s) => `${s.name} (${s.ranked[0]})`).join('; ')}.`,
  ]
    .filter((text) => text !== '')
    .join('\n\n');
}

function robustnessPart(cases: readonly ShippedCase[]): string {
  const decidable = cases.filter(({ expect }) => !expect.undecided);
  const hiddenRow = (name: string, list: readonly ShippedCase[]): Row => {
    const scores = list.map((each) => ({ each, runs: hiddenScores(each, SIZES.hiddenSeeds) }));
    const runs = scores.flatMap(({ runs: all }) => all);
    const two = scores
      .filter(({ each }) => (each.expect.top ?? []).length > 1)
      .flatMap(({ runs: all }) => all);
    return [
      name,
      percent(share(runs.map(({ top }) => top))),
      percent(share(runs.map(({ named }) => named))),
      percent(share(two.map(({ recall }) => recall === 1))),
    ];
  };
  const random = randomFrom(3);
  const noisy = decidable.flatMap(({ book, expect }) =>
    Array.from({ length: SIZES.noise }, () =>
      (expect.top ?? []).includes(namesOf(disturbed(book, NOISE_DB, random))[0] ?? ''),
    ),
  );
  const flips = (count: number): string =>
    percent(mean(decidable.map(({ book }) => leaderChanges(book, count, SIZES.flips))));
  return [
    '## With gaps and errors',
    table(
      ['40 % of the facts hidden', 'first', 'named', 'both of two'],
      [
        hiddenRow('all', decidable),
        hiddenRow(
          'set aside',
          decidable.filter(({ heldOut }) => heldOut),
        ),
      ],
    ),
    `Another cause leads after one flipped answer in ${flips(1)}, after two in ${flips(2)} of the draws. With ${NOISE_DB} dB of noise on every weight a true cause stays first in ${percent(share(noisy))}.`,
  ].join('\n\n');
}

function calibrationPart(): string {
  const found = calibrate(SIZES.calibration);
  return [
    '## Stated probabilities',
    `${found.systems} simulated owners, each with a part of his facts told, temperature ${TEMPERATURE}. Calibration error over all causes ${found.error.toFixed(3)}, over leaders alone ${found.leaderError.toFixed(3)}. Of ${found.sure} causes stated at 90 % or more, ${percent(found.sureTrue)} are true. Leader true: ${percent(found.top)}.`,
  ].join('\n\n');
}

interface Run {
  readonly owner: Owner;
  readonly ours: Interview;
  readonly oursTop: boolean;
  readonly leaders: readonly boolean[];
  readonly full: number;
  readonly minutes: Readonly<Record<string, number>>;
}

function runOwner(owner: Owner): Run {
  const truths: readonly string[] = owner.truths;
  const ours = interview(owner);
  const { leaders, audit: asked } = questionnaire(owner);
  const start = auditSync(callOf(owner));
  return {
    owner,
    ours,
    oursTop: truths.includes(ours.audit.ranking.leader),
    leaders: leaders.map((leader) => truths.includes(leader)),
    full: asked.book.answers.size,
    minutes: {
      'questions that pay, then by worth': ours.minutes + minutesToConfirm(owner, ours.audit, 'worth'),
      'no questions, by worth': minutesToConfirm(owner, start, 'worth'),
      'cheapest step first': minutesToConfirm(owner, start, 'cheapest'),
      'by prior only': minutesToConfirm(owner, start, 'prior'),
    },
  };
}

function ownersPart(): string {
  const runs = Array.from({ length: SIZES.owners }, (_, i) => runOwner(simulateOwner(FIRST_OWNER + i)));
  const oursTop = share(runs.map(({ oursTop: top }) => top));
  const longest = Math.max(...runs.map(({ full }) => full));
  const topAfter = (asked: number): number =>
    share(runs.map(({ leaders }) => leaders[Math.min(asked, leaders.length - 1)] ?? false));
  let equal = 0;
  while (equal < longest && topAfter(equal) < oursTop - EQUAL_POINTS) equal += 1;
  const reached = topAfter(equal) >= oursTop - EQUAL_POINTS;
  const priorTop = share(runs.map(({ leaders }) => leaders[0] ?? false));
  const of = (pick: (run: Run) => number): readonly number[] => runs.map(pick);
  const steps: Row[] = [
    [
      'interview',
      percent(oursTop),
      median(of(({ ours }) => ours.questions)),
      median(of(({ ours }) => ours.tests)),
      median(of(({ ours }) => ours.minutes)).toFixed(1),
    ],
    [
      reached ? 'fixed questionnaire, equal accuracy' : 'fixed questionnaire, never equal',
      percent(topAfter(equal)),
      equal,
      0,
      '-',
    ],
    ['fixed questionnaire, whole', percent(topAfter(longest)), median(of(({ full }) => full)), 0, '-'],
    ['complaint alone', percent(priorTop), 0, 0, '0'],
  ];
  const policies = Object.keys(runs[0]?.minutes ?? {});
  const minutes = policies.map((policy): Row => {
    const list = of((run) => run.minutes[policy] ?? Number.NaN);
    return [policy, median(list).toFixed(1), mean(list).toFixed(1)];
  });
  const reasons = new Map<string, number>();
  for (const { ours } of runs) reasons.set(ours.reason, (reasons.get(ours.reason) ?? 0) + 1);
  return [
    '## Interviews with simulated owners',
    table(['way of asking', 'leader true', 'questions', 'home tests', 'minutes to the stop'], steps),
    `Medians over ${runs.length} owners. Stopped because: ${[...reasons].map(([reason, n]) => `${reason} ${n}`).join(', ')}.`,
    table(['until a true cause is confirmed', 'median minutes', 'mean minutes'], minutes),
  ].join('\n\n');
}

/** What follows a flag, unless it is another flag. */
function optionOf(flag: string): string | undefined {
  const at = process.argv.indexOf(flag);
  const value = at < 0 ? undefined : process.argv[at + 1];
  return value?.startsWith('--') ? undefined : value;
}

function main(): void {
  if (process.argv.includes('--stories')) {
    console.log(storiesPart(optionOf('--stories'), optionOf('--trace')));
    return;
  }
  if (process.argv.includes('--recordings')) {
    const seeds = optionOf('--recordings');
    console.log(recordingsPart(seeds === undefined ? undefined : Number(seeds)));
    return;
  }
  if (process.argv.includes('--reading')) {
    console.log(readingPart());
    return;
  }
  if (process.argv.includes('--fit')) {
    const [best] = fitTemperature(SIZES.fit);
    console.log(
      `temperature ${best?.temperature} (log loss ${best?.loss.toFixed(4)}, ${SIZES.fit} owners, in use ${TEMPERATURE})`,
    );
    return;
  }
  const cases = loadCases();
  console.log('# Evaluation\n');
  for (const part of [casesPart, robustnessPart]) console.log(`${part(cases)}\n`);
  for (const part of [readingPart, () => storiesPart(), calibrationPart, ownersPart])
    console.log(`${part()}\n`);
}

main();
