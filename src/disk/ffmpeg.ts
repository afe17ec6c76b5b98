/** Other formats of sound through the ffmpeg that the user has. Nothing of it is part of this program. */
import { execFile } from 'node:child_process';
import { resolve } from 'node:path';
import { audioError, LONGEST_S } from '../recording/audio.js';

/** Half a minute of sound takes a fraction of a second. */
const MOST_MS = 4500;
const MOST_OUTPUT_BYTES = 120 * 1024 * 1024;
/** Containers of single recordings; no playlists, which could name other files. */
const CONTAINERS = 'mov,mp4,m4a,3gp,3g2,mj2,mp3,ogg,matroska,webm,aac,amr,aiff,caf,w64,asf,wav,flac';
const ABSENT =
  'it is no WAV or FLAC file, and ffmpeg, which reads what phones store otherwise, is not installed; install it, record as WAV (most recorder apps offer that), or open the recording in the page that center-audit page writes';
const UNREAD = 'ffmpeg finds no sound in it that can be read; record again, as WAV if the app offers that';

/** @returns a WAV file. The path goes to the program as it is: no shell, no address, no option. */
export function converted(path: string): Promise<Uint8Array> {
  const words = [
    ...['-nostdin', '-hide_banner', '-loglevel', 'error'],
    ...['-protocol_whitelist', 'file,pipe', '-format_whitelist', CONTAINERS],
    ...['-i', `file:${resolve(path)}`, '-vn', '-sn', '-dn', '-t', String(LONGEST_S)],
    ...['-f', 'wav', '-acodec', 'pcm_f32le', 'pipe:1'],
  ];
  return new Promise((keep, refuse) => {
    execFile(
      'ffmpeg',
      words,
      {
        encoding: 'buffer',
        timeout: MOST_MS,
        killSignal: 'SIGKILL',
        maxBuffer: MOST_OUTPUT_BYTES,
        windowsHide: true,
      },
      (error, stdout) => {
        if (error === null && stdout.length > 0) return keep(stdout);
        if (error !== null && 'code' in error && error.code === 'ENOENT') {
          return refuse(audioError(ABSENT));
        }
        refuse(audioError(UNREAD));
      },
    );
  });
}
