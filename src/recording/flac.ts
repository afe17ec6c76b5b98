/**
 * FLAC as RFC 9639 describes it (from memory): frames of fixed or linear-predicted subframes with Rice-coded residues.
 * Written here because the decoders at hand bring parts under other licenses. Check sums are not looked at: a damaged
 * file ends where it cannot be read any more.
 */
import { audioError, checkShape, loudest, MOST_CHANNELS, type Sound } from './audio.js';

export const isFlac = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x66 && bytes[1] === 0x4c && bytes[2] === 0x61 && bytes[3] === 0x43;

/** The data end before the frame does. */
class Ended extends Error {}

class Bits {
  private bit = 0;
  constructor(
    private readonly bytes: Uint8Array,
    public byte: number,
  ) {}

  get aligned(): boolean {
    return this.bit === 0;
  }

  /** Up to 32 bits, unsigned. */
  read(count: number): number {
    let value = 0;
    for (let left = count; left > 0; ) {
      const here = this.bytes[this.byte];
      if (here === undefined) throw new Ended();
      const take = Math.min(left, 8 - this.bit);
      value = value * 2 ** take + ((here >> (8 - this.bit - take)) & ((1 << take) - 1));
      this.bit += take;
      left -= take;
      if (this.bit === 8) {
        this.bit = 0;
        this.byte += 1;
      }
    }
    return value;
  }

  signed(count: number): number {
    const value = this.read(count);
    return count > 0 && value >= 2 ** (count - 1) ? value - 2 ** count : value;
  }

  /** Zeros before the next one. */
  unary(): number {
    let zeros = 0;
    while (this.read(1) === 0) zeros += 1;
    return zeros;
  }

  align(): void {
    if (this.bit > 0) {
      this.bit = 0;
      this.byte += 1;
    }
  }
}

interface Stream {
  readonly rateHz: number;
  readonly channels: number;
  readonly bits: number;
  readonly start: number;
}

function streamOf(bytes: Uint8Array): Stream {
  let at = 4;
  let stream: Omit<Stream, 'start'> | undefined;
  for (;;) {
    const bits = new Bits(bytes, at);
    const last = bits.read(1) === 1;
    const type = bits.read(7);
    const length = bits.read(24);
    if (type === 0) {
      bits.byte += 10;
      stream = { rateHz: bits.read(20), channels: bits.read(3) + 1, bits: bits.read(5) + 1 };
    }
    at += 4 + length;
    if (last) break;
  }
  if (stream === undefined) throw audioError('it is a FLAC file without a description of its sound');
  checkShape(stream.rateHz, stream.channels, 1);
  return { ...stream, start: at };
}

export function readFlac(bytes: Uint8Array): Sound {
  try {
    return decoded(bytes);
  } catch (error) {
    if (error instanceof Ended) throw audioError('it ends before its sound begins');
    throw error;
  }
}

function decoded(bytes: Uint8Array): Sound {
  const stream = streamOf(bytes);
  const blocks: Int32Array[][] = [];
  let frames = 0;
  const bits = new Bits(bytes, stream.start);
  try {
    while (bits.byte < bytes.length) {
      const block = frameOf(bits, stream);
      if (block === undefined) break;
      blocks.push(block);
      frames += block[0]?.length ?? 0;
      checkShape(stream.rateHz, stream.channels, frames);
    }
  } catch (error) {
    // What was read before a cut is worth having.
    if (!(error instanceof Ended)) throw error;
  }
  checkShape(stream.rateHz, stream.channels, frames);
  const scale = 2 ** (stream.bits - 1);
  const sounds = Array.from({ length: stream.channels }, (_, channel) => {
    const out = new Float32Array(frames);
    let at = 0;
    for (const block of blocks) {
      const part = block[channel] ?? new Int32Array(0);
      for (let i = 0; i < part.length; i += 1) out[at + i] = (part[i] ?? 0) / scale;
      at += part.length;
    }
    return out;
  });
  return loudest(sounds, stream.rateHz);
}

const SYNC = 0x3ffe;
const SMALL_BLOCK = 192;
const LARGE_BLOCK = 576;
const SAMPLE_BITS = [0, 8, 12, 0, 16, 20, 24, 32];
/** Bits of the sample rate that follow the header, by its code. */
const RATE_BITS: Readonly<Record<number, number>> = { 12: 8, 13: 16, 14: 16 };

/** Undefined where no frame begins. */
function frameOf(bits: Bits, stream: Stream): Int32Array[] | undefined {
  if (bits.read(14) !== SYNC) return undefined;
  bits.read(2);
  const sizeCode = bits.read(4);
  const rateCode = bits.read(4);
  const layout = bits.read(4);
  const sampleBits = SAMPLE_BITS[bits.read(3)] || stream.bits;
  bits.read(1);
  for (let first = bits.read(8), mask = 0x40; first & 0x80 && first & mask; mask >>= 1) bits.read(8);
  const size = blockSize(bits, sizeCode);
  bits.read(RATE_BITS[rateCode] ?? 0);
  bits.read(8);
  const channels = layout < 8 ? layout + 1 : 2;
  if (layout > 10 || channels !== stream.channels || channels > MOST_CHANNELS || size === 0) return undefined;
  // The difference of two channels needs a bit more.
  const wide = layout === 9 ? 0 : layout === 8 || layout === 10 ? 1 : -1;
  const sounds = Array.from({ length: channels }, (_, i) =>
    subframe(bits, size, sampleBits + (i === wide ? 1 : 0)),
  );
  bits.align();
  bits.read(16);
  return undoStereo(sounds, layout);
}

function blockSize(bits: Bits, code: number): number {
  if (code === 1) return SMALL_BLOCK;
  if (code >= 2 && code <= 5) return LARGE_BLOCK * 2 ** (code - 2);
  if (code === 6) return bits.read(8) + 1;
  if (code === 7) return bits.read(16) + 1;
  return code === 0 ? 0 : 2 ** code;
}

/** Left and side, side and right, middle and side back to left and right. */
function undoStereo(sounds: Int32Array[], layout: number): Int32Array[] {
  const [first, second] = sounds;
  if (layout < 8 || first === undefined || second === undefined) return sounds;
  for (let i = 0; i < first.length; i += 1) {
    const [a, b] = [first[i] ?? 0, second[i] ?? 0];
    if (layout === 8) second[i] = a - b;
    else if (layout === 9) first[i] = a + b;
    else {
      const middle = 2 * a + (b & 1);
      first[i] = (middle + b) >> 1;
      second[i] = (middle - b) >> 1;
    }
  }
  return sounds;
}

/** What the fixed predictors of order 0 to 4 take from the samples before. */
const FIXED = [[], [1], [2, -1], [3, -3, 1], [4, -6, 4, -1]] as const;

function subframe(bits: Bits, size: number, sampleBits: number): Int32Array {
  bits.read(1);
  const type = bits.read(6);
  const wasted = bits.read(1) === 1 ? bits.unary() + 1 : 0;
  const width = sampleBits - wasted;
  const out = new Int32Array(size);
  if (width < 1) throw new Ended();
  if (type === 0) out.fill(bits.signed(width));
  else if (type === 1) for (let i = 0; i < size; i += 1) out[i] = bits.signed(width);
  else if ((type >= 8 && type <= 12) || type >= 32) {
    const order = type < 32 ? type - 8 : type - 31;
    for (let i = 0; i < Math.min(order, size); i += 1) out[i] = bits.signed(width);
    const { taps, shift } = type < 32 ? { taps: FIXED[order] ?? [], shift: 0 } : predictor(bits, order);
    residue(bits, out, order);
    restore(out, order, taps, shift);
  } else throw new Ended();
  if (wasted > 0) for (let i = 0; i < size; i += 1) out[i] = (out[i] ?? 0) * 2 ** wasted;
  return out;
}

function predictor(bits: Bits, order: number): { readonly taps: readonly number[]; readonly shift: number } {
  const precision = bits.read(4) + 1;
  const shift = Math.max(0, bits.signed(5));
  return { taps: Array.from({ length: order }, () => bits.signed(precision)), shift };
}

function restore(out: Int32Array, order: number, taps: readonly number[], shift: number): void {
  const divisor = 2 ** shift;
  for (let i = order; i < out.length; i += 1) {
    let sum = 0;
    for (let k = 0; k < order; k += 1) sum += (taps[k] ?? 0) * (out[i - 1 - k] ?? 0);
    out[i] = (out[i] ?? 0) + Math.floor(sum / divisor);
  }
}

function residue(bits: Bits, out: Int32Array, order: number): void {
  const wide = bits.read(2);
  if (wide > 1) throw new Ended();
  const parameterBits = wide === 0 ? 4 : 5;
  const escaped = 2 ** parameterBits - 1;
  const partitions = 2 ** bits.read(4);
  const length = out.length / partitions;
  if (!Number.isInteger(length) || length < order) throw new Ended();
  for (let part = 0, at = order; part < partitions; part += 1) {
    const end = (part + 1) * length;
    const parameter = bits.read(parameterBits);
    const raw = parameter === escaped ? bits.read(5) : 0;
    for (; at < end; at += 1) {
      if (parameter === escaped) out[at] = bits.signed(raw);
      else {
        const folded = bits.unary() * 2 ** parameter + bits.read(parameter);
        out[at] = folded % 2 === 0 ? folded / 2 : -(folded + 1) / 2;
      }
    }
  }
}
