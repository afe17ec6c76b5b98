import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run as audit } from '../../src/commands/audit.js';
import { run as explain } from '../../src/commands/explain.js';
import { run as learn } from '../../src/commands/learn.js';
import { solvedFrom } from '../../src/commands/priors-file.js';
import { memoryIo } from '../support/memoryIo.js';

let folder: string;
const at = (name: string): string => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'learn-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const FLAGS = { color: false };
function kept(name: string, trials: readonly object[]): string {
  const file = { format: 'center-audit/case', version: 2, complaints: ['hollow'], facts: {}, trials };
  writeFileSync(at(name), JSON.stringify(file));
  return at(name);
}
const cured = { act: 'delay/enter-taped-distances', outcome: 'gone', stays: true };

describe('learn', () => {
  it('counts solved cases, says which told nothing, and writes what --priors reads', async () => {
    const io = memoryIo();
    const cases = [kept('a.json', [cured]), kept('b.json', [cured]), kept('c.json', [])];
    expect(await learn(io, cases, { ...FLAGS, output: at('priors.json') })).toBe(0);
    expect(io.printed.err).toMatch(
      /Not counted[\s\S]*c\.json[\s\S]*2 solved cases counted: delay 2 \([\d.]+ expected\)/,
    );
    const text = readFileSync(at('priors.json'), 'utf8');
    expect(solvedFrom('priors.json', text)).toMatchObject({
      cases: 2,
      byCause: { delay: { solved: 2 }, level: { solved: 0 } },
    });
  });
  it('is told by whatever uses them: on standard error, in the verdict, and both priors on the page', async () => {
    const open = kept('open.json', []);
    await learn(memoryIo(), [kept('a.json', [cured])], { ...FLAGS, output: at('priors.json') });
    const flags = { ...FLAGS, priors: at('priors.json') };
    const audited = memoryIo();
    await audit(audited, [open], { ...flags, json: true });
    expect(audited.printed.err).toMatch(/In use: priors drawn toward 1 solved case of .*priors\.json/);
    expect(JSON.parse(audited.printed.out).verdict.confidence).toContain('priors drawn toward 1 solved case');
    const page = memoryIo();
    await explain(page, 'delay', flags);
    expect(page.printed.out).toMatch(/How common[\s\S]*In use/);
    const plain = memoryIo();
    await audit(plain, [open], { ...FLAGS, json: true });
    expect(plain.printed.out + plain.printed.err).not.toContain('priors drawn');
  });
  it('refuses to learn from nothing, and goes on after a bad case', async () => {
    await expect(learn(memoryIo(), [kept('c.json', [])], FLAGS)).rejects.toThrow(/none of 1 case tells/);
    writeFileSync(at('bad.json'), '{');
    const io = memoryIo();
    expect(await learn(io, [at('bad.json'), kept('a.json', [cured])], FLAGS)).toBe(2);
    expect(JSON.parse(io.printed.out)).toMatchObject({ format: 'center-audit/priors', version: 2, cases: 1 });
  });
  it.each([
    ['no JSON', '{', /no JSON/],
    ['another format', '{"format":"center-audit/case","version":2,"cases":0,"causes":{}}', /format/],
    [
      'a cause that does not exist',
      '{"format":"center-audit/priors","version":2,"cases":1,"causes":{"dealy":{"solved":1,"expected":1}}}',
      /did you mean delay/,
    ],
    [
      'more cures than cases',
      '{"format":"center-audit/priors","version":2,"cases":1,"causes":{"delay":{"solved":3,"expected":1}}}',
      /cannot have cured 3/,
    ],
    [
      'a count without what was to be expected',
      '{"format":"center-audit/priors","version":2,"cases":1,"causes":{"delay":{"solved":1}}}',
      /causes\.delay\.expected/,
    ],
    [
      'a count below nothing',
      '{"format":"center-audit/priors","version":2,"cases":1,"causes":{"delay":{"solved":-1,"expected":1}}}',
      /causes\.delay\.solved/,
    ],
  ])('refuses priors with %s', (_, text, why) => {
    expect(() => solvedFrom('priors.json', text)).toThrow(why);
  });
});
