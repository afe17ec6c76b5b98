/** `center-audit cases`: the saved cases of this machine; opens one again, or takes it away. */
import { plural } from '../explain/words.js';
import { quoted } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { listCases, removeCase, type SavedCase, stateFolder } from '../store/index.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { type FormatOptions, wantsJson } from './options.js';

const LONGEST_ABOUT = 48;

/** @param name number in the list, name of the file, or how its title begins */
export async function run(
  io: Io,
  verb: 'open' | 'remove' | undefined,
  name: string | undefined,
  options: GlobalOptions & FormatOptions,
): Promise<ExitCode> {
  const cases = listCases(stateFolder());
  if (verb === undefined) {
    io.out(wantsJson(options) ? jsonText(cases) : listText(cases));
    return EXIT.done;
  }
  const found = chosen(cases, verb, name);
  if (verb === 'open') {
    const { run: interview } = await import('./interview.js');
    return interview(io, found.path, options);
  }
  const kept = removeCase(stateFolder(), found.path);
  io.out(`Removed: ${found.path}\nA copy is left: ${kept}\n`);
  return EXIT.done;
}

function chosen(cases: readonly SavedCase[], verb: string, name: string | undefined): SavedCase {
  const example = `center-audit cases ${verb} 1`;
  const accepted =
    cases.length === 0
      ? 'nothing: there is no saved case'
      : 'a number of the list, a file name, or how its title begins';
  if (name === undefined)
    throw new UserError({ where: `cases ${verb}`, what: 'no case is named', accepted, example });
  const wanted = name.trim().toLowerCase();
  const byNumber = /^\d{1,3}$/.test(wanted) ? cases[Number(wanted) - 1] : undefined;
  const matches = cases.filter(
    (each) =>
      each.name.toLowerCase() === wanted.replace(/\.json$/, '') ||
      each.path === name ||
      each.about.toLowerCase().startsWith(wanted),
  );
  const [only, ...others] = byNumber ? [byNumber] : matches;
  if (only !== undefined && others.length === 0) return only;
  const what =
    only === undefined
      ? `no saved case is called ${quoted(name)}`
      : `${quoted(name)} could be ${matches.length} of them`;
  throw new UserError({ where: `cases ${verb}`, what, accepted, example });
}

function listText(cases: readonly SavedCase[]): string {
  if (cases.length === 0) return 'There is no saved case. An interview begins one: center-audit\n';
  const lines = cases.map(({ name, about, updated, asked }, i) => {
    const letters = Array.from(about);
    const title = letters.length > LONGEST_ABOUT ? `${letters.slice(0, LONGEST_ABOUT - 1).join('')}…` : about;
    const state = asked === undefined ? 'finished' : `${plural(asked, 'question')} asked, unfinished`;
    return `${String(i + 1).padStart(3)}  ${title || 'without a title'}\n     ${name}, ${updated.slice(0, 16).replace('T', ' ')}, ${state}\n`;
  });
  return `${lines.join('')}\nGo on with one: center-audit cases open 1\n`;
}

const jsonText = (cases: readonly SavedCase[]): string => `${JSON.stringify({ cases }, null, 2)}\n`;
