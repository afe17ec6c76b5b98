/** The language of everything people read: no blame, no banned words, short sentences, American spelling. */

import { describe, expect, it } from 'vitest';
import { GLOSSARY } from '../../src/explain/glossary.js';
import { sentencesOf } from '../../src/explain/words.js';
import { FACTS } from '../../src/facts/catalog.js';
import { COMPLAINTS } from '../../src/facts/complaints.js';
import { SEVERITIES } from '../../src/rules/cause.js';
import { CAUTIONS } from '../../src/rules/cautions.js';
import { CAUSES } from '../../src/rules/index.js';
import { LIMITS } from '../../src/rules/limits.js';
import { renderText, reportOn } from '../support/formats.js';
import { LOBING, SPARSE } from './books.js';

/**
 * House list: words that plead, blame, talk down or belong to machines. `just` and `easy` are left alone: a thing
 * may be just noticed and easy to place; so is `please` where two channels please more.
 */
const BANNED = [
  'please (?:check|enter|try|use|see|do|make|set|note|tell|give|be|listen)',
  '(?:^|[.!?,;] )please',
  'sorry',
  'invalid',
  'illegal',
  'forbidden',
  'oops',
  'obvious(?:ly)?',
  'simply',
  'trivial(?:ly)?',
  'easily',
  'fatal',
  'abort',
  'stupid',
  'user error',
  'unfortunately',
  'of course',
  'should have',
];
const BRITISH = [
  'centre',
  'colour',
  'equalise',
  'equalisation',
  'favour',
  'grey',
  'programme',
  'metre',
  'centimetre',
  'fibre',
  'neighbour',
  'organise',
  'recognise',
  'behaviour',
  'analyse',
];

const own: [string, string][] = [
  ...CAUSES.flatMap((cause): [string, string][] => [
    [`${cause.id} title`, cause.title],
    [`${cause.id} story`, cause.story],
    [`${cause.id} notWhen`, cause.notWhen],
    ...cause.rules.flatMap((rule): [string, string][] => [
      [`${cause.id}/${rule.id} yes`, rule.says.yes],
      [`${cause.id}/${rule.id} no`, rule.says.no],
      [`${cause.id}/${rule.id} because`, rule.because],
    ]),
    ...cause.remedies.flatMap((remedy): [string, string][] => [
      [`${cause.id} ${remedy.id} title`, remedy.title],
      [`${cause.id} ${remedy.id} steps`, remedy.steps.join(' ')],
      [`${cause.id} ${remedy.id} expect`, remedy.expect],
      [`${cause.id} ${remedy.id} verify`, remedy.verify],
    ]),
  ]),
  ...Object.entries(CAUTIONS),
  ...Object.entries(SEVERITIES),
  ...Object.entries(GLOSSARY),
  ...Object.entries(LIMITS).map(([id, each]): [string, string] => [id, `${each.label}. ${each.note}`]),
  ...Object.entries(COMPLAINTS).map(([id, each]): [string, string] => [id, each.hint]),
  ...Object.entries(FACTS).flatMap(([id, spec]): [string, string][] => [
    [id, [spec.label, spec.ask, spec.hint, spec.why, ...spec.findOut].join(' ')],
    ...('choices' in spec
      ? Object.entries(spec.choices).map(([v, words]): [string, string] => [`${id} ${v}`, words])
      : []),
  ]),
  ['a decided report', renderText(reportOn(LOBING))],
  ['an open report', renderText(reportOn(SPARSE))],
];

const holding = (words: readonly string[]): string[] =>
  own.flatMap(([where, text]) =>
    words
      .filter((word) => new RegExp(`(?<![\\w])${word}s?\\b`, 'i').test(text))
      .map((word) => `${where}: ${word}`),
  );

describe('language', () => {
  it('uses no banned word anywhere people read', () => {
    expect(holding(BANNED)).toEqual([]);
  });
  it('spells as Americans do', () => {
    expect(holding(BRITISH)).toEqual([]);
  });
  it('keeps sentences short: 25 words mostly, never above 45', () => {
    const lengths = own
      .filter(([where]) => !where.includes('report'))
      .flatMap(([where, text]) =>
        sentencesOf(text).map((each) => [where, each.split(/\s+/).length] as const),
      );
    expect(lengths.filter(([, words]) => words > 45)).toEqual([]);
    const long = lengths.filter(([, words]) => words > 25).length;
    expect(long / lengths.length).toBeLessThan(0.1);
  });
  it('gives no advice in the headline of a cause', () => {
    const orders =
      /^(set|turn|move|check|lift|raise|lower|use|try|put|make|buy|replace|change|switch|measure)\b/i;
    expect(CAUSES.filter((cause) => orders.test(cause.title)).map((cause) => cause.title)).toEqual([]);
  });
});
