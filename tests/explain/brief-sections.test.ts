/** The later parts of a report in few lines: what is told, what is only named, and what is left out. */
import { describe, expect, it } from 'vitest';
import {
  briefAssumed,
  briefPlan,
  briefRest,
  briefSeamless,
  briefUnknown,
} from '../../src/explain/brief-sections.js';
import { fullReport, madeReport, madeStep, madeUnknown, partText, times } from './madeReport.js';

const steps = (count: number) => Array.from({ length: count }, (_, i) => madeStep(`Do ${i + 1}`));

describe('the plan in brief', () => {
  it('tells three steps with how and check, not again what to expect, and names the next four', () => {
    const text = partText(briefPlan, { plan: steps(9) });
    expect(times(text, '[ ]')).toBe(3);
    expect(text).toContain('How: How to do 3.');
    expect(text).toContain('Check: Listen again.');
    expect(text).not.toContain('Expect');
    expect(text.slice(text.indexOf('If that does not help:'))).toBe(
      'If that does not help:\n\n  - Do 4 (5 minutes, free).\n  - Do 5 (5 minutes, free).\n  - Do 6 (5 minutes, free).\n  - Do 7 (5 minutes, free).\n',
    );
  });
  it('names none where there are three, and says what to ask again after a change', () => {
    expect(partText(briefPlan, { plan: steps(3) })).not.toContain('If that');
    expect(partText(briefPlan, { plan: steps(3) })).not.toContain('Ask again');
    const askAgain = [
      { fact: 'upmixUse', label: 'upmix' },
      { fact: 'earHeight', label: 'ear height' },
    ] as const;
    expect(partText(briefPlan, { plan: steps(1), askAgain })).toContain(
      'Ask again what was answered before the change: upmix and ear height.',
    );
    expect(partText(briefPlan, {})).toBe('\n');
  });
});

describe('what is not known, in brief', () => {
  it('is five by name with their minutes, and the others by number', () => {
    const unknown = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((label) => madeUnknown(label));
    const text = partText(briefUnknown, { unknown });
    expect(text).toContain('  - E (2 minutes).\n  - And 2 more answers that would weigh less.\n');
    expect(text).not.toContain('F (2');
    expect(partText(briefUnknown, { unknown: unknown.slice(0, 5) })).not.toContain('And');
    expect(partText(briefUnknown, {})).toBe('\n');
  });
});

describe('what was assumed, in brief', () => {
  it('is named with its values in one sentence, with what that means', () => {
    const assumed = [
      { label: 'ear height', value: '1 m' },
      { label: 'angle', value: '0°' },
    ] as never;
    expect(partText(briefAssumed, { assumed })).toBe(
      'ASSUMED, SINCE IT WAS NOT TOLD\nEar height 1 m; angle 0°. What rests on one of these counts no more than a guess.\n',
    );
    expect(briefAssumed(madeReport())).toEqual([]);
  });
});

describe('the rest, in brief', () => {
  it('has the seamless switch in full: how it stands, the steps, and why it is not the same', () => {
    expect(partText(briefSeamless, fullReport())).toBe(
      'THE SEAMLESS SWITCH: HOW TO HEAR THAT IT IS RIGHT\nListen.\n\n  1. Sit down.\n\nNot the same.\n',
    );
  });
  it('names the other causes, those that are fine and those that are open', () => {
    const aside = (title: string) => ({ cause: 'aim', title, text: '' }) as const;
    const both = { fine: [aside('A'), aside('B')], cannotTell: [aside('C'), aside('D')] };
    expect(partText(briefRest, both)).toBe(
      'THE OTHER CAUSES\nFine or unlikely: A; B.\n\nNothing that was told speaks for or against these: C; D.\n',
    );
    expect(partText(briefRest, { fine: both.fine })).toBe('THE OTHER CAUSES\nFine or unlikely: A; B.\n');
    expect(partText(briefRest, { cannotTell: both.cannotTell })).not.toContain('Fine');
    expect(partText(briefRest, {})).toBe('\n');
  });
});
