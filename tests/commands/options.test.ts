/** Options that many commands share. */
import { describe, expect, it } from 'vitest';
import { formatOf, textFlags } from '../../src/commands/options.js';

describe('the format', () => {
  it.each([
    [{}, 'text'],
    [{ json: true }, 'json'],
    [{ format: 'html' }, 'html'],
    [{ json: true, format: 'json' }, 'json'],
  ])('%j is %s', (options, format) => expect(formatOf(options)).toBe(format));

  it('cannot be two at once', () => {
    expect(() => formatOf({ json: true, format: 'text' })).toThrow(/two things at once/);
  });
});

it('a flag that was not typed leaves the decision to the environment', () => {
  expect(textFlags({ color: true })).toEqual({});
  expect(textFlags({ color: false, accessible: true })).toEqual({ color: false, accessible: true });
});
