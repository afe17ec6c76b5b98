/**
 * What goes along with one person from seat to seat is made by no loudspeaker, room or film: whoever sits in a
 * seat gets the same sound. One rule for every cause that this clears, so that all say it alike.
 */
import { answers, type Rule } from './cause.js';
import { any, type Condition, is } from './condition.js';

const ONE_PERSON = is('whoHears', 'one-person');
const GOES_ALONG = is('testSwapSeats', 'goes-with-person');
/** Told, or found by exchanging seats; a cause that weighs one of the two elsewhere takes the other alone. */
const FOUND_BY: Readonly<Record<'either' | 'word' | 'exchange', Condition>> = {
  either: any(ONE_PERSON, GOES_ALONG),
  word: ONE_PERSON,
  exchange: GOES_ALONG,
};

/** The rule that clears a cause of what only one person hears. It never speaks for the cause. */
export function clearedByPerson<const G extends string>(
  group: G,
  found: keyof typeof FOUND_BY = 'either',
): Rule & { readonly group: G } {
  return answers(
    {
      id: 'one-person-alone',
      group,
      says: {
        yes: 'It goes along with one person, wherever that person sits, so this is hardly the reason.',
        no: 'It is not one person alone who hears it.',
        unknown: 'It is not known whether one person alone hears it.',
      },
      because:
        'Whoever sits in a seat gets the same sound; what moves along with a person is not made by it.',
      source: 'practice',
    },
    FOUND_BY[found],
    { yes: 'strong', against: true },
  );
}
