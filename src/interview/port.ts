/** What a conversation shows and what comes back: the small port between it and a terminal. */

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
