/** The list of unfinished interviews, which files of progress keep under names that tell nothing of their age. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { progressPath } from '../../src/store/state-folder.js';
import { listUnfinished, readUnfinished, writeUnfinished } from '../../src/store/unfinished.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'unfinished-'));
  mkdirSync(join(folder, 'cases'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const MINUTE_MS = 60_000;
const BEGUN_MS = Date.parse('2026-08-01T10:00:00Z');
const caseOf = (n: number): string => join(folder, 'cases', `case-${n}.json`);
/** One interview a minute; each leaves a case and a record. */
function leave(n: number): void {
  writeFileSync(caseOf(n), '{}');
  const updated = new Date(BEGUN_MS + n * MINUTE_MS).toISOString();
  writeUnfinished(folder, { casePath: caseOf(n), about: `number ${n}`, updated, order: [], put: [] });
}
const listed = (): string[] => listUnfinished(folder).map(({ about }) => about);
const numbers = (from: number, to: number): string[] =>
  Array.from({ length: from - to + 1 }, (_, i) => `number ${from - i}`);

describe('answers set aside', () => {
  const parked = { enteredCenter: { value: 3.05, how: 'read' }, entryKind: { how: 'unknown' } } as const;
  const record = {
    casePath: caseOf,
    about: '',
    updated: new Date(BEGUN_MS).toISOString(),
    order: [],
    put: [],
  };

  it('come back with the record', () => {
    writeUnfinished(folder, { ...record, casePath: caseOf(1), parked });
    expect(readUnfinished(folder, caseOf(1))?.parked).toEqual(parked);
  });

  it('are passed over as a whole where one of them is none', () => {
    writeUnfinished(folder, {
      ...record,
      casePath: caseOf(1),
      parked: { enteredCenter: { value: 'x', how: 'read' } as never },
    });
    expect(readUnfinished(folder, caseOf(1))).toMatchObject({ about: '', parked: {} });
  });
});

describe('unfinished interviews', () => {
  it('are listed with the latest first', () => {
    for (const n of [3, 1, 5, 2, 4]) leave(n);
    expect(listed()).toEqual(numbers(5, 1));
  });

  it('are the latest fifty where there are more', () => {
    for (let n = 0; n < 120; n++) leave(n);
    expect(listed()).toEqual(numbers(119, 70));
  });

  it('are not hidden by those whose case is gone, and those leave no record', () => {
    for (let n = 0; n < 80; n++) leave(n);
    for (let n = 3; n < 80; n++) rmSync(caseOf(n));
    expect(listed()).toEqual(numbers(2, 0));
    expect(readdirSync(join(folder, 'unfinished'))).toHaveLength(3);
  });

  it('keep their record where the case is out of reach for now', () => {
    leave(1);
    const path = progressPath(folder, caseOf(1));
    rmSync(join(folder, 'cases'), { recursive: true });
    // Where the disk with the cases is mounted there is something else at the moment.
    writeFileSync(join(folder, 'cases'), '');
    expect(listed()).toEqual([]);
    expect(existsSync(path)).toBe(true);
    rmSync(join(folder, 'cases'));
    mkdirSync(join(folder, 'cases'));
    writeFileSync(caseOf(1), '{}');
    expect(readUnfinished(folder, caseOf(1))?.about).toBe('number 1');
  });
});
