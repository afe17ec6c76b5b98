/** The library: the functions of `library-types.ts`, each a thin way to what the commands use. */
import { FORMATS, render } from './commands/formats.js';
import { withAllWarnings } from './commands/load-case.js';
import { readResponseFile, responsesIn } from './disk/response-files.js';
import { calculatorOf } from './explain/calculators/index.js';
import { check } from './explain/calculators/read-inputs.js';
import { nextWords } from './explain/next-words.js';
import { jsonReport } from './explain/render/json.js';
import { buildReport } from './explain/report.js';
import { PLAIN_TEXT } from './explain/terminal.js';
import type { FactBook } from './facts/book.js';
import { type CaseWarning, decodeCase, writeCase as written } from './facts/case-file.js';
import { UserError } from './lib/user-error.js';
import type * as Public from './library-types.js';
import { type Audit, audit } from './reasoning/audit.js';
import { next as proposal } from './reasoning/next.js';

export { CaseError } from './facts/case-file.js';
export { UserError } from './lib/user-error.js';

/** What stands behind a case and an audit: the model of the inside may change, what callers hold may not. */
const books = new WeakMap<Public.Case, FactBook>();
const audits = new WeakMap<Public.Audit, Audit>();

export const readCase: typeof Public.readCase = (text, { folder } = {}) => {
  const read = folder === undefined ? undefined : responsesIn(folder);
  const { book, warnings } = withAllWarnings(typeof text === 'string' ? text : decodeCase(text), read);
  return caseOf(book, warnings);
};

export const writeCase: typeof Public.writeCase = (of) => written(bookOf(of));

/** The lexicon is large, so that it is loaded where words are read. */
export const readWords: typeof Public.readWords = async (text) => {
  const { readText } = await import('./reading/read.js');
  const { draftOf } = await import('./reading/draft.js');
  const reading = readText(text);
  const { taken, unsure, left } = reading;
  return { draft: caseOf(draftOf(reading), []), taken, unsure, left };
};

export const auditCase: typeof Public.auditCase = async (of) => {
  const audited = await audit(bookOf(of));
  const { leader, undecided } = audited.ranking;
  const result: Public.Audit = Object.freeze({ leader, undecided });
  audits.set(result, audited);
  return result;
};

export const next: typeof Public.next = (of, options = {}) => {
  const audited = auditOf(of);
  return nextWords(audited, proposal(audited, options));
};

export const report: typeof Public.report = (of) => jsonReport(buildReport(auditOf(of)));

export const reportAs: typeof Public.reportAs = async (of, format, options = {}) => {
  const audited = auditOf(of);
  if (!FORMATS.includes(format))
    throw new UserError({
      where: 'reportAs',
      what: 'this is no format of a report',
      accepted: FORMATS.join(', '),
      example: 'text',
    });
  const settings = { caseName: 'CASE', ...options };
  return render(format, { report: buildReport(audited), audit: audited, text: PLAIN_TEXT, ...settings });
};

export const calculate: typeof Public.calculate = (name, values, { tell = () => {} } = {}) => {
  const calculator = calculatorOf(name);
  const checked = check(calculator, { values: new Map(Object.entries(values)), problems: [] });
  return calculator.run(checked, { tell, readResponse: readResponseFile });
};

function caseOf(book: FactBook, warnings: readonly CaseWarning[]): Public.Case {
  const told = warnings.map(({ path, text }) => ({ path, text }));
  const result: Public.Case = Object.freeze({ title: book.title ?? null, warnings: told });
  books.set(result, book);
  return result;
}

const bookOf = (of: Public.Case): FactBook => books.get(of) ?? stranger('a case of readCase or readWords');
const auditOf = (of: Public.Audit): Audit => audits.get(of) ?? stranger('an audit of auditCase');

function stranger(accepted: string): never {
  throw new UserError({ what: 'this was not made by the library', accepted });
}
