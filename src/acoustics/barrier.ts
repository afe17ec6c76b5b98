/** What stands between a loudspeaker and a seat: a wide edge (seat row, sofa back) or a single head. */
import { C_AIR } from './air.js';
import { abs, add, type Complex, complex, div, mul, polar, power, scale } from './complex.js';
import { HEAD_RADIUS_M, HEAD_TOP_ABOVE_EAR_M } from './head.js';
import { finite, notNegative, positive, within } from './input.js';
import { fresnelHalf } from './shelf.js';
import { legendre, sphericalBessel } from './special.js';
import { SPEECH_BANDS_HZ, speechLoss } from './speech.js';

/** Level lost when the edge just touches the sight line, dB (Kurze and Anderson, from memory). */
const GRAZING_DB = 5;
/** Fresnel number above which a clear sight line still loses level. From memory. */
const CLEAR_FRESNEL_NUMBER = -0.19;

/**
 * Loss behind the edge of a wide thin obstacle, dB, not capped; zero when well clear (N below -0.19).
 * `attenuationDb`: Kurze and Anderson, 5 + 20 lg(a / tanh a), a = sqrt(2 pi N), tan for N below 0 (from memory).
 * `maekawaDb`: 10 lg(3 + 20 N) (read in the documentation of a public library).
 * @param input fresnelNumber 2 * detour / wavelength, positive in the shadow
 */
export function barrier({ fresnelNumber }: { fresnelNumber: number }): {
  attenuationDb: number;
  maekawaDb: number;
} {
  const n = finite('fresnelNumber', fresnelNumber);
  if (n < CLEAR_FRESNEL_NUMBER) return { attenuationDb: 0, maekawaDb: 0 };
  const a = Math.sqrt(2 * Math.PI * Math.abs(n));
  const shape = a === 0 ? 1 : a / (n > 0 ? Math.tanh(a) : Math.tan(a));
  return {
    attenuationDb: Math.max(0, GRAZING_DB + 20 * Math.log10(shape)),
    maekawaDb: 10 * Math.log10(Math.max(1, 3 + 20 * n)),
  };
}

export type SightlineInput = {
  readonly sourceHeightM: number;
  readonly earHeightM: number;
  /** Horizontal distances from the loudspeaker. */
  readonly earDistanceM: number;
  readonly headDistanceM: number;
  /** Top of the head, seat back or table edge in between. */
  readonly headTopM: number;
};

/** Height of the straight line from loudspeaker to ear above the obstacle, m; negative when it is cut. */
export function sightline(input: SightlineInput): { clearanceM: number } {
  const sourceM = notNegative('sourceHeightM', input.sourceHeightM);
  const earM = notNegative('earHeightM', input.earHeightM);
  const earDistanceM = positive('earDistanceM', input.earDistanceM);
  const headDistanceM = within('headDistanceM', input.headDistanceM, 0, earDistanceM);
  const topM = notNegative('headTopM', input.headTopM);
  return { clearanceM: sourceM + ((earM - sourceM) * headDistanceM) / earDistanceM - topM };
}

/** Loss beyond which sound around the sides and off the room counts more, dB. Common practice, no source. */
export const BARRIER_CAP_DB = 20;

/** Loss in the 18 speech bands behind a wide edge, dB, capped at 20, and what speech loses by it. */
export function barrierLossAtSeat(input: SightlineInput): { attenuationDb: number[]; speechLossDb: number } {
  const { clearanceM } = sightline(input);
  const { sourceHeightM, earHeightM, earDistanceM, headDistanceM, headTopM } = input;
  const over =
    Math.hypot(headDistanceM, headTopM - sourceHeightM) +
    Math.hypot(earDistanceM - headDistanceM, headTopM - earHeightM);
  const detourM = (over - Math.hypot(earDistanceM, earHeightM - sourceHeightM)) * (clearanceM < 0 ? 1 : -1);
  const attenuationDb = SPEECH_BANDS_HZ.map((frequencyHz) =>
    Math.min(BARRIER_CAP_DB, barrier({ fresnelNumber: (2 * detourM * frequencyHz) / C_AIR }).attenuationDb),
  );
  return { attenuationDb, speechLossDb: speechLoss({ bandLossDb: attenuationDb }).lossDb };
}

/**
 * The same for an obstacle of limited width that stands in the middle of the line: sound goes over its edge, and around
 * its two sides by Fresnel's integrals. Narrower than the first Fresnel zone it shades little.
 * @param input widthM above 0
 */
export function objectLossAtSeat(input: SightlineInput & { readonly widthM: number }): {
  attenuationDb: number[];
  speechLossDb: number;
} {
  const widthM = positive('widthM', input.widthM);
  const over = barrierLossAtSeat(input);
  const [nearM, farM] = [input.headDistanceM, input.earDistanceM - input.headDistanceM];
  const attenuationDb = over.attenuationDb.map((overDb, band) => {
    const frequencyHz = SPEECH_BANDS_HZ[band] as number;
    // At either end of the line everything shades.
    const zone = nearM * farM === 0 ? Number.POSITIVE_INFINITY : (2 * (nearM + farM)) / (nearM * farM);
    const v = Math.min(LARGEST_V, (widthM / 2) * Math.sqrt((zone * frequencyHz) / C_AIR));
    const around = power(scale(fresnelHalf(v), 2));
    return Math.max(0, -10 * Math.log10(Math.min(1, 10 ** (-overDb / 10) + around)));
  });
  return { attenuationDb, speechLossDb: speechLoss({ bandLossDb: attenuationDb }).lossDb };
}
/** Deep in the shadow nothing comes around. */
const LARGEST_V = 1000;

/** Orders beyond ka after which the partial waves of a head no longer count. */
const EXTRA_ORDERS = 24;

export type SphereInput = {
  readonly radiusM?: number;
  /** From the center of the sphere; both at or outside its surface. */
  readonly sourceDistanceM: number;
  readonly receiverDistanceM: number;
  /** Cosine of the angle between both as the center sees them; -1 when the sphere is in the line. */
  readonly cosAngle: number;
  readonly frequencyHz: number;
};

/**
 * Level at a receiver beyond a rigid sphere relative to the free field, dB: exact partial-wave series (from
 * memory, textbook). Positive values on the line through the center are the bright spot of a perfect ball.
 */
export function rigidSphereDb(input: SphereInput): number {
  const radiusM = positive('radiusM', input.radiusM ?? HEAD_RADIUS_M);
  const sourceM = within('sourceDistanceM', input.sourceDistanceM, radiusM, Number.MAX_VALUE);
  const receiverM = within('receiverDistanceM', input.receiverDistanceM, radiusM, Number.MAX_VALUE);
  const cosAngle = within('cosAngle', input.cosAngle, -1, 1);
  const k = (2 * Math.PI * positive('frequencyHz', input.frequencyHz)) / C_AIR;
  const order = Math.ceil(k * radiusM) + EXTRA_ORDERS;
  const scattered = scale(
    mul(complex(0, -1), scatteredSum(order, k, radiusM, sourceM, receiverM, cosAngle)),
    k,
  );
  const directM = Math.sqrt(sourceM ** 2 + receiverM ** 2 - 2 * sourceM * receiverM * cosAngle);
  const direct = scale(polar(1, k * directM), 1 / directM);
  return 20 * Math.log10(abs(add(direct, scattered)) * directM);
}

/** Sum over orders of (2n + 1) [j'(ka) / h'(ka)] h(k rs) h(k rr) P(cos), h = j + iy. */
function scatteredSum(
  order: number,
  k: number,
  radiusM: number,
  sourceM: number,
  receiverM: number,
  cosAngle: number,
): Complex {
  const ka = k * radiusM;
  const surface = sphericalBessel(order + 1, ka);
  const source = sphericalBessel(order, k * sourceM);
  const receiver = sphericalBessel(order, k * receiverM);
  const angular = legendre(order, cosAngle);
  // f'(x) = (n / x) f_n - f_(n+1), for both kinds.
  const slope = (f: Float64Array, n: number): number => (n / ka) * (f[n] as number) - (f[n + 1] as number);
  let sum = complex(0);
  for (let n = 0; n <= order; n += 1) {
    const regular = slope(surface.j, n);
    const reflected = div(complex(regular), complex(regular, slope(surface.y, n)));
    const outgoing = mul(
      complex(source.j[n] as number, source.y[n] as number),
      complex(receiver.j[n] as number, receiver.y[n] as number),
    );
    sum = add(sum, scale(mul(reflected, outgoing), (2 * n + 1) * (angular[n] as number)));
  }
  return sum;
}

/**
 * Loss in the 18 speech bands behind a single head, dB, and what speech loses by it. The bright spot of a
 * perfect ball is not granted: a gain counts as no loss.
 */
export function headLossAtSeat(input: SightlineInput): { attenuationDb: number[]; speechLossDb: number } {
  sightline(input);
  const centerM = input.headTopM - HEAD_TOP_ABOVE_EAR_M;
  const toSource = { x: -input.headDistanceM, z: input.sourceHeightM - centerM };
  const toEar = { x: input.earDistanceM - input.headDistanceM, z: input.earHeightM - centerM };
  const sourceDistanceM = Math.hypot(toSource.x, toSource.z);
  const receiverDistanceM = Math.hypot(toEar.x, toEar.z);
  const cosine = (toSource.x * toEar.x + toSource.z * toEar.z) / (sourceDistanceM * receiverDistanceM);
  const cosAngle = Math.max(-1, Math.min(1, cosine));
  const attenuationDb = SPEECH_BANDS_HZ.map((frequencyHz) =>
    Math.max(0, -rigidSphereDb({ sourceDistanceM, receiverDistanceM, cosAngle, frequencyHz })),
  );
  return { attenuationDb, speechLossDb: speechLoss({ bandLossDb: attenuationDb }).lossDb };
}
