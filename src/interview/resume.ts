/** At the start without a case: go on with an unfinished interview, or begin a new one. */
import { plural } from '../explain/words.js';
import type { Prompt, Terminal, Unfinished } from './port.js';
import { matchEntry } from './typed.js';

/** More than that nobody goes back to. */
const MOST_OFFERED = 5;
const LONGEST_ABOUT = 60;

/** The path of the case to go on with, undefined for a new one, or that the person left. */
export async function chooseUnfinished(
  terminal: Terminal,
  found: readonly Unfinished[],
): Promise<{ readonly casePath?: string } | 'left'> {
  const offered = found.slice(0, MOST_OFFERED);
  if (offered.length === 0) return {};
  const choices = [...offered.map((each) => `go on: ${describe(each)}`), 'start a new interview'];
  const prompt: Prompt = {
    head: '',
    ask: offered.length === 1 ? 'There is an unfinished interview.' : 'There are unfinished interviews.',
    hint: '',
    choices,
    onEnter: 'goes on with the first',
    draft: '',
    marks: false,
  };
  const entries = choices.map((label, i) => ({ value: String(i), label }));
  for (let isAgain = false; ; isAgain = true) {
    const typed = await terminal.ask(prompt, isAgain);
    if (!('text' in typed)) return 'left';
    const text = typed.text.trim();
    if (['s', 'q', 'quit', 'exit', 'stop'].includes(text.toLowerCase())) return 'left';
    const match = matchEntry(text === '' ? '1' : text, entries, true);
    if ('refused' in match) {
      terminal.tell([`${match.refused} Type a number from 1 to ${choices.length}.`]);
      continue;
    }
    const chosen = offered[Number(match.value)];
    return chosen === undefined ? {} : { casePath: chosen.casePath };
  }
}

function describe({ about, updated, order }: Unfinished): string {
  const letters = Array.from(about);
  const short = letters.length > LONGEST_ABOUT ? `${letters.slice(0, LONGEST_ABOUT - 1).join('')}…` : about;
  const name = short === '' ? 'without a title' : `“${short}”`;
  return `${name}, ${plural(order.length, 'question')} asked, last on ${localTime(updated)}`;
}

/** Day and time of day as the clock on the wall has it. */
function localTime(iso: string): string {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return 'an unknown day';
  const local = new Date(at.getTime() - at.getTimezoneOffset() * 60_000);
  return local.toISOString().slice(0, 16).replace('T', ' ');
}
