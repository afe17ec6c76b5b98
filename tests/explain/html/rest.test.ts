/** What stands behind the verdict, section by section; a section without content is none. */
import { describe, expect, it } from 'vitest';
import {
  assumedPart,
  clashPart,
  glossaryPart,
  judgedPart,
  seamlessPart,
  seatsPart,
  sourcesPart,
  toldPart,
  unknownPart,
} from '../../../src/explain/html/rest.js';
import type { Report } from '../../../src/explain/report-types.js';
import { madeCause, madeReport, madeTold, madeUnknown, times, wordsIn } from '../madeReport.js';

const read = (part: (report: Report) => string, changes: Parameters<typeof madeReport>[0]): string =>
  wordsIn(part(madeReport(changes)));

describe('what was told', () => {
  it('begins with the words of the owner, line by line and escaped', () => {
    expect(toldPart(madeReport({ words: 'muffled <b>\nat the end' }))).toBe(
      '<blockquote><p>muffled &lt;b&gt;<br>at the end</p></blockquote>',
    );
    expect(toldPart(madeReport())).toBe('');
  });
  it('names what is heard, what is not, and what was tried', () => {
    const report = {
      complaints: [{ title: 'hollow voice' }],
      notHeard: [{ title: 'hum' }],
      tried: ['Turn it'],
    } as never;
    expect(read(toldPart, report)).toBe(
      'You hear: hollow voice.|You do not hear: hum.|Tried already: Turn it.',
    );
  });
  it('has every answer folded away, and says of what is not known once that it is not', () => {
    const report = {
      told: [madeTold('seatDistance', '3 m'), madeTold('upmixUse', 'not known', 'not known')],
    };
    expect(read(toldPart, report)).toBe(
      'All 2 answers|Answers, and how each was found out|what|answer|how|Label of seatDistance|3 m|measured|Label of upmixUse|not known',
    );
    expect(toldPart(madeReport(report))).toContain('<table class="told">');
    expect(toldPart(madeReport(report))).toMatch(/<td>not known<\/td><td><\/td>/);
  });
  it('ends with the notes as simple Markdown', () => {
    expect(toldPart(madeReport({ notes: ['*one*', 'two'] }))).toBe(
      '<h3>Notes</h3><p><em>one</em></p>\n<p>two</p>\n',
    );
  });
});

describe('what does not fit together', () => {
  it('is each contradiction and each remark, as sentences', () => {
    const contradictions = [{ text: 'Both cannot be < true.' }] as never;
    expect(read(clashPart, { contradictions, remarks: ['no angle follows'] })).toBe(
      'Both cannot be &lt; true.|No angle follows.',
    );
    expect(read(clashPart, {})).toBe('');
  });
});

describe('the seats', () => {
  it('are a table with what could not be computed below it', () => {
    const seats = [
      {
        name: 'sofa',
        main: true,
        azimuthDeg: 12,
        dipDb: null,
        dipHz: null,
        speechLossDb: null,
        centerMinusMainsMs: null,
      },
    ];
    expect(read(seatsPart, { seats: seats as never })).toMatch(
      /^What each seat gets from the center\|seat\|angle\|sofa \(main\)\|12° right\|Not computed yet: .*\.$/,
    );
    expect(seatsPart(madeReport({ seats: seats as never }))).toContain('<p class="soft">Not computed yet');
  });
});

describe('what is not known yet', () => {
  const causes = [madeCause('delay'), madeCause('level')];
  it('is told with minutes, how to find out, what it settles, and its cautions', () => {
    const unknown = [
      madeUnknown('the <height>', {
        settles: ['delay', 'level', 'aim', 'height'],
        cautions: ['Mind the step.'],
      }),
      madeUnknown('width', { settles: ['level', 'aim'] }),
    ];
    expect(read(unknownPart, { unknown, causes })).toBe(
      'The &lt;height&gt; (2 minutes): Measure the &lt;height&gt;.|It helps to settle “Title of delay”, “Title of level” and 2 more causes.|Caution: Mind the step.|Width (2 minutes): Measure width.|It helps to settle “Title of level” and “Aim”.',
    );
    expect(read(unknownPart, { unknown: [madeUnknown('width')], causes })).not.toContain('settle');
    expect(read(unknownPart, {})).toBe('');
  });
  it('shows six, and whatever the owner was asked and did not know; the others by name', () => {
    const names = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'];
    const unknown = names.map((name) => madeUnknown(name, { asked: name === 'h' }));
    const html = unknownPart(madeReport({ unknown }));
    expect(times(html, '<li>')).toBe(7);
    expect(wordsIn(html)).toMatch(
      /\|F \(2 minutes\): .*\|H \(2 minutes\): .*\|2 more answers that would help less\|G and i\.$/,
    );
    expect(read(unknownPart, { unknown: unknown.slice(0, 6) })).not.toContain('more answer');
  });
});

describe('what was assumed', () => {
  it('is a table of values, each with why and effect', () => {
    const assumed = [{ label: 'ear height', value: '1 m', note: 'usual', effect: 'It bears on “x”.' }];
    expect(read(assumedPart, { assumed: assumed as never })).toMatch(
      /^What rests on .*\|Taken as usual, since it was not told\|what\|taken as\|why\|effect\|Ear height\|1 m\|usual\|It bears on “x”\.$/,
    );
    expect(read(assumedPart, {})).toBe('');
  });
});

describe('the seamless switch', () => {
  it('marks what fits and what does not, leaves out what is open, then says how to listen', () => {
    const seamlessSwitch = {
      passes: false,
      summary: 'It will be heard.',
      steps: ['Sit down.', 'Listen.'],
      note: 'It is not the same.',
      checks: [
        { text: 'level <1 dB', passes: true },
        { text: 'time', passes: false },
        { text: 'place', passes: null },
      ],
    } as never;
    const html = seamlessPart(madeReport({ seamlessSwitch }));
    expect(wordsIn(html)).toBe(
      'It will be heard.|Fits: Level &lt;1 dB.|Does not fit: Time.|Sit down.|Listen.|It is not the same.',
    );
    expect(html).toContain('<ol><li>Sit down.</li>');
    expect(html).toContain('<p class="soft">It is not the same.</p>');
  });
});

describe('the other causes', () => {
  const aside = (title: string) => ({ cause: 'aim', title, text: `why ${title}` }) as never;
  it('are what is fine with its reason, what is not judged, and what the system has not', () => {
    const changes = {
      fine: [aside('a < b'), aside('c')],
      cannotTell: [aside('d'), aside('e')],
      notApplicable: [aside('f'), aside('g')],
    };
    expect(read(judgedPart, changes)).toBe(
      'Checked and fine: 2 causes|a &lt; b: no. why a &lt; b|c: no. why c|Nothing that was told speaks for or against these: d; e.|No part of this system: f; g.',
    );
    expect(read(judgedPart, {})).toBe('');
  });
});

describe('sources and words', () => {
  it('stand with their mark and their meaning', () => {
    expect(read(sourcesPart, { sources: [{ cite: 'a book <1>', markText: 'read' }] as never })).toBe(
      'A book &lt;1&gt; [read].',
    );
    const glossary = [{ term: 'dip', meaning: 'a weaker <range>' }];
    expect(glossaryPart(madeReport({ glossary }))).toBe(
      '<dl><dt>Dip</dt><dd>A weaker &lt;range&gt;.</dd></dl>',
    );
    expect([glossaryPart(madeReport()), sourcesPart(madeReport())]).toEqual(['', '']);
  });
});
