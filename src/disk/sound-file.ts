/** A recording from a file: WAV and FLAC are read here, everything else through the user's own ffmpeg. */
import { readLimited } from '../disk/read-file.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { ADVICE, audioError, type Sound } from '../recording/audio.js';
import { isFlac, readFlac } from '../recording/flac.js';
import { isWav, readWav } from '../recording/wav.js';
import { converted } from './ffmpeg.js';

/** Five minutes of two channels at 48 kHz and 24 bit. */
const MOST_FILE_BYTES = 90 * 1024 * 1024;

/** Throws a UserError that names the file and says what to do instead. */
export async function readSound(path: string): Promise<Sound> {
  const name = plainLine(path);
  const bytes = readLimited(path, MOST_FILE_BYTES, {
    accepted: ADVICE,
    example: 'center-audit measure recording.wav',
  });
  try {
    if (bytes.length === 0) throw audioError('the file is empty');
    if (isWav(bytes)) return readWav(bytes);
    if (isFlac(bytes)) return readFlac(bytes);
    return readWav(await converted(path));
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    throw new UserError({ ...error.problems[0], where: name });
  }
}
