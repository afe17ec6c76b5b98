/** Tone of center against mains: from measured responses, and from the screen. */
import type { Response } from '../../acoustics/response.js';
import { massLawDb, type Screen, screen } from '../../acoustics/screen.js';
import { thirdOctaveDifferences } from '../../acoustics/tonal.js';
import { choice, derive, number, type Reader } from '../../compute/reader.js';
import { CORRECTION_FACTS, lossLeftDb } from './correction.js';

const NOW = ['responseLeft', 'responseCenter', 'responseRight'] as const;
const BEFORE = ['responseLeftBefore', 'responseCenterBefore', 'responseRightBefore'] as const;

type Bands = ReadonlyMap<number, number>;
function bandsOf([left, center, right]: readonly [Response, Response, Response]): Bands {
  return thirdOctaveDifferences({ left, center, right });
}
const bandsNow = (r: Reader<(typeof NOW)[number]>): Bands => bandsOf(r.responses(...NOW));
const bandsBefore = (r: Reader<(typeof BEFORE)[number]>): Bands => bandsOf(r.responses(...BEFORE));

function worst(bands: Bands): { readonly hz: number; readonly db: number } {
  let found = { hz: 0, db: 0 };
  for (const [hz, db] of bands) if (Math.abs(db) > Math.abs(found.db)) found = { hz, db };
  return { hz: found.hz, db: Math.abs(found.db) };
}

/** Treble: bands above this, Hz. */
const TREBLE_ABOVE_HZ = 4000;
function trebleDifference(bands: Bands): number | undefined {
  const treble = [...bands].filter(([hz]) => hz > TREBLE_ABOVE_HZ).map(([, db]) => db);
  return treble.length === 0 ? undefined : treble.reduce((sum, db) => sum + db, 0) / treble.length;
}

const SHEET_FACTS = [
  'screenKind',
  'screenHoleDiameter',
  'screenHolesPerArea',
  'screenThickness',
  'screenFlowResistance',
] as const;
/** Cloth where only its flow resistance is told: a fine weave. From memory. */
const WEAVE = { massKgM2: 0.3, effectiveLengthM: 0.004 } as const;
/** Unperforated vinyl, kg/m2. From memory. */
const SOLID_KG_M2 = 0.4;
/** Third octaves of the treble above 4 kHz, up to where hearing and content still count, Hz. */
const TREBLE_BANDS_HZ = [5000, 6300, 8000, 10_000, 12_500] as const;
/** What the level setting makes up for anyway: the loss at this frequency, Hz. */
const LEVEL_SET_HZ = 1000;

/** Mean treble loss of the sheet over its loss where levels are set, dB. */
function sheetLoss(r: Reader<(typeof SHEET_FACTS)[number]>): number {
  const kind = r.choice('screenKind');
  if (kind === 'none') return 0;
  const lossDb = lossOf(r, kind);
  const [reference = 0, ...treble] = lossDb([LEVEL_SET_HZ, ...TREBLE_BANDS_HZ]);
  return treble.reduce((sum, db) => sum + db, 0) / treble.length - reference;
}

/** Loss through the sheet over frequency, dB, positive. */
export function lossOf(
  r: Reader<(typeof SHEET_FACTS)[number]>,
  kind: 'perforated' | 'woven' | 'solid',
): (frequenciesHz: readonly number[]) => number[] {
  if (kind === 'solid')
    return (hz) => hz.map((frequencyHz) => massLawDb({ massKgM2: SOLID_KG_M2, frequencyHz }));
  if (kind === 'woven') {
    const flowResistance = r.number('screenFlowResistance');
    return (frequenciesHz) => clothLossDb(flowResistance, frequenciesHz);
  }
  const sheet = perforated(r);
  return (frequenciesHz) => screen({ ...sheet, frequenciesHz }).lossDb;
}

/** Loss through a cloth of this flow resistance, Pa s/m, dB, positive. */
export const clothLossDb = (flowResistance: number, frequenciesHz: readonly number[]): number[] =>
  screen({ kind: 'woven', flowResistance, ...WEAVE, frequenciesHz }).lossDb;

function perforated(r: Reader<(typeof SHEET_FACTS)[number]>): Screen {
  const [holeDiameterM, holesPerM2, thicknessM] = r.numbers(
    'screenHoleDiameter',
    'screenHolesPerArea',
    'screenThickness',
  );
  return { kind: 'perforated', holeDiameterM, holesPerM2, thicknessM };
}

const SCREEN_FACTS = [...SHEET_FACTS, ...CORRECTION_FACTS, 'screenCompensation'] as const;
/** Loss not given back by hand or by a correction; negative where more was given back than lost. */
function screenNet(r: Reader<(typeof SCREEN_FACTS)[number]>): number {
  if (r.choice('screenKind') === 'none') return 0;
  return lossLeftDb(r, r.from(sheetLoss)) - r.number('screenCompensation');
}

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

export const tone = {
  correctionAtWork: derive(
    choice('equalization, boost or tone control at work', ['yes', 'no'] as const),
    ['equalization', 'voiceBoost', 'toneControl'],
    (r) => {
      if (r.toldChoice('voiceBoost') === 'on' || r.toldChoice('toneControl') === 'on') return 'yes';
      if (r.choice('equalization') !== 'none') return 'yes';
      // Who has no equalizer on seldom has another; that nobody told of one weighs as an assumption.
      r.choiceOr('voiceBoost', 'off');
      return 'no';
    },
  ),
  screenInFront: derive(
    choice('screen in front of the center', ['yes', 'no'] as const),
    ['screenKind', 'centerPlacement'],
    (r) => {
      const kind = r.toldChoice('screenKind');
      if (kind === undefined && r.toldChoice('centerPlacement') === 'behind-screen') return 'yes';
      return r.choice('screenKind') === 'none' ? 'no' : 'yes';
    },
  ),
  screenLossDb: derive(
    number('dB', 'treble above 4 kHz lost in the screen and not given back'),
    SCREEN_FACTS,
    (r) => Math.max(0, r.from(screenNet)),
  ),
  screenMismatchDb: derive(
    number('dB', 'treble difference of center and mains from the screen'),
    [...SCREEN_FACTS, 'screenCovers'],
    (r) => {
      if (r.choice('screenKind') === 'none') return 0;
      return r.choice('screenCovers') === 'all-three' ? 0 : Math.abs(r.from(screenNet));
    },
  ),
  toneWorstBandDb: derive(
    number('dB', 'largest third-octave difference of center and mains, measured, magnitude'),
    NOW,
    (r) => worst(r.from(bandsNow)).db,
  ),
  toneWorstBandHz: derive(
    number('Hz', 'band of that difference'),
    NOW,
    (r) => worst(r.from(bandsNow)).hz || undefined,
  ),
  toneRmsDb: derive(number('dB', 'rms difference of center and mains, measured'), NOW, (r) =>
    rms([...r.from(bandsNow).values()]),
  ),
  toneTrebleDb: derive(number('dB', 'mean measured difference above 4 kHz, center minus mains'), NOW, (r) =>
    trebleDifference(r.from(bandsNow)),
  ),
  trebleDeficitDb: derive(
    number('dB', 'measured treble of the center below the mains, above 4 kHz (0 if not below)'),
    NOW,
    (r) => {
      const differenceDb = trebleDifference(r.from(bandsNow));
      return differenceDb === undefined ? undefined : Math.max(0, -differenceDb);
    },
  ),
  toneBeforeWorstBandDb: derive(
    number('dB', 'largest third-octave difference before equalization, magnitude'),
    BEFORE,
    (r) => worst(r.from(bandsBefore)).db,
  ),
  eqDamageDb: derive(
    number('dB', 'by how much equalization made the worst band worse (negative: better)'),
    [...NOW, ...BEFORE],
    (r) => worst(r.from(bandsNow)).db - worst(r.from(bandsBefore)).db,
  ),
};
