/** Help and usage errors of the command tree, in the words and the shape of every other error. */
import type { Command, CommanderError, Help, Option } from 'commander';
import { didYouMean, nearest } from '../lib/nearest.js';
import { quoted } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { EXIT } from './io.js';

const EXAMPLES = new WeakMap<Command, readonly string[]>();

/** Examples stand below the help of a command; the first is shown with its usage errors. */
export function withExamples(command: Command, ...examples: readonly [string, ...string[]]): Command {
  EXAMPLES.set(command, examples);
  return command.addHelpText('after', `\nExamples:\n${examples.map((line) => `  $ ${line}`).join('\n')}`);
}

export const EXIT_CODES = `
Exit codes:
  ${EXIT.done}    done
  ${EXIT.fault}    a fault inside the program
  ${EXIT.input}    the input or the usage is wrong
  ${EXIT.needsInterview}    an interview is needed, and there is no terminal
  ${EXIT.interrupted}  interrupted`;

/** Optional parts in capitals stand for what a person puts there. */
// On a narrow terminal a description still wraps at words instead of being cut by the edge.
export const HELP: Partial<Help> = { showGlobalOptions: true, minWidthToWrap: 16 };

/** Text that commander writes to standard output is help or a version; nothing else may end there. */
export function isHelp(error: CommanderError): boolean {
  return error.exitCode === 0 || error.code === 'commander.help';
}

/** A usage error in the shape of all others. */
export function usageError(command: Command, error: CommanderError): UserError {
  const said = error.message.replace(/^error: /, '');
  const near = /\n?\(Did you mean (?:one of )?([^?]+)\?\)/.exec(said);
  const what = said.replace(near?.[0] ?? '', '').trim() + (near ? `; did you mean ${near[1]}?` : '');
  const path = pathOf(command);
  const [example] = EXAMPLES.get(command) ?? [];
  return new UserError({
    where: path,
    what,
    accepted: error.code === 'commander.unknownOption' ? optionsText(command) : usageText(command),
    ...(example === undefined ? {} : { example }),
  });
}

export function unknownCommand(program: Command, typed: string): UserError {
  const names = program.commands.filter((command) => !isHidden(command)).map((command) => command.name());
  const near = nearest(typed, names);
  return new UserError({
    where: program.name(),
    what: `there is no command ${quoted(typed)}${didYouMean(near)}`,
    accepted: names.join(', '),
    example: `${program.name()} ${near ?? 'audit case.json'}`,
  });
}

/** A parser for the value of an option that must be one of a few words. */
export function oneOf(
  option: string,
  choices: readonly string[],
  example = option,
): (typed: string) => string {
  return (typed) => {
    if (choices.includes(typed)) return typed;
    const near = nearest(typed, choices);
    throw new UserError({
      where: option,
      what: `${quoted(typed)} is none of the choices${didYouMean(near)}`,
      accepted: choices.join(', '),
      example: `${example} ${near ?? choices[0]}`,
    });
  };
}

/** A parser for a number in the value of an option. */
export function wholeNumber(option: string, least: number, most: number): (typed: string) => number {
  return (typed) => {
    const value = /^\d{1,6}$/.test(typed.trim()) ? Number(typed) : Number.NaN;
    if (value >= least && value <= most) return value;
    throw new UserError({
      where: option,
      what: `${quoted(typed)} is no number that fits`,
      accepted: `a whole number from ${least} to ${most}`,
      example: `${option} ${Math.min(most, Math.max(least, 10))}`,
    });
  };
}

/** commander has no public word for it. */
export function isHidden(command: Command): boolean {
  return (command as Command & { readonly _hidden?: boolean })._hidden === true;
}

export function allOptions(command: Command): readonly Option[] {
  return [...command.options, ...(command.parent?.options ?? [])].filter((option) => !option.hidden);
}

function optionsText(command: Command): string {
  return [
    ...allOptions(command)
      .filter((option) => option.long !== '--version' || !command.parent)
      .map((option) => option.long ?? option.flags),
    '--help',
  ].join(', ');
}

function usageText(command: Command): string {
  return `${pathOf(command)} ${command.usage()}`;
}

function pathOf(command: Command): string {
  return command.parent ? `${command.parent.name()} ${command.name()}` : command.name();
}
