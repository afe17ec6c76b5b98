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

function wav24(channels: readonly Float64Array[], count: number, positions: number): Uint8Array {
  const frames = channels[0]?.length ?? 0;
  const block = (count * BITS) / 8;
  const extensible = count > 2;
  const formatBytes = extensible ? 40 : 16;
  const dataBytes = frames * block;
  const bytes = new Uint8Array(28 + formatBytes + dataBytes);
  const view = new DataView(bytes.buffer);
  let at = 0;
  const text = (word: string): void => {
    for (const letter of word) view.setUint8(at++, letter.charCodeAt(0));
  };
  const u16 = (value: number): void => {
    view.setUint16(at, value, true);
    at += 2;
  };
  const u32 = (value: number): void => {
    view.setUint32(at, value, true);
    at += 4;
  };
  text('RIFF');
  u32(bytes.length - 8);
  text('WAVEfmt ');
  u32(formatBytes);
  u16(extensible ? FORMAT_EXTENSIBLE : 1);
  u16(count);
  u32(PLAY_RATE_HZ);
  u32(PLAY_RATE_HZ * block);
  u16(block);
  u16(BITS);
  if (extensible) {
    u16(22);
    u16(BITS);
    u32(positions);
    for (const byte of INTEGER_FORMAT) view.setUint8(at++, byte);
  }
  text('data');
  u32(dataBytes);
  const full = 2 ** (BITS - 1) - 1;
  for (let i = 0; i < frames; i += 1) {
    for (let channel = 0; channel < count; channel += 1) {
      const sample = Math.round((channels[channel]?.[i] ?? 0) * full);
      for (let byte = 0; byte < BITS / 8; byte += 1) view.setUint8(at++, (sample >> (8 * byte)) & 0xff);
    }
  }
  return bytes;
}
