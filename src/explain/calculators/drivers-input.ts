/** The `drivers` input: a list of drivers with their places, sizes, weights and filters. */
import { CROSSOVER_FILTERS } from '../../acoustics/crossover.js';
import type { Driver } from '../../acoustics/layouts.js';
import { didYouMean, nearest } from '../../lib/nearest.js';
import { quoted } from '../../lib/sanitize.js';
import {
  type Checked,
  type Input,
  isObject,
  number,
  type Refused,
  shown,
  textOfJson,
} from './input-kinds.js';

const EXAMPLE =
  '\'[{"xM":-0.13,"zM":0,"radiusM":0.052,"weight":0.5,"lowPass":{"filter":"LR4","frequencyHz":2500}}]\'';
const ACCEPTED =
  'a list of objects with xM, zM, radiusM, weight and, where they apply, yM, lowPass, highPass, allPass';
const STAGE = `an object with filter (${CROSSOVER_FILTERS.join(', ')}) and frequencyHz, or a list of them`;
/** More than any loudspeaker has; a bound against slips, ours. */
const MOST_DRIVERS = 64;
const MOST_STAGES = 8;

/** No loudspeaker for a room is larger than this, m. */
const place = number('', EXAMPLE, { min: -10, max: 10 });
const FIELDS: Readonly<Record<string, Input<number>>> = {
  xM: place,
  zM: place,
  radiusM: number('', EXAMPLE, { min: 0, max: 1 }),
  weight: number('', EXAMPLE, { min: -1000, max: 1000 }),
};
const DEPTH_FIELD = 'yM';
const STAGE_FIELDS: readonly string[] = ['lowPass', 'highPass', 'allPass'];
const KNOWN = [...Object.keys(FIELDS), DEPTH_FIELD, ...STAGE_FIELDS];

const refuse = (at: string, what: string, accepted = ACCEPTED): Refused => ({
  at,
  what,
  accepted,
  example: EXAMPLE,
});

function stageProblems(at: string, stage: unknown): Refused[] {
  if (!isObject(stage)) return [refuse(at, `${shown(stage)} is no filter`, STAGE)];
  const { filter, frequencyHz, ...rest } = stage;
  const knownFilter = (CROSSOVER_FILTERS as readonly unknown[]).includes(filter);
  const goodFrequency = typeof frequencyHz === 'number' && Number.isFinite(frequencyHz) && frequencyHz > 0;
  return [
    ...Object.keys(rest).map((key) => refuse(at, `${quoted(key)} is not known`, STAGE)),
    ...(knownFilter
      ? []
      : [
          refuse(
            `${at}.filter`,
            filter === undefined ? 'is missing' : `${shown(filter)} is not known`,
            STAGE,
          ),
        ]),
    ...(goodFrequency
      ? []
      : [
          refuse(
            `${at}.frequencyHz`,
            frequencyHz === undefined ? 'is missing' : `${shown(frequencyHz)} is no frequency above 0 Hz`,
            STAGE,
          ),
        ]),
  ];
}

function stagesProblems(at: string, given: unknown): Refused[] {
  if (!Array.isArray(given)) return stageProblems(at, given);
  if (given.length > MOST_STAGES) return [refuse(at, `${given.length} filters`, `at most ${MOST_STAGES}`)];
  return given.flatMap((stage, i) => stageProblems(`${at}[${i}]`, stage));
}

function fieldProblems(at: string, input: Input<number>, given: unknown): Refused[] {
  if (given === undefined) return [refuse(at, 'is missing')];
  const checked = input.value(given);
  return 'refused' in checked ? checked.refused.map((refused) => ({ ...refused, at })) : [];
}

function driverProblems(at: string, given: unknown): Refused[] {
  if (!isObject(given)) return [refuse(at, `${shown(given)} is no driver`)];
  const unknown = Object.keys(given).filter((key) => !KNOWN.includes(key));
  return [
    ...unknown.map((key) => refuse(at, `${quoted(key)} is not known${didYouMean(nearest(key, KNOWN))}`)),
    ...Object.entries(FIELDS).flatMap(([key, input]) => fieldProblems(`${at}.${key}`, input, given[key])),
    ...(given[DEPTH_FIELD] == null ? [] : fieldProblems(`${at}.${DEPTH_FIELD}`, place, given[DEPTH_FIELD])),
    ...STAGE_FIELDS.flatMap((key) => (given[key] == null ? [] : stagesProblems(`${at}.${key}`, given[key]))),
  ];
}

function checked(given: unknown): Checked<readonly Driver[]> {
  if (!Array.isArray(given) || given.length === 0) {
    return { refused: [refuse('', `${shown(given)} has no driver`)] };
  }
  if (given.length > MOST_DRIVERS) {
    return { refused: [refuse('', `${given.length} drivers`, `at most ${MOST_DRIVERS}`)] };
  }
  const refused = given.flatMap((driver, i) => driverProblems(`[${i}]`, driver));
  if (refused.length > 0) return { refused };
  const present = (driver: object) =>
    Object.fromEntries(Object.entries(driver).filter(([, v]) => v !== null));
  return { value: given.map((driver) => present(driver) as unknown as Driver) };
}

export const driversInput: Input<readonly Driver[]> = {
  unit: '',
  meaning:
    'the drivers as the listener sees them: xM right, zM up, yM out of the baffle, weight as amplitude (a parallel pair 0.5 each)',
  accepted: ACCEPTED,
  example: EXAMPLE,
  required: true,
  text: textOfJson,
  value: checked,
};
