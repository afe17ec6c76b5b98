/** The report in Markdown: which parts it has, in which order. */
import { describe, expect, it } from 'vitest';
import { renderMarkdown } from '../../../src/explain/render/markdown.js';
import { fullReport, madeReport } from '../madeReport.js';

const headings = (text: string): string[] => text.split('\n').filter((line) => /^##? /.test(line));

describe('the report in Markdown', () => {
  it('has the verdict right below its title, then every part', () => {
    const text = renderMarkdown(fullReport());
    expect(text).toMatch(
      /^# Center loudspeaker audit: Near sofa\n\n\*\*The center comes late\.\*\* Likely, about 80%\./,
    );
    expect(headings(text).slice(1)).toEqual([
      '## Ranking',
      '## The leading cause',
      '## What to do, in this order',
      '## Also possible',
      '## What you told us',
      '## What does not fit together',
      '## Seats',
      '## Not known yet, and how to find out',
      '## Assumed, since it was not told',
      '## The seamless switch: how to hear that it is right',
      '## Looked at, and fine or unlikely',
      '## Not judged',
      '## Where the numbers come from',
      '## Words',
    ]);
  });
  it('leaves out what has nothing in it', () => {
    expect(headings(renderMarkdown(madeReport()))).toEqual([
      '# Center loudspeaker audit',
      '## Ranking',
      '## Seats',
    ]);
  });
});
