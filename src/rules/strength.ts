/**
 * How telling a finding is: a handful of strengths, in decibans of an answer that cannot be wrong (judgement, a coarse
 * scale). A rule picks one for each outcome; its reason says why. Told from memory they weigh about two thirds.
 */
export const STRENGTHS = {
  slight: { db: 1.5, means: 'it comes a little more often with the cause' },
  hint: { db: 3, means: 'it comes twice as often with the cause' },
  telling: { db: 6, means: 'it comes four times as often with the cause' },
  strong: { db: 10, means: 'it seldom comes without the cause' },
  proof: { db: 15, means: 'it is the thing itself, seen or taken away' },
} as const;
export type Strength = keyof typeof STRENGTHS;
/** What the two outcomes of a rule tell; an outcome without a strength says nothing. */
export interface Tells {
  readonly yes?: Strength;
  readonly no?: Strength;
  /** Yes speaks against the cause, and no for it. */
  readonly against?: true;
}

/** The weight comes from an answer: tp = P(this answer | cause), fp = P(this answer | other causes). */
export interface AnswerWeight {
  readonly kind: 'answer';
  readonly tp: number;
  readonly fp: number;
  /** Set to 'for' when the opposite answer says nothing, to 'against' when only the opposite speaks. */
  readonly only?: 'for' | 'against';
  /** The strengths it was made of. */
  readonly tells?: Tells;
}
/** Where one outcome says nothing, the other one is as usual as such answers are. */
const SILENT_SIDE: Strength = 'telling';
/**
 * The two chances that make these strengths: tp / fp is the ratio of yes, (1 - fp) / (1 - tp) that of no. Every strength is
 * above zero, so both lie between 0 and 1.
 */
export function answerWeight(tells: Tells): AnswerWeight {
  const ratio = (strength: Strength): number => 10 ** (STRENGTHS[strength].db / 10);
  const [given, absent] = [ratio(tells.yes ?? SILENT_SIDE), ratio(tells.no ?? SILENT_SIDE)];
  const rare = (absent - 1) / (given * absent - 1);
  const [tp, fp] = tells.against ? [rare, given * rare] : [given * rare, rare];
  const only = tells.no === undefined ? 'for' : tells.yes === undefined ? 'against' : undefined;
  return { kind: 'answer', tp, fp, ...(only ? { only } : {}), tells };
}
