/** Typed words matched against a numbered list. */
import { nearest } from '../lib/nearest.js';
import { quoted } from '../lib/sanitize.js';
import type { Entry } from './screens.js';

/** `1 4 9`, `1,4,9`, `1, 4 and 9`: the numbers as typed; undefined where something else stands there. */
export function typedNumbers(typed: string): string[] | undefined {
  const parts = typed.split(/[\s,;.+&]+|\band\b/).filter((part) => part !== '');
  return parts.length > 0 && parts.every((part) => /^\d{1,3}$/.test(part)) ? parts : undefined;
}

/** By number, value, plain words, or a beginning that fits only one. */
export function matchEntry(
  typed: string,
  entries: readonly Entry[],
  byNumberOnly = false,
): { readonly value: string } | { readonly refused: string } {
  const wanted = typed.toLowerCase();
  if (/^\d{1,3}\.?$/.test(wanted)) {
    const chosen = entries[Number.parseInt(wanted, 10) - 1];
    return chosen ? { value: chosen.value } : { refused: `There is no line ${Number.parseInt(wanted, 10)}.` };
  }
  if (byNumberOnly) return { refused: `${quoted(typed)} is no number of a line.` };
  const same = entries.find(({ value, label }) => value === wanted || label.toLowerCase() === wanted);
  if (same) return { value: same.value };
  const dashed = wanted.replaceAll(' ', '-');
  const begun = entries.filter(
    ({ value, label }) => value.startsWith(dashed) || label.toLowerCase().startsWith(wanted),
  );
  const [only] = begun;
  if (only && begun.length === 1) return { value: only.value };
  if (begun.length > 1) return { refused: `${quoted(typed)} fits more than one line.` };
  const near = nearest(
    wanted,
    entries.flatMap(({ value, label }) => [value, label]),
  );
  const meant = entries.find(({ value, label }) => value === near || label === near);
  const hint = meant === undefined ? '' : ` Did you mean “${meant.label}”?`;
  return { refused: `${quoted(typed)} is none of the lines.${hint}` };
}
