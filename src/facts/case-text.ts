/** From bytes to the raw value of a case file: size, encoding, JSON, format and version. */

import { type Json, JsonFault, type JsonText, parseJson } from '../lib/json-text.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import { isRemedyRef } from './acts.js';
import { CaseError, placed, problem } from './case-error.js';
import { CASE_FORMAT, CASE_JSON_LIMITS, CASE_VERSION, MAX_CASE_BYTES } from './case-limits.js';

export type RawCase = { [key: string]: Json };

/**
 * Version 1 listed remedies that were carried out in vain under `tried`; since version 2 each is a trial with its
 * outcome. What names no remedy is kept as a note. A list of another shape is left for the check of the shape.
 */
function withTrials({ tried, ...raw }: RawCase): RawCase {
  if (tried === undefined) return raw;
  const [trials, notes] = [raw.trials ?? [], raw.notes ?? []];
  const texts = Array.isArray(tried) ? tried.filter((each) => typeof each === 'string').map(plainLine) : [];
  if (!Array.isArray(tried) || texts.length < tried.length || !Array.isArray(trials) || !Array.isArray(notes))
    return { ...raw, tried };
  const kept = texts.filter((text) => !isRemedyRef(text)).map((text) => `Tried: ${text}.`);
  return {
    ...raw,
    trials: [...trials, ...texts.filter(isRemedyRef).map((act) => ({ act, outcome: 'same' }))],
    ...(notes.length + kept.length > 0 ? { notes: [...notes, ...kept] } : {}),
  };
}

function fail(what: string, accepted: string, example = ''): never {
  throw new CaseError(problem('', what, accepted, example));
}

/** Bytes of a file into text. Throws CaseError for what is too large or no UTF-8 text. */
export function decodeCase(bytes: Uint8Array): string {
  if (bytes.length > MAX_CASE_BYTES) {
    fail(`the file is ${bytes.length} bytes`, `a case file of at most ${MAX_CASE_BYTES} bytes (1 MiB)`);
  }
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    fail('the file is written in UTF-16', 'a text file in UTF-8');
  }
  const zero = bytes.indexOf(0);
  if (zero !== -1) fail(`the file holds a zero byte at position ${zero}`, 'a text file in UTF-8');
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return fail('the file is not written in UTF-8, perhaps in Latin-1', 'a text file saved as UTF-8');
  }
}

/** Text into the raw case of the current version. Throws CaseError. */
export function readRaw(text: string): { raw: RawCase; placeOf: JsonText['placeOf'] } {
  if (text.length > MAX_CASE_BYTES) {
    fail(`the text has ${text.length} letters`, `a case of at most ${MAX_CASE_BYTES} bytes (1 MiB)`);
  }
  const { value, placeOf } = parseText(text.startsWith('\ufeff') ? text.slice(1) : text);
  if (value === null || typeof value !== 'object' || Array.isArray(value)) {
    fail('the text is no JSON object', 'an object in braces', `{ "format": "${CASE_FORMAT}", "facts": {} }`);
  }
  return { raw: migrated(value), placeOf };
}

function parseText(text: string): JsonText {
  try {
    return parseJson(text, CASE_JSON_LIMITS);
  } catch (error) {
    if (!(error instanceof JsonFault)) throw error;
    throw new CaseError(placed(problem('', error.what, error.accepted), error.place));
  }
}

function migrated(raw: RawCase): RawCase {
  const { format, version } = raw;
  if (format !== undefined && format !== CASE_FORMAT) {
    const given = typeof format === 'string' ? quoted(format) : 'something else';
    throw new CaseError(problem('format', `the format is ${given}`, `"${CASE_FORMAT}"`));
  }
  if (version === undefined) return withTrials(raw);
  const accepted = `a version up to ${CASE_VERSION}`;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    throw new CaseError(
      problem('version', 'this is no version of a case file', accepted, String(CASE_VERSION)),
    );
  }
  if (version > CASE_VERSION) {
    const what = `the file has version ${version}, which is newer than this program reads; a newer program is needed`;
    throw new CaseError(problem('version', what, accepted, String(CASE_VERSION)));
  }
  return { ...withTrials(raw), version: CASE_VERSION };
}
