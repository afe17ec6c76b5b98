/** Leading causes in full, possible ones in a line each. */
import { describe, expect, it } from 'vitest';
import { leadingPart, possiblePart } from '../../../src/explain/html/causes.js';
import type { Chart } from '../../../src/explain/plots/chart.js';
import type { Report, ReportCause } from '../../../src/explain/report-types.js';
import {
  madeBar,
  madeCause,
  madeChart,
  madeConfirm,
  madeEvidence,
  madeRemedy,
  madeReport,
  madeStep,
  times,
  wordsIn,
} from '../madeReport.js';

const leading = (causes: readonly ReportCause[], plan: Report['plan'] = [], charts: readonly Chart[] = []) =>
  leadingPart(madeReport({ causes, plan }), charts);
const pageOf = (changes: Partial<ReportCause>, plan: Report['plan'] = []): string =>
  leading([madeCause('delay', changes)], plan).markup;
const wordsOf = (changes: Partial<ReportCause>, plan: Report['plan'] = []): string =>
  wordsIn(pageOf(changes, plan));

describe('a leading cause', () => {
  it('is numbered among the leading ones, named, and says how sure and how bad it is', () => {
    const { markup } = leading([
      madeCause('delay'),
      madeCause('aim', { place: 'possible' }),
      madeCause('level', { title: 'Too <loud>' }),
      madeCause('height', { place: 'aside' }),
    ]);
    expect(times(markup, '<article')).toBe(2);
    expect(markup).toContain('<article id="cause-level" class="cause" aria-labelledby="cause-level-h">');
    expect(markup).toContain('<h3 id="cause-level-h">2. Too &lt;loud&gt;</h3>');
    expect(wordsIn(markup)).toMatch(
      /^1\. Title of delay\|Likely, about 80%\. If true: severe, speech is lost\.\|/,
    );
    expect(markup).not.toContain('\n\n');
  });
  it('parts what was found from what was computed, and what speaks against it', () => {
    const words = wordsOf({
      evidence: [
        madeEvidence('It is <heard>.'),
        madeEvidence('The dip is 5 dB.', { value: 5, weightText: 'strong, for it' }),
        madeEvidence('Nothing rattles.', { speaks: 'against', weightText: 'a hint, against it' }),
        madeEvidence('This says nothing.', { speaks: 'neither' }),
      ],
    });
    expect(words).toContain(
      '|Found|It is &lt;heard&gt;. (a hint, for it)|Computed|The dip is 5 dB. (strong, for it)|Speaks against it|Nothing rattles. (a hint, against it)|Why it harms|This is what happens.|One follows from the other.|',
    );
    expect(words).not.toContain('This says nothing.');
  });
  it('says so where only the complaint speaks for it', () => {
    const against = [madeEvidence('Nothing rattles.', { speaks: 'against' })];
    expect(wordsOf({ evidence: against, sharedDb: 2 })).toContain(
      '|Found|Nothing of its own speaks for it yet; the complaint does.|Speaks against it|Nothing rattles.',
    );
    expect(wordsOf({ evidence: against, sharedDb: 0 })).toContain('|Found|Nothing speaks for it yet.|');
    expect(wordsOf({ evidence: against })).toContain('|Why it harms|This is what happens.|When it');
    expect(wordsOf({ evidence: [madeEvidence('It is heard.')] })).not.toContain('Nothing of its own');
  });
  it('names two assumed values, and counts more', () => {
    const said = (...assumedLabels: string[]) =>
      wordsOf({ evidence: [madeEvidence('So.', { assumedLabels })] });
    expect(said()).toContain('So. (a hint, for it)|');
    expect(said('the distance', 'the height')).toContain(
      '(a hint, for it; assumed: the distance and the height)',
    );
    expect(said('a', 'b', 'c')).toContain('(a hint, for it; assumed: 3 values)');
  });
  it('draws a bar for each value near its threshold that speaks for or against it', () => {
    const item = (text: string, speaks: 'for' | 'against' | 'neither', near = true) =>
      madeEvidence(text, { speaks, value: 5, range: madeBar({ near, label: text }) });
    const html = pageOf({
      evidence: [
        item('one', 'for'),
        item('two', 'against'),
        item('three', 'neither'),
        item('four', 'for', false),
      ],
    });
    expect([...html.matchAll(/<div class="range"><p>(\w+):/g)].map((match) => match[1])).toEqual([
      'One',
      'Two',
    ]);
    expect(html).toContain('id="range-delay-one');
  });
  it('ends with when it is wrongly blamed', () => {
    expect(wordsOf({})).toMatch(/\|When it is wrongly blamed\|It was there before\.$/);
  });
});

describe('pictures', () => {
  const charts = (['tone', 'room-above', 'off-axis', 'stage'] as const).map((id) => madeChart(id));
  it('stand beside the cause they tell most about, best first, each once', () => {
    const { markup, used } = leading([madeCause('driver-layout'), madeCause('outer-tweeters')], [], charts);
    expect([...markup.matchAll(/id="figure-([\w-]+)"/g)].map((match) => match[1])).toEqual([
      'off-axis',
      'room-above',
    ]);
    expect(markup.indexOf('figure-room-above')).toBeLessThan(markup.indexOf('cause-outer-tweeters'));
    expect([...used]).toEqual(['off-axis', 'room-above']);
  });
  it('are none where the cause has none or none was drawn', () => {
    expect(leading([madeCause('overload')], [], charts).used.size).toBe(0);
    expect(leading([madeCause('delay')], [], charts).used.size).toBe(0);
  });
});

describe('what to do about a leading cause', () => {
  it('has each remedy not tried yet with effort, outlook, and how and check folded away', () => {
    const words = wordsOf({
      remedies: [
        madeRemedy('Turn', { cautions: ['Unplug it.'] }),
        madeRemedy('Tried', { tried: true }),
        madeRemedy('Move', { maybe: true }),
      ],
    });
    expect(words).toContain(
      '|What to do|Turn (5 minutes, free)|Expect: The voice clears.|Steps|Caution: Unplug it.|how to turn|Check: Listen again.|Move',
    );
    expect(words).toContain(
      '|Expect: The voice clears. If it suits your system; that is not known yet.|Steps|',
    );
    expect(words).not.toContain('Tried');
    expect(pageOf({ remedies: [madeRemedy('Tried', { tried: true })] })).not.toContain('What to do');
  });
  it('leads to the step of the plan instead of telling it twice', () => {
    const plan = [
      madeStep('Turn', { cause: 'level' }),
      madeStep('Something else'),
      madeStep('Turn', { cause: 'delay' }),
    ];
    const html = pageOf({ remedies: [madeRemedy('Turn')] }, plan);
    expect(html).toContain(' <a href="#step-3">Step 3 of the plan</a>');
    expect(html).not.toContain('how to turn');
    expect(pageOf({ remedies: [madeRemedy('Turn')] }, plan.slice(0, 1))).toContain('how to turn');
  });
});

describe('how to make sure of a leading cause', () => {
  it('names test, minutes, what confirms it, and how; cautions first', () => {
    const confirm = [madeConfirm('testTape', { outcomes: ['off', '<gone>'], cautions: ['Unplug it.'] })];
    expect(wordsOf({ confirm })).toContain(
      '|How to make sure|Check of testTape (3 minutes). It is this cause if the result is: off or &lt;gone&gt;.|Steps|Caution: Unplug it.|sit down|',
    );
    // A test serves every cause: its step in the plan may belong to another one.
    const plan = [madeStep('Check', { id: 'testTape', kind: 'test', cause: 'level' })];
    expect(pageOf({ confirm }, plan)).toContain('<a href="#step-1">');
  });
  it('says of a test that was done how it came out', () => {
    const done = (confirmed: boolean | null, result: string | null) =>
      wordsOf({ confirm: [madeConfirm('testTape', { confirmed, result })] });
    expect(done(true, 'it is <off>')).toContain(
      '|Check of testTape: done, “it is &lt;off&gt;”. This confirms it.|',
    );
    expect(done(false, 'it agrees')).toContain('“it agrees”. This does not confirm it.|');
    for (const words of [done(null, 'it agrees'), done(true, null)]) expect(words).toContain('(3 minutes)');
  });
});

describe('a possible cause', () => {
  const lineOf = (changes: Partial<ReportCause>): string =>
    wordsIn(possiblePart(madeReport({ causes: [madeCause('aim', { place: 'possible', ...changes })] })));
  it('is told in one line: how sure, its best reason, what to do', () => {
    const evidence = [
      madeEvidence('No.', { speaks: 'against' }),
      madeEvidence('It points <up>.'),
      madeEvidence('More.'),
    ];
    expect(lineOf({ title: 'a & b', evidence, remedies: [madeRemedy('Tilt it'), madeRemedy('Move')] })).toBe(
      'a &amp; b: likely, about 80%. It points &lt;up&gt;. To do: Tilt it (5 minutes, free).',
    );
    expect(lineOf({})).toBe(
      'Title of aim: likely, about 80%. Nothing of its own is known yet; the complaint fits.',
    );
  });
  it('proposes nothing that was tried already', () => {
    const remedies = [madeRemedy('Tilt it', { tried: true }), madeRemedy('Move it')];
    expect(lineOf({ remedies })).toMatch(/ To do: Move it \(5 minutes, free\)\.$/);
    expect(lineOf({ remedies: remedies.slice(0, 1) })).not.toContain('To do');
  });
  it('is neither a leading one nor one told aside', () => {
    const causes = [madeCause('delay'), madeCause('level', { place: 'aside' })];
    expect(possiblePart(madeReport({ causes }))).toBe('');
  });
});
