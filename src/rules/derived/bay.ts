/** What an open bay of furniture does to the center, as it is and with the face flush. */
import { bay, bayResponse, flushGainDb, recess } from '../../acoustics/bay.js';
import { choice, derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';
import { CORRECTION_FACTS, LOW_RISE_FACTS, LOW_VOICE_HZ, lowRiseLeftDb, riseLeftDb } from './correction.js';
import { requireCenter } from './places.js';

const MOUTH_FACTS = [
  'centerCount',
  'centerPlacement',
  'bayWidth',
  'bayHeight',
  'bayRecess',
  ...CORRECTION_FACTS,
] as const;
const BAY_FACTS = [
  ...MOUTH_FACTS,
  'bayGap',
  'bayDepth',
  'bayStuffing',
  'centerWidth',
  'centerHeight',
  'centerDepth',
] as const;
type BayFact = (typeof BAY_FACTS)[number];

function requireBay(r: Reader<'centerCount' | 'centerPlacement'>): void {
  requireCenter(r);
  if (r.choice('centerPlacement') !== 'bay') r.stop();
}

/** A box whose size nobody told fits its bay: at most this part of it. Our own choice. */
const FITTING_PART = 0.95;
/** Loose polyester filling, Pa s/m2: middle of 1000 to 3000, from memory. */
const LOOSE_FILLING = 2000;

function bayInput(r: Reader<BayFact>) {
  requireBay(r);
  const gapM = r.toldNumber('bayGap');
  /** As measured, or the box and the gap on both sides of it. */
  const across = (room: 'bayWidth' | 'bayHeight', box: 'centerWidth' | 'centerHeight'): number =>
    r.toldNumber(room) ?? r.number(box) + 2 * (gapM ?? 0);
  const [bayWidthM, bayHeightM, bayDepthM] =
    gapM === undefined
      ? r.numbers('bayWidth', 'bayHeight', 'bayDepth')
      : [across('bayWidth', 'centerWidth'), across('bayHeight', 'centerHeight'), r.number('bayDepth')];
  const fitting = (id: 'centerWidth' | 'centerHeight' | 'centerDepth', roomM: number): number =>
    r.toldNumber(id) ?? Math.min(r.number(id), FITTING_PART * roomM);
  return {
    bayWidthM,
    bayHeightM,
    bayDepthM,
    speakerWidthM: fitting('centerWidth', bayWidthM),
    speakerHeightM: fitting('centerHeight', bayHeightM),
    speakerDepthM: fitting('centerDepth', bayDepthM),
    recessM: r.numberOr('bayRecess', { value: 0, spread: USUAL_RECESS_M }),
  };
}

/** Lip where nobody told, m: one standard deviation about flush. Our own choice. */
const USUAL_RECESS_M = 0.03;
/** What the line model of gap and cavity may be off, as log-sd: an order of magnitude (acoustic model, 2d). */
const BAY_DOUBT = 0.4;

/** Of gap and cavity, with the filling as it is and the face where it is, or elsewhere. */
function gapPeak(r: Reader<BayFact>, elsewhere: { readonly recessM?: number } = {}): number {
  requireBay(r);
  const filling = r.choice('bayStuffing');
  if (filling === 'sealed') return 0;
  const input = { ...r.from(bayInput), ...elsewhere };
  r.doubt(BAY_DOUBT);
  const { peakDb } = bayResponse({ ...input, stuffingPaSPerM2: filling === 'filled' ? LOOSE_FILLING : 0 });
  return riseLeftDb(r, peakDb);
}
const bayPeak = (r: Reader<BayFact>): number => gapPeak(r);
/** A flush face has no tunnel before it, so what is left is the gaps. */
const flushPeak = (r: Reader<BayFact>): number => gapPeak(r, { recessM: 0 });

function cavityPeak(r: Reader<BayFact>): number {
  const gapsDb = r.from(bayPeak);
  if (r.toldNumber('bayRecess') !== undefined) return Math.max(gapsDb, r.from(mouth).peakDb);
  // Loud gaps condemn the bay whatever the recess does; quiet ones do not clear it.
  return gapsDb >= LIMITS.resonanceDb.clear ? gapsDb : r.stop('bayRecess');
}

function flushGain(r: Reader<BayFact>): number {
  requireBay(r);
  const recessM = r.toldNumber('bayRecess');
  if (recessM === undefined) return r.stop('bayRecess');
  // A shorter way through the gaps can make them louder.
  return recessM === 0 ? 0 : Math.max(0, r.from(cavityPeak) - r.from(flushPeak));
}

/** Of a bay whose sizes are told, computed: in some a flush face takes the note away, in some it adds to it. */
function edgeShows(r: Reader<BayFact>): 'the-note' | 'nothing' | 'perhaps' {
  requireBay(r);
  if (!r.canTell(flushGain)) return 'perhaps';
  return r.from(flushGain) >= LIMITS.resonanceDb.noticeable ? 'the-note' : 'nothing';
}

function mouth(r: Reader<(typeof MOUTH_FACTS)[number]>) {
  requireBay(r);
  const [recessM, mouthWidthM, mouthHeightM] = r.numbers('bayRecess', 'bayWidth', 'bayHeight');
  const found = recess({ recessM, mouthWidthM, mouthHeightM });
  return { ...found, peakDb: riseLeftDb(r, found.peakDb) };
}

const FRONT_FACTS = ['centerCount', 'centerPlacement', 'bayRecess', ...LOW_RISE_FACTS] as const;
/** A face as far back as this still has the furniture front for its baffle, m. Our own choice. */
const FLUSH_WITHIN_M = 0.05;
function frontRise(r: Reader<(typeof FRONT_FACTS)[number]>): number {
  requireBay(r);
  if (r.number('bayRecess') > FLUSH_WITHIN_M) return 0;
  const riseDb = LOW_VOICE_HZ.reduce((sum, hz) => sum + flushGainDb(hz), 0) / LOW_VOICE_HZ.length;
  return lowRiseLeftDb(r, riseDb);
}

export const bayOfFurniture = {
  bayResonanceHz: derive(number('Hz', 'resonance of the air around the box in the bay'), BAY_FACTS, (r) => {
    const input = r.from(bayInput);
    if (r.choice('bayStuffing') === 'sealed') return undefined;
    return bay(input).resonanceHz ?? undefined;
  }),
  bayPeakDb: derive(
    number('dB', 'peak of that resonance, as filled or open as it is now'),
    BAY_FACTS,
    bayPeak,
  ),
  cavityPeakDb: derive(number('dB', 'the larger of the peaks of bay and recess'), BAY_FACTS, cavityPeak),
  flushGainDb: derive(
    number('dB', 'what a flush face takes off the larger peak of bay and recess (0 where it adds)'),
    BAY_FACTS,
    flushGain,
  ),
  edgeShows: derive(
    choice('what the center pulled to the edge shows of its bay', [
      'the-note',
      'nothing',
      'perhaps',
    ] as const),
    BAY_FACTS,
    edgeShows,
  ),
  frontRiseDb: derive(
    number('dB', 'rise of the low voice, 100 to 200 Hz, from a face flush with the furniture front'),
    FRONT_FACTS,
    frontRise,
  ),
  recessResonanceHz: derive(
    number('Hz', 'resonance of the recess in front of the box'),
    MOUTH_FACTS,
    (r) => r.from(mouth).resonanceHz ?? undefined,
  ),
  recessPeakDb: derive(
    number('dB', 'peak of the recess resonance'),
    MOUTH_FACTS,
    (r) => r.from(mouth).peakDb,
  ),
};

/** A lip less deep than this has no note, m: it is where the table of recess peaks begins. */
const LEAST_RECESS_M = 0.02;
/** Both notes of the bay, Hz, where they exist. */
export const BAY_NOTE_FACTS = BAY_FACTS;
export function bayNotesHz(r: Reader<BayFact>): readonly (number | undefined)[] {
  const gapsHz = r.choice('bayStuffing') === 'sealed' ? undefined : bay(r.from(bayInput)).resonanceHz;
  const recessM = r.toldNumber('bayRecess');
  return [
    gapsHz ?? undefined,
    recessM !== undefined && recessM >= LEAST_RECESS_M ? (r.from(mouth).resonanceHz ?? undefined) : undefined,
  ];
}
