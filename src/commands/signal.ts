/** `center-audit signal`: the test file to play, and how to record it. */

import { writeNew } from '../disk/write-new.js';
import { documentText } from '../explain/document-text.js';
import { signalBlocks } from '../explain/measurement/signal-steps.js';
import { textOptions } from '../explain/terminal.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { playFile } from '../recording/play-file.js';
import { SEQUENCES } from '../recording/sequence.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { type FormatOptions, textFlags, wantsJson } from './options.js';

interface SignalOptions extends FormatOptions {
  readonly stereo?: boolean;
  readonly channels?: boolean;
  readonly force?: boolean;
}

export function run(io: Io, path: string, options: GlobalOptions & SignalOptions): ExitCode {
  if (options.stereo && options.channels) {
    throw new UserError({
      where: 'signal',
      what: '--stereo and --channels ask for two files at once',
      accepted: 'one of them; --stereo is the default',
      example: 'center-audit signal test.wav --channels',
    });
  }
  if (!/\.wav$/i.test(path)) {
    throw new UserError({
      where: 'signal',
      what: `${plainLine(path)} does not end in .wav`,
      accepted: 'the name of a WAV file to write',
      example: 'center-audit signal test.wav',
    });
  }
  const kind = options.channels ? 'channels' : 'stereo';
  writeNew(path, playFile(kind), options.force ?? false);
  const { lengthS } = SEQUENCES[kind];
  if (wantsJson(options)) {
    io.out(
      `${JSON.stringify({ format: 'center-audit/signal', version: 1, file: path, signal: kind, lengthS, rateHz: 48_000 }, null, 2)}\n`,
    );
  } else {
    io.out(documentText(signalBlocks(plainLine(path), kind, lengthS), textOptions(io, textFlags(options))));
  }
  return EXIT.done;
}
