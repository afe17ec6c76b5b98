/** The calculator of acoustically transparent screens. */
import { C_AIR } from '../../acoustics/air.js';
import { HOLE_INTERACTION, type Screen, screen } from '../../acoustics/screen.js';
import type { Problem } from '../../lib/user-error.js';
import { SOURCES } from '../../rules/sources.js';
import { FREQUENCY, share } from './bounds.js';
import { define } from './calculator.js';
import { choice, number, numbers, optional, usually } from './input-kinds.js';

const frequenciesHz = numbers('frequencies at which the result is wanted', '2000,8000,16000', FREQUENCY);

const PERFORATED = [
  'holeDiameterM',
  'thicknessM',
  'openArea',
  'holesPerM2',
  'sheetMassKgM2',
  'holeInteraction',
] as const;
const WOVEN = ['flowResistance', 'massKgM2', 'effectiveLengthM'] as const;
const NEEDED = { perforated: ['holeDiameterM', 'thicknessM'], woven: WOVEN } as const;

const SCREEN_EXAMPLES = {
  perforated:
    'kind=perforated holeDiameterM=0.0005 thicknessM=0.0003 holesPerM2=323000 sheetMassKgM2=0.4 frequenciesHz=2000,8000,16000',
  woven: 'kind=woven flowResistance=100 massKgM2=0.35 effectiveLengthM=0.007 frequenciesHz=2000,8000,16000',
} as const;

type ScreenValues = { readonly kind: 'perforated' | 'woven' } & {
  readonly [K in (typeof PERFORATED)[number] | (typeof WOVEN)[number]]: number | undefined;
};

function screenConflicts(values: ScreenValues & { readonly frequenciesHz: readonly number[] }): Problem[] {
  const { kind } = values;
  const example = `center-audit calc screen ${SCREEN_EXAMPLES[kind]}`;
  const foreign = (kind === 'perforated' ? WOVEN : PERFORATED).filter((key) => values[key] !== undefined);
  const own: readonly string[] = kind === 'perforated' ? PERFORATED : WOVEN;
  const problems: Problem[] = [
    ...NEEDED[kind]
      .filter((key) => values[key] === undefined)
      .map((key) => ({
        where: `calc screen, ${key}`,
        what: `is missing: a ${kind} screen needs it`,
        accepted: own.join(', '),
        example,
      })),
    ...foreign.map((key) => ({
      where: `calc screen, ${key}`,
      what: `does not belong to a ${kind} screen`,
      accepted: own.join(', '),
      example,
    })),
  ];
  const areas = [values.openArea, values.holesPerM2].filter((given) => given !== undefined).length;
  if (kind === 'perforated' && areas !== 1) {
    problems.push({
      where: 'calc screen',
      what: `openArea and holesPerM2 are ${areas === 0 ? 'both missing' : 'both given'}`,
      accepted: 'one of the two',
      example,
    });
  }
  const highestHz = Math.max(...values.frequenciesHz);
  const widestM = C_AIR / (Math.PI * highestHz);
  if ((values.holeDiameterM ?? 0) > widestM) {
    problems.push({
      where: 'calc screen, holeDiameterM',
      what: `${values.holeDiameterM} m is no small hole at ${highestHz} Hz: the air in it does not move as one plug`,
      accepted: `up to a third of a wave, ${widestM.toPrecision(2)} m at that frequency`,
      example,
    });
  }
  return problems;
}

export const screenCalculator = define({
  name: 'screen',
  title: 'Loss through a screen',
  answers: 'How much treble does an acoustically transparent screen take?',
  inputs: {
    kind: choice(['perforated', 'woven'], 'kind of the screen', 'perforated'),
    holeDiameterM: optional(number('diameter of a hole', '0.0005', { unit: 'm', above: 0, max: 0.1 })),
    thicknessM: optional(number('thickness of the sheet', '0.0003', { unit: 'm', above: 0, max: 0.1 })),
    openArea: optional(
      number('open part of the area; this or holesPerM2', '0.06', { above: 0, max: 0.9069 }),
    ),
    holesPerM2: optional(
      number('number of holes; this or openArea', '323000', { unit: '1/m2', above: 0, max: 1e9 }),
    ),
    sheetMassKgM2: optional(
      number('mass of the sheet; without it the sheet does not move', '0.4', {
        unit: 'kg/m2',
        above: 0,
        max: 1000,
      }),
    ),
    holeInteraction: optional(
      share(
        `how far neighboring holes relieve each other, usually ${HOLE_INTERACTION}`,
        String(HOLE_INTERACTION),
      ),
    ),
    flowResistance: optional(
      number('flow resistance of the cloth', '100', { unit: 'Pa s/m', min: 0, max: 1e6 }),
    ),
    massKgM2: optional(number('mass of the cloth', '0.35', { unit: 'kg/m2', above: 0, max: 1000 })),
    effectiveLengthM: optional(
      number('length of the air that moves with the openings', '0.007', { unit: 'm', min: 0, max: 1 }),
    ),
    angleDeg: usually(
      0,
      number('direction of the sound from square on', '30', { unit: 'deg', min: -89, max: 89 }),
    ),
    frequenciesHz,
  },
  outputs: { lossDb: { unit: 'dB', meaning: 'loss at each frequency' } },
  formula:
    'T = 1 / (1 + z cos(angle) / (2 rho c)); z = openings in parallel with the mass of the sheet; round holes with viscous flow, 1 - 2 J1(q) / (q J0(q)), end mass 0.85 d * interaction; cloth R + j omega rho L',
  validity: 'A single sheet in free air; the gap to the loudspeaker behind adds ripple.',
  source: SOURCES['screen-sheet'],
  example: SCREEN_EXAMPLES.perforated,
  conflicts: screenConflicts,
  // What the kind needs is there: the conflicts have made sure of it.
  run: ({ angleDeg, frequenciesHz: wanted, ...sheet }) =>
    screen({ ...(sheet as Screen), angleDeg, frequenciesHz: wanted }),
});
