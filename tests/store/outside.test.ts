/** A case that changes while an interview is at work on it, and one case under two names: nothing is lost. */
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { begin } from '../../src/interview/conversation.js';
import { type Ending, hold } from '../../src/interview/session.js';
import { openStore, type Store } from '../../src/store/case-store.js';
import { listUnfinished } from '../../src/store/unfinished.js';
import { SETTINGS } from '../interview/talk.js';
import { CLI } from '../support/program.js';
import { type Scripted, scriptedTerminal } from '../support/scriptedTerminal.js';
import { hasTmux, openTmux } from '../support/tmux.js';

let folder: string;
let stores: Store[] = [];
beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'outside-')));
});
afterEach(() => {
  for (const store of stores) store.release();
  stores = [];
  rmSync(folder, { recursive: true, force: true });
});

const at = (name: string): string => join(folder, name);
const stateFolder = (): string => at('state');
function open(name: string): Store {
  const now = (): Date => new Date('2026-08-01T10:42:00Z');
  const store = openStore({ stateFolder: stateFolder(), now, casePath: at(name) });
  stores.push(store);
  return store;
}
const SEATED: FactBook = withAnswer(EMPTY_BOOK, 'seating', { value: 'one-row', how: 'read' });
const noted = (book: FactBook, ...notes: string[]): FactBook => ({ ...book, notes });
const save = (store: Store, book: FactBook): string | undefined => store.save({ book, order: [], put: [] });
const bookAt = (name: string): FactBook => readCase(readFileSync(at(name), 'utf8')).book;
const BY_HAND = writeCase({ ...SEATED, title: 'edited by hand' });

/** Types the lines; before the one with number `when`, counted from 0, something happens outside. */
async function talk(
  store: Store,
  lines: readonly string[],
  when: number,
  outside: () => void,
): Promise<{ terminal: Scripted; ending: Ending }> {
  const terminal = scriptedTerminal(lines);
  const meddled = {
    ...terminal,
    ask: (...args: Parameters<Scripted['ask']>) => {
      if (terminal.prompts.length === when) outside();
      return terminal.ask(...args);
    },
  };
  const start = begin(store.book, SETTINGS, store.before);
  const session = { terminal: meddled, store, report: async () => {}, isLive: false };
  return { terminal, ending: await hold(session, start) };
}

describe('a case edited by hand between two answers', () => {
  it('keeps the edit; the interview says so and keeps every answer in another place', async () => {
    writeFileSync(at('case.json'), writeCase(SEATED));
    const lines = ['7', 'note', 'before', 'note', 'after', at('elsewhere.json'), 'note', 'last'];
    const { terminal } = await talk(open('case.json'), lines, 3, () =>
      writeFileSync(at('case.json'), BY_HAND),
    );
    expect(readFileSync(at('case.json'), 'utf8')).toBe(BY_HAND);
    expect(bookAt('elsewhere.json').notes).toEqual(['before', 'after', 'last']);
    const told = terminal.told.join('\n');
    expect(told).toContain(`${at('case.json')}: this file was changed outside this interview`);
    expect(told).toContain('= saved');
  });

  it('an edit of the same length is seen as well', () => {
    const store = open('case.json');
    save(store, noted(SEATED, 'abc'));
    writeFileSync(at('case.json'), readFileSync(at('case.json'), 'utf8').replace('abc', 'xyz'));
    expect(save(store, noted(SEATED, 'abc', 'd'))).toMatch(/changed outside/);
    expect(store.isSaved()).toBe(false);
    expect(bookAt('case.json').notes).toEqual(['xyz']);
  });

  it('goes on unsaved where no other place is given, hands the case out, and saves once the edit is undone', async () => {
    writeFileSync(at('case.json'), writeCase(SEATED));
    const store = open('case.json');
    let asItWas: Uint8Array = new Uint8Array();
    const lines = ['7', 'note', 'one', '', 'note', 'two', 's'];
    const { terminal } = await talk(store, lines, 1, () => {
      asItWas = readFileSync(at('case.json'));
      writeFileSync(at('case.json'), BY_HAND);
    });
    expect(terminal.told.filter((line) => line.includes('changed outside'))).toHaveLength(1);
    expect(store.isSaved()).toBe(false);
    expect(readCase(store.text()).book.notes).toEqual(['one', 'two']);
    writeFileSync(at('case.json'), asItWas);
    expect(save(store, noted(SEATED, 'one', 'two'))).toBeUndefined();
    expect(bookAt('case.json').notes).toEqual(['one', 'two']);
  });

  it('the changed file itself is refused as the other place', async () => {
    writeFileSync(at('case.json'), writeCase(SEATED));
    const lines = ['7', 'note', 'one', at('case.json'), at('elsewhere.json')];
    const { terminal } = await talk(open('case.json'), lines, 1, () =>
      writeFileSync(at('case.json'), BY_HAND),
    );
    expect(terminal.told.join('\n')).toMatch(/Not there\. .*changed outside/);
    expect(readFileSync(at('case.json'), 'utf8')).toBe(BY_HAND);
    expect(bookAt('elsewhere.json').notes).toEqual(['one']);
  });

  it('a file that somebody else put where the new case was to be is left alone', () => {
    const store = open('case.json');
    writeFileSync(at('case.json'), BY_HAND);
    expect(save(store, SEATED)).toMatch(/changed outside/);
    expect(readFileSync(at('case.json'), 'utf8')).toBe(BY_HAND);
  });

  it('a case that was deleted is written again, since nothing there could be lost', () => {
    writeFileSync(at('case.json'), writeCase(SEATED));
    const store = open('case.json');
    rmSync(at('case.json'));
    expect(save(store, noted(SEATED, 'still here'))).toBeUndefined();
    expect(bookAt('case.json').notes).toEqual(['still here']);
  });

  it.runIf(hasTmux)(
    'is told in a terminal, and the other place is used at once',
    async () => {
      writeFileSync(at('case.json'), writeCase(SEATED));
      const command = [process.execPath, CLI, 'interview', at('case.json')];
      const t = openTmux(command, { columns: 200, env: { XDG_STATE_HOME: stateFolder() } });
      try {
        await t.see('Which of these are heard');
        writeFileSync(at('case.json'), BY_HAND);
        await t.type('dull', /cannot be saved.*changed outside this interview.*Where else/);
        await t.type(at('elsewhere.json'), '= saved');
        await t.press('C-c', /Every answer is saved:\s+\S*elsewhere\.json/);
      } finally {
        t.close();
      }
      expect(readFileSync(at('case.json'), 'utf8')).toBe(BY_HAND);
      expect(bookAt('elsewhere.json')).toMatchObject({ complaints: ['dull'] });
    },
    40_000,
  );
});

describe('one case under two names', () => {
  beforeEach(() => symlinkSync('case.json', at('link.json')));

  it.each([
    ['case.json', 'link.json'],
    ['link.json', 'case.json'],
  ])('an interview on %s keeps a second one on %s out', (first, second) => {
    writeFileSync(at('case.json'), writeCase(SEATED));
    open(first);
    expect(() => open(second)).toThrow('another interview on this case is open');
  });

  it('a new case is one case also over a link to where it will be, or over a link to its folder', () => {
    mkdirSync(at('inner'));
    symlinkSync('inner', at('door'));
    open('link.json');
    expect(() => open('case.json')).toThrow('another interview');
    open('door/new.json');
    expect(() => open('inner/new.json')).toThrow('another interview');
  });

  it.each([true, false])(
    'answers go into the file, and the link stays (file there before: %s)',
    (isThere) => {
      if (isThere) writeFileSync(at('case.json'), writeCase(SEATED));
      expect(save(open('link.json'), noted(SEATED, 'over the link'))).toBeUndefined();
      expect(lstatSync(at('link.json')).isSymbolicLink()).toBe(true);
      expect(bookAt('case.json').notes).toEqual(['over the link']);
      expect(existsSync(at('case.json~'))).toBe(isThere);
      expect(existsSync(at('link.json~'))).toBe(false);
    },
  );

  it('how far an interview came is known under both names, and forgotten under both', () => {
    const first = open('link.json');
    first.save({ book: SEATED, order: ['words', 'seating'], put: [] });
    first.release();
    const second = open('case.json');
    expect(second.before?.order).toEqual(['words', 'seating']);
    second.finished();
    expect(listUnfinished(stateFolder())).toEqual([]);
  });
});
