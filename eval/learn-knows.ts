/**
 * npm run index:knows: counts who can answer which question, and writes src/reasoning/knows-data.ts. Two kinds of
 * owners weigh alike: those of the stories, who were never asked about most things and so seem to know little, and as
 * many simulated ones, who seem to know nearly everything. The truth lies between.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { FACT_IDS, type FactId } from '../src/facts/catalog.js';
import { isTest, makesSense } from '../src/reasoning/hypotheses.js';
import { KIND_IDS, type KnowsCounts, kindOf } from '../src/reasoning/knows.js';
import { loadStories } from './replay.js';
import { simulatedFacts, simulateOwner } from './simulate.js';

/** Seeds of their own: never interviewed. */
const COUNTED_FROM = 2_000_001;
const FILE = fileURLToPath(new URL('../src/reasoning/knows-data.ts', import.meta.url));

type Tally = Map<FactId, { known: number; asked: number }>;

function count(tally: Tally, id: FactId, known: boolean): void {
  const { known: k, asked } = tally.get(id) ?? { known: 0, asked: 0 };
  tally.set(id, { known: k + (known ? 1 : 0), asked: asked + 1 });
}

function tallied(): Tally {
  const tally: Tally = new Map();
  const stories = loadStories();
  // What nobody has a word of (newer than the stories, not simulated) was never asked: it keeps the chance of its kind.
  const spoken = new Set(stories.flatMap(({ told, all }) => [...told.answers.keys(), ...all.answers.keys()]));
  const counted = FACT_IDS.filter((id) => spoken.has(id) || simulatedFacts().has(id));
  for (const { told, all } of stories)
    for (const id of counted) {
      const answer = all.answers.get(id) ?? told.answers.get(id);
      // A home test is done on asking; the stories only tell which were done before.
      if (!isTest(id) && (answer || makesSense(all, id)))
        count(tally, id, answer !== undefined && 'value' in answer);
    }
  for (let i = 0; i < stories.length; i += 1)
    for (const [id, answer] of simulateOwner(COUNTED_FROM + i).sheet) count(tally, id, 'value' in answer);
  return tally;
}

function main(): void {
  const tally = tallied();
  const facts = Object.fromEntries(
    [...tally].map(([id, { known, asked }]): [string, [number, number]] => [id, [known, asked]]),
  );
  const kinds = Object.fromEntries(
    KIND_IDS.map((kind) => {
      const own = [...tally].filter(([id]) => kindOf(id) === kind).map(([, each]) => each);
      const sum = (pick: (each: { known: number; asked: number }) => number): number =>
        own.reduce((all, each) => all + pick(each), 0);
      return [kind, [sum(({ known }) => known), sum(({ asked }) => asked)]];
    }),
  );
  const data = { facts, kinds } satisfies Record<keyof KnowsCounts, object>;
  const text = JSON.stringify(data, null, 2)
    .replaceAll(/\[\s+(\d+),\s+(\d+)\s+\]/g, '[$1, $2]')
    .replaceAll(/"(\w+)":/g, '$1:');
  writeFileSync(
    FILE,
    `/** Written by \`npm run index:knows\`: [owners who knew, owners asked] by fact and by kind of fact. Not edited by hand. */\nimport type { KnowsCounts } from './knows.js';\n\nexport const KNOWS: KnowsCounts = ${text};\n`,
  );
}

main();
