/** `center-audit calc`: one acoustic calculation, the list of all, or the help of one. */
import { readResponseFile } from '../disk/response-files.js';
import { UserError } from '../lib/user-error.js';
import { EXIT, type ExitCode, type Io } from './io.js';

/** A JSON object with the longest list of frequencies stays far below. */
const MAX_STDIN_BYTES = 1024 * 1024;

type CalcOptions = {
  readonly json?: boolean;
  /** Show the help of the calculator instead of running it. */
  readonly help?: boolean;
};

/**
 * @param name undefined lists all calculators
 * @param args `KEY=VALUE` words; `-` reads a JSON object from standard input
 * Throws UserError for what was typed wrongly: the caller prints it and ends with exit code 2.
 */
export async function run(
  io: Io,
  name: string | undefined,
  args: readonly string[],
  options: CalcOptions = {},
): Promise<ExitCode> {
  const { CALCULATORS, calculatorOf } = await import('../explain/calculators/index.js');
  const show = await import('../explain/calculators/show.js');
  if (name === undefined) {
    io.out(
      options.json
        ? `${JSON.stringify(show.listForPrograms(CALCULATORS), null, 2)}\n`
        : show.showList(CALCULATORS, io.columns),
    );
    return EXIT.done;
  }
  const [first, ...others] = name === '-' ? [...args, name] : [name, ...args];
  const calculator = calculatorOf(first ?? name);
  const words = others.filter((word) => word !== '-');
  if (options.help || words.some((word) => word === '--help' || word === '-h')) {
    io.out(
      options.json
        ? `${JSON.stringify(show.listForPrograms([calculator])[0], null, 2)}\n`
        : show.showHelp(calculator, io.columns),
    );
    return EXIT.done;
  }
  const { check, join, readObject, readWords } = await import('../explain/calculators/read-inputs.js');
  const typed = readWords(calculator, words);
  const piped = others.includes('-')
    ? readObject(calculator, await standardInput(io, calculator.name))
    : null;
  const values = check(calculator, piped === null ? typed : join(calculator, typed, piped));
  const result = calculator.run(values, {
    tell: (notice) => io.err(`${notice}\n`),
    readResponse: readResponseFile,
  });
  io.out(
    options.json
      ? `${JSON.stringify(result, null, 2)}\n`
      : show.showResult(calculator, values, result, io.columns),
  );
  return EXIT.done;
}

async function standardInput(io: Io, name: string): Promise<string> {
  if (io.stdinIsTerminal) {
    throw new UserError({
      where: `calc ${name}`,
      what: '- reads standard input, and that is a terminal',
      accepted: 'a JSON object piped in, or the inputs as KEY=VALUE',
      example: `echo '{"delayMs": 1}' | center-audit calc comb -`,
    });
  }
  return new TextDecoder('utf-8').decode(await io.readStdin(MAX_STDIN_BYTES));
}
