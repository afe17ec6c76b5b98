/** One rule for the tests of pages. */
import { deviates, type Rule } from '../../../src/rules/cause.js';

const WORDS = { id: 'late', group: 'g', because: 'Why.', source: 'time-image' } as const;
const SAYS = {
  yes: 'It is {delayErrorMs} late; {limit} is heard.',
  no: 'Only {delayErrorMs}.',
};
/** A rule on the lateness of the center. */
export const late = (
  limit: Parameters<typeof deviates>[2] = 'delayMs',
  options: Parameters<typeof deviates>[3] = {},
): Rule => deviates({ ...WORDS, says: SAYS }, 'delayErrorMs', limit, options);
