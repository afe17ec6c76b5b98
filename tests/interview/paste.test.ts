/** Pastes, free words and answers set aside, in a real terminal. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readCase } from '../../src/facts/case-file.js';
import { CLI } from '../support/program.js';
import { hasTmux, openTmux, type TmuxTerminal } from '../support/tmux.js';

let folder: string;
let terminals: TmuxTerminal[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'paste-'));
});
afterEach(() => {
  for (const terminal of terminals) terminal.close();
  terminals = [];
  rmSync(folder, { recursive: true, force: true });
});

const casePath = (): string => join(folder, 'case.json');
const book = () => readCase(readFileSync(casePath(), 'utf8')).book;
function start(flags: readonly string[] = [], ...options: string[]): TmuxTerminal {
  const command = [process.execPath, CLI, ...flags, 'interview', ...options, casePath()];
  const terminal = openTmux(command, {
    columns: 100,
    rows: 40,
    env: { XDG_STATE_HOME: join(folder, 'state') },
  });
  terminals.push(terminal);
  return terminal;
}

const TWELVE = [
  'Hello everybody,',
  'my center sounds boomy.',
  'We sit 3 m away.',
  'The towers are 2.5 m apart.',
  'The center is on the sideboard.',
  'There is no subwoofer.',
  'Films are fine.',
  'The ceiling is 2.6 m high.',
  'I turned the upmix off: no change.',
  'The floor is bare concrete.',
  'What now?',
  'Thanks!',
];

describe.runIf(hasTmux).each([[[]], [['--accessible']]])('a paste %j', (flags) => {
  it('of twelve lines is taken whole, and answers no other question', async () => {
    const t = start(flags);
    await t.see('own words');
    await t.paste(TWELVE.join('\n'), /I understood this/);
    expect(t.all()).toContain('[pasted: 12 lines');
    expect(t.all()).not.toContain('[200~');
    await t.type('', /Question/);
    await t.press('C-c', /Every answer is saved/);
    expect(book().words?.split('\n')).toEqual(TWELVE);
    expect(book().answers.get('seatDistance')).toMatchObject({ value: 3 });
    expect(book().notes).toEqual([]);
  }, 60_000);
});

describe.runIf(hasTmux)('free words in a terminal', () => {
  it('a paste of 5,000 letters is taken to the last', async () => {
    const t = start();
    await t.see('own words');
    const filler = 'Nothing to report about the weather here. '.repeat(118);
    await t.paste(`${filler}The voice sounds boomy.`.slice(-5000), /I understood this[\s\S]*boomy/);
    await t.type('', /Question/);
    await t.press('C-c', /Every answer is saved/);
    expect(book().complaints).toContain('boomy');
  }, 60_000);

  it('a sentence with three facts answers one question and offers the others', async () => {
    const t = start([], '--full');
    await t.see('own words');
    await t.type('', 'Which of these are heard');
    await t.type('dull', 'Which do you measure in');
    await t.type('2', 'What is playing');
    await t.type('films, we sit 3 m away and the towers are 2.5 m apart', /You also told this/);
    await t.type('', 'Question 5');
    await t.press('C-c', /Every answer is saved/);
    expect(book().answers.get('playedContent')).toBeDefined();
    expect(book().answers.get('seatDistance')).toMatchObject({ value: 3 });
    expect(book().answers.get('mainsBase')).toMatchObject({ value: 2.5 });
  }, 60_000);

  it('answers set aside survive kill -9', async () => {
    const facts = { entryKind: 'distances', enteredCenter: '3 m' };
    const file = { format: 'center-audit/case', version: 1, units: 'metric', complaints: ['echo'], facts };
    writeFileSync(casePath(), JSON.stringify(file));
    const change = async (t: TmuxTerminal, to: string, said: RegExp): Promise<void> => {
      const list = await t.type('r', /The answers so far[\s\S]*Enter goes on/);
      const line = /(\d+) +form of the entries/.exec(list)?.[1] ?? 'no line';
      await t.type(line, /delays in milliseconds/);
      await t.type(to, said);
    };
    const t = start(['--accessible']);
    await t.see('Question');
    await change(t, 'delays', /set aside: entered distance, center[\s\S]*Question/);
    expect(book().answers.get('enteredCenter')).toBeUndefined();
    process.kill(t.pid(), 'SIGKILL');
    await t.see('exit code 137');
    const again = start(['--accessible']);
    await again.see(/Going on[\s\S]*Question/);
    await change(again, 'distances', /kept from before/);
    expect(book().answers.get('enteredCenter')).toMatchObject({ value: 3 });
  }, 60_000);
});
