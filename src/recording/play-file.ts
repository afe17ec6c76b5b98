/** The file that the owner plays: samples by channel, and as WAV bytes. */
import { LEAD_IN, leadIn, PEAK, SEQUENCES, type SignalKind, sweep } from './sequence.js';

export const PLAY_RATE_HZ = 48_000;
const BITS = 24;
/** Front left, right, center, low frequencies, back left, right: what a six-channel file is expected to hold. */
const SIX_CHANNELS = 6;
/** Bits of the speaker positions in the extensible header: FL FR FC LFE BL BR (from memory: WAVEFORMATEXTENSIBLE). */
const SIX_POSITIONS = 0x3f;
const STEREO_POSITIONS = 0x3;
const FORMAT_EXTENSIBLE = 0xfffe;
/** The format code 1 (integer samples) as the sixteen bytes that the extensible header wants. */
const INTEGER_FORMAT = [1, 0, 0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71];

/** Samples of front left, right and (for `channels`) center. */
export function playedChannels(kind: SignalKind): Float64Array[] {
  const { lengthS, sweeps } = SEQUENCES[kind];
  const channels = Array.from(
    { length: kind === 'stereo' ? 2 : 3 },
    () => new Float64Array(Math.trunc(lengthS * PLAY_RATE_HZ)),
  );
  const add = (sound: Float64Array, atS: number, gain: (channel: number) => number): void => {
    const start = Math.round(atS * PLAY_RATE_HZ);
    for (const [number, channel] of channels.entries()) {
      const factor = gain(number);
      if (factor === 0) continue;
      for (let i = 0; i < sound.length; i += 1) {
        channel[start + i] = (channel[start + i] ?? 0) + factor * (sound[i] ?? 0);
      }
    }
  };
  add(leadIn(PLAY_RATE_HZ), LEAD_IN.startS, () => 1);
  const unit = sweep(PLAY_RATE_HZ);
  for (const { atS, gains } of sweeps) add(unit, atS, (channel) => PEAK * (gains[channel] ?? 0));
  return channels;
}

/** The file as bytes: WAV, 48 kHz, 24 bit; the six-channel file by speaker positions, what is not used silent. */
export function playFile(kind: SignalKind): Uint8Array {
  const channels = playedChannels(kind);
  const [count, positions] = kind === 'stereo' ? [2, STEREO_POSITIONS] : [SIX_CHANNELS, SIX_POSITIONS];
  return wav24(channels, count, positions);
}

/** A number as bytes, the lowest first. */
const bytesOf = (value: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => Math.floor(value / 256 ** i) & 0xff);
const textOf = (word: string): number[] => [...word].map((letter) => letter.charCodeAt(0));

function wav24(channels: readonly Float64Array[], count: number, positions: number): Uint8Array {
  const frames = channels[0]?.length ?? 0;
  const block = (count * BITS) / 8;
  const extensible = count > 2;
  const format = [
    ...bytesOf(extensible ? FORMAT_EXTENSIBLE : 1, 2),
    ...bytesOf(count, 2),
    ...bytesOf(PLAY_RATE_HZ, 4),
    ...bytesOf(PLAY_RATE_HZ * block, 4),
    ...bytesOf(block, 2),
    ...bytesOf(BITS, 2),
    ...(extensible
      ? [...bytesOf(22, 2), ...bytesOf(BITS, 2), ...bytesOf(positions, 4), ...INTEGER_FORMAT]
      : []),
  ];
  const size = frames * block;
  const chunks = [
    ...textOf('WAVEfmt '),
    ...bytesOf(format.length, 4),
    ...format,
    ...textOf('data'),
    ...bytesOf(size, 4),
  ];
  const header = [...textOf('RIFF'), ...bytesOf(chunks.length + size, 4), ...chunks];
  const bytes = new Uint8Array(header.length + size);
  bytes.set(header);
  const full = 2 ** (BITS - 1) - 1;
  let at = header.length;
  for (let i = 0; i < frames; i += 1) {
    for (let channel = 0; channel < count; channel += 1) {
      const sample = Math.round((channels[channel]?.[i] ?? 0) * full);
      for (let byte = 0; byte < BITS; byte += 8) bytes[at++] = sample >> byte;
    }
  }
  return bytes;
}
