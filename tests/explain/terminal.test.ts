import { describe, expect, it } from 'vitest';
import { type TerminalState, textOptions, useColor } from '../../src/explain/terminal.js';

const on = (env: TerminalState['env'] = {}, columns = 80): TerminalState => ({
  env: { LANG: 'en_US.UTF-8', ...env },
  stdoutIsTerminal: true,
  columns,
});

describe('color', () => {
  it('is used on a terminal and never in a pipe or file, whatever is asked', () => {
    expect(useColor(true, {})).toBe(true);
    expect(useColor(false, {}, true)).toBe(false);
    expect(textOptions(on(), { color: true, toFile: true }).color).toBe(false);
    expect(useColor(false, { FORCE_COLOR: '1', CI: '1' })).toBe(false);
  });
  it('obeys NO_COLOR when it is not empty, --no-color and a dumb terminal', () => {
    expect(useColor(true, { NO_COLOR: '1' })).toBe(false);
    expect(useColor(true, { NO_COLOR: '' })).toBe(true);
    expect(useColor(true, {}, false)).toBe(false);
    expect(useColor(true, { TERM: 'dumb' })).toBe(false);
    expect(useColor(true, { NO_COLOR: '1' }, true)).toBe(true);
    expect(textOptions(on()).color).toBe(true);
  });
});

describe('width and letters', () => {
  it('wraps between 40 and 100 columns, at 80 where there is no terminal', () => {
    expect([20, 64, 300].map((columns) => textOptions(on({}, columns)).width)).toEqual([40, 64, 100]);
    expect(textOptions({ ...on(), stdoutIsTerminal: false, columns: 200 }).width).toBe(80);
    expect(textOptions(on({}, Number.NaN)).width).toBe(80);
  });
  it('keeps to plain letters where the locale says so', () => {
    expect(textOptions(on({ LANG: 'C' })).ascii).toBe(true);
    expect(textOptions(on({ LC_ALL: 'de_DE.utf8', LANG: 'C' })).ascii).toBe(false);
    expect(textOptions(on({ TERM: 'dumb' })).ascii).toBe(true);
    expect(textOptions(on({ TERM: 'linux' })).ascii).toBe(true);
    const { LANG: _, ...none } = on().env;
    expect(textOptions({ ...on(), env: none }).ascii).toBe(false);
  });
  it('is accessible on request or by the variable', () => {
    expect(textOptions(on({ ACCESSIBLE: '1' }))).toMatchObject({ accessible: true, color: false });
    expect(textOptions(on(), { accessible: true }).accessible).toBe(true);
  });
});
