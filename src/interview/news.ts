/** What an answer has changed, in the sentence an adviser would say at once. */
import { probabilityText } from '../reasoning/decibans.js';
import type { Ranked, Ranking } from '../reasoning/rank.js';
import type { Cause } from '../rules/cause.js';
import type { CauseId } from '../rules/cause-ids.js';

/** A cause that stood at least here was on the table, and is off it below the second (judgement). */
const ON_THE_TABLE = 0.1;
const OFF_THE_TABLE = 0.03;
/** Points that a cause must gain to be news when it leads. */
const GAINED = 0.2;

/** One or two sentences, none where nothing changed that anybody would remark on. */
export function newsLines(before: Ranking, after: Ranking, causes: readonly Cause[]): string[] {
  const was = new Map(before.causes.map((ranked) => [ranked.cause, ranked]));
  const title = (id: CauseId): string => `“${causes.find((cause) => cause.id === id)?.title ?? id}”`;
  const out = after.causes
    .filter((now) => {
      const then = was.get(now.cause);
      return then !== undefined && isIn(then, ON_THE_TABLE) && !isIn(now, OFF_THE_TABLE);
    })
    .map(({ cause }) => cause);
  const [leader] = after.causes;
  const gained = leader ? leader.probability - (was.get(leader.cause)?.probability ?? 0) : 0;
  return [
    ...(out.length > 0 ? [`That rules out ${out.slice(0, 2).map(title).join(' and ')}.`] : []),
    ...(leader && gained >= GAINED
      ? [`That points to ${title(leader.cause)}: ${probabilityText(leader.probability)} now.`]
      : []),
  ];
}

const isIn = ({ applies, probability }: Ranked, from: number): boolean => applies && probability >= from;
