/** The tree of commands. Each loads its own file when it runs, so that the start costs nothing but this. */
import { Argument, Command, CommanderError, Option } from 'commander';
import { FORMATS } from './formats.js';
import type { ExitCode, GlobalOptions, StreamIo } from './io.js';
import { wantsJson } from './options.js';
import { SHELLS } from './shells.js';
import {
  EXIT_CODES,
  HELP,
  isHelp,
  oneOf,
  unknownCommand,
  usageError,
  wholeNumber,
  withExamples,
} from './usage.js';

const NAME = 'center-audit';
/** Formats of commands whose result is no report. */
const PLAIN_FORMATS = ['text', 'json'] as const;
const PAGE_FORMATS = ['text', 'markdown', 'json'] as const;
const MOST_JOBS = 64;
const MOST_MINUTES = 600;

/** @param done told the exit code of the command that ran */
export function buildProgram(io: StreamIo, version: string, done: (code: ExitCode) => void): Command {
  const program = new Command(NAME)
    .description(
      'Finds out why a center loudspeaker ruins the image: asks, computes what is heard at every seat, ranks the causes and says what to do.\nWithout a command it starts an interview, or goes on with an unfinished one.',
    )
    .version(version, '-V, --version', 'print the version')
    .option('--no-color', 'no color, whatever the terminal')
    .option('--priors <FILE>', 'how common each cause is, as center-audit learn has written it')
    .option('--accessible', 'plain numbered lines, nothing redrawn (or set ACCESSIBLE=1)')
    .helpCommand(false)
    .configureHelp(HELP)
    .configureOutput({
      writeOut: (text) => io.out(text),
      writeErr: (text) => io.err(text),
      getOutHelpWidth: () => io.columns,
      getErrHelpWidth: () => io.columns,
      outputError: () => {},
    });
  const globals = (): GlobalOptions => program.opts<GlobalOptions>();
  /** Loads the file of a command and runs it with the arguments as told, and the options last. */
  const running =
    (load: () => Promise<{ run: (io: StreamIo, ...given: never[]) => ExitCode | Promise<ExitCode> }>) =>
    async (...given: unknown[]): Promise<void> => {
      const [options, words] = [given.at(-2) as object, given.slice(0, -2)];
      const { run } = await load();
      done(await run(io, ...([...words, { ...globals(), ...options }] as never[])));
    };
  const add = (name: string, summary: string, first: string, ...more: readonly string[]): Command =>
    withExamples(
      program
        .command(name)
        .description(summary)
        .helpOption('-h, --help', 'show this help')
        .configureHelp(HELP),
      ...([first, ...more].map((line) => (line.startsWith('echo') ? line : `${NAME} ${line}`)) as [string]),
    );
  const asCase = (text = 'a case file; - reads standard input'): Argument => new Argument('CASE', text);

  add('interview [CASE]', 'ask what matters, then tell the diagnosis', 'interview', 'interview case.json')
    .option('--full', 'ask everything that makes sense, for a complete audit')
    .option('--call', 'questions to be read out on the phone, with what to say back')
    .addOption(
      new Option('--minutes <N>', 'stop when so many minutes are used up').argParser(
        wholeNumber('--minutes', 1, MOST_MINUTES),
      ),
    )
    .addOption(formatOption(FORMATS))
    .option('--json', 'the same as --format json')
    .action(running(() => import('./interview.js')));

  add(
    'audit <CASE...>',
    'audit saved cases and print what was found',
    'audit case.json',
    'audit case.json --format html --output report.html',
    'audit before.json after.json --json',
    'audit before.json after.json --summary',
    'audit - --json < cases.jsonl',
  )
    .addOption(formatOption(FORMATS))
    .option('--json', 'the same as --format json; one line a case where there are several')
    .option('--jsonl', 'JSON lines: each line in is a case, each gives one line out, also a broken one')
    .option('--output <FILE>', 'write to a file; a case is never overwritten')
    .option('--long', 'all parts: evidence, how to find out, assumptions, sources')
    .option('--summary', 'a table of the causes over all cases instead of their reports')
    .addOption(
      new Option('--jobs <N>', 'worker threads; without it as many as help').argParser(
        wholeNumber('--jobs', 1, MOST_JOBS),
      ),
    )
    .addHelpText('after', EXIT_CODES)
    .action(running(() => import('./audit.js')));

  printing('read', "an owner's own words into a draft case", 'read post.txt', [
    'read post.txt --explain',
    'read - --output from-mail.json < mail.txt',
  ])
    .argument('[FILE]', 'plain text; - or nothing reads standard input', '-')
    .option('--explain', 'sentence by sentence what was taken, from which words, and what was left')
    .option('--output <CASE>', 'write the draft case to a file; a case is never overwritten')
    .action(running(() => import('./read.js')));

  printing('why', 'the evidence for and against one cause', 'why case.json delay', [
    'why case.json delay --against level',
  ])
    .addArgument(asCase())
    .argument('<CAUSE>', 'a cause id; the audit lists them')
    .option('--against <CAUSE>', 'put a second cause beside it')
    .action(running(() => import('./why.js')));

  printing('next', 'the question or home test worth most now, and why', 'next case.json', [
    'next case.json --minutes 5',
  ])
    .addArgument(asCase())
    .addOption(
      new Option('--minutes <N>', 'only what fits into so many minutes').argParser(
        wholeNumber('--minutes', 1, MOST_MINUTES),
      ),
    )
    .action(running(() => import('./next.js')));

  add('page <FILE>', 'the whole program as one page for a browser', 'page center-audit.html').action(
    running(() => import('./page.js')),
  );

  printing('try', 'what would change if some facts were different', "try case.json seatDistance='3.2 m'", [
    "try case.json centerSideOffset='20 cm left' centerLayout=coaxial",
    "try case.json 'seatDistance=?'",
  ])
    .addArgument(asCase())
    .argument('<FACT=VALUE...>', 'FACT=? forgets a fact; seats.1.xM=0.4 reaches inside')
    .action(running(() => import('./try.js')));

  printing('set', 'change a case and keep it', "set case.json seatDistance='3.2 m'", [
    'set case.json trial=center-tilted:gone:stays solved=yes',
    'set case.json complaints=+dull constraints=no-purchase',
    'set case.json seats.1.xM=0.4 before.enteredCenter=3.0',
  ])
    .argument('<CASE>', 'a case file')
    .argument('<FACT=VALUE...>', 'also trial=ACT:OUTCOME, complaints, constraints, solved, title; ? forgets')
    .action(running(() => import('./set.js')));

  printing('cases', 'the saved cases of this machine', 'cases', ['cases open 1', 'cases remove interview-2'])
    .addArgument(new Argument('[VERB]', 'open or remove').argParser(oneOf('VERB', ['open', 'remove'])))
    .argument('[NAME]', 'its number in the list, file name, or how its title begins')
    .action(running(() => import('./cases.js')));

  printing('compare', 'two audits of the same system side by side', 'compare before.json after.json')
    .argument('<BEFORE>', 'the earlier case file')
    .argument('<AFTER>', 'the later case file')
    .action(running(() => import('./compare.js')));

  add(
    'explain',
    'the reference page of a cause, complaint, fact, rule or threshold',
    'explain delay',
    'explain seatDistance --format markdown',
  )
    .addOption(formatOption(PAGE_FORMATS))
    .option('--json', 'the same as --format json')
    .argument('<ID>', 'an id, as printed in reports')
    .action(running(() => import('./explain.js')));

  printing('signal', 'write the test file that a phone records at the seat', 'signal test.wav', [
    'signal six-channels.wav --channels',
  ])
    .option('--stereo', 'left, right, both: plays everywhere (default)')
    .option('--channels', 'left, right, center by their speaker positions: tells more')
    .option('--force', 'replace a file of that name')
    .argument('<FILE>', 'the WAV file to write')
    .action(running(() => import('./signal.js')));

  printing('measure', 'what a recording of the file that signal writes tells', 'measure recording.wav', [
    'measure recording.wav --case case.json',
    'measure middle.wav end.wav --seat middle --seat "left end" --case case.json',
    'measure --demo --plot measured.html',
  ])
    .argument('[RECORDING...]', 'recordings: WAV, FLAC; with ffmpeg also m4a, mp3, opus')
    .option('--case <CASE>', 'write what was measured into this case file')
    .option('--seat <NAME>', 'the seat of the recording; once for all or once for each', collected)
    .option('--demo', 'measure the recording of an invented room')
    .option('--plot <FILE>', 'draw what arrived when, tone and clarity on a page')
    .option('--force', 'replace a page of that name')
    .action(running(() => import('./measure.js')));

  printing('settings', 'the numbers to type into the menu, for all seats', 'settings case.json', [
    'settings case.json --main',
    "settings case.json --weights 'middle=3' 'left end=1'",
    'settings case.json --recording recording.wav',
  ])
    .addArgument(asCase())
    .option('--main', 'for the main seat alone')
    .option('--equal', 'all seats count alike')
    .option('--weights <SEAT=N...>', 'how much each seat counts; those not named count nothing')
    .option('--recording <RECORDING>', 'filters for the tone that this recording tells')
    .addOption(
      new Option(
        '--processor-speed <M/S>',
        'speed of sound that the processor reckons with (default: 343.2)',
      ).argParser(wholeNumber('--processor-speed', 300, 400)),
    )
    .action(running(() => import('./settings.js')));

  add(
    'learn <CASES...>',
    'how common each cause is, from cases that were solved',
    'learn solved/*.json',
    'learn solved/*.json --output priors.json',
    'audit case.json --priors priors.json',
  )
    .option('--output <FILE>', 'write to a file instead of standard output')
    .action(running(() => import('./learn.js')));

  const calc = printing('calc', 'one acoustic calculation', 'calc', [
    'calc comb delayMs=1',
    'calc floor-bounce --help',
    'echo \'{"delayMs": 1}\' | center-audit calc comb - --json',
  ])
    .argument('[NAME]', 'a calculator; without it all are listed')
    .argument('[KEY=VALUE...]', 'inputs in SI units; - reads a JSON object')
    .helpOption(false)
    .option('-h, --help', 'show this help, or that of the calculator named')
    .action(async (name: string | undefined, inputs: string[], options) => {
      if (name === undefined && options.help) return calc.outputHelp();
      const { run } = await import('./calc.js');
      done(await run(io, name, inputs, { ...globals(), ...options, json: wantsJson(options) }));
    });

  printing('facts', 'all facts a case can hold', 'facts', ['facts --schema'])
    .option('--schema', 'the JSON Schema of a case file')
    .action(running(() => import('./facts.js')));

  add('completion <SHELL>', 'print a completion script for a shell', 'completion bash').action(
    async (shell: string) => {
      const { run } = await import('./completion.js');
      done(run(io, oneOf('SHELL', SHELLS, `${NAME} completion`)(shell), program));
    },
  );

  add('help [COMMAND]', 'help of the program or of one command', 'help audit').action(
    (name: string | undefined) => {
      if (name === undefined) return program.outputHelp();
      const command = program.commands.find((each) => each.name() === name);
      if (command === undefined) throw unknownCommand(program, name);
      command.outputHelp();
    },
  );

  program.command('start', { hidden: true }).action(async () => {
    const { run } = await import('./start.js');
    done(await run(io, globals()));
  });

  program
    .helpOption('-h, --help', 'show this help')
    .usage('[options] [command]')
    .argument('[command...]')
    .action(async (words: string[]) => {
      const [typed] = words;
      if (typed !== undefined) throw unknownCommand(program, typed);
      const { run } = await import('./interview.js');
      done(await run(io, undefined, globals()));
    });
  withExamples(program, NAME, `${NAME} audit case.json`, `${NAME} why case.json delay`, `${NAME} help audit`);
  program.addHelpText('after', EXIT_CODES);
  for (const command of [program, ...program.commands]) {
    command.exitOverride((error) => {
      throw isHelp(error) ? error : usageError(command, error);
    });
  }
  return program;

  /** A command whose result can be had for programs. */
  function printing(name: string, summary: string, example: string, more: readonly string[] = []): Command {
    return add(name, summary, example, ...more)
      .addOption(formatOption(PLAIN_FORMATS))
      .option('--json', 'the same as --format json');
  }
}

const collected = (word: string, before: readonly string[] = []): string[] => [...before, word];

function formatOption(formats: readonly string[]): Option {
  const option = new Option('--format <FORMAT>', 'how to print it; text when left out');
  option.argChoices = [...formats];
  return option.argParser(oneOf('--format', formats));
}

/** Runs a command line. Throws what the command throws; help and version end quietly. */
export async function runProgram(program: Command, words: readonly string[]): Promise<void> {
  try {
    await program.parseAsync([...words], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
  }
}
