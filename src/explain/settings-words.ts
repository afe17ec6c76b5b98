/** The sheet of numbers in words: each entry with what it does and why, the price at each seat. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec } from '../facts/catalog.js';
import { CAUTIONS } from '../rules/cautions.js';
import type { Harms } from '../settings/cost.js';
import { CRITERION } from '../settings/cost.js';
import type { Sheet } from '../settings/sheet.js';
import {
  type Block,
  bullets,
  heading,
  type Line,
  pairs,
  paragraph,
  table,
  withoutEmpty,
} from './document.js';
import { listText, quantityText } from './words.js';

const digits = (step: number): number => (step >= 1 ? 0 : step >= 0.1 ? 1 : 2);
const signed = (value: number, places = 1): string =>
  `${value < 0 ? '−' : value > 0 ? '+' : ''}${Math.abs(value).toFixed(places)}`;

export function settingsBlocks(sheet: Sheet, units: UnitSystem): Block[] {
  const { entries, before, seats, cost } = sheet;
  const entry = (value: number): string => `${value.toFixed(digits(entries.step))} ${entries.unit}`;
  const now = (side: 'left' | 'center' | 'right'): string =>
    before.entries === null ? '' : ` (now ${entry(before.entries[side])})`;
  return withoutEmpty([
    heading(1, 'The numbers to type'),
    paragraph(`Caution: ${CAUTIONS['photograph-menu']}`),
    pairs([
      ['Left', `${entry(entries.left)}${now('left')}`],
      ['Center', `${entry(entries.center)}${now('center')}`],
      ['Right', `${entry(entries.right)}${now('right')}`],
      ...trimRows(sheet),
      ...spreadRows(sheet),
      ...tiltRows(sheet, units),
      ...(sheet.crossoverHz === null
        ? []
        : [
            [
              'Size and crossover',
              `center small, crossover ${sheet.crossoverHz} Hz: as low as its box plays without strain`,
            ] as const,
          ]),
      ...sheet.filters.map(({ type, frequencyHz, gainDb, q }): readonly [string, Line] => [
        'Filter, center',
        `${FILTERS[type]} ${Math.round(frequencyHz)} Hz, ${signed(gainDb)} dB, Q ${q.toFixed(1)}`,
      ]),
    ]),
    bullets(notes(sheet)),
    heading(2, 'What it does at each seat'),
    table(
      ['seat', 'weight', 'image', 'level', 'comb', 'speech'],
      seats.flatMap(({ name, weight, before: was, after, alone }) => [
        ...(was === null ? [] : [row(`${name}, now`, String(weight), was)]),
        row(was === null ? name : `${name}, then`, String(weight), after),
        row(`${name}, alone`, '–', alone),
      ]),
    ),
    paragraph(
      '“Alone” is what a seat would have if all were set for it. Image: degrees by which the voice is off its place and the stage drawn together. Level: center against the mains. Comb: peak to dip of what both play. Speech: what the drivers lose off the axis.',
    ),
    paragraph(
      `Chosen as the least over all steps of the menu of this: ${CRITERION}. ${
        cost.before === null
          ? `It comes to ${cost.after.toFixed(2)}.`
          : `It falls from ${cost.before.toFixed(2)} to ${cost.after.toFixed(2)}.`
      }`,
    ),
    heading(2, 'Why'),
    bullets(WHY),
    ...(sheet.assumed.length === 0
      ? []
      : [
          paragraph(
            `Not told and taken as usual: ${listText(sheet.assumed.map((id) => factSpec(id).label))}.`,
          ),
        ]),
    paragraph(
      'Afterward play a singer in the middle and switch the upmix on and off: the voice stays in its place and about equally loud. Then measure or audit again and compare.',
    ),
  ]);
}

const FILTERS = { peaking: 'peak', lowShelf: 'low shelf', highShelf: 'high shelf' } as const;
const WHY: readonly Line[] = [
  'Distances: only their differences count. Left and right are in step at the seat that counts most; the center is set to the best compromise. A latency of the center is in its entry as distance.',
  'Trim: the center as loud as a main, measured at the seat; a trim by itself proves nothing.',
  'Spread: the more of the middle the mains keep, the wider the stage and the stronger the comb at seats off the middle.',
];

type Row = readonly [string, Line];

function trimRows({ trimDb: { center, relative }, levelMeasured }: Sheet): Row[] {
  if (!levelMeasured) return [['Trim, center', 'leave it: the level at the seat was not measured']];
  return [
    ['Trim, center', relative ? `${signed(center)} dB against what is set now` : `${signed(center)} dB`],
  ];
}

const spreadRows = ({ spread }: Sheet): Row[] =>
  spread === null
    ? []
    : [['Center spread', `${Math.round(spread * 100)}% of its scale (0 keeps the voice in the center)`]];

function tiltRows({ tiltDeg, wedgeM }: Sheet, units: UnitSystem): Row[] {
  if (tiltDeg === null) return [];
  if (tiltDeg === 0) return [['Tilt of the center', 'level']];
  const wedge =
    wedgeM === null
      ? ''
      : `: a wedge of ${quantityText(Math.abs(wedgeM), 'm', units)} under its ${tiltDeg > 0 ? 'front' : 'back'} edge, secured so that the box cannot slide or tip`;
  return [['Tilt of the center', `${Math.abs(tiltDeg)}° ${tiltDeg > 0 ? 'up' : 'down'}${wedge}`]];
}

function notes(sheet: Sheet): Line[] {
  return [
    ...(sheet.latencyMeasured
      ? ['The entry of the center holds what a recording found, its latency included.']
      : []),
    ...(sheet.before.entries === null && sheet.cost.before === null
      ? ['What is entered now was not told, so nothing can be compared with it.']
      : []),
    ...(sheet.levelMeasured
      ? []
      : ['Measure the level (center-audit measure, or noise and a meter), and the trim can be told too.']),
  ];
}

const row = (name: string, weight: string, { imageDeg, levelDb, combDb, speechLossDb }: Harms): string[] => [
  name,
  weight,
  `${imageDeg.toFixed(1)}°`,
  `${signed(levelDb)} dB`,
  `${combDb.toFixed(1)} dB`,
  `${speechLossDb.toFixed(1)} dB`,
];
