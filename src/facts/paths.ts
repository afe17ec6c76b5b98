/** Paths in case files: relative, inside the folder of the case, and nothing that steers a display. */
import { plainText, quoted } from '../lib/sanitize.js';

const LONGEST_PATH = 255;

/** What is wrong with a path, or undefined when it may be looked up. No file is touched here. */
export function filePathProblem(path: string): string | undefined {
  if (path.length > LONGEST_PATH) return `the path is longer than ${LONGEST_PATH} letters`;
  if (path.trim() === '') return 'nothing is written there';
  if (plainText(path) !== path.normalize('NFC'))
    return `${quoted(path)} holds characters that a path should not hold`;
  const parts = path.split(/[/\\]/);
  if (parts[0] === '' || /^[a-z]:/i.test(path)) {
    return `${quoted(path)} is an absolute path; files are looked for in the folder of the case`;
  }
  if (parts.includes('..')) return `${quoted(path)} climbs out of the folder of the case`;
  return undefined;
}
