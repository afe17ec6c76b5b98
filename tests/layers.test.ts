/** The house has one stair: imports run downward only, and each outside library comes in by one door. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CAUSE_IDS } from '../src/rules/cause-ids.js';

const ROOT = join(import.meta.dirname, '..', 'src');

/** What each folder may import besides itself. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  lib: [],
  recording: ['facts', 'acoustics', 'lib'],
  disk: ['recording', 'facts', 'lib'],
  acoustics: [],
  facts: ['acoustics', 'lib'],
  compute: ['facts', 'acoustics'],
  rules: ['compute', 'facts', 'acoustics', 'lib'],
  reasoning: ['rules', 'facts', 'lib'],
  settings: ['rules', 'compute', 'facts', 'acoustics', 'lib'],
  explain: ['settings', 'recording', 'reasoning', 'rules', 'compute', 'facts', 'acoustics', 'lib'],
  reading: ['facts', 'lib'],
  interview: ['reading', 'explain', 'reasoning', 'rules', 'facts', 'lib'],
  terminal: ['interview'],
  store: ['interview', 'facts', 'disk', 'lib'],
  commands: [
    'reading',
    'terminal',
    'store',
    'interview',
    'explain',
    'reasoning',
    'rules',
    'facts',
    'acoustics',
    'recording',
    'settings',
    'lib',
    'disk',
  ],
  page: [
    'settings',
    'interview',
    'explain',
    'recording',
    'reasoning',
    'rules',
    'compute',
    'facts',
    'acoustics',
    'lib',
  ],
  '.': ['commands', 'reading', 'explain', 'reasoning', 'facts', 'disk', 'lib'],
};

/** What runs in a browser as well: no file, no process, no module of Node. */
const PURE = [
  'lib',
  'acoustics',
  'recording',
  'facts',
  'compute',
  'rules',
  'settings',
  'reasoning',
  'explain',
  'interview',
];
const OF_NODE = /\b(?:process|Buffer|require|__dirname|setImmediate)\b\s*[.(?]|\bglobal\./;

/** Libraries with a single door. */
const ONE_DOOR = ['json-rules-engine', 'inquirer', 'marked', 'fft.js'];

interface Import {
  readonly file: string;
  readonly folder: string;
  readonly target: string;
}

const files = readdirSync(ROOT, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name));
const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8');
/** Without comments and texts. */
const codeOf = (file: string): string =>
  textOf(file).replace(/\/\*[\s\S]*?\*\/|\/\/.*|'[^'\n]*'|`[^`]*`/g, '');
const folderOf = (file: string): string => (file.includes('/') ? (file.split('/')[0] as string) : '.');
/** Static, re-exporting and dynamic imports, over several lines too. */
const imports: Import[] = files.flatMap((file) =>
  [...readFileSync(join(ROOT, file), 'utf8').matchAll(/(?:\bfrom|\bimport)\s*\(?\s*'([^']+)'/g)].map(
    (match) => ({
      file,
      folder: folderOf(file),
      target: match[1] as string,
    }),
  ),
);

describe('the layers of src', () => {
  it('reads enough imports to mean something', () => {
    expect(imports.length).toBeGreaterThan(200);
  });

  it('lets imports run only downward', () => {
    const upward = imports.filter(({ file, folder, target }) => {
      if (!target.startsWith('.')) return false;
      const to = folderOf(relative(ROOT, join(ROOT, file, '..', target)));
      return to !== folder && !MAY_IMPORT[folder]?.includes(to);
    });
    expect(upward).toEqual([]);
  });

  it('takes the small zod: the whole one brings half a megabyte of languages to every start', () => {
    expect(imports.filter(({ target }) => target === 'zod')).toEqual([]);
  });

  it('keeps Node out of everything that computes and converses', () => {
    const ofNode = imports.filter(
      ({ folder, target }) => PURE.includes(folder) && target.startsWith('node:'),
    );
    expect(ofNode).toEqual([]);
    const used = files
      .filter((file) => PURE.includes(folderOf(file)))
      .filter((file) => OF_NODE.test(codeOf(file)));
    expect(used).toEqual([]);
  });

  it('keeps terminals and stored interviews out of the library', () => {
    const reached = new Set(['library.ts']);
    for (const file of reached)
      for (const each of imports.filter(({ file: from, target }) => from === file && target.startsWith('.')))
        reached.add(relative(ROOT, join(ROOT, file, '..', each.target)).replace(/\.js$/, '.ts'));
    const folders = new Set([...reached].map(folderOf));
    expect(folders).toContain('acoustics');
    for (const folder of ['terminal', 'store', 'interview', 'page']) expect(folders).not.toContain(folder);
  });

  it('knows every folder', () => {
    expect([...new Set(files.map(folderOf))].filter((folder) => !(folder in MAY_IMPORT))).toEqual([]);
  });

  it.each(ONE_DOOR)('imports %s in one file', (library) => {
    const doors = new Set(imports.filter(({ target }) => target === library).map(({ file }) => file));
    expect([...doors]).toHaveLength(1);
  });

  it('exports nothing that no other file imports', () => {
    const home = join(ROOT, '..');
    const taken = new Set<string>();
    for (const folder of ['src', 'tests', 'scripts', 'eval', 'bench'])
      for (const name of readdirSync(join(home, folder), { recursive: true, encoding: 'utf8' })) {
        if (!/\.(tsx?|mjs)$/.test(name)) continue;
        const text = readFileSync(join(home, folder, name), 'utf8');
        // `{ names } from 'file'`, `{ names } = await import('file')`, or the file as a whole
        for (const [, names = '*', from = ''] of text.matchAll(
          /(?:\{([^{}]*)\}\s*)?(?:from|=\s*await import\(|import\()\s*'(\.[^']+)'/g,
        ))
          for (const each of names.split(','))
            taken.add(
              `${join(home, folder, name, '..', from).replace(/\.js$/, '')} ${each.replace(/^\s*(?:type\s+)?|\s+as\s[\s\S]*|:[\s\S]*|\s+$/g, '')}`,
            );
      }
    const untaken = files
      .filter((file) => !file.startsWith('library'))
      .flatMap((file) => {
        const path = join(ROOT, file.replace(/\.tsx?$/, ''));
        const names = [
          ...textOf(file).matchAll(
            /^export (?:async |abstract )*(?:const|let|function\*?|class|type|interface) (\w+)/gm,
          ),
        ];
        return names
          .filter(([, name]) => !taken.has(`${path} ${name}`) && !taken.has(`${path} *`))
          .map(([, name]) => `${file}: ${name}`);
      });
    expect(taken.size).toBeGreaterThan(1000);
    expect(untaken).toEqual([]);
  });

  it('keeps reasoning free of causes by name', () => {
    const named = files
      .filter((file) => file.startsWith('reasoning/'))
      .flatMap((file) =>
        CAUSE_IDS.filter((id) => readFileSync(join(ROOT, file), 'utf8').includes(`'${id}'`)).map(
          (id) => `${file}: ${id}`,
        ),
      );
    expect(named).toEqual([]);
  });
});
