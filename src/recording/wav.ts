/** WAV files: integer and floating samples, plain and extensible headers, with whatever lengths they claim. */
import { audioError, checkShape, loudest, MOST_CHANNELS, type Sound } from './audio.js';

const INTEGER = 1;
const FLOAT = 3;
const EXTENSIBLE = 0xfffe;

interface Format {
  readonly code: number;
  readonly channels: number;
  readonly rateHz: number;
  readonly bits: number;
}

export const isWav = (bytes: Uint8Array): boolean =>
  ['RIFF', 'RF64'].includes(word(bytes, 0)) && word(bytes, 8) === 'WAVE';

/** A recording cut off by a crash has wrong lengths: what is there is read, never what is claimed. */
export function readWav(bytes: Uint8Array): Sound {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let format: Format | undefined;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const id = word(bytes, at);
    const claimed = view.getUint32(at + 4, true);
    const start = at + 8;
    if (id === 'fmt ') format = formatAt(view, start, Math.min(claimed, bytes.length - start));
    if (id === 'data') {
      if (format === undefined) throw audioError('its sound comes before the description of its format');
      const there = bytes.length - start;
      // A recorder that was stopped hard leaves nothing or everything as the length.
      const length = claimed === 0 || claimed > there ? there : claimed;
      return samplesOf(view, start, length, format);
    }
    at = start + claimed + (claimed % 2);
  }
  throw audioError('it is a WAV file without sound in it');
}

function formatAt(view: DataView, at: number, length: number): Format {
  if (length < 16) throw audioError('the description of its format is cut off');
  const own = view.getUint16(at, true);
  const code = own === EXTENSIBLE && length >= 26 ? view.getUint16(at + 24, true) : own;
  return {
    code,
    channels: view.getUint16(at + 2, true),
    rateHz: view.getUint32(at + 4, true),
    bits: view.getUint16(at + 14, true),
  };
}

function samplesOf(view: DataView, start: number, length: number, format: Format): Sound {
  const { channels, rateHz, bits } = format;
  if (!(channels >= 1 && channels <= MOST_CHANNELS)) checkShape(rateHz, channels, 1);
  const read = readerOf(view, format);
  const frames = Math.floor(length / ((bits / 8) * channels));
  checkShape(rateHz, channels, frames);
  const sounds = Array.from({ length: channels }, () => new Float32Array(frames));
  let at = start;
  for (let i = 0; i < frames; i += 1) {
    for (const sound of sounds) {
      sound[i] = read(at);
      at += bits / 8;
    }
  }
  return loudest(sounds, rateHz);
}

/** Samples to -1 .. 1; floating ones as they are. */
function readerOf(view: DataView, { code, bits }: Format): (at: number) => number {
  if (code === INTEGER && bits === 8) return (at) => (view.getUint8(at) - 128) / 128;
  if (code === INTEGER && bits === 16) return (at) => view.getInt16(at, true) / 32_768;
  if (code === INTEGER && bits === 24) {
    return (at) => (view.getInt8(at + 2) * 65_536 + view.getUint16(at, true)) / 8_388_608;
  }
  if (code === INTEGER && bits === 32) return (at) => view.getInt32(at, true) / 2_147_483_648;
  if (code === FLOAT && bits === 32) return (at) => view.getFloat32(at, true);
  if (code === FLOAT && bits === 64) return (at) => view.getFloat64(at, true);
  throw audioError(
    code === INTEGER || code === FLOAT
      ? `it has samples of ${bits} bits`
      : `it is a compressed WAV (format ${code}); record or convert to plain WAV`,
  );
}

function word(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}
