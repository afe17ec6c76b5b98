/** One rule for the tests of pages. */
import { deviates, type Rule } from '../../../src/rules/cause.js';

type Deviates = Parameters<typeof deviates>[0];

/** A rule on the lateness of the center. */
export const late = (
  limit: Deviates['limit'] = 'delayMs',
  options: Pick<Deviates, 'heard' | 'maxDb' | 'only'> = {},
): Rule =>
  deviates({
    id: 'late',
    group: 'g',
    of: 'delayErrorMs',
    limit,
    ...options,
    yes: 'It is {delayErrorMs} late; {limit} is heard.',
    no: 'Only {delayErrorMs}.',
    because: 'Why.',
    source: 'time-image',
  });
