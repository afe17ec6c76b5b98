/** The state of a conversation: what is known, what was asked, what is on the screen. All of it immutable. */
import type { Trial } from '../facts/acts.js';
import type { Answer, FactBook } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import { type ReadResponse, withResponses } from '../facts/responses.js';
import type { Family } from '../facts/spec.js';
import type { Taken } from '../reading/candidates.js';
import type { Reading } from '../reading/read.js';
import { type Audit, type AuditOptions, auditSync } from '../reasoning/audit.js';
import type { Remedy } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { MarkAction } from './marks.js';

/** What is asked before the facts: the complaint in the owner's words, the complaints heard, the unit system. */
export const OPENING = ['words', 'complaints', 'units'] as const;
export type Opening = (typeof OPENING)[number];
export type Topic = Opening | FactId;

export function isOpening(topic: Topic): topic is Opening {
  return (OPENING as readonly string[]).includes(topic);
}

export type Screen =
  | { readonly kind: 'topic'; readonly topic: Topic }
  /** An unusual value, asked once more. */
  | { readonly kind: 'sure'; readonly fact: FactId; readonly answer: Answer; readonly remark: string }
  | { readonly kind: 'how'; readonly fact: FactId }
  /** A mark that could be an answer as well. */
  | {
      readonly kind: 'meant';
      readonly typed: string;
      readonly mark: MarkAction;
      readonly answers: readonly { readonly text: string; readonly label: string }[];
    }
  | {
      readonly kind: 'clash';
      readonly text: string;
      readonly topics: readonly Topic[];
    }
  | { readonly kind: 'review' }
  | { readonly kind: 'note'; readonly about: string }
  /** `over`: the question it was asked for instead of. */
  | { readonly kind: 'result'; readonly over?: Topic }
  /** A remedy was carried out: what did it do? */
  | { readonly kind: 'cured'; readonly cause: CauseId; readonly remedy: string }
  /** Above it, once that is said: does the change still stand? */
  | { readonly kind: 'stays'; readonly remedy: Remedy; readonly trial: Trial }
  /** What free words told; `besides`: besides the answer to a question. */
  | {
      readonly kind: 'understood';
      readonly items: readonly Taken[];
      readonly reading: Reading;
      readonly besides: boolean;
    }
  /** The second step of a long list that is read out. */
  | {
      readonly kind: 'among';
      readonly topic: Topic;
      readonly say: string;
      readonly values: readonly string[];
    }
  /** What the case shall be filed under, asked once: at the end, or before something is written under that name. */
  | { readonly kind: 'name'; readonly write?: Written }
  /** The case could not be saved where it belongs. */
  | { readonly kind: 'place' };

/** What can be written from the closing menu. */
export const WRITTEN = ['ticket', 'forum', 'page'] as const;
export type Written = (typeof WRITTEN)[number];

export interface Settings {
  /** Everything that makes sense is asked, in the order of the catalog. */
  readonly full: boolean;
  /** Minutes the whole interview may take. */
  readonly minutes?: number;
  /** The questions are read out to somebody on the phone. */
  readonly call?: boolean;
  /** Milliseconds of a clock; injected so that tests stand still. */
  readonly now: () => number;
  /** Reads response files beside the case; left out while the case has no place of its own. */
  readonly readResponse?: ReadResponse;
  /** Causes and priors to reason with, where they are not the built-in ones. */
  readonly rules?: AuditOptions;
}

export interface State {
  readonly settings: Settings;
  readonly startedAtMs: number;
  readonly audit: Audit;
  /** Topics put and answered, in order; the base screen is the one after the last. */
  readonly history: readonly Topic[];
  /** Topics to be put again, next one first: walked back over. */
  readonly redo: readonly Topic[];
  /** Answers that do not apply at present, kept in case they do again. */
  readonly parked: ReadonlyMap<FactId, Answer>;
  /** Contradictions that were put once, by id. */
  readonly put: ReadonlySet<string>;
  /** The question in hand, and above it whatever interrupts it; the last one is shown. */
  readonly screens: readonly [Screen, ...Screen[]];
  /** To be told before the next question. */
  readonly said: readonly string[];
  /** Text that was refused, kept for editing. */
  readonly draft: string;
  /** At most so many questions in all; grows only by an edited answer or the wish of the person. */
  readonly most: number;
  /** What `most` starts from again after an edit. */
  readonly cap: number;
  /** Openings that the case answers, so that they are not put. */
  readonly given: ReadonlySet<Opening>;
  /** The unit system was chosen, not taken as usual. */
  readonly unitsKnown: boolean;
  /** Questions are asked although none pays: the person wanted more. */
  readonly eager: boolean;
  /** Topic of the conversation. */
  readonly family?: Family;
  /** Minutes of the questions that pay as things stand. */
  readonly aheadMinutes?: number;
  /** No name was wanted. */
  readonly nameless?: boolean;
  /** What of the result shall be written down now. */
  readonly write?: Written;
  /** A result is on the screen that was not reported yet. */
  readonly reportDue: boolean;
  readonly ending?: 'saved' | 'finished';
  /** Where the case shall be saved instead. */
  readonly moveTo?: string;
  /** Why the case could not be saved, as it was told. */
  readonly trouble?: string;
}

export const bookOf = (state: State): FactBook => state.audit.book;

export function top(state: State): Screen {
  return state.screens.at(-1) ?? state.screens[0];
}

export function push(state: State, screen: Screen): State {
  return { ...state, screens: [...state.screens, screen], draft: '' };
}

/** Takes the topmost screen away; the base stays. */
export function pop(state: State): State {
  const [base, ...rest] = state.screens;
  return { ...state, screens: [base, ...rest.slice(0, -1)], draft: '' };
}

export function say(state: State, ...lines: readonly string[]): State {
  return { ...state, said: [...state.said, ...lines] };
}

export function withBook(state: State, book: FactBook): State {
  if (book === bookOf(state)) return state;
  const { readResponse } = state.settings;
  const whole = readResponse ? withResponses(book, readResponse) : book;
  return { ...state, audit: auditSync(whole, state.audit) };
}

/** The question a person is answering, looking through whatever interrupts it. */
export function topicInHand(state: State): Topic | undefined {
  const topic = [...state.screens].reverse().find((screen) => screen.kind === 'topic');
  return topic?.kind === 'topic' ? topic.topic : undefined;
}
