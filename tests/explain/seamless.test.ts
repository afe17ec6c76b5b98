/** The seamless switch: held against what is just noticed, known or not. */
import { describe, expect, it } from 'vitest';
import { seamlessSwitch } from '../../src/explain/seamless.js';
import type { DerivedId } from '../../src/rules/derived/table.js';
import { LIMITS } from '../../src/rules/limits.js';
import type { View } from '../../src/rules/view.js';

const OF = {
  levelErrorDb: LIMITS.levelDb,
  delayErrorMs: LIMITS.delayMs,
  centerOffsetDeg: LIMITS.offsetDeg,
  heightMismatchDeg: LIMITS.heightDeg,
  mainSeatPullDeg: LIMITS.pullDeg,
} as const;
type Of = keyof typeof OF;
const IDS = Object.keys(OF) as Of[];
const viewOf = (values: Partial<Record<Of, number>>): View =>
  ({ read: (id: DerivedId) => ({ id, value: values[id as Of] }) }) as never as View;
const all = (value: (id: Of) => number) => Object.fromEntries(IDS.map((id) => [id, value(id)]));
const switchOf = (values: Partial<Record<Of, number>>) => seamlessSwitch(viewOf(values), 'metric');

describe('the seamless switch', () => {
  it('passes where every error is at most just noticed', () => {
    const found = switchOf(all((id) => OF[id].noticeable));
    expect(found.passes).toBe(true);
    expect(found.checks.map((check) => check.passes)).toEqual([true, true, true, true, true]);
    expect(found.checks.every((check) => check.text.includes('within'))).toBe(true);
    expect(found.summary).toContain('stay where it is');
  });
  it.each(IDS)('fails by %s alone, and says what will be heard', (bad) => {
    const found = switchOf(all((id) => (id === bad ? OF[id].noticeable * 1.01 : 0)));
    expect(found.passes).toBe(false);
    const failing = found.checks.filter((check) => check.passes === false);
    expect(failing).toHaveLength(1);
    expect(failing[0]).toMatchObject({ limit: OF[bad].noticeable, unit: OF[bad].unit });
    expect(failing[0]?.value).toBeCloseTo(OF[bad].noticeable * 1.01, 12);
    expect(failing[0]?.text).toContain('beyond');
    expect(found.summary).toContain('will be heard: ');
  });
  it('cannot be told while one is unknown and the others pass', () => {
    const { mainSeatPullDeg: _, ...known } = all(() => 0);
    const found = switchOf(known);
    expect(found.passes).toBeNull();
    expect(found.checks.at(-1)).toMatchObject({ passes: null, value: null });
    expect(found.checks.at(-1)?.text).toContain('not known yet');
    expect(found.summary).toContain('What is known speaks for it');
    expect(switchOf({}).summary).toContain('Nothing that decides it is known yet');
  });
  it('fails by one that is known, whatever is unknown', () => {
    const found = switchOf({ levelErrorDb: 9, delayErrorMs: 99 });
    expect(found.passes).toBe(false);
    expect(found.summary).toMatch(/loudness and the voice changes its tone or place\.$/);
  });
  it('keeps to itself what its texts are made of', () => {
    for (const check of switchOf({}).checks) expect('fails' in check).toBe(false);
  });
});
