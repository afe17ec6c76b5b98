/** The report for other programs. */
import { describe, expect, it } from 'vitest';
import { renderJson } from '../../../src/explain/render/json.js';
import { fullReport, madeReport } from '../madeReport.js';

describe('the report as JSON', () => {
  it('is the report, indented by two, with a line end', () => {
    const text = renderJson(fullReport());
    expect(JSON.parse(text)).toEqual(fullReport());
    expect(text).toMatch(
      /^\{\n {2}"format": "center-audit\/report",\n {2}"version": 1,\n {2}"verdict": \{\n {4}"/,
    );
    expect(text).toMatch(/\n\}\n$/);
  });
  it('is one line on request', () => {
    const text = renderJson(madeReport({ title: 'a\nb' }), { indent: false });
    expect(text.split('\n')).toHaveLength(2);
    expect(JSON.parse(text).title).toBe('a\nb');
    expect(renderJson(madeReport(), { indent: true })).toBe(renderJson(madeReport()));
  });
});
