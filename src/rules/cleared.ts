/**
 * What clears every cause alike. What goes along with one person from seat to seat is made by no loudspeaker, room or
 * film; what is gone with the display muted was in its loudspeakers. Neither ever speaks for a cause. Each cause gets
 * both, but for what its own rules read already.
 */
import type { Rule } from './cause.js';
import { any, type Condition, is, type VarId } from './condition.js';
import { answerWeight } from './strength.js';

const ONE_PERSON = is('whoHears', 'one-person');
const GOES_ALONG = is('testSwapSeats', 'goes-with-person');

const cleared = (words: Pick<Rule, 'id' | 'group' | 'says' | 'because'>, when: Condition): Rule => ({
  ...words,
  source: 'practice',
  when,
  weigh: answerWeight({ yes: 'strong', against: true }),
  madeFrom: 'listening',
});

const byPerson = (when: Condition): Rule =>
  cleared(
    {
      id: 'one-person-alone',
      group: 'person',
      says: {
        yes: 'It goes along with one person, wherever that person sits, so this is hardly the reason.',
        no: 'It is not one person alone who hears it.',
        unknown: 'It is not known whether one person alone hears it.',
      },
      because:
        'Whoever sits in a seat gets the same sound; what moves along with a person is not made by it.',
    },
    when,
  );

const BY_MUTE = cleared(
  {
    id: 'gone-with-display-muted',
    group: 'display',
    says: {
      yes: 'With the display muted the trouble is gone, so it is not made here.',
      no: 'With the display muted the trouble is not gone.',
      unknown: 'The display has not been muted for a comparison yet.',
    },
    because: 'Muting the display changes no place, no level and no setting of the system.',
  },
  is('testMuteDisplay', 'gone'),
);

/** @param read facts that the rules of the cause read; `ofThePerson` where it is a matter of one listener */
export function clearingRules(read: ReadonlySet<VarId>, ofThePerson: boolean): Rule[] {
  const [told, found] = [!read.has('whoHears'), !read.has('testSwapSeats')];
  const when = told ? (found ? any(ONE_PERSON, GOES_ALONG) : ONE_PERSON) : found ? GOES_ALONG : undefined;
  return [
    ...(ofThePerson || when === undefined ? [] : [byPerson(when)]),
    ...(read.has('testMuteDisplay') ? [] : [BY_MUTE]),
  ];
}
