/** Writes the response files that some cases refer to: invented loudspeakers in an invented room, fixed seed. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { randomFrom } from './random.js';

const FOLDER = fileURLToPath(new URL('../cases/responses/', import.meta.url));
const SEED = 20_250;
const POINTS_PER_OCTAVE = 12;
const FROM_HZ = 40;
const TO_HZ = 16_000;

type Curve = (hz: number) => number;
const octaves = (hz: number, from: number): number => Math.log2(hz / from);

/** A bump of `gainDb` at `atHz`, `widthOctaves` wide at its waist. */
const bump =
  (atHz: number, gainDb: number, widthOctaves: number): Curve =>
  (hz) =>
    gainDb * Math.exp(-((octaves(hz, atHz) / widthOctaves) ** 2) * 2);
/** A shelf that reaches `gainDb` an octave above `fromHz`. */
const above =
  (fromHz: number, gainDb: number): Curve =>
  (hz) =>
    gainDb * Math.min(1, Math.max(0, octaves(hz, fromHz)));
const level =
  (gainDb: number): Curve =>
  () =>
    gainDb;

/** What every loudspeaker in the room shares: bass end near 60 Hz and a gentle fall toward the treble. */
const room: Curve = (hz) => -20 * Math.log10(1 + (45 / hz) ** 2) - 0.8 * Math.max(0, octaves(hz, 200));

const files: Readonly<Record<string, readonly Curve[]>> = {
  'matched-left': [],
  'matched-center': [],
  'matched-right': [],
  'low-center': [level(-5.5)],
  'corrected-left': [bump(90, 2, 1)],
  'corrected-center': [bump(420, 5, 1.1), above(2400, -6)],
  'corrected-right': [bump(90, 2, 1)],
  'plain-left': [],
  'plain-center': [bump(560, 5, 0.9), bump(1900, -5, 0.9), above(3500, -5)],
  'plain-right': [],
};

mkdirSync(FOLDER, { recursive: true });
const random = randomFrom(SEED);
for (const [name, parts] of Object.entries(files)) {
  // Ripple of the room and the place of the microphone, about half a decibel, another one for each loudspeaker.
  const waves = Array.from({ length: 6 }, () => ({
    perOctave: random.between(0.4, 2.5),
    phase: random.between(0, 2 * Math.PI),
    sizeDb: random.between(0.1, 0.35),
  }));
  const lines = [`* ${name}: level at the main seat, invented`, '* Hz  dB'];
  for (let n = 0; ; n += 1) {
    const hz = FROM_HZ * 2 ** (n / POINTS_PER_OCTAVE);
    if (hz > TO_HZ) break;
    const ripple = waves.reduce(
      (sum, { perOctave, phase, sizeDb }) =>
        sum + sizeDb * Math.cos(2 * Math.PI * perOctave * octaves(hz, FROM_HZ) + phase),
      0,
    );
    const db = 75 + room(hz) + ripple + parts.reduce((sum, part) => sum + part(hz), 0);
    lines.push(`${hz.toFixed(1)} ${db.toFixed(2)}`);
  }
  writeFileSync(`${FOLDER}${name}.txt`, `${lines.join('\n')}\n`);
}
