/** Files of recordings: what is there is read, whatever the header claims; what cannot be read is told. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { UserError } from '../../src/lib/user-error.js';
import { isFlac, readFlac } from '../../src/recording/flac.js';
import { playedChannels, playFile } from '../../src/recording/play-file.js';
import { isWav, readWav } from '../../src/recording/wav.js';

interface Header {
  readonly code?: number;
  readonly channels?: number;
  readonly rateHz?: number;
  readonly bits?: number;
  /** Length that the data chunk claims. */
  readonly claims?: number;
  /** Chunks before the sound: id and content. */
  readonly before?: readonly (readonly [string, Uint8Array])[];
}

function wav(
  data: Uint8Array,
  { code = 1, channels = 1, rateHz = 48_000, bits = 16, claims, before = [] }: Header = {},
): Uint8Array {
  const format = new Uint8Array(16);
  const view = new DataView(format.buffer);
  view.setUint16(0, code, true);
  view.setUint16(2, channels, true);
  view.setUint32(4, rateHz, true);
  view.setUint32(8, (rateHz * channels * bits) / 8, true);
  view.setUint16(12, (channels * bits) / 8, true);
  view.setUint16(14, bits, true);
  const chunk = (id: string, content: Uint8Array, length = content.length): number[] => {
    const size = new Uint8Array(4);
    new DataView(size.buffer).setUint32(0, length, true);
    return [...new TextEncoder().encode(id), ...size, ...content, ...(content.length % 2 ? [0] : [])];
  };
  const body = [
    ...before.flatMap(([id, content]) => chunk(id, content)),
    ...chunk('fmt ', format),
    ...chunk('data', data, claims ?? data.length),
  ];
  return Uint8Array.from([
    ...new TextEncoder().encode('RIFF'),
    0,
    0,
    0,
    0,
    ...new TextEncoder().encode('WAVE'),
    ...body,
  ]);
}
const bytesOf = (values: ArrayBufferView): Uint8Array =>
  new Uint8Array(values.buffer, values.byteOffset, values.byteLength);
const SINE = Float64Array.from({ length: 480 }, (_, i) => 0.5 * Math.sin(i / 7));
const INT16 = bytesOf(Int16Array.from(SINE, (value) => Math.round(value * 32_768)));
const near = (samples: Float32Array, of: Float64Array, within: number): void => {
  expect(samples).toHaveLength(of.length);
  expect(Math.max(...of.map((value, i) => Math.abs((samples[i] ?? 9) - value)))).toBeLessThan(within);
};
const SIX = playFile('channels');
const refused = (read: () => unknown, word: RegExp): void => {
  expect(read).toThrow(UserError);
  expect(read).toThrow(word);
};

describe('WAV files', () => {
  it('hold samples of 8, 16, 24, 32 bits and floating ones of both sizes', () => {
    const int24 = Uint8Array.from(
      [...SINE].flatMap((value) => {
        const n = Math.round(value * 8_388_608);
        return [n & 255, (n >> 8) & 255, (n >> 16) & 255];
      }),
    );
    near(
      readWav(
        wav(
          Uint8Array.from(SINE, (v) => Math.round(v * 128) + 128),
          { bits: 8 },
        ),
      ).samples,
      SINE,
      1 / 200,
    );
    near(readWav(wav(INT16)).samples, SINE, 1 / 30_000);
    near(readWav(wav(int24, { bits: 24 })).samples, SINE, 1 / 8e6);
    near(
      readWav(wav(bytesOf(Int32Array.from(SINE, (v) => Math.round(v * 2 ** 31))), { bits: 32 })).samples,
      SINE,
      1e-7,
    );
    near(readWav(wav(bytesOf(Float32Array.from(SINE)), { code: 3, bits: 32 })).samples, SINE, 1e-7);
    near(readWav(wav(bytesOf(SINE), { code: 3, bits: 64 })).samples, SINE, 1e-7);
  });

  it('give the louder of two microphones, never their sum', () => {
    const both = Int16Array.from({ length: 960 }, (_, i) =>
      Math.round((SINE[i >> 1] ?? 0) * (i % 2 ? 32_768 : 8192)),
    );
    near(readWav(wav(bytesOf(both), { channels: 2 })).samples, SINE, 1e-4);
  });

  it('may carry odd chunks, the extensible header, and a length of zero, of everything, or of 4 GB', () => {
    near(
      readWav(
        wav(INT16, {
          before: [
            ['LIST', Uint8Array.of(1, 2, 3)],
            ['junk', new Uint8Array(7)],
          ],
        }),
      ).samples,
      SINE,
      1e-4,
    );
    for (const claims of [0, 0xffff_ffff, 0x8000_0000])
      near(readWav(wav(INT16, { claims })).samples, SINE, 1e-4);
    const six = readWav(SIX);
    expect(six.rateHz).toBe(48_000);
    expect(six.samples).toHaveLength(1_267_200);
  });

  it('that lie, are cut, empty, compressed or full of what is no number, are refused with a reason', () => {
    refused(() => readWav(wav(new Uint8Array(0))), /no sound/);
    refused(() => readWav(wav(INT16, { bits: 12 })), /12 bits/);
    refused(() => readWav(wav(INT16, { code: 17 })), /compressed/);
    refused(() => readWav(wav(INT16, { channels: 0 })), /0 channels/);
    refused(() => readWav(wav(INT16, { channels: 60_000 })), /60000 channels/);
    refused(() => readWav(wav(INT16, { rateHz: 0 })), /0 Hz/);
    refused(() => readWav(wav(INT16, { rateHz: 4_000_000_000 })), /sample rate/);
    refused(
      () => readWav(wav(bytesOf(Float32Array.from([0, Number.NaN, 1])), { code: 3, bits: 32 })),
      /no numbers/,
    );
    refused(
      () => readWav(wav(bytesOf(Float32Array.from([0, Infinity])), { code: 3, bits: 32 })),
      /no numbers/,
    );
    refused(() => readWav(wav(INT16).subarray(0, 20)), /cut off/);
  });

  it('never end in anything but sound or a reason, whatever bytes they hold', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), fc.nat(60), (junk, at) => {
        const bytes = wav(INT16);
        bytes.set(junk.subarray(0, bytes.length - at), at);
        if (!isWav(bytes)) return;
        try {
          expect(readWav(bytes).samples.length).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
        }
      }),
    );
  });
});

describe('FLAC files', () => {
  /** Made by the reference encoder from the samples of the formula below, best compression. */
  const file = (name: string): Uint8Array => readFileSync(new URL(`./data/${name}.flac`, import.meta.url));
  const tone = (count: number): Float64Array =>
    Float64Array.from({ length: count }, (_, i) => 0.4 * Math.sin(i / 9) + 0.1 * Math.sin((i * i) / 5000));

  it.each([
    ['mono-16', 1 / 32_768],
    ['stereo-16', 1 / 32_768],
    ['mono-24', 1 / 8_388_608],
    ['noise-16', 1],
  ])('are read exactly: %s', (name, step) => {
    const bytes = file(name);
    expect(isFlac(bytes)).toBe(true);
    const { samples, rateHz } = readFlac(bytes);
    expect(rateHz).toBe(name === 'mono-24' ? 48_000 : 44_100);
    expect(samples).toHaveLength(9000);
    if (name !== 'noise-16') near(samples, tone(9000), 0.51 * step + 1e-7);
  });

  it('that unfold a few bytes to more than any recording are refused before they fill the memory', () => {
    // Frames of 65,536 samples of one value each, in eight channels; written after RFC 9639.
    const header = [0xff, 0xff, 0xff, 0xff, 0, 0, 0, 0, 0, 0, 0x0b, 0xb8, 0x0e, 0xf0, 0, 0, 0, 0];
    const frame = [0xff, 0xf8, 0x70, 0x70, 0, 0xff, 0xff, 0, ...Array(8).fill([0, 0, 1]).flat(), 0, 0];
    const bomb = [
      0x66,
      0x4c,
      0x61,
      0x43,
      0x80,
      0,
      0,
      34,
      ...header,
      ...Array(16).fill(0),
      ...Array(300).fill(frame).flat(),
    ];
    refused(() => readFlac(Uint8Array.from(bomb)), /seconds long at 48000 Hz in 8 channels/);
  });

  it('that are cut give what is there; that are broken, a reason', () => {
    const bytes = file('mono-16');
    const whole = readFlac(bytes);
    const part = readFlac(bytes.subarray(0, Math.floor(bytes.length * 0.7)));
    expect(part.samples.length).toBeGreaterThan(1000);
    expect([...part.samples.slice(0, 1000)]).toEqual([...whole.samples.slice(0, 1000)]);
    refused(() => readFlac(bytes.subarray(0, 30)), /ends before/);
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.nat(255), (at, value) => {
        const broken = Uint8Array.from(bytes);
        broken[Math.max(4, at)] = value;
        try {
          readFlac(broken);
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
        }
      }),
    );
  });
});

describe('the file to play', () => {
  it('peaks at -18 dBFS and repeats left 6 dB weaker', () => {
    const [left = new Float64Array(0), right = new Float64Array(0)] = playedChannels('stereo');
    const peak = (channel: Float64Array, fromS: number): number =>
      channel
        .subarray(fromS * 48_000, (fromS + 2.7) * 48_000)
        .reduce((most, v) => Math.max(most, Math.abs(v)), 0);
    expect(20 * Math.log10(peak(left, 2))).toBeCloseTo(-18, 2);
    expect(20 * Math.log10(peak(left, 14.6) / peak(left, 2))).toBeCloseTo(-6, 6);
    expect(peak(right, 2)).toBe(0);
    expect(peak(left, 6)).toBe(0);
  });

  it('holds six channels by their speaker positions, those not used silent', () => {
    const bytes = SIX;
    const view = new DataView(bytes.buffer);
    expect(view.getUint16(22, true)).toBe(6);
    expect(view.getUint16(34, true)).toBe(24);
    expect(view.getUint32(40, true)).toBe(0x3f);
    const frame = 68 + 3 * 48_000 * 18;
    // Left plays at 3 s; center, low frequencies and both backs do not.
    expect([...bytes.subarray(frame, frame + 3)].some((byte) => byte !== 0)).toBe(true);
    expect([...bytes.subarray(frame + 3, frame + 18)].every((byte) => byte === 0)).toBe(true);
  });
});
