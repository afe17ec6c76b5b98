/** Whole interviews in a real terminal. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import { FACT_IDS, factSpec } from '../../src/facts/catalog.js';
import { begin } from '../../src/interview/conversation.js';
import { promptOf } from '../../src/interview/screens.js';
import type { State } from '../../src/interview/state.js';
import { isTest } from '../../src/reasoning/hypotheses.js';
import { lockFile } from '../../src/store/lock.js';
import { CLI } from '../support/program.js';
import { hasTmux, openTmux, type TerminalOptions, type TmuxTerminal } from '../support/tmux.js';
import { askOf, SETTINGS, type } from './talk.js';

let folder: string;
let terminals: TmuxTerminal[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'interview-'));
});
afterEach(() => {
  for (const terminal of terminals) terminal.close();
  terminals = [];
  rmSync(folder, { recursive: true, force: true });
});

function start(words: readonly string[], options: TerminalOptions = {}): TmuxTerminal {
  const env = { XDG_STATE_HOME: join(folder, 'state'), ...options.env };
  const terminal = openTmux([process.execPath, CLI, 'interview', '--full', ...words], {
    ...options,
    env,
  });
  terminals.push(terminal);
  return terminal;
}
const casePath = (): string => join(folder, 'case.json');
const facts = () => readCase(readFileSync(casePath(), 'utf8')).book;

/** The order of the catalog, in which everything is asked: it does not move with what the rules know. */
const FULL = type(begin(EMPTY_BOOK, { ...SETTINGS, full: true }), 'x', '1', '1 3', '1');
const SECONDLY = type(FULL, '2');
/** The first words of a question, which no narrow window parts. */
const opening = (state: State): string => askOf(state).split(' ').slice(0, 3).join(' ');
const [FIRST, SECOND, THIRD] = [FULL, SECONDLY, type(SECONDLY, '2')].map(opening) as [string, string, string];

async function toFirstFact(t: TmuxTerminal): Promise<void> {
  await t.see('own words');
  await t.type('it is not nice', 'Which of these are heard');
  await t.type('1', 'which of these');
  await t.type('1 3', 'Which do you measure in');
  await t.type('1', FIRST);
}

describe.runIf(hasTmux)('an interview in a terminal of 60 columns', () => {
  it('runs from the first question over back, unknown, help, Ctrl-C and resume to the report', async () => {
    const t = start([], { columns: 60, rows: 24 });
    await toFirstFact(t);
    await t.type('h', new RegExp(`How to find out[\\s\\S]*${FIRST}`));
    await t.type('1', SECOND);
    await t.type('?', THIRD);
    await t.type('<', 'Enter keeps: not known');
    await t.type('2', THIRD);
    await t.press('Escape', `Enter keeps: ${promptOf(SECONDLY).choices[1]?.slice(0, 12)}`);
    await t.type('', THIRD);
    await t.press('C-c', 'exit code 130');
    expect(t.all()).toMatch(/Every answer is saved[\s\S]*Go on with:\ncenter-audit\n/);

    const again = start([], { columns: 60, rows: 24 });
    await again.see('it is not nice');
    await again.type('', new RegExp(`Going on: 2 facts known[\\s\\S]*${THIRD}`));
    await again.type('2', 'Question 7');
    await again.type('f', /VERDICT[\s\S]*What now/);
    await again.type('', 'filed under');
    await again.type('Miller, 4711', 'exit code 0');
    expect(again.all()).toContain('The case is saved');

    const third = start([]);
    await third.see('own words');
    await third.press('C-c', 'Nothing was answered yet');
  }, 60_000);

  it('clears the line of a refused answer', async () => {
    const t = start([casePath()], { columns: 60, rows: 24 });
    await toFirstFact(t);
    await t.type('xyzzy', /none of the lines[\s\S]*>\s*$/);
    await t.type('tele', SECOND);
    expect(facts().answers.get('playedContent')).toMatchObject({ value: 'television' });
  }, 40_000);
});

describe.runIf(hasTmux)('every mark at a list, a number and a text, at 40 columns', () => {
  it('does what it says, and no word is cut', async () => {
    const t = start([casePath()], { columns: 40, rows: 30 });
    await t.see('own words');
    await t.type('h', 'At any question you can also type');
    await t.type('w', 'What an owner says first');
    await t.type('l', 'Nothing was told yet');
    await t.type('r', 'Nothing was answered yet');
    await t.type('', 'own words');
    await t.type('n', 'The note, in one line');
    await t.type('calls back on Friday', '= noted');
    await t.type('<', 'This is the first question');
    await t.type('?', 'Which of these are heard');
    await t.type('<', 'own words');
    await t.type('not nice', 'Which of these are heard');
    await t.type('3', 'which of these');
    await t.type('1', 'Which do you measure in');
    await t.type('2', FIRST);
    for (const [mark, shown] of LIST_MARKS) await t.type(mark, shown);
    await t.type('f', /VERDICT[\s\S]*What now/);
    await t.type('<', FIRST);
    await t.type('s', 'exit code 0');
    const widest = Math.max(
      ...t
        .all()
        .split('\n')
        .map((line) => line.length),
    );
    expect(widest).toBeLessThanOrEqual(40);
    expect(facts()).toMatchObject({ notes: ['calls back on Friday'], words: 'not nice' });
  }, 60_000);

  const LIST_MARKS: readonly (readonly [string, RegExp | string])[] = [
    ['h', 'How to find out'],
    ['w', 'It saves'],
    ['l', 'So far'],
    ['r', 'The answers so far'],
    ['', FIRST],
    ['n', 'The note'],
    ['<', FIRST],
  ];
});

/** Every list was asked before, so that only numbers are left to ask; of the answers one is known. */
function caseOfLists(): string {
  const lists = FACT_IDS.filter((id) => factSpec(id).kind === 'choice' && !isTest(id));
  const facts = Object.fromEntries(lists.map((id): [string, unknown] => [id, { how: 'unknown' }]));
  facts.centerLayout = 'mid-tweeter-mid';
  return JSON.stringify({ units: 'imperial', complaints: ['dull'], facts });
}

describe.runIf(hasTmux)('a number in a terminal', () => {
  it('takes every mark, a length as people write it, and asks the unusual again', async () => {
    writeFileSync(casePath(), caseOfLists());
    const t = start([casePath()], { columns: 60, rows: 40 });
    const asked = 'far apart are';
    await t.see(asked);
    await t.type('h', 'How to find out');
    await t.type('w', asked);
    await t.type('l', 'So far');
    await t.type('n', 'The note');
    await t.type('', asked);
    await t.type('3 kg', /mass[\s\S]*accepted[\s\S]*example/);
    for (let i = 0; i < 4; i++) await t.press('BSpace', '>');
    await t.type('40 in', 'Is that right?');
    await t.type('2', asked);
    await t.type('10 1/4', /10\.25 in \(26 cm\) \(taken in inches\)/);
    await t.type('<', 'Enter keeps: 10.25 in (26 cm)');
    await t.type('?', '= not known');
    await t.type('r', /spacing of the paired cones: not known/);
    await t.type('', 'Question');
    await t.type('f', 'What now');
    await t.type('s', 'exit code 0');
  }, 40_000);
});

// biome-ignore lint/suspicious/noControlCharactersInRegex: the sequence that switches bold on
const BOLD = /\u001b\[(?:0;)?1m/;

describe.runIf(hasTmux)('what is written where', () => {
  it('the result alone goes to standard output, without color in NO_COLOR, and the questions to the terminal', async () => {
    const out = join(folder, 'out.json');
    const line = `'${process.execPath}' '${CLI}' interview '${casePath()}' --full --json > '${out}'`;
    const env = { XDG_STATE_HOME: join(folder, 'state'), NO_COLOR: '1' };
    const t = openTmux(['sh', '-c', line], { env });
    terminals.push(t);
    await toFirstFact(t);
    await t.type('2', SECOND);
    await t.type('f', 'What now');
    await t.type('', 'filed under');
    await t.type('', 'exit code 0');
    expect(t.allWithColors()).not.toMatch(BOLD);
    expect(JSON.parse(readFileSync(out, 'utf8'))).toMatchObject({ format: 'center-audit/report' });
  }, 40_000);

  it('color is there otherwise', async () => {
    const t = start([casePath()]);
    await t.see('own words');
    expect(t.allWithColors()).toMatch(BOLD);
  }, 40_000);
});

describe.runIf(hasTmux)('the end of a terminal', () => {
  it('Ctrl-D says how to go on, exits 130, and all answers are there', async () => {
    const t = start([casePath()]);
    await toFirstFact(t);
    await t.type('2', SECOND);
    await t.press('C-d', /Go on with: center-audit interview .*case\.json[\s\S]*exit code 130/);
    expect(facts().answers.get('playedContent')).toMatchObject({ value: 'multichannel-film' });
    expect(existsSync(lockFile(casePath()))).toBe(false);
  }, 40_000);

  it('kill -9 between answers loses none, and its lock does not stand in the way', async () => {
    const t = start([casePath()]);
    await toFirstFact(t);
    await t.type('2', SECOND);
    process.kill(t.pid(), 'SIGKILL');
    await t.see('exit code 137');
    expect(existsSync(lockFile(casePath()))).toBe(true);
    const again = start([casePath()]);
    await again.see(SECOND);
    expect(again.all()).toContain('Question 5');
  }, 40_000);

  it('a second interview on the case is told, and exits 2', async () => {
    const t = start([casePath()]);
    await toFirstFact(t);
    const second = start([casePath()]);
    await second.see(/another interview on this case is open \(process \d+[\s\S]*exit code 2/);
    await t.type('2', SECOND);
  }, 40_000);

  it('a closed window leaves the case whole and the lock free', async () => {
    const t = start([casePath()]);
    await toFirstFact(t);
    await t.type('2', SECOND);
    t.hangUp();
    await expect.poll(() => existsSync(lockFile(casePath())), { timeout: 10_000 }).toBe(false);
    expect(facts().answers.size).toBe(1);
  }, 40_000);

  it('a resized window goes on', async () => {
    const t = start([casePath()]);
    await toFirstFact(t);
    t.resize(44, 20);
    await t.type('2', SECOND);
    t.resize(100, 40);
    await t.type('1', THIRD);
    expect(facts().answers.size).toBe(2);
  }, 40_000);
});

describe.runIf(hasTmux)('the accessible mode', () => {
  it('asks in plain lines, takes the same marks, stops at Ctrl-C', async () => {
    const t = start([casePath(), '--accessible'], { columns: 60 });
    await toFirstFact(t);
    await t.type('televisoin', /Did you mean “television programs”/);
    await t.type('w', 'It saves');
    await t.type('3', SECOND);
    await t.type('<', 'Enter keeps: television');
    await t.press('C-c', 'exit code 130');
    expect(t.all()).toContain('Go on with');
  }, 40_000);
});

describe.runIf(hasTmux)('an interview that is stopped with Ctrl-Z', () => {
  it.each(['', '--accessible'])(
    'goes on at the same letter with fg %s',
    async (option) => {
      const env = { XDG_STATE_HOME: join(folder, 'state') };
      const t = openTmux(['env', 'PS1=> ', 'bash', '--norc', '-i'], { env });
      terminals.push(t);
      await t.type(`${process.execPath} ${CLI} interview ${option}`, 'own words');
      await t.press('h', '> h');
      await t.press('C-z', 'Stopped');
      await t.type('fg', 'interview');
      await t.type('ollow', 'sounds hollow');
    },
    40_000,
  );
});
