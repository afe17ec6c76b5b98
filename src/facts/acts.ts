/**
 * What owners do to their systems, as data: words for people, and the home test that is the same act, so that
 * telling one tells the other. Which causes an act cures, and how surely, is said by the cause files.
 */
import type { Choice, ChoiceFactId } from './catalog.js';
import type { ComplaintId } from './complaints.js';

/** What an act did to the trouble. */
export const OUTCOMES = {
  gone: 'the trouble was gone',
  better: 'it was better, not gone',
  same: 'no change',
  worse: 'it was worse',
  'cannot-tell': 'no telling',
} as const;
export type Outcome = keyof typeof OUTCOMES;
export const OUTCOME_IDS = Object.keys(OUTCOMES) as Outcome[];

/** The part of the system whose entry was corrected. */
export const ENTRIES_OF = ['center', 'subwoofer', 'mains'] as const;
export type EntryOf = (typeof ENTRIES_OF)[number];

/** The test that is the same act, with the answer each outcome stands for, and the outcome each answer stands for. */
interface Mirror {
  readonly fact: ChoiceFactId;
  readonly answers: Readonly<Partial<Record<Outcome, string>>>;
  readonly outcomes: Readonly<Record<string, Outcome>>;
}

/** The setting an act changes: what it was set to before, where that can be only one thing, and what it is set to after. */
interface Turn {
  readonly fact: ChoiceFactId;
  readonly from?: string;
  readonly to: readonly string[];
}

interface ActSpec {
  /** What was done, as in "Tried: center turned up". */
  readonly done: string;
  readonly turns?: Turn;
  /** A look for a moment, such as headphones: nobody leaves it so unless he says that he did. */
  readonly passing?: true;
  readonly mirror?: Mirror;
}

/** The outcomes of a test that is an act; the first outcome told for an answer is what the answer stands for. */
function mirrors<const F extends ChoiceFactId>(
  fact: F,
  answers: Readonly<Partial<Record<Exclude<Outcome, 'cannot-tell'>, Choice<F>>>>,
  outcomes: Readonly<Partial<Record<Choice<F>, Outcome>>>,
): Mirror {
  return { fact, answers, outcomes: outcomes as Readonly<Record<string, Outcome>> };
}

const turns = <const F extends ChoiceFactId>(
  fact: F,
  to: readonly Choice<F>[],
  from?: NoInfer<Choice<F>>,
): { readonly turns: Turn } => ({ turns: { fact, to, ...(from === undefined ? {} : { from }) } });

export const ACTS = {
  'entry-corrected': { done: 'distance or delay entry corrected' },
  'center-turned-up': {
    done: 'center turned up',
    mirror: mirrors('triedTrim', { gone: 'cured', same: 'louder' }, { cured: 'gone', louder: 'same' }),
  },
  'center-turned-down': { done: 'center turned down' },
  'center-moved-to-midline': { done: 'center moved to the middle between the mains' },
  'center-raised': {
    done: 'center raised',
    mirror: mirrors(
      'testLift',
      { gone: 'improves', better: 'improves', same: 'same' },
      { improves: 'better', 'tone-only': 'better', same: 'same' },
    ),
  },
  'center-lowered': { done: 'center lowered' },
  'center-tilted': {
    done: 'center tilted toward the ears',
    mirror: mirrors(
      'testTilt',
      { gone: 'clearer', better: 'clearer', same: 'same' },
      { clearer: 'better', same: 'same' },
    ),
  },
  'center-stood-upright': { done: 'center stood upright', ...turns('centerOrientation', ['upright']) },
  'center-turned-over': { done: 'center turned over' },
  'center-pulled-forward': {
    done: 'center pulled forward',
    mirror: mirrors(
      'testPullForward',
      { gone: 'clearer', better: 'clearer', same: 'same' },
      { clearer: 'better', same: 'same' },
    ),
  },
  'center-taken-out': {
    done: 'center taken out of the furniture',
    ...turns('centerPlacement', ['shelf-top', 'stand', 'floor'], 'bay'),
  },
  'center-unplugged': { done: 'center unplugged while still set', passing: true },
  'center-set-to-none': {
    done: 'center set to none',
    ...turns('centerMode', ['none'], 'present'),
    passing: true,
    mirror: mirrors(
      'testPhantom',
      { gone: 'gone', same: 'same', worse: 'worse' },
      { gone: 'gone', same: 'same', worse: 'worse' },
    ),
  },
  'center-exchanged': { done: 'center exchanged for another loudspeaker' },
  'mains-moved-closer': { done: 'mains moved closer together' },
  'mains-toed-in': { done: 'mains turned toward the seats' },
  'seat-moved-back': { done: 'seat moved back' },
  'seat-moved-to-middle': { done: 'seat moved to the middle' },
  'seats-exchanged': { done: 'seats exchanged between two people', passing: true },
  'ears-raised': { done: 'ears raised', passing: true },
  'ears-lowered': { done: 'ears lowered', passing: true },
  'obstacle-removed': { done: 'what stood in the way taken away', ...turns('obstacle', ['none']) },
  'screen-removed': {
    done: 'screen taken away',
    ...turns('screenKind', ['none']),
    passing: true,
    mirror: mirrors(
      'screenAgainst',
      { gone: 'clearer-up', better: 'clearer-up', same: 'same' },
      { 'clearer-up': 'better', same: 'same' },
    ),
  },
  'one-center-disconnected': {
    done: 'one of two centers disconnected',
    mirror: mirrors(
      'testOneCenterOff',
      { gone: 'steadier', better: 'steadier', same: 'same' },
      { steadier: 'better', same: 'same' },
    ),
  },
  'ambience-changed': {
    done: 'size of the ambience changed',
    ...turns('ambienceSize', ['medium', 'large'], 'small'),
  },
  'spread-on': {
    done: 'center spread switched on',
    ...turns('centerSpread', ['on'], 'off'),
    mirror: mirrors(
      'testSpreadOn',
      { gone: 'opens', better: 'opens', same: 'same', worse: 'worse' },
      { opens: 'gone', same: 'same', worse: 'worse' },
    ),
  },
  'spread-changed': { done: 'center spread set otherwise' },
  'upmix-off': {
    done: 'upmix switched off',
    ...turns('upmixUse', ['off'], 'on'),
    mirror: mirrors('testUpmixOff', { gone: 'gone', same: 'same' }, { gone: 'gone', same: 'same' }),
  },
  'other-listening-mode': { done: 'another listening mode chosen' },
  'size-changed': { done: 'large or small changed in the menu' },
  'crossover-changed': { done: 'bass crossover changed' },
  'subwoofer-turned-down': { done: 'subwoofer turned down' },
  'subwoofer-off': { done: 'subwoofer switched off', passing: true },
  'surrounds-off': { done: 'surround and height loudspeakers switched off', passing: true },
  'subwoofer-polarity-turned': {
    done: 'polarity of the subwoofer turned',
    mirror: mirrors(
      'subPolarity',
      { gone: 'fuller-other-way', better: 'fuller-other-way', same: 'no-difference', worse: 'fuller-as-set' },
      { 'fuller-other-way': 'better', 'no-difference': 'same', 'fuller-as-set': 'worse' },
    ),
  },
  'equalization-bypassed': {
    done: 'equalization bypassed',
    ...turns('equalization', ['none']),
    mirror: mirrors(
      'testEqBypass',
      { gone: 'better', better: 'better', same: 'same', worse: 'worse' },
      { better: 'better', same: 'same', worse: 'worse' },
    ),
  },
  'correction-run-again': { done: 'automatic setup run again' },
  'amplifier-exchanged': { done: 'amplifier or receiver exchanged' },
  'cable-exchanged': { done: 'cable exchanged' },
  'source-exchanged': {
    done: 'another player or service tried',
    passing: true,
    mirror: mirrors('testOtherSource', { gone: 'gone', same: 'same' }, { gone: 'gone', same: 'same' }),
  },
  'channels-put-right': { done: 'loudspeaker cables put on the right outputs' },
  'channels-swapped': {
    done: 'left and center swapped at the amplifier',
    passing: true,
    mirror: mirrors('testSwapAtAmplifier', { gone: 'gone', same: 'stays' }, { gone: 'gone', stays: 'same' }),
  },
  'polarity-swapped': {
    done: 'wires of the center swapped',
    ...turns('polarityMarks', ['all-match']),
    mirror: mirrors(
      'testPolarity',
      {
        gone: 'fuller-swapped',
        better: 'fuller-swapped',
        same: 'no-difference',
        worse: 'fuller-as-wired',
      },
      { 'fuller-swapped': 'better', 'no-difference': 'same', 'fuller-as-wired': 'worse' },
    ),
  },
  'voice-boost-changed': { done: 'voice boost switched' },
  'night-mode-changed': { done: 'night mode switched' },
  'display-muted': {
    done: 'display muted',
    ...turns('displaySpeakers', ['muted'], 'playing'),
    mirror: mirrors('testMuteDisplay', { gone: 'gone', same: 'same' }, { gone: 'gone', same: 'same' }),
  },
  'surface-covered': {
    done: 'something soft laid on shelf, floor or wall',
    mirror: mirrors(
      'testCoverShelf',
      { gone: 'clearer', better: 'clearer', same: 'same' },
      { clearer: 'better', same: 'same' },
    ),
  },
  'room-treated': { done: 'curtains, carpets or absorbers put into the room' },
  'other-person-listened': { done: 'another person listened', passing: true },
  'headphones-tried': { done: 'headphones tried', passing: true },
} as const satisfies Record<string, ActSpec>;

export type ActId = keyof typeof ACTS;
export const ACT_IDS = Object.keys(ACTS) as ActId[];
export const isActId = (id: string): id is ActId => Object.hasOwn(ACTS, id);
export const actSpec = (id: ActId): ActSpec => ACTS[id];

/** A remedy that is none of the acts above is its own act, by `cause/remedy`. */
export type RemedyRef = `${string}/${string}`;
export const REMEDY_REF = /^[a-z0-9-]+\/[a-z0-9-]+$/;
export const isRemedyRef = (id: string): id is RemedyRef => REMEDY_REF.test(id);

/** One act and what it did. */
export interface Trial {
  readonly act: ActId | RemedyRef;
  /** Where an entry was corrected: whose. */
  readonly of?: EntryOf;
  readonly outcome: Outcome;
  /** When only one of several complaints was meant. */
  readonly complaint?: ComplaintId;
  /** It still stands as changed. */
  readonly stays?: boolean;
  readonly note?: string;
}
