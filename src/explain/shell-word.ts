/** Words of a command line, for commands that people copy and for completion scripts. */

/** Between single quotes, which a shell takes to the letter. */
export const shellQuoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;

/** Letters no shell reads anything into. A tilde is none: some expand it in the middle of a word too. */
const BARE = /^[\w@%+:,./-][\w@%+=:,./-]*$/;

/** A path as one word of a command line, quoted only where it must be, and never taken for an option. */
export function shellWord(path: string): string {
  const named = path.startsWith('-') ? `./${path}` : path;
  return BARE.test(named) ? named : shellQuoted(named);
}
