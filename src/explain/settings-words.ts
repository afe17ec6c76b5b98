/** The sheet of numbers in words: each entry with what it does and why, the price at each seat. */

import type { UnitSystem } from '../facts/book.js';
import { factSpec } from '../facts/catalog.js';
import { CAUTIONS, type CautionId } from '../rules/cautions.js';
import type { Harms } from '../settings/cost.js';
import { CRITERION } from '../settings/cost.js';
import type { Sheet } from '../settings/sheet.js';
import {
  type Block,
  bullets,
  heading,
  type Item,
  itemList,
  type Line,
  paragraph,
  table,
  withoutEmpty,
} from './document.js';
import { listText, quantityText } from './words.js';

const digits = (step: number): number => (step >= 1 ? 0 : step >= 0.1 ? 1 : 2);
/** With its sign; what rounds to nothing has none. */
const signed = (value: number, places = 1): string => {
  const size = Math.abs(value).toFixed(places);
  return Number(size) === 0 ? size : `${value < 0 ? '−' : '+'}${size}`;
};

export function settingsBlocks(sheet: Sheet, units: UnitSystem): Block[] {
  const { entries, before, seats, cost } = sheet;
  const entry = (value: number): string => `${value.toFixed(digits(entries.step))} ${entries.unit}`;
  const now = (side: 'left' | 'center' | 'right'): string =>
    before.entries === null ? '' : ` (now ${entry(before.entries[side])})`;
  return withoutEmpty([
    heading(1, 'The numbers to type'),
    paragraph(`Caution: ${CAUTIONS['photograph-menu']}`),
    itemList(
      [
        ...polarityItems(sheet),
        ...(['left', 'center', 'right'] as const).map((side) => ({
          line: `${sideName(side)}: ${entry(entries[side])}${now(side)}`,
        })),
        ...subwooferItems(sheet),
        ...trimItems(sheet),
        ...spreadItems(sheet),
        ...tiltItems(sheet, units),
        ...(sheet.crossoverHz === null
          ? []
          : [
              {
                line: `Size and crossover: center small, crossover ${sheet.crossoverHz} Hz, as low as its box plays without strain`,
              },
            ]),
        ...filterItems(sheet),
      ],
      'number',
    ),
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

const caution = (...ids: readonly CautionId[]): Block[] =>
  ids.map((id) => paragraph(`Caution: ${CAUTIONS[id]}`));
const sideName = (side: string): string => side.slice(0, 1).toUpperCase() + side.slice(1);

const WHY: readonly Line[] = [
  'Distances: only their differences count. Left and right are in step at the seat that counts most; the center is set to the best compromise. A latency of the center is in its entry as distance.',
  'Trim: the center as loud as a main, measured at the seat; a trim by itself proves nothing.',
  'Spread: the more of the middle the mains keep, the wider the stage and the stronger the comb at seats off the middle.',
];

function polarityItems({ inverted }: Sheet): Item[] {
  if (inverted === null) return [];
  return [
    {
      line: `Before all: ${inverted} is connected in reverse, by what was measured. Swap its two leads at one end, then record again; no number mends that`,
      below: caution('power-off-wires'),
    },
  ];
}

function subwooferItems({ subwoofer, entries: { unit, step } }: Sheet): Item[] {
  if (subwoofer === null) return [];
  const { change, lateMs } = subwoofer;
  const by =
    change === null
      ? 'changed by as much as the center'
      : change === 0
        ? 'as it is now'
        : `${signed(change, digits(step))} ${unit} against what is set now`;
  const why =
    lateMs === null
      ? 'so that it stays to the center as it was'
      : `which takes out the ${Math.abs(lateMs).toFixed(1)} ms by which it was measured ${lateMs < 0 ? 'early' : 'late'}, and follows the center`;
  return [
    {
      line: `Subwoofer: ${by}, ${why}`,
      below: [
        ...(lateMs === null
          ? [
              paragraph(
                'No tape tells its entry, because most of it is processing. Play noise softly around the crossover, alter the entry in steps of about 30 cm (1 ft) and keep the fullest; then try its polarity the other way.',
              ),
            ]
          : []),
        ...caution('test-noise'),
      ],
    },
  ];
}

function trimItems({ trimDb: { center, relative }, levelMeasured }: Sheet): Item[] {
  if (!levelMeasured) return [{ line: 'Trim, center: leave it, the level at the seat was not measured' }];
  return [
    {
      line: `Trim, center: ${signed(center)} dB${relative ? ' against what is set now' : ''}`,
      below: center > 0 ? caution('volume-down', 'hearing') : [],
    },
  ];
}

const spreadItems = ({ spread }: Sheet): Item[] =>
  spread === null
    ? []
    : [
        {
          line: `Center spread: ${Math.round(spread * 100)}% of its scale (0 keeps the voice in the center)`,
        },
      ];

function tiltItems({ tiltDeg, wedgeM }: Sheet, units: UnitSystem): Item[] {
  if (tiltDeg === null) return [];
  if (tiltDeg === 0) return [{ line: 'Tilt of the center: level' }];
  const wedge =
    wedgeM === null
      ? ''
      : `: a wedge of ${quantityText(Math.abs(wedgeM), 'm', units)} under its ${tiltDeg > 0 ? 'front' : 'back'} edge`;
  return [
    {
      line: `Tilt of the center: ${Math.abs(tiltDeg)}° ${tiltDeg > 0 ? 'up' : 'down'}${wedge}`,
      below: caution('thin-display'),
    },
  ];
}

const FILTERS = { peaking: 'peak', lowShelf: 'low shelf', highShelf: 'high shelf' } as const;
/** A boost that reaches over this asks more of a tweeter, Hz: the usual crossovers lie there. */
const TWEETER_FROM_HZ = 2000;

function filterItems({ filters, toneRmsDb }: Sheet): Item[] {
  if (toneRmsDb === null) return [];
  const [before, after] = [toneRmsDb.before.toFixed(1), toneRmsDb.after.toFixed(1)];
  if (filters.length === 0)
    return [{ line: `Filters, center: none; ${before} dB of difference in tone (rms) are not worth one` }];
  const strains = filters.some(
    ({ gainDb, frequencyHz, type }) => gainDb > 0 && type !== 'lowShelf' && frequencyHz >= TWEETER_FROM_HZ,
  );
  return [
    {
      line: `Filters, center: the tone differs by ${after} dB (rms over the third octaves) instead of ${before}, alike at every seat, since a filter changes what the center sends and not where it goes`,
      below: [
        bullets(
          filters.map(
            ({ type, frequencyHz, gainDb, q }) =>
              `${FILTERS[type]} ${Math.round(frequencyHz)} Hz, ${signed(gainDb)} dB, Q ${q.toFixed(1)}`,
          ),
        ),
        ...(strains ? caution('tweeter-power') : []),
        paragraph('Set them first, then the trim once more: filters change the level too.'),
      ],
    },
  ];
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
    ...(sheet.toneRmsDb === null
      ? [
          'Filters need a measured tone: a recording of the test (settings CASE --recording RECORDING), or responses of left, center and right in the case.',
        ]
      : []),
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
