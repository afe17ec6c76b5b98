/** The ports of a conversation: what it shows and what comes back, and where its case is kept. */
import type { Answer, FactBook } from '../facts/book.js';
import type { FactId } from '../facts/catalog.js';
import type { Topic } from './state.js';

/** One question as it is put. */
export interface Prompt {
  /** "Question 7, at most 12 more" and the topic; '' where nothing is counted. */
  readonly head: string;
  readonly ask: string;
  readonly hint: string;
  /** Numbered from 1. */
  readonly choices: readonly string[];
  /** What Enter alone does, in a few words; '' where it does nothing. */
  readonly onEnter: string;
  /** Typed text that was refused, kept for editing. */
  readonly draft: string;
  /** The marks are listed below it. */
  readonly marks: boolean;
}

/** What a person typed, or that the line is gone. */
export type Typed =
  | { readonly text: string }
  | { readonly escape: true }
  | { readonly ended: 'interrupt' | 'end-of-input' };

export interface Terminal {
  /** Paragraphs of plain text, wrapped to the width. */
  tell(lines: readonly string[]): void;
  /** Puts a question; `again` shows only what is needed after a refusal. */
  ask(prompt: Prompt, again: boolean): Promise<Typed>;
  close(): void;
}

/** What a save needs of the conversation. */
export interface Saved {
  readonly book: FactBook;
  readonly order: readonly Topic[];
  readonly put: readonly string[];
  readonly parked?: Parked;
}

/** Answers set aside, since at present they do not apply. */
export type Parked = Readonly<Partial<Record<FactId, Answer>>>;

/** Where the case of an interview is kept. */
export interface Keeper {
  /** Writes what has changed. Returns what went wrong, in words, or undefined. */
  save(saved: Saved): string | undefined;
  /** From now on the case is kept there. Returns what is wrong with that place, or undefined. */
  moveTo(path: string): string | undefined;
}

/** What a case carries besides its facts when an interview on it is taken up again. */
export interface Earlier {
  readonly order: readonly Topic[];
  readonly put: readonly string[];
  /** Left out by records of an earlier version. */
  readonly parked?: Parked;
}

/** An interview that was stopped before its end. */
export interface Unfinished extends Earlier {
  /** Absolute path of the case file. */
  readonly casePath: string;
  /** The owner's words or the title, to know it by. */
  readonly about: string;
  /** ISO time of the last answer. */
  readonly updated: string;
}
