/** Pages of computed facts, complaints, thresholds and sources: what rests on what. */
import { describe, expect, it } from 'vitest';
import {
  complaintPages,
  computedPages,
  sourcePages,
  thresholdPages,
} from '../../../src/explain/pages/facts.js';
import type { Page } from '../../../src/explain/pages/page.js';
import { capital, variableLabel } from '../../../src/explain/words.js';
import type { CauseId } from '../../../src/rules/cause-ids.js';
import { causeOf } from '../../../src/rules/index.js';
import { LIMITS } from '../../../src/rules/limits.js';
import { linesUnder, linksUnder } from './sections.js';

const titleOf = (id: CauseId): string => capital(causeOf(id).title);
const pageIn = (pages: readonly Page[], id: string): Page => {
  const found = pages.find((page) => page.id === id);
  if (!found) throw new Error(`no page ${id}`);
  return found;
};

describe('the page of a computed fact', () => {
  const page = (id: string) => pageIn(computedPages(), id);
  it('tells its unit, or that it is a choice or a plain number', () => {
    expect(linesUnder(page('layoutDipDb'))).toEqual(['Computed from the answers; unit dB.']);
    expect(linesUnder(page('layoutKind'))).toEqual(['Computed from the answers; a choice.']);
    expect(linesUnder(page('sharedContent'))).toEqual(['Computed from the answers; unit none.']);
  });
  it('links what it can rest on and the rules that read it', () => {
    expect(linksUnder(page('layoutKind'), 'It can rest on')).toEqual(
      [
        'centerCount',
        'twinArrangement',
        'twinSpacing',
        'centerLayout',
        'fullRangeMidSide',
        'centerOrientation',
        'centerTweeterSpacing',
      ].map((id) => `fact/${id}`),
    );
    expect(linksUnder(page('layoutDipDb'), 'Rules that read it')).toEqual([
      'rule/driver-layout/dip-at-worst-seat',
    ]);
    expect(linesUnder(page('layoutDipDb'), 'Rules that read it')).toEqual([
      `${titleOf('driver-layout')}: dip at worst seat`,
    ]);
    expect(page('layoutDipDb').title.toLowerCase()).toBe(variableLabel('layoutDipDb').toLowerCase());
  });
});

describe('the page of a complaint', () => {
  it('says how often it comes without a cause, and which causes make it, the likeliest first', () => {
    const page = pageIn(complaintPages(), 'echo');
    expect(linesUnder(page)[1]).toBe(
      'Without any cause listed here it comes up in about 5% of systems (our judgment).',
    );
    const causes = linesUnder(page, 'Causes that make it');
    const shares = causes.map((line) =>
      Number(/in about (\d+)% of the systems that have it\.$/.exec(line)?.[1]),
    );
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(causes).toContain(`${titleOf('delay')}: in about 8% of the systems that have it.`);
    expect(linksUnder(page, 'Causes that make it')).toHaveLength(shares.length);
    expect(linksUnder(page, 'Causes that make it')).not.toContain('cause/height');
  });
});

describe('the page of a threshold', () => {
  const page = (id: string) => pageIn(thresholdPages(), id);
  it('has its three grades, upward or downward, and its reason', () => {
    expect(linesUnder(page('delayMs')).slice(0, 3)).toEqual([
      'noticeable | 0.1 ms and more',
      'clear | 0.25 ms and more',
      'severe | 0.5 ms and more',
    ]);
    expect(linesUnder(page('baseNarrowDeg'))[1]).toBe('clear | 35° and less');
    expect(linesUnder(page('delayMs'))[3]).toContain(LIMITS.delayMs.note);
  });
  it('links the rules that compare with it and its source', () => {
    expect(linksUnder(page('delayMs'), 'Rules that compare with it')).toEqual([
      'rule/delay/arrival-error',
      'rule/delay/arrival-measured',
      'rule/delay/latency-found',
      'rule/delay/latency-left',
      'rule/delay/step-too-coarse',
      'rule/delay/tape-disagrees',
    ]);
    expect(linksUnder(page('delayMs'), 'Source')).toEqual(['source/time-image']);
  });
});

describe('the page of a source', () => {
  const page = (id: string) => pageIn(sourcePages(), id);
  it('says how far to trust it', () => {
    expect(linesUnder(page('geometry'))).toEqual(['How far to trust it: computed here.']);
  });
  it('links the thresholds from it and the rules that rest on it', () => {
    expect(linksUnder(page('shared-part'), 'Thresholds from it')).toEqual(['threshold/sharedPart']);
    const rules = linksUnder(page('geometry'), 'Rules that rest on it');
    expect(rules).toContain('rule/delay/tape-disagrees');
    expect(rules).not.toContain('rule/delay/arrival-error');
  });
});
