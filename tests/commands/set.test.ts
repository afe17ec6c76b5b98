/** Changing a case for good, and the list of saved cases. */
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/commands/set.js';
import { withChanges } from '../../src/commands/try-changes.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import { listCases, removeCase } from '../../src/store/index.js';
import { memoryIo } from '../support/memoryIo.js';

const GLOBAL = { color: false } as const;
const fresh = (parts: object): string => {
  const path = join(mkdtempSync(join(tmpdir(), 'set-')), 'mine.json');
  writeFileSync(path, JSON.stringify(parts));
  return path;
};
const bookAt = (path: string) => readCase(readFileSync(path, 'utf8')).book;
const set = async (path: string, ...changes: string[]) => {
  const io = memoryIo();
  await run(io, path, changes, GLOBAL);
  return io;
};

describe('set', () => {
  it('keeps a fact, says what it was, and leaves the case as it was beside it', async () => {
    const path = fresh({ units: 'metric', facts: { seatDistance: '3 m' }, expect: { top: ['delay'] } });
    const io = await set(path, 'seatDistance=3.4 m');
    expect(io.printed.out).toContain('seat distance: 3.40 m (11 ft 2 in) (was 3.00 m (9 ft 10 in))');
    expect(bookAt(path).answers.get('seatDistance')).toMatchObject({ value: 3.4 });
    expect(readCase(readFileSync(path, 'utf8')).expect).toEqual({ top: ['delay'] });
    expect(JSON.parse(readFileSync(`${path}~`, 'utf8')).facts.seatDistance).toBe('3 m');
  });

  it('keeps what was done and what it did; told again it is replaced', async () => {
    const path = fresh({ complaints: ['dull'] });
    await set(path, 'trial=center-tilted:better');
    await set(path, 'trial=center-tilted:gone:stays:dull', 'constraints=+no-purchase', 'solved=yes');
    expect(bookAt(path)).toMatchObject({ constraints: ['no-purchase'], solved: true });
    expect(bookAt(path).trials).toEqual([
      { act: 'center-tilted', outcome: 'better' },
      { act: 'center-tilted', outcome: 'gone', complaint: 'dull', stays: true },
    ]);
  });

  it.each([
    ['enteredCenter=3.6 m', 'trial=entry-corrected:center:better:stays'],
    ['trial=entry-corrected:center:better:stays', 'enteredCenter=3.6 m'],
  ])('takes what is told beside a trial as of today: %s %s', async (...changes) => {
    const path = fresh({ units: 'metric', complaints: ['dull'], facts: { enteredCenter: '3 m' } });
    await set(path, ...changes);
    expect(bookAt(path).before.get('enteredCenter')).toMatchObject({ value: 3 });
    expect(bookAt(path).answers.get('enteredCenter')).toMatchObject({ value: 3.6 });
  });

  it('writes nothing where anything is wrong', async () => {
    const path = fresh({ complaints: ['dull'] });
    const before = readFileSync(path, 'utf8');
    await expect(set(path, 'complaints=+boomy', 'trial=center-tiltd:gone')).rejects.toThrow(
      /did you mean center-tilted/,
    );
    expect(readFileSync(path, 'utf8')).toBe(before);
    await expect(set(`${path}.gone`, 'solved=yes')).rejects.toThrow(/there is no such file/);
  });
});

describe('a change of a list', () => {
  const changed = (...words: string[]) => withChanges({ ...EMPTY_BOOK, complaints: ['dull'] }, words).book;
  it('adds, takes away, sets and empties', () => {
    expect(changed('complaints=+boomy').complaints).toEqual(['dull', 'boomy']);
    expect(changed('complaints=-dull').complaints).toEqual([]);
    expect(changed('complaints=thin,boxy').complaints).toEqual(['thin', 'boxy']);
    expect(changed('complaints=?').complaints).toEqual([]);
  });
  it('names what was before a change, and forgets a trial', () => {
    expect(changed('before.enteredCenter=3 m').before.get('enteredCenter')).toMatchObject({ value: 3 });
    expect(changed('trial=aim/wedge:same', 'trial=aim/wedge:?').trials).toEqual([]);
    expect(changed('trial=entry-corrected:center:gone').trials).toEqual([
      { act: 'entry-corrected', outcome: 'gone', of: 'center' },
    ]);
  });
  it.each([
    ['trial=center-tilted', /no outcome is named/],
    ['trial=center-tilted:gone:often', /"often" is no part of a trial/],
    ['trial=nobody/knows:gone', /is no act/],
    ['complaints=+dul', /did you mean dull/],
    ['constraints=no-money', /is no constraint/],
    ['solved=perhaps', /is no answer/],
    ['before.enteredCentre=3', /did you mean enteredCenter/],
    [`title=${'x'.repeat(300)}`, /too long/],
  ])('%s is refused with what is accepted', (word, says) => {
    expect(() => changed(word)).toThrow(says);
  });
});

describe('the saved cases', () => {
  it('are listed with what they are about, and one taken away leaves a copy', () => {
    const folder = mkdtempSync(join(tmpdir(), 'cases-'));
    const path = join(folder, 'interview-1.json');
    writeFileSync(path, JSON.stringify({ title: 'Den with a low shelf' }));
    expect(listCases(folder)).toMatchObject([{ name: 'interview-1', path, about: 'Den with a low shelf' }]);
    expect(removeCase(folder, path)).toBe(`${path}~`);
    expect(existsSync(`${path}~`)).toBe(true);
    expect(listCases(folder)).toEqual([]);
  });
  it('are none where there is no folder', () => {
    expect(listCases(join(tmpdir(), 'no-such-folder-here'))).toEqual([]);
  });
});
