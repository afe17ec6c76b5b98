/**
 * Sheets in front of the center: perforated vinyl, woven cloth. Impedance of the openings in parallel with the
 * moving sheet (textile or membrane as a parallel connection: Kang & Fuchs 1999, abstract read), transmission
 * T = 1 / (1 + z cos(theta) / (2 rho c)).
 */
import { C_AIR, MU_AIR, RHO_AIR } from './air.js';
import { add, type Complex, complex, div, mul, ONE, scale, sub } from './complex.js';
import { notNegative, oneOf, positive, within } from './input.js';
import { besselJ1OverJ0 } from './special.js';

/**
 * How much neighboring holes relieve each other's end mass. Set so that the mass form meets two worked examples
 * of a perforated-metal acoustics handbook (Schultz 1986, read).
 */
export const HOLE_INTERACTION = 0.8;
/** End correction of both sides together over the hole's diameter. Read in an open transfer-matrix package. */
export const END_CORRECTION = 0.85;
/** Largest open area of round holes that do not overlap, pi / (2 sqrt 3). Geometry. */
const LARGEST_OPEN_AREA = Math.PI / (2 * Math.sqrt(3));

export type PerforatedScreen = {
  readonly kind: 'perforated';
  readonly holeDiameterM: number;
  readonly thicknessM: number;
  /** Open part of the area, 0 to 0.907. Give this or `holesPerM2`; published open areas are often wrong. */
  readonly openArea?: number | undefined;
  readonly holesPerM2?: number | undefined;
  /** Mass of the sheet, kg/m2; a sheet without it does not move. */
  readonly sheetMassKgM2?: number | null | undefined;
  readonly holeInteraction?: number | undefined;
  /** False leaves out friction in the holes (mass only). */
  readonly viscous?: boolean | undefined;
};

export type WovenScreen = {
  readonly kind: 'woven';
  /** Specific flow resistance, Pa s/m. */
  readonly flowResistance: number;
  readonly massKgM2: number;
  /** Length of air that moves with the openings, m. */
  readonly effectiveLengthM: number;
};

export type Screen = PerforatedScreen | WovenScreen;

/** Open area from hole count: n pi d^2 / 4. */
export function openArea({
  holeDiameterM,
  holesPerM2,
}: {
  holeDiameterM: number;
  holesPerM2: number;
}): number {
  const area =
    (positive('holesPerM2', holesPerM2) * Math.PI * positive('holeDiameterM', holeDiameterM) ** 2) / 4;
  return within('open area of holesPerM2 holes', area, 0, LARGEST_OPEN_AREA);
}

function openAreaOf(screen: PerforatedScreen): number {
  const { openArea: given, holesPerM2, holeDiameterM } = screen;
  if ((given === undefined) === (holesPerM2 === undefined)) {
    throw new RangeError(
      `openArea and holesPerM2 are ${given === undefined ? 'both missing' : 'both given'}; accepted: one of the two, for example openArea 0.048`,
    );
  }
  if (holesPerM2 !== undefined) return openArea({ holeDiameterM, holesPerM2 });
  return within('openArea', positive('openArea', given ?? 0), 0, LARGEST_OPEN_AREA);
}

/**
 * Impedance of a perforated sheet's holes, Pa s/m: viscous flow in a round hole (Maa's micro-perforate form,
 * end terms read in an open transfer-matrix package, the exact Bessel form from memory).
 */
function holeImpedance(screen: PerforatedScreen, frequencyHz: number): Complex {
  const omega = 2 * Math.PI * frequencyHz;
  const area = openAreaOf(screen);
  const diameterM = positive('holeDiameterM', screen.holeDiameterM);
  const thicknessM = positive('thicknessM', screen.thicknessM);
  const interaction = within('holeInteraction', screen.holeInteraction ?? HOLE_INTERACTION, 0, 1);
  const plug = complex(0, omega * RHO_AIR * thicknessM);
  const end = complex(0, omega * RHO_AIR * END_CORRECTION * diameterM * interaction);
  if (screen.viscous === false) return scale(add(plug, end), 1 / area);
  // q = (d/2) sqrt(omega rho / mu) sqrt(-j)
  const size = (diameterM / 2) * Math.sqrt((omega * RHO_AIR) / MU_AIR);
  const q = complex(size / Math.SQRT2, -size / Math.SQRT2);
  const slowed = sub(ONE, div(scale(besselJ1OverJ0(q), 2), q));
  const surface = Math.sqrt(2 * omega * RHO_AIR * MU_AIR);
  return scale(add(add(div(plug, slowed), end), complex(surface)), 1 / area);
}

/** Impedance of the openings alone and the mass that moves beside them (undefined: it does not move). */
function branches(screen: Screen, frequencyHz: number): { openings: Complex; massKgM2: number | undefined } {
  if (screen.kind === 'perforated') {
    const mass = screen.sheetMassKgM2 ?? undefined;
    return {
      openings: holeImpedance(screen, frequencyHz),
      massKgM2: mass === undefined ? undefined : positive('sheetMassKgM2', mass),
    };
  }
  oneOf<Screen['kind']>('kind', screen.kind, ['perforated', 'woven']);
  const resistance = notNegative('flowResistance', screen.flowResistance);
  const length = notNegative('effectiveLengthM', screen.effectiveLengthM);
  return {
    openings: complex(resistance, 2 * Math.PI * frequencyHz * RHO_AIR * length),
    massKgM2: positive('massKgM2', screen.massKgM2),
  };
}

/** Impedance of the whole sheet, Pa s/m: openings and moving mass in parallel. */
export function screenImpedance(screen: Screen, frequencyHz: number): Complex {
  positive('frequencyHz', frequencyHz);
  const { openings, massKgM2 } = branches(screen, frequencyHz);
  if (massKgM2 === undefined) return openings;
  const mass = complex(0, 2 * Math.PI * frequencyHz * massKgM2);
  return div(mul(openings, mass), add(openings, mass));
}

/** Complex transmission through the sheet at `angleDeg` from its normal (0 to below 90). */
export function screenTransmission(screen: Screen, frequencyHz: number, angleDeg = 0): Complex {
  const cosine = Math.cos((within('angleDeg', angleDeg, -89, 89) * Math.PI) / 180);
  const z = scale(screenImpedance(screen, frequencyHz), cosine / (2 * RHO_AIR * C_AIR));
  return div(ONE, add(ONE, z));
}

const levelDb = ({ re, im }: Complex): number => 10 * Math.log10(re * re + im * im);

export type ScreenInput = Screen & {
  readonly angleDeg?: number | undefined;
  readonly frequenciesHz: readonly number[];
};

/** Loss through a sheet, dB (positive) at each frequency. Falls with the angle: tilting costs no treble. */
export function screen(input: ScreenInput): { lossDb: number[] } {
  return { lossDb: input.frequenciesHz.map((hz) => -levelDb(screenTransmission(input, hz, input.angleDeg))) };
}

/** Loss of a limp closed sheet, dB: mass law at normal incidence, 10 lg (1 + (omega m / 2 rho c)^2). */
export function massLawDb({ massKgM2, frequencyHz }: { massKgM2: number; frequencyHz: number }): number {
  const ratio =
    (2 * Math.PI * positive('frequencyHz', frequencyHz) * positive('massKgM2', massKgM2)) /
    (2 * RHO_AIR * C_AIR);
  return 10 * Math.log10(1 + ratio * ratio);
}
