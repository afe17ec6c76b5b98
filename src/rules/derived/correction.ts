/**
 * What an automatic correction leaves of a rise, or of a broad loss of treble, that it heard when it was run. It treats
 * nothing else: not a hole, not an arrival, not what an angle does.
 */
import type { Reader } from '../../compute/reader.js';

export const CORRECTION_FACTS = [
  'equalization',
  'equalizationReach',
  'correctionState',
  'calibrationSpot',
] as const;
type CorrectionFact = (typeof CORRECTION_FACTS)[number];

/**
 * Part that is left, by whether it was run with everything as it is now. Common practice, no source: such corrections
 * bring a rise to within one or two decibels of the target; run in an untold state they may or may not have.
 */
const LEFT = { asNow: 0.3, untold: 0.6 } as const;
/** How much corrections differ in that, as log-sd. Our own estimate. */
const CORRECTION_DOUBT = 0.4;
/** Most that they raise, dB. Common practice, no source: 3 to 9 dB. */
const MOST_BOOST_DB = 6;

/** 1 where nothing treats the center. */
function leftByCorrection(r: Reader<CorrectionFact>): number {
  if (r.toldChoice('equalization') !== 'automatic') return 1;
  if (r.toldChoice('equalizationReach') === 'mains-only') return 1;
  const state = r.toldChoice('correctionState');
  const spot = r.toldChoice('calibrationSpot');
  if (state === 'changed' || (state === undefined && (spot === 'changed-since' || spot === 'elsewhere')))
    return 1;
  r.doubt(CORRECTION_DOUBT);
  return state === 'as-now' || spot === 'main-seat' ? LEFT.asNow : LEFT.untold;
}

/** Of a rise, dB. */
export const riseLeftDb = (r: Reader<CorrectionFact>, riseDb: number): number =>
  riseDb * r.from(leftByCorrection);

/** Of a loss, dB, which is made up for by no more than the correction boosts. */
export function lossLeftDb(r: Reader<CorrectionFact>, lossDb: number): number {
  return lossDb - (1 - r.from(leftByCorrection)) * Math.min(lossDb, MOST_BOOST_DB);
}

/** The low male voice, from its lowest tone up an octave: where walls and furniture close by reinforce it, Hz. */
export const LOW_VOICE_HZ = [100, 125, 160, 200] as const;
export const LOW_RISE_FACTS = [...CORRECTION_FACTS, 'boundarySwitch'] as const;
/** What a switch for placement at a wall or in furniture takes down, dB: common practice, no source, 3 to 6. */
const SWITCH_CUT_DB = 4;

/** Of a rise of the low voice, dB: a placement switch takes its part before a correction does. */
export function lowRiseLeftDb(r: Reader<(typeof LOW_RISE_FACTS)[number]>, riseDb: number): number {
  const cutDb = r.toldChoice('boundarySwitch') === 'wall' ? SWITCH_CUT_DB : 0;
  return riseLeftDb(r, Math.max(0, riseDb - cutDb));
}
