/**
 * `npm run new:cause ID`: lays out the three files of a new cause (rules, test, case), each with a rule that works, and
 * renews what is written from them. What is marked "…" is to be said; `npm run lint:rules` names what is missing.
 */
import { existsSync, writeFileSync } from 'node:fs';

const id = process.argv[2] ?? '';
const at = (path: string): URL => new URL(`../${path}`, import.meta.url);
if (!/^[a-z]+(-[a-z]+)*$/.test(id)) {
  console.error(
    `npm run new:cause ID: "${id}" is no id; accepted: small letters and dashes, for example loose-grille`,
  );
  process.exit(2);
}
const name = id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
const files: Record<string, string> = {
  [`src/rules/causes/${id}.ts`]: `/**
 * … the mechanism: what happens, physically. What the owner hears.
 * … the limits of the model, and what is left out.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { is } from '../condition.js';

export const ${name} = defineCause({
  id: '${id}',
  title: '…',
  severity: 'clear',
  // … how common it is, and where that comes from.
  priorDb: -15,
  priorBecause: '…',
  story: '… What happens and what the owner hears.',
  notWhen: '… When it is wrongly blamed.',
  links: { 'voice-unclear-everywhere': 0.5 },
  groups: { heard: 'independent' },
  rules: [
    answers({
      id: 'heard-close-by',
      group: 'heard',
      when: is('testNearCenter', 'still-bad'),
      tells: { yes: 'hint', no: 'telling' },
      yes: '… It is heard close to the center as well.',
      no: '… Close to the center it is gone.',
      because: '… Why that tells.',
    }),
  ],
  confirm: [confirmedBy('testNearCenter', 'still-bad')],
  remedies: [
    {
      id: 'put-right',
      title: '…',
      steps: ['… What to do.'],
      minutes: 10,
      changes: [],
      cures: 0.7,
      expect: '… What changes.',
      verify: '… How to tell.',
      cautions: [],
    },
  ],
});
`,
  [`tests/rules/${id}.test.ts`]: `import { ${name} } from '../../src/rules/causes/${id}.js';
import { testCause } from '../support/testCause.js';

testCause(${name}, {
  firstPosts: [{ complaints: ['voice-unclear-everywhere'], facts: { testNearCenter: 'still-bad' } }],
  fires: [{ name: '…', facts: { testNearCenter: 'still-bad' }, rules: ['heard-close-by'] }],
  silent: [{ name: '…', facts: { testNearCenter: 'good-near' }, rules: ['heard-close-by'] }],
  cannotTell: [{ name: '…', facts: {}, rule: 'heard-close-by', asks: ['testNearCenter'] }],
});
`,
  [`cases/${id}-first.json`]: `{
  "format": "center-audit/case",
  "version": 2,
  "units": "metric",
  "title": "…",
  "words": "…",
  "complaints": ["voice-unclear-everywhere"],
  "facts": {
    "testNearCenter": "still-bad"
  },
  "expect": { "difficulty": "easy", "top": ["${id}"] }
}
`,
};
const there = Object.keys(files).filter((path) => existsSync(at(path)));
if (there.length > 0) {
  console.error(`npm run new:cause ${id}: there already: ${there.join(', ')}`);
  process.exit(2);
}
for (const [path, text] of Object.entries(files)) {
  writeFileSync(at(path), text);
  console.log(path);
}
console.log('Write what is marked "…", then: npm run index && npm run golden:evidence && npm run lint:rules');
