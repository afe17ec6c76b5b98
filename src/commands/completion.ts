/** `center-audit completion`: scripts for shells, generated from the command tree. */
import type { Command, Option } from 'commander';
import { CALCULATORS } from '../explain/calculators/index.js';
import { shellQuoted } from '../explain/shell-word.js';
import { FACT_IDS } from '../facts/catalog.js';
import { COMPLAINT_IDS } from '../facts/complaints.js';
import { CAUSE_IDS } from '../rules/cause-ids.js';
import { EXIT, type ExitCode, type Io } from './io.js';
import { SHELLS, type Shell } from './shells.js';
import { allOptions, isHidden } from './usage.js';

/** What stands in one place of a command line: some words, or the name of a file. */
type Values = readonly string[] | 'files' | 'nothing';

interface CommandWords {
  readonly name: string;
  readonly summary: string;
  readonly options: readonly {
    readonly flags: readonly string[];
    readonly help: string;
    readonly values: Values | null;
  }[];
  /** Values of the first argument, the second and so on; the last one repeats. */
  readonly places: readonly Values[];
}

export function run(io: Io, shell: string, program: Command): ExitCode {
  const words = commandWords(program);
  const name = program.name();
  const scripts: Record<Shell, () => string> = {
    bash: () => bashScript(name, words),
    zsh: () => zshScript(name, words),
    fish: () => fishScript(name, words),
  };
  io.out(scripts[shell as Shell]());
  return EXIT.done;
}

/** The tree as the scripts need it. */
function commandWords(program: Command): CommandWords[] {
  const commands = program.commands.filter((command) => !isHidden(command));
  const names = commands.map((command) => command.name());
  return commands.map((command) => ({
    name: command.name(),
    summary: command.summary() || command.description(),
    options: [
      ...allOptions(command).filter((option) => option.long !== '--version' && option.long !== '--help'),
    ]
      .map((option) => ({
        flags: [option.short, option.long].filter((flag) => flag !== undefined),
        help: option.description,
        values: option.required ? optionValues(option) : null,
      }))
      .concat([{ flags: ['-h', '--help'], help: 'show this help', values: null }]),
    places: command.registeredArguments.map((argument) => placeValues(argument.name(), names)),
  }));
}

function optionValues(option: Option): Values {
  if (option.argChoices) return option.argChoices;
  return placeValues(/<([^>]+)>/.exec(option.flags)?.[1] ?? '', []);
}

/** The name of an argument in the help says what belongs there. */
function placeValues(name: string, commands: readonly string[]): Values {
  switch (name) {
    case 'CASE':
    case 'BEFORE':
    case 'AFTER':
    case 'FILE':
      return 'files';
    case 'CAUSE':
      return CAUSE_IDS;
    case 'ID':
      return [...CAUSE_IDS, ...COMPLAINT_IDS, ...FACT_IDS];
    case 'NAME':
      return CALCULATORS.map((calculator) => calculator.name);
    case 'FACT=VALUE':
      return FACT_IDS.map((id) => `${id}=`);
    case 'SHELL':
      return SHELLS;
    case 'COMMAND':
      return commands;
    default:
      return 'nothing';
  }
}

function bashScript(name: string, commands: readonly CommandWords[]): string {
  const values = (found: Values): string =>
    found === 'files'
      ? 'COMPREPLY=($(compgen -f -- "$word")); compopt -o filenames 2>/dev/null'
      : found === 'nothing'
        ? 'COMPREPLY=()'
        : `COMPREPLY=($(compgen -W ${shellQuoted(found.join(' '))} -- "$word"))${found.some((each) => each.endsWith('=')) ? '; compopt -o nospace 2>/dev/null' : ''}`;
  const cases = commands.map((command) => {
    const valued = command.options.filter((option) => option.values !== null);
    const places = command.places.map(
      (place, index) => `        ${index === command.places.length - 1 ? '*' : index}) ${values(place)} ;;`,
    );
    return `    ${command.name})
      case "$before" in
${valued.map((option) => `        ${option.flags.join('|')}) ${values(option.values ?? 'nothing')}; return ;;`).join('\n')}${valued.length > 0 ? '\n' : ''}        *) ;;
      esac
      if [[ "$word" == -* ]]; then
        COMPREPLY=($(compgen -W ${shellQuoted(command.options.flatMap((option) => option.flags).join(' '))} -- "$word"))
        return
      fi
      case "$place" in
${places.length > 0 ? `${places.join('\n')}\n` : '        *) ;;\n'}      esac
      ;;`;
  });
  const valued = [
    ...new Set(
      commands.flatMap((command) => command.options.flatMap((o) => (o.values === null ? [] : o.flags))),
    ),
  ];
  const functionName = `_${name.replaceAll('-', '_')}`;
  return `# bash completion of ${name}: source <(${name} completion bash)
${functionName}() {
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}" command="" place=-1 index skip=""
  COMPREPLY=()
  for ((index = 1; index < COMP_CWORD; index++)); do
    if [[ -n "$skip" ]]; then skip=""; continue; fi
    case "\${COMP_WORDS[index]}" in
      ${valued.join('|')}) skip=1 ;;
      -?*) ;;
      *) if [[ -z "$command" ]]; then command="\${COMP_WORDS[index]}"; fi; ((place++)) ;;
    esac
  done
  case "$command" in
    '') COMPREPLY=($(compgen -W ${shellQuoted([...commands.map((command) => command.name), '--help', '--version', '--no-color', '--accessible'].join(' '))} -- "$word")) ;;
${cases.join('\n')}
  esac
}
complete -F ${functionName} ${name}
`;
}

function zshScript(name: string, commands: readonly CommandWords[]): string {
  const plain = (text: string): string => text.replace(/[[\]:]/g, ' ').replaceAll("'", '’');
  const action = (found: Values): string =>
    found === 'files' ? '_files' : found === 'nothing' ? '' : `(${found.join(' ')})`;
  const functionName = `_${name.replaceAll('-', '_')}`;
  const cases = commands.map((command) => {
    const options = command.options.flatMap((option) =>
      option.flags.map(
        (flag) =>
          `'${flag}[${plain(option.help)}]${option.values === null ? '' : `:value:${action(option.values)}`}'`,
      ),
    );
    const places = command.places.map((place, index) => {
      const last = index === command.places.length - 1;
      return `'${last ? '*' : index + 1}:word:${action(place)}'`;
    });
    return `        ${command.name}) _arguments ${[...options, ...places].join(' ')} ;;`;
  });
  return `#compdef ${name}
# zsh completion of ${name}: put it as ${functionName} into a folder of $fpath
${functionName}() {
  local state line
  _arguments -C '1:command:->command' '*::word:->words'
  case "$state" in
    command)
      local -a commands=(${commands.map((command) => `'${command.name}:${plain(command.summary)}'`).join(' ')})
      _describe command commands ;;
    words)
      case "\${words[1]}" in
${cases.join('\n')}
      esac ;;
  esac
}
if [[ "$funcstack[1]" == "${functionName}" ]]; then ${functionName} "$@"; else compdef ${functionName} ${name}; fi
`;
}

function fishScript(name: string, commands: readonly CommandWords[]): string {
  const lines = commands.flatMap((command) => {
    const inside = `-c ${name} -n ${shellQuoted(`__fish_seen_subcommand_from ${command.name}`)}`;
    const options = command.options.flatMap(({ flags, help, values }) => {
      const long = flags.find((flag) => flag.startsWith('--'))?.slice(2);
      const short = flags.find((flag) => /^-[^-]$/.test(flag))?.slice(1);
      const names = [...(short ? [`-s ${short}`] : []), ...(long ? [`-l ${long}`] : [])].join(' ');
      const words = Array.isArray(values)
        ? ` -x -a ${shellQuoted(values.join(' '))}`
        : values === null
          ? ''
          : ' -r';
      return [`complete ${inside} ${names}${words} -d ${shellQuoted(help)}`];
    });
    const words = command.places.flatMap((place) => (Array.isArray(place) ? place : []));
    const files = command.places.includes('files') ? ' -F' : '';
    const places =
      words.length > 0 || files !== ''
        ? [`complete ${inside}${files}${words.length > 0 ? ` -a ${shellQuoted(words.join(' '))}` : ''}`]
        : [];
    return [
      `complete -c ${name} -n __fish_use_subcommand -a ${command.name} -d ${shellQuoted(command.summary)}`,
      ...options,
      ...places,
    ];
  });
  return `# fish completion of ${name}: ${name} completion fish | source
complete -c ${name} -f
${lines.join('\n')}
`;
}
