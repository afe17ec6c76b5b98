/** The parts of a batch: lines of a stream, results in order, progress, summary. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inOrder } from '../../src/commands/batch/in-order.js';
import { casesOf, linesOf } from '../../src/commands/batch/json-lines.js';
import type { Task } from '../../src/commands/batch/one.js';
import { progressOn } from '../../src/commands/batch/progress.js';
import { addEntry, emptySummary, summaryJson, summaryText } from '../../src/commands/batch/summary.js';
import { PLAIN_TEXT } from '../../src/explain/terminal.js';
import { MAX_CASE_BYTES } from '../../src/facts/case-file.js';
import { memoryIo } from '../support/memoryIo.js';

/** A text in pieces of the given sizes, as a pipe may deliver it. */
async function* pieces(text: string, sizes: readonly number[]): AsyncGenerator<Uint8Array> {
  const bytes = new TextEncoder().encode(text);
  let from = 0;
  for (let i = 0; from < bytes.length; i++) {
    const size = sizes[i % Math.max(1, sizes.length)] ?? 7;
    yield bytes.subarray(from, from + size);
    from += size;
  }
}

async function all<T>(from: AsyncIterable<T>): Promise<T[]> {
  const list: T[] = [];
  for await (const each of from) list.push(each);
  return list;
}

const textOf = (task: Task): string => ('bytes' in task ? Buffer.from(task.bytes).toString('utf8') : '');
const sizes = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 5 });
/** A case in one line. */
const object = fc.dictionary(
  fc.string({ maxLength: 5 }),
  fc.oneof(fc.string({ maxLength: 8, unit: 'grapheme' }), fc.integer()),
);

describe('lines of a stream', () => {
  it('do not depend on how the bytes arrive', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.string({ unit: 'grapheme', maxLength: 30 })),
        sizes,
        async (lines, cut) => {
          const clean = lines.map((line) => line.replaceAll('\n', ''));
          const found = await all(linesOf(pieces(clean.join('\n'), cut)));
          const texts = found.map((line) =>
            'bytes' in line ? Buffer.from(line.bytes).toString('utf8') : null,
          );
          // A last line without a line break and without a letter is no line.
          expect(texts).toEqual(clean.at(-1) === '' ? clean.slice(0, -1) : clean);
        },
      ),
    );
  });

  it('too long ones are counted, not kept', async () => {
    const long = 'x'.repeat(MAX_CASE_BYTES + 1);
    const found = await all(linesOf(pieces(`a\n${long}\nb`, [65536])));
    expect(found.map((line) => ('tooLong' in line ? 'too long' : line.number))).toEqual([1, 'too long', 3]);
  });
});

describe('cases of a stream', () => {
  it('are as many as there are lines with an object, blank lines aside', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(object, { minLength: 2, maxLength: 6 }), sizes, async (objects, cut) => {
        const lines = objects.map((each) => JSON.stringify(each));
        const tasks = await all(casesOf(pieces(`\n ${lines.join('\n \r\n')}\n\n`, cut), 'here'));
        expect(tasks.map((task) => JSON.parse(textOf(task)))).toEqual(objects.map((each) => ({ ...each })));
        expect(tasks.every((task) => task.several)).toBe(true);
      }),
    );
  });

  it('are one where the JSON goes over several lines, and its bytes are those that came', async () => {
    await fc.assert(
      fc.asyncProperty(object, sizes, async (value, cut) => {
        const text = JSON.stringify({ ...value, more: [1] }, null, 2);
        const tasks = await all(casesOf(pieces(text, cut), 'here'));
        expect(tasks.map((task) => [textOf(task), task.several])).toEqual([[text, false]]);
      }),
    );
  });

  it.each([
    ['nothing', ''],
    ['blank lines', '\n \n'],
    ['one line', '{"a":1}\n'],
    ['a word', 'hello\n[1]\n'],
    [
      'an object whose first value is an object in a line of its own',
      '{"facts":\n{"a":1}\n, "words": "x"}\n',
    ],
    ['the same with its end in a line of its own', '{"facts":\n{"a":1}\n}\n'],
  ])('%s is one case', async (_, text) => {
    const tasks = await all(casesOf(pieces(text, [3]), 'here'));
    expect(tasks).toMatchObject([{ name: 'here', several: false }]);
  });

  it.each([
    ['{"a":', 3],
    ['hello', 2],
    ['[1]', 1],
  ])('go on behind a broken first line: %s', async (broken, good) => {
    const lines = [broken, ...Array.from({ length: good }, (_, i) => `{"a":${i}}`)];
    const tasks = await all(casesOf(pieces(lines.join('\n\n'), [3]), 'here'));
    expect(tasks.map(textOf)).toEqual(lines);
    expect(tasks.every((task) => task.several)).toBe(true);
  });

  it('go on behind broken lines at the beginning and after it', async () => {
    const lines = ['{"a":', '{"a":1}', '{"b":', '{"a":2}'];
    const tasks = await all(casesOf(pieces(lines.join('\n'), [5]), 'here'));
    expect(tasks.map(textOf)).toEqual(lines);
  });

  it('a flood that is no JSON ends in a refusal, not in memory', async () => {
    let given = 0;
    async function* flood(): AsyncGenerator<Uint8Array> {
      for (; given < 1000; given++) yield Buffer.from(`[${'\n'.repeat(10_000)}`);
    }
    const tasks = await all(casesOf(flood(), 'here'));
    expect(tasks).toMatchObject([{ problem: { what: expect.stringMatching(/bytes arrived/) } }]);
    expect(given).toBeLessThan(300);
  });
});

describe('results', () => {
  it('stand in the order of their tasks, and no more than the window are under way', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 20 }),
        fc.integer({ min: 1, max: 5 }),
        async (waits, window) => {
          let running = 0;
          let most = 0;
          const start = (ticks: number) => {
            running += 1;
            most = Math.max(most, running);
            const work = async (): Promise<number> => {
              for (let i = 0; i < ticks; i++) await Promise.resolve();
              running -= 1;
              return ticks;
            };
            return { result: work(), window };
          };
          expect(await all(inOrder(waits, start))).toEqual(waits);
          expect(most).toBeLessThanOrEqual(window);
        },
      ),
    );
  });

  it('a task that throws stops the line when its turn comes', async () => {
    const start = (n: number) => ({
      result: n === 2 ? Promise.reject(new Error('two')) : Promise.resolve(n),
      window: 4,
    });
    const seen: number[] = [];
    const run = async (): Promise<void> => {
      for await (const n of inOrder([1, 2, 3], start)) seen.push(n);
    };
    await expect(run()).rejects.toThrow('two');
    expect(seen).toEqual([1]);
  });
});

describe('the summary', () => {
  it('orders causes by how often they lead, and adds up', () => {
    const summary = emptySummary();
    addEntry(summary, { leader: 'delay', undecided: false, likely: ['delay'], possible: ['level'] });
    addEntry(summary, { leader: 'delay', undecided: true, likely: [], possible: ['delay', 'level'] });
    addEntry(summary, { leader: 'aim', undecided: false, likely: ['aim'], possible: [] });
    addEntry(summary, undefined);
    expect(JSON.parse(summaryJson(summary))).toEqual({
      format: 'center-audit/summary',
      version: 1,
      cases: 3,
      bad: 1,
      undecided: 1,
      causes: [
        { id: 'delay', title: expect.any(String), leads: 2, decided: 1, likely: 1, possible: 1 },
        { id: 'aim', title: expect.any(String), leads: 1, decided: 1, likely: 1, possible: 0 },
        { id: 'level', title: expect.any(String), leads: 0, decided: 0, likely: 0, possible: 2 },
      ],
    });
    const text = summaryText(summary, PLAIN_TEXT);
    expect(text).toMatch(/3 cases audited, 2 decided, 1 still open\. 1 case could not be read\./);
    expect(text).toMatch(/delay +2 \(67%\)/);
  });

  it('of nothing has no table', () => {
    expect(summaryText(emptySummary(), PLAIN_TEXT)).not.toMatch(/leads/);
  });
});

describe('progress', () => {
  it.each([
    ['where nobody looks', { stderrIsTerminal: false, stdoutIsTerminal: false }, false],
    [
      'where results are printed on the same terminal',
      { stderrIsTerminal: true, stdoutIsTerminal: true },
      false,
    ],
    ['where nothing may be redrawn', { stderrIsTerminal: true, stdoutIsTerminal: false }, true],
  ])('is silent %s', (_, io, accessible) => {
    const world = memoryIo(io);
    const progress = progressOn(world, 1000, accessible, clock([0, 5000, 6000]));
    progress.count();
    progress.count();
    progress.end();
    expect(world.printed.err).toBe('');
  });

  it('tells a person who waits how far it has come, and leaves nothing behind', () => {
    const world = memoryIo({ stderrIsTerminal: true });
    const progress = progressOn(world, 3, false, clock([0, 100, 900, 950, 2000]));
    progress.count();
    expect(world.printed.err).toBe('');
    progress.count();
    expect(world.printed.err).toBe('\r2 of 3 cases');
    progress.count();
    expect(world.printed.err).toBe('\r2 of 3 cases');
    progress.end();
    expect(world.printed.err).toBe('\r2 of 3 cases\r\u001b[K');
  });
});

/** A clock that shows these milliseconds one after the other. */
function clock(times: readonly number[]): () => number {
  let next = 0;
  return () => times[next++] ?? times.at(-1) ?? 0;
}
