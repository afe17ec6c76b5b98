/** The response files of a calculation, channel by channel. */
import type { ParsedResponse } from '../../acoustics/response.js';
import { quoted } from '../../lib/sanitize.js';
import { type Problem, UserError } from '../../lib/user-error.js';
import type { CalculatorPort } from './calculator.js';

/** Reads the files of all channels. Throws a UserError that names every file that cannot be used. */
export function readResponses<K extends string>(
  paths: Readonly<Record<K, string>>,
  { readResponse, tell }: CalculatorPort,
): Record<K, ParsedResponse> {
  const problems: Problem[] = [];
  const read: [string, ParsedResponse][] = [];
  for (const [channel, path] of Object.entries<string>(paths)) {
    const found = readResponse(path);
    if ('refused' in found) {
      const { what, accepted } = found.refused;
      problems.push({ where: `calc tonal-match, ${channel}, ${quoted(path)}`, what, accepted });
      continue;
    }
    for (const { line, message } of found.warnings) tell(`${quoted(path)}, line ${line}: ${message}.`);
    read.push([channel, found]);
  }
  const [first, ...rest] = problems;
  if (first !== undefined) throw new UserError(first, ...rest);
  return Object.fromEntries(read) as Record<K, ParsedResponse>;
}
