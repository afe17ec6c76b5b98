/**
 * Measured responses that a case names by file. They are read when the case is read and go into its book, so that
 * whatever is computed from a book afterwards needs no file, and gives the same wherever it runs.
 */
import { type ParsedResponse, parseResponse, ResponseError } from '../acoustics/response.js';
import { quoted } from '../lib/sanitize.js';
import { type FactBook, told } from './book.js';
import { FACT_IDS, type FileFactId, factSpec } from './catalog.js';
import type { Refusal } from './units.js';

export type MeasuredResponse = ParsedResponse | { readonly refused: Refusal };

/** What stands at a path as a case gives it. Never throws: what cannot be read is refused in words. */
export type ReadResponse = (path: string) => MeasuredResponse;

const ACCEPTED_RESPONSE = 'a text file of at most 2 MiB with frequency in Hz and level in dB on each line';
const EXAMPLE = 'center.txt';

export const refusedResponse = (what: string, accepted = ACCEPTED_RESPONSE): MeasuredResponse => ({
  refused: { what, accepted, example: EXAMPLE },
});

/** The text of a response file into a response. */
export function responseFrom(text: string): MeasuredResponse {
  try {
    return parseResponse(text);
  } catch (error) {
    if (!(error instanceof ResponseError)) throw error;
    const [what = error.message, accepted] = error.message.split('; accepted: ');
    return refusedResponse(what, accepted);
  }
}

const FILE_FACTS = FACT_IDS.filter((id): id is FileFactId => factSpec(id).kind === 'file');

/** The files that a book names, by fact. */
function namedFiles(book: FactBook): readonly (readonly [FileFactId, string])[] {
  return FILE_FACTS.flatMap((id) => {
    const path = told(book, id);
    return typeof path === 'string' ? [[id, path] as const] : [];
  });
}

/** The book with every file that its answers name, of today or as heard, and that it does not hold yet. */
export function withResponses(book: FactBook, read: ReadResponse): FactBook {
  const named = [...namedFiles(book), ...namedFiles({ ...book, answers: book.before })];
  const missing = named.filter(([, path]) => !book.responses?.has(path));
  if (missing.length === 0) return book;
  const responses = new Map(book.responses);
  for (const [, path] of missing) responses.set(path, read(path));
  return { ...book, responses };
}

/** What the file of a fact holds; undefined where none was told. */
export function responseOf(book: FactBook, id: FileFactId): MeasuredResponse | undefined {
  const path = told(book, id);
  if (typeof path !== 'string') return undefined;
  return (
    book.responses?.get(path) ??
    refusedResponse(`${quoted(path)} cannot be looked for: the case has no folder`)
  );
}

/** Every named file that cannot be used, with the reason. */
export function unusableFiles(book: FactBook): readonly (readonly [FileFactId, Refusal])[] {
  return namedFiles(book).flatMap(([id]) => {
    const found = responseOf(book, id);
    return found && 'refused' in found ? [[id, found.refused] as const] : [];
  });
}
