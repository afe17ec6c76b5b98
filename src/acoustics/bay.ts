/**
 * A loudspeaker in an open compartment of furniture: the gaps around it and the air behind it form a necked
 * resonator; a baffle set back forms a short tube; a flush baffle turns full space into half space.
 */
import { C_AIR, MU_AIR, RHO_AIR } from './air.js';
import { logGrid } from './bands.js';
import { add, type Complex, complex, div, mul, polar, power, scale } from './complex.js';
import { notNegative, positive, within } from './input.js';
import { goldenMinimum } from './minimize.js';
import { interpolateLog } from './reflection.js';
import { interpolate } from './shelf.js';

export type BayInput = {
  readonly bayWidthM: number;
  readonly bayHeightM: number;
  readonly bayDepthM: number;
  readonly speakerWidthM: number;
  readonly speakerHeightM: number;
  readonly speakerDepthM: number;
  /** Baffle behind the front of the bay, m, 0 or above. */
  readonly recessM?: number;
};

/** Slot around the loudspeaker and cavity behind it, as an acoustic line. */
type BayLine = {
  readonly slotAreaM2: number;
  readonly gapM: number;
  readonly slotLengthM: number;
  /** With end corrections at both ends. */
  readonly effectiveLengthM: number;
  readonly cavityAreaM2: number;
  readonly cavityLengthM: number;
};

/** Sum of the end corrections of a slit's two ends, in units of (g / pi)(1 + ln(2W / g)). From memory. */
const SLIT_END_FACTOR = 1.5;

/** Null when the loudspeaker fills the bay and there is no slot. Throws RangeError when it does not fit. */
function bayLine(input: BayInput): BayLine | null {
  const widthM = positive('bayWidthM', input.bayWidthM);
  const heightM = positive('bayHeightM', input.bayHeightM);
  const depthM = positive('bayDepthM', input.bayDepthM);
  const speakerWidthM = within('speakerWidthM', positive('speakerWidthM', input.speakerWidthM), 0, widthM);
  const speakerHeightM = within(
    'speakerHeightM',
    positive('speakerHeightM', input.speakerHeightM),
    0,
    heightM,
  );
  const speakerDepthM = positive('speakerDepthM', input.speakerDepthM);
  const recessM = within('recessM', input.recessM ?? 0, 0, depthM);
  const cavityAreaM2 = widthM * heightM;
  const slotAreaM2 = cavityAreaM2 - speakerWidthM * speakerHeightM;
  if (slotAreaM2 <= 0) return null;
  const gapM = slotAreaM2 / (widthM + heightM);
  const slotLengthM = Math.min(speakerDepthM, depthM - recessM);
  const end = SLIT_END_FACTOR * (gapM / Math.PI) * (1 + Math.log((2 * widthM) / gapM));
  return {
    slotAreaM2,
    gapM,
    slotLengthM,
    effectiveLengthM: slotLengthM + end,
    cavityAreaM2,
    cavityLengthM: Math.max(0, depthM - slotLengthM - recessM),
  };
}

const BISECTIONS = 60;

/**
 * Lowest resonance of gap and cavity, Hz: tan(k L1) tan(k L2) = S1 / S2 with the slot's end corrections, or
 * c / (4 L1) without air behind. Null when there is no gap. Within about 20 % of a two-dimensional
 * boundary-element computation. Throws RangeError when the loudspeaker does not fit.
 */
export function bay(input: BayInput): { resonanceHz: number | null } {
  const line = bayLine(input);
  if (line === null) return { resonanceHz: null };
  const { effectiveLengthM, cavityLengthM, slotAreaM2, cavityAreaM2 } = line;
  // Both tangents rise from 0 to the first quarter wave of the longer part, so the lowest root lies below it.
  let low = 0;
  let high = C_AIR / (4 * Math.max(effectiveLengthM, cavityLengthM));
  for (let i = 0; i < BISECTIONS; i += 1) {
    const middle = (low + high) / 2;
    const k = (2 * Math.PI * middle) / C_AIR;
    if (Math.tan(k * effectiveLengthM) * Math.tan(k * cavityLengthM) < slotAreaM2 / cavityAreaM2)
      low = middle;
    else high = middle;
  }
  return { resonanceHz: (low + high) / 2 };
}

/** From the driver to the gap it excites, m. Common practice, no source. */
const DRIVER_TO_GAP_M = 0.18;
const RESPONSE_FROM_HZ = 40;
const RESPONSE_TO_HZ = 500;
/** Enough to find peak and dip; both are then sought between the neighbors. */
const RESPONSE_POINTS = 150;
const RESPONSE_GRID = logGrid(RESPONSE_FROM_HZ, RESPONSE_TO_HZ, RESPONSE_POINTS);

/** Volume velocity of the gap over that of the driver. */
function gapVelocity(line: BayLine, stuffingPaSPerM2: number, frequencyHz: number): Complex {
  const omega = 2 * Math.PI * frequencyHz;
  const k = omega / C_AIR;
  const drive = scale(
    mul(complex(0, 1), polar(1, -k * DRIVER_TO_GAP_M)),
    (-omega * RHO_AIR) / (2 * Math.PI * DRIVER_TO_GAP_M),
  );
  const slot = (RHO_AIR * C_AIR) / line.slotAreaM2;
  const tangent = Math.tan(k * line.effectiveLengthM);
  // A closed end is an open circuit: without a cavity the slot's input impedance is that of a stopped line.
  const cavity = complex(0, (-RHO_AIR * C_AIR) / (Math.tan(k * line.cavityLengthM) * line.cavityAreaM2));
  const input =
    line.cavityLengthM === 0
      ? complex(0, -slot / tangent)
      : scale(
          div(add(cavity, complex(0, slot * tangent)), add(complex(slot), mul(cavity, complex(0, tangent)))),
          slot,
        );
  const radiation = (RHO_AIR * C_AIR * k * k) / (2 * Math.PI);
  // Boundary layers on the slot's wetted walls, about 4 (W + H) around, hence 4 / g per area (from memory).
  const wallsPerM = 4 / line.gapM;
  const viscous =
    (line.slotLengthM * wallsPerM * Math.sqrt((omega * RHO_AIR * MU_AIR) / 2)) / line.slotAreaM2;
  const stuffing = (stuffingPaSPerM2 * line.slotLengthM) / line.slotAreaM2;
  return div(drive, add(input, complex(radiation + viscous + stuffing)));
}

/**
 * Highest peak and deepest dip that gap and cavity add between 40 and 500 Hz, dB, not smoothed. The size is an
 * order of magnitude; what stuffing does to it is the point.
 * @param input stuffingPaSPerM2: flow resistivity of what fills the gaps, 0 for none (loose polyester 1000 to
 * 3000, mineral wool 5000 to 20000; from memory)
 */
export function bayResponse(input: BayInput & { readonly stuffingPaSPerM2?: number }): {
  peakDb: number;
  peakHz: number | null;
  dipDb: number;
  dipHz: number | null;
} {
  const stuffingPaSPerM2 = notNegative('stuffingPaSPerM2', input.stuffingPaSPerM2 ?? 0);
  const line = bayLine(input);
  if (line === null) return { peakDb: 0, peakHz: null, dipDb: 0, dipHz: null };
  const level = (hz: number): number =>
    10 * Math.log10(power(add(complex(1), gapVelocity(line, stuffingPaSPerM2, hz))));
  const levels = RESPONSE_GRID.map(level);
  /** Highest of the levels times `sign`, where it is above 0. */
  const extreme = (sign: 1 | -1): { db: number; hz: number | null } => {
    const signed = levels.map((db) => sign * db);
    const at = signed.indexOf(Math.max(...signed));
    const [below, above] = [
      RESPONSE_GRID[at - 1] ?? RESPONSE_FROM_HZ,
      RESPONSE_GRID[at + 1] ?? RESPONSE_TO_HZ,
    ];
    const hz = goldenMinimum((x) => -sign * level(x), below, above);
    const db = level(hz);
    return sign * db > 0 ? { db, hz } : { db: 0, hz: null };
  };
  const [peak, dip] = [extreme(1), extreme(-1)];
  return { peakDb: peak.db, peakHz: peak.hz, dipDb: dip.db, dipHz: dip.hz };
}

/** End correction of an open mouth in radii of the circle of the same area. From memory (flanged pipe). */
const MOUTH_END_FACTOR = 0.85;

/**
 * Peak of a recess, dB over depth in m: two-dimensional boundary-element computation, no side gap. The first
 * point is a lip that touches the driver's side, an upper bound. Held beyond 0.2 m.
 */
const RECESS_PEAK_DB: readonly (readonly [recessM: number, peakDb: number])[] = [
  [0, 0],
  [0.02, 2.2],
  [0.05, 2.8],
  [0.1, 4.8],
  [0.2, 7.9],
];

/**
 * Resonance of the space in front of a baffle set back by `recessM`: c / (4 (s + 0.85 a)), a the radius of the
 * mouth's area. Null when nothing is set back. `peakDb` from the table above.
 */
export function recess(input: { recessM: number; mouthWidthM: number; mouthHeightM: number }): {
  resonanceHz: number | null;
  peakDb: number;
} {
  const depthM = notNegative('recessM', input.recessM);
  const areaM2 = positive('mouthWidthM', input.mouthWidthM) * positive('mouthHeightM', input.mouthHeightM);
  const lengthM = depthM + MOUTH_END_FACTOR * Math.sqrt(areaM2 / Math.PI);
  return {
    resonanceHz: depthM === 0 ? null : C_AIR / (4 * lengthM),
    peakDb: interpolate(RECESS_PEAK_DB, depthM),
  };
}

/** Full space to half space, dB: 20 lg 2, closed form. Reached at the bottom of the range. */
const HALF_SPACE_DB = 20 * Math.log10(2);

/**
 * Extra level of a box whose baffle is flush with a furniture front with sealed gaps, over the same box free,
 * dB: two-dimensional boundary-element computation (box 0.18 m high, front 0.98 m high).
 */
const FLUSH_GAIN_DB: readonly (readonly [frequencyHz: number, gainDb: number])[] = [
  [20, HALF_SPACE_DB],
  [100, 5.7],
  [160, 5.1],
  [200, 4.8],
  [250, 4.1],
  [315, 3.1],
  [400, 2.6],
  [500, 1.3],
  [800, -2],
  [1000, -2],
];

/** Gain of a flush baffle, dB. 20 to 1000 Hz, the range of the computation; throws RangeError outside. */
export function flushGainDb(frequencyHz: number): number {
  return interpolateLog(FLUSH_GAIN_DB, within('frequencyHz', frequencyHz, 20, 1000));
}
