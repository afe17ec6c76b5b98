/** Runs `calc` as the command line does, with everything it writes kept. */
import { run } from '../../src/commands/calc.js';
import type { Io } from '../../src/commands/io.js';

export type Ran = { readonly out: string; readonly err: string; readonly code: number };

export async function calc(
  name: string | undefined,
  args: readonly string[] = [],
  { stdin, ...options }: { stdin?: string; json?: boolean; help?: boolean } = {},
): Promise<Ran> {
  let out = '';
  let err = '';
  const io: Io = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    env: {},
    stdinIsTerminal: stdin === undefined,
    stdoutIsTerminal: false,
    stderrIsTerminal: false,
    columns: 80,
    readStdin: async () => new TextEncoder().encode(stdin ?? ''),
  };
  const code = await run(io, name, args, options);
  return { out, err, code };
}

/** What `calc NAME - --json` prints for these inputs. */
export async function calcJson(
  name: string,
  inputs: object,
): Promise<Record<string, number | null | (number | null)[]>> {
  const { out } = await calc(name, ['-'], { stdin: JSON.stringify(inputs), json: true });
  return JSON.parse(out);
}
