import { execFileSync, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { begin } from '../../src/interview/conversation.js';
import { hold } from '../../src/interview/session.js';
import { UserError } from '../../src/lib/user-error.js';
import { openStore, type Store } from '../../src/store/case-store.js';
import { lockFile, takeLock } from '../../src/store/lock.js';
import { listUnfinished } from '../../src/store/unfinished.js';
import { SETTINGS } from '../interview/talk.js';
import { scriptedTerminal } from '../support/scriptedTerminal.js';

let folder: string;
let stores: Store[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'interview-'));
});
afterEach(() => {
  for (const store of stores) store.release();
  stores = [];
  rmSync(folder, { recursive: true, force: true });
});

const now = (): Date => new Date('2026-08-01T10:42:00Z');
function open(name?: string, inFolder = folder): Store {
  const store = openStore({
    stateFolder: join(folder, 'state'),
    now,
    ...(name === undefined ? {} : { casePath: join(inFolder, name) }),
  });
  stores.push(store);
  return store;
}
const SEATED: FactBook = withAnswer(EMPTY_BOOK, 'seating', { value: 'one-row', how: 'read' });
const saved = (book: FactBook) => ({ book, order: ['words', 'seating'] as const, put: ['a-clash'] });

describe('what is kept on disk', () => {
  it('a case that reads back as it was told, and nothing before the first answer', () => {
    const store = open('case.json');
    expect(store.save(saved(EMPTY_BOOK))).toBeUndefined();
    expect(existsSync(store.path())).toBe(false);
    expect(store.save(saved(SEATED))).toBeUndefined();
    expect(readCase(readFileSync(store.path(), 'utf8')).book.answers).toEqual(SEATED.answers);
  });

  it('the case as it was found stays beside it, with its expectations in both', () => {
    const path = join(folder, 'case.json');
    const found = writeCase(SEATED, { expect: { top: ['delay'] } });
    writeFileSync(path, found);
    const store = open('case.json');
    store.save(saved(withAnswer(SEATED, 'floorCover', { value: 'rug', how: 'read' })));
    store.save(saved(EMPTY_BOOK));
    expect(readFileSync(`${path}~`, 'utf8')).toBe(found);
    expect(readCase(readFileSync(path, 'utf8')).expect).toEqual({ top: ['delay'] });
  });

  it('an interview without a case is found again, with the order of its questions', () => {
    const store = open();
    store.save(saved({ ...SEATED, words: 'it is not nice' }));
    store.release();
    const [found] = listUnfinished(join(folder, 'state'));
    expect(found).toMatchObject({ about: 'it is not nice', order: ['words', 'seating'], put: ['a-clash'] });
    const again = openStore({ stateFolder: join(folder, 'state'), now, casePath: found?.casePath ?? '' });
    stores.push(again);
    expect(again.before?.order).toEqual(['words', 'seating']);
    again.finished();
    expect(listUnfinished(join(folder, 'state'))).toEqual([]);
  });

  it('a broken record of progress costs the order, never the answers', () => {
    const store = open('case.json');
    store.save(saved(SEATED));
    const records = join(folder, 'state', 'unfinished');
    for (const name of readdirSync(records)) writeFileSync(join(records, name), '{"order": [');
    store.release();
    const again = open('case.json');
    expect(again.before).toBeUndefined();
    expect(again.book.answers).toEqual(SEATED.answers);
  });

  it('a case that cannot be read is refused and its lock given back', () => {
    writeFileSync(join(folder, 'case.json'), '{"facts": {"nope": 1}}');
    expect(() => open('case.json')).toThrow(UserError);
    expect(existsSync(lockFile(join(folder, 'case.json')))).toBe(false);
    mkdirSync(join(folder, 'dir'));
    expect(() => open('dir')).toThrow('this is no file');
  });
});

describe('two interviews on one case', () => {
  it('the second is told who is at work since when', () => {
    open('case.json');
    expect(() => open('case.json')).toThrow(new RegExp(`process ${process.pid} .*since 2026-08-01 10:42`));
  });

  it('a lock of a process that is gone, or of a number given anew, is taken over', () => {
    const path = join(folder, 'case.json');
    const gone = spawnSync('true').pid;
    writeFileSync(lockFile(path), JSON.stringify({ pid: gone, host: hostname(), born: '1', since: 'x' }));
    open('case.json').release();
    writeFileSync(
      lockFile(path),
      JSON.stringify({ pid: process.pid, host: hostname(), born: '1', since: 'x' }),
    );
    open('case.json').release();
    writeFileSync(lockFile(path), 'half a lo');
    open('case.json').release();
    expect(existsSync(lockFile(path))).toBe(false);
  });

  it('a lock of another machine stands, and is not given back by who does not hold it', () => {
    const path = join(folder, 'case.json');
    const text = JSON.stringify({ pid: 1, host: 'elsewhere', born: '', since: '2026-08-01T10:00' });
    writeFileSync(lockFile(path), text);
    expect(takeLock(path, 'now')).toMatchObject({ heldBy: { host: 'elsewhere' } });
    expect(readFileSync(lockFile(path), 'utf8')).toBe(text);
  });
});

const isRoot = process.getuid?.() === 0;
function mounted(options: string, run: (at: string) => void | Promise<void>): () => Promise<void> {
  return async () => {
    const at = join(folder, 'disk');
    mkdirSync(at);
    execFileSync('mount', ['-t', 'tmpfs', '-o', options, 'tmpfs', at]);
    try {
      await run(at);
    } finally {
      for (const store of stores) store.release();
      stores = [];
      execFileSync('umount', [at]);
    }
  };
}
/** Files of one page each until nothing more fits. */
function fillUp(at: string): string[] {
  const names: string[] = [];
  for (let i = 0; i < 64; i++) {
    const name = join(at, `filler${i}`);
    try {
      writeFileSync(name, Buffer.alloc(4000));
    } catch {
      rmSync(name, { force: true });
      break;
    }
    names.push(name);
  }
  return names;
}
const canMount = isRoot && canMountHere();
function canMountHere(): boolean {
  const at = mkdtempSync(join(tmpdir(), 'mount-'));
  const done = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=16k', 'tmpfs', at]).status === 0;
  if (done) spawnSync('umount', [at]);
  rmSync(at, { recursive: true, force: true });
  return done;
}

describe.runIf(canMount)('real disks', () => {
  it(
    'a full disk never leaves less than there was, and the interview says so and goes on elsewhere',
    mounted('size=64k', async (at) => {
      writeFileSync(join(at, 'case.json'), writeCase(SEATED));
      const store = open('case.json', at);
      // Room for the copy of the case as it was found and for one page of a new one.
      const fillers = fillUp(at);
      for (const filler of fillers.slice(-2)) rmSync(filler);
      const elsewhere = join(folder, 'elsewhere.json');
      const long = `note ${'x'.repeat(1500)}`;
      const terminal = scriptedTerminal(['7', 'note', long, 'note', long, 'note', long, elsewhere]);
      const start = begin(store.book, SETTINGS, store.before);
      const ending = await hold({ terminal, store, report: async () => {}, isLive: false }, start);
      expect(terminal.told.join('\n')).toContain('the disk is full');
      expect(readCase(readFileSync(join(at, 'case.json'), 'utf8')).book.notes).toHaveLength(2);
      expect(ending.state.audit.book.notes).toHaveLength(3);
      expect(readCase(readFileSync(elsewhere, 'utf8')).book.notes).toEqual(ending.state.audit.book.notes);
    }),
  );

  it(
    'a read-only folder is told once; the interview goes on in memory and the case is handed out at the end',
    mounted('size=64k', async (at) => {
      writeFileSync(join(at, 'case.json'), writeCase(SEATED));
      execFileSync('mount', ['-o', 'remount,ro', at]);
      const store = open('case.json', at);
      const terminal = scriptedTerminal(['1', '1', '', '1', '1', 's']);
      const start = begin(store.book, SETTINGS, store.before);
      await hold({ terminal, store, report: async () => {}, isLive: false }, start);
      const told = terminal.told.filter((line) => line.includes('read-only'));
      expect(told).toHaveLength(1);
      expect(store.isSaved()).toBe(false);
      expect(readCase(store.text()).book.answers.size).toBeGreaterThan(1);
    }),
  );
});

describe('a place that cannot be written to', () => {
  it('a folder that is not there: another place is asked for, refused where something stands, then used', async () => {
    const store = open('missing/case.json');
    writeFileSync(join(folder, 'taken.json'), 'mine');
    const good = join(folder, 'good.json');
    const terminal = scriptedTerminal(['it is not nice', join(folder, 'taken.json'), good, '1']);
    const start = begin(store.book, SETTINGS);
    await hold({ terminal, store, report: async () => {}, isLive: false }, start);
    const told = terminal.told.join('\n');
    expect(told).toContain('the folder does not exist');
    expect(told).toContain('something of that name already');
    expect(told).toContain('= saved');
    expect(readFileSync(join(folder, 'taken.json'), 'utf8')).toBe('mine');
    expect(readCase(readFileSync(good, 'utf8')).book.words).toBe('it is not nice');
  });
});
