/** A case as it comes to a command: what is told along the way, and what its report calls it. */
import { describe, expect, it } from 'vitest';
import { auditOne, type Job } from '../../src/commands/batch/one.js';
import { caseFrom, warningsText } from '../../src/commands/load-case.js';
import { PLAIN_TEXT } from '../../src/explain/terminal.js';
import { inVain } from '../support/trials.js';

const bytes = (value: object): Uint8Array => new TextEncoder().encode(JSON.stringify(value));
const triedOnly = (...tried: string[]): string =>
  warningsText(caseFrom('mine.json', bytes({ units: 'metric', tried })));

describe('a remedy that was carried out', () => {
  it('passes without a word when it is known', () => {
    expect(triedOnly('driver-layout/turn-over')).toBe('');
  });
  it('is told with its place and the nearest name when it is mistyped, and stays in the case', () => {
    expect(triedOnly('driver-layout/turn-over', 'driver-layout/turnover1')).toBe(
      'mine.json: trials.1.act: no remedy is called “driver-layout/turnover1”, so it counts for nothing; did you mean “driver-layout/turn-over”?\n',
    );
    expect(caseFrom('mine.json', bytes({ tried: ['old/one'] })).book.trials).toEqual(inVain('old/one'));
  });
  it('gets no suggestion where nothing is near', () => {
    expect(triedOnly('much/prayer')).toBe(
      'mine.json: trials.0.act: no remedy is called “much/prayer”, so it counts for nothing\n',
    );
  });
});

describe('a case without a path', () => {
  const job: Job = { format: 'text', text: PLAIN_TEXT, long: false, debug: undefined };
  it('is called CASE in the commands of its report, since standard input is no file', async () => {
    const outcome = await auditOne(
      { name: 'standard input', several: false, bytes: bytes({ complaints: ['dull'] }) },
      job,
    );
    expect(outcome.out).toMatch(/center-audit (interview|why) CASE/);
    expect(outcome.out).not.toContain('standard input');
  });
});
