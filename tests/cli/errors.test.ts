/** What goes wrong is told on standard error in one shape, with the exit code of the contract. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { failure } from '../../src/commands/failure.js';
import { program, workFolder } from '../support/program.js';

const folder = workFolder();
const file = (name: string, content: string | Uint8Array): string => {
  writeFileSync(join(folder.path, name), content);
  return name;
};
const demo = '{"facts":{"centerLayout":"coaxial"}}';
file('case.json', demo);
mkdirSync(join(folder.path, 'folder'));
afterAll(() => folder.remove());

const run = (...args: string[]) => program(args, { cwd: folder.path });

describe('a case that cannot be read ends with exit code 2 and nothing on standard output', () => {
  it.each([
    ['a folder', () => 'folder', /this is a folder/],
    ['an empty file', () => file('empty.json', ''), /the file is empty/],
    [
      'half-written JSON',
      () => file('half.json', '{"facts": {"centerLayout": '),
      /half\.json: line 1, column/,
    ],
    [
      'a fact that does not exist',
      () => file('unknown.json', '{"facts":{"seatDistanse":3}}'),
      /seatDistance/,
    ],
    [
      'a length in kilograms',
      () => file('mass.json', '{"facts":{"seatDistance":"3 kg"}}'),
      /is a mass, and a length/,
    ],
    ['a file that is not there', () => 'cass.json', /no such file; did you mean case\.json\?/],
    ['a file in Latin-1', () => file('latin.json', Buffer.from('{"title":"caf\u00e9"}', 'latin1')), /UTF-8/],
    ['zero bytes', () => file('zero.json', '{"title":"\0"}'), /zero byte/],
    ['a newer version', () => file('new.json', '{"version":3}'), /newer than this program reads/],
  ])('%s', async (_, name, told) => {
    const { code, out, err } = await run('audit', name());
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(told);
    expect(err).toMatch(/\n {2}accepted: /);
  });

  it('every problem of a case is told, each with its place', async () => {
    file('two.json', '{\n "facts": {\n  "seatDistance": "3 kg",\n  "earHeight": "900 m"\n }\n}');
    const { err } = await run('audit', 'two.json');
    expect(err).toMatch(/two\.json: facts\.seatDistance, line 3/);
    expect(err).toMatch(/two\.json: facts\.earHeight, line 4/);
  });

  it('a device without end is refused in bounded time', async () => {
    const { code, err } = await run('audit', '/dev/zero');
    expect(code).toBe(2);
    expect(err).toMatch(/larger than 1 MiB/);
  });
});

describe('a slip in the command line is answered with the word that was meant', () => {
  it.each([
    [['adit', 'case.json'], /no command "adit"; did you mean audit\?/],
    [['audit', 'case.json', '--formt', 'json'], /unknown option '--formt'; did you mean --format\?/],
    [['audit', 'case.json', '--format', 'htlm'], /"htlm" is none of the choices; did you mean html\?/],
    [['why', 'case.json', 'dely'], /no cause "dely"; did you mean delay\?/],
    [['why', 'case.json', 'delay', '--against', 'levle'], /no cause "levle"; did you mean level\?/],
    [['try', 'case.json', 'seatDistnce=3 m'], /no fact "seatDistnce"; did you mean seatDistance\?/],
    [['explain', 'dely'], /no page for "dely"; did you mean delay/],
    [['calc', 'com'], /no calculator; did you mean comb\?/],
    [['help', 'adit'], /did you mean audit\?/],
    [['completion', 'bsh'], /did you mean bash\?/],
    [['why', 'case.json'], /missing required argument 'CAUSE'/],
    [['audit'], /missing required argument 'CASE'/],
    [['audit', 'case.json', '--format'], /argument missing/],
    [['audit', 'case.json', '--json', '--format', 'text'], /two things at once/],
    [['audit', 'case.json', '--jobs', 'many'], /a whole number from 1 to 64/],
    [['next', 'case.json', '--minutes', '-3'], /a whole number from 1 to 600/],
    [['audit', '-', '-'], /read only once/],
    [['compare', '-', '-'], /read only once/],
    [['why', 'case.json', 'delay', '--against', 'delay'], /beside itself/],
    [['audit', 'case.json', 'case.json', '--format', 'html'], /a page holds one case/],
    [['facts', 'extra'], /too many arguments/],
  ])('%j', async (args, told) => {
    const { code, out, err } = await run(...args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(told);
    expect(err).toMatch(/\n {2}accepted: /);
  });
});

describe('no case is ever lost to --output', () => {
  it.each(['case.json', join('folder', '..', 'case.json')])('%s is refused', async (output) => {
    const { code, err } = await run('audit', 'case.json', '--output', output);
    expect(code).toBe(2);
    expect(err).toMatch(/a case file, which is never overwritten/);
  });

  it('a case that is not among those read is refused as well', async () => {
    file('other.json', demo);
    const { code, err } = await run('audit', 'case.json', '--output', 'other.json');
    expect(code).toBe(2);
    expect(err).toMatch(/no report of this program, and nothing else is ever overwritten/);
    expect(readFileSync(join(folder.path, 'other.json'), 'utf8')).toBe(demo);
  });

  it('an earlier report is replaced, and nothing else is left in the folder', async () => {
    const before = await run('audit', 'case.json', '--json', '--output', 'report.json');
    const again = await run('audit', 'case.json', '--json', '--output', 'report.json');
    expect([before.code, again.code]).toEqual([0, 0]);
    expect(again.out).toBe('');
    expect(again.err).toMatch(/Written to report\.json/);
    expect(readdirSync(folder.path).filter((name) => name.startsWith('report'))).toEqual(['report.json']);
  });

  it('a folder that cannot be written to is told', async () => {
    const { code, err } = await run('audit', 'case.json', '--output', 'nowhere/report.txt');
    expect(code).toBe(2);
    expect(err).toMatch(/cannot be written \(ENOENT\)/);
  });
});

describe('faults of the program itself', () => {
  it('are told shortly with exit code 1, and with the stack on request', () => {
    const fault = new RangeError('no such thing\nsecond line');
    const short = failure(fault, {});
    expect(short.code).toBe(1);
    expect(short.text).toContain('no such thing');
    expect(short.text).not.toMatch(/second line| at /);
    expect(failure(fault, { CENTER_AUDIT_DEBUG: '1' }).text).toMatch(/ at /);
  });
});
