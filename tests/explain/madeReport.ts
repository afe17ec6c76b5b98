/** Reports made by hand: everything empty or plain, changed where a claim needs it. */
import type { Chart, ChartId } from '../../src/explain/plots/chart.js';
import type {
  RangeBar,
  Report,
  ReportCause,
  ReportConfirm,
  ReportEvidence,
  ReportRemedy,
  ReportStep,
  ReportTold,
  ReportUnknown,
  ReportVerdict,
} from '../../src/explain/report-types.js';
import type { FactId } from '../../src/facts/catalog.js';

/** 5 among 2, 4 and 8. */
export const madeBar = (changes: Partial<RangeBar> = {}): RangeBar => ({
  limit: 'dipDb',
  label: 'deepest dip',
  unit: 'dB',
  value: 5,
  noticeable: 2,
  clear: 4,
  severe: 8,
  lowIsBad: false,
  grade: 'poor',
  valueText: '5 dB',
  noticeableText: '2 dB',
  clearText: '4 dB',
  near: true,
  ...changes,
});

/** An answer that speaks for its cause. */
export const madeEvidence = (text: string, changes: Partial<ReportEvidence> = {}): ReportEvidence => ({
  rule: text.toLowerCase().replace(/\W+/g, '-'),
  decibans: 5,
  text,
  facts: [],
  value: null,
  threshold: null,
  unit: null,
  source: 'a book',
  assumed: false,
  outcome: 'yes',
  speaks: 'for',
  weightText: 'a hint, for it',
  because: 'one follows from the other',
  group: 'g',
  ratio: null,
  valueLabel: null,
  valueText: null,
  thresholdText: null,
  sourceId: 'practice',
  mark: 'practice',
  assumedLabels: [],
  open: [],
  range: null,
  ...changes,
});

export const madeRemedy = (title: string, changes: Partial<ReportRemedy> = {}): ReportRemedy => ({
  id: title.toLowerCase(),
  title,
  steps: [`how to ${title.toLowerCase()}`],
  minutes: 5,
  cost: 'free',
  expect: 'The voice clears.',
  verify: 'Listen again.',
  cautions: [],
  helps: 'often',
  effort: '5 minutes, free',
  tried: false,
  maybe: false,
  ...changes,
});

export const madeConfirm = (test: FactId, changes: Partial<ReportConfirm> = {}): ReportConfirm => ({
  test,
  label: `check of ${test}`,
  minutes: 3,
  steps: ['sit down'],
  cautions: [],
  outcomes: ['it is gone'],
  confirmed: null,
  result: null,
  ...changes,
});

export const madeCause = (id: ReportCause['id'], changes: Partial<ReportCause> = {}): ReportCause => ({
  id,
  title: `Title of ${id}`,
  probability: 0.8,
  decibans: 6,
  verdict: 'likely',
  severity: 'severe',
  evidence: [],
  remedies: [],
  confidence: 'likely, about 80%',
  severityText: 'speech is lost',
  story: 'This is what happens.',
  because: 'one follows from the other',
  carriedBy: 'It rests mostly on the complaint itself.',
  priorDb: -10,
  priorText: 'before anything was told: unlikely',
  groups: [],
  sharedDb: 0,
  sharedText: 'the complaint fits it',
  open: [],
  confirm: [],
  place: 'leading',
  ...changes,
});

export const madeStep = (title: string, changes: Partial<ReportStep> = {}): ReportStep => ({
  kind: 'remedy',
  id: title.toLowerCase(),
  cause: 'delay',
  minutes: 5,
  because: 'it costs least',
  title,
  causeTitle: 'Title of delay',
  steps: [`How to ${title.toLowerCase()}.`],
  cost: 'free',
  effort: '5 minutes, free',
  helps: 'often',
  expect: 'The voice clears.',
  verify: 'Listen again.',
  cautions: [],
  ...changes,
});

export const madeUnknown = (label: string, changes: Partial<ReportUnknown> = {}): ReportUnknown => ({
  fact: 'seatDistance',
  howToFindOut: `Measure ${label}.`,
  settles: [],
  label,
  kind: 'question',
  ask: `What is ${label}?`,
  minutes: 2,
  steps: [],
  cautions: [],
  asked: false,
  ...changes,
});

export const madeTold = (fact: FactId, value: string, how = 'measured'): ReportTold => ({
  fact,
  label: `label of ${fact}`,
  value,
  how,
});

/** Nothing was told and nothing found but the verdict. */
export const madeReport = ({
  verdict = {},
  ...changes
}: Partial<Omit<Report, 'verdict'>> & { readonly verdict?: Partial<ReportVerdict> } = {}): Report => ({
  format: 'center-audit/report',
  version: 1,
  verdict: {
    headline: 'the center comes late',
    confidence: 'likely, about 80%',
    leader: 'delay',
    undecided: false,
    because: 'One line of evidence speaks for it.',
    first: null,
    contenders: [],
    separatedBy: [],
    ...verdict,
  },
  causes: [],
  plan: [],
  seats: [],
  complaints: [],
  seamlessSwitch: { passes: null, steps: [], summary: '', atStake: false, checks: [], note: '' },
  unknown: [],
  assumed: [],
  contradictions: [],
  cautions: [],
  title: null,
  words: null,
  notes: [],
  units: 'metric',
  told: [],
  notHeard: [],
  trials: [],
  solvedBy: null,
  seatsAssumed: {},
  since: null,
  next: { kind: 'stop', fact: null, text: 'enough is known', because: 'it is decided', minutes: null },
  askAgain: [],
  fine: [],
  notApplicable: [],
  cannotTell: [],
  remarks: [],
  sources: [],
  glossary: [],
  ...changes,
});

/** A chart of one straight curve. */
export const madeChart = (id: ChartId, changes: Partial<Chart> = {}): Chart =>
  ({
    kind: 'lines',
    id,
    title: `Chart ${id}`,
    says: 'It falls.',
    notes: [],
    table: { caption: `numbers of ${id}`, head: ['Hz', 'dB'], rows: [['100', '0']] },
    x: { label: 'frequency (Hz)', scale: 'log', from: 100, to: 1000, ticks: [{ at: 100, text: '100' }] },
    y: { label: 'level (dB)', scale: 'linear', from: -10, to: 0, ticks: [{ at: 0, text: '0' }] },
    curves: [
      {
        name: 'seat',
        marked: false,
        points: [
          [100, 0],
          [1000, -6],
        ],
      },
    ],
    thresholds: [],
    ...changes,
  }) as Chart;

/** How many times `part` stands in `text`. */
export const times = (text: string, part: string): number => text.split(part).length - 1;

/** A report with every section filled, each by one word of its own. */
export const fullReport = (changes: Parameters<typeof madeReport>[0] = {}): Report =>
  madeReport({
    title: 'Near sofa',
    words: 'muffled at the ends',
    causes: [
      madeCause('delay', {
        evidence: [madeEvidence('It is heard.', { facts: ['seatDistance'] })],
        remedies: [madeRemedy('Turn it')],
      }),
      madeCause('aim', { place: 'possible', confidence: 'possible, about 40%' }),
    ],
    plan: [madeStep('Turn it')],
    seats: [
      {
        name: 'sofa',
        azimuthDeg: 12,
        dipDb: null,
        dipHz: null,
        speechLossDb: null,
        centerMinusMainsMs: null,
        main: true,
        row: 1,
        xM: 0,
        yM: 3,
        distanceM: 3,
        phantomPullDeg: null,
      },
    ],
    complaints: [{ id: 'hollow', leakShare: 0.1, title: 'hollow voice', text: 'hollow voice' }],
    seamlessSwitch: {
      passes: null,
      steps: ['Sit down.'],
      summary: 'Listen.',
      atStake: true,
      checks: [],
      note: 'Not the same.',
    },
    unknown: [madeUnknown('ear height')],
    assumed: [
      { fact: 'earHeight', value: '1 m', effect: 'It bears on “x”.', label: 'ear height', note: 'usual' },
    ],
    contradictions: [{ facts: [], text: 'Both cannot be true.', kind: 'hard' }],
    notes: ['a note'],
    told: [madeTold('seatDistance', '3 m')],
    fine: [{ cause: 'level', title: 'Too loud', text: 'It is even.' }],
    notApplicable: [{ cause: 'twin-centers', title: 'Two centers', text: 'There is one.' }],
    cannotTell: [{ cause: 'height', title: 'Too low', text: 'Not known.' }],
    sources: [{ id: 'practice', cite: 'a book', mark: 'read', markText: 'read' }],
    glossary: [{ term: 'dip', meaning: 'a weaker range' }],
    ...changes,
  });
