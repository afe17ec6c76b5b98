/** Format, version and sizes of a case file. */

export const CASE_FORMAT = 'center-audit/case';
export const CASE_VERSION = 2;

/** Sizes no case needs to exceed; they keep a stranger's file from costing time or memory. */
export const CASE_LIMITS = {
  titleLetters: 200,
  wordsLetters: 4000,
  /** Free words that are read; a longer text is read to there. */
  readLetters: 20_000,
  notes: 100,
  noteLetters: 2000,
  seats: 30,
  seatNameLetters: 60,
  trials: 100,
  conflicting: 8,
  answerLetters: 300,
  idLetters: 60,
  expectIds: 30,
} as const;

/** A full case of 150 facts and 100 notes is 250 KiB at most. */
export const MAX_CASE_BYTES = 1024 * 1024;
/** `facts`, one fact, its value: 3 deep. The longest list is the catalog itself. */
export const CASE_JSON_LIMITS = { depth: 12, entries: 1000 } as const;
