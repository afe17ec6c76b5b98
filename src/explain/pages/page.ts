/** A reference page: one thing of the program told from the same data that the program runs on. */
import type { Block, Inline } from '../document.js';

export type PageKind =
  | 'cause'
  | 'complaint'
  | 'fact'
  | 'test'
  | 'rule'
  | 'threshold'
  | 'computed'
  | 'calculator'
  | 'source';

export const KIND_WORDS: Readonly<Record<PageKind, string>> = {
  cause: 'Cause',
  complaint: 'Complaint',
  fact: 'Question',
  test: 'Home test',
  rule: 'Rule',
  threshold: 'Threshold',
  computed: 'Computed fact',
  calculator: 'Calculator',
  source: 'Source',
};

export interface Page {
  readonly kind: PageKind;
  /** As typed by people: `driver-layout`, `driver-layout/dip-at-worst-seat`, `dipDb`. */
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** Unique over all kinds: the same id may name a calculator and a source. */
export const pageKey = (kind: PageKind, id: string): string => `${kind}/${id}`;
export const linkTo = (kind: PageKind, id: string, text: string): Inline => ({
  page: pageKey(kind, id),
  text,
});
