/**
 * What clears every cause alike. What goes along with one person from seat to seat is made by no loudspeaker, room or
 * film; what is gone with the display muted was in its loudspeakers; what only one player or service shows is made by
 * nothing that all of them share. None ever speaks for a cause. Each cause gets them, but for what its own rules read
 * already.
 */
import type { Rule } from './cause.js';
import { any, type Condition, is, type VarId } from './condition.js';
import { answerWeight, type Strength } from './strength.js';

const ONE_PERSON = is('whoHears', 'one-person');
const GOES_ALONG = is('testSwapSeats', 'goes-with-person');

const cleared = (
  words: Pick<Rule, 'id' | 'group' | 'says' | 'because'>,
  when: Condition,
  yes: Strength = 'strong',
): Rule => ({
  ...words,
  source: 'practice',
  when,
  weigh: answerWeight({ yes, against: true }),
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
    },
    because: 'Muting the display changes no place, no level and no setting of the system.',
  },
  is('testMuteDisplay', 'gone'),
);

// No more than telling: who listens to music from one player only takes for a fault of the player what is one of music.
const BY_SOURCE = cleared(
  {
    id: 'one-source-alone',
    group: 'source',
    says: {
      yes: 'Only one player or service shows it, and all of them share what this is about.',
      no: 'It is not one player or service alone that shows it.',
    },
    because: 'Loudspeakers, places, entries and room treat all players alike.',
  },
  is('troubleTitles', 'one-source'),
  'telling',
);

/** What a cause may depend on, so that it is not cleared by what goes along with it. */
export type Bound = 'person' | 'source';

/** @param read facts that the rules of the cause read; @param bound what the cause may depend on */
export function clearingRules(read: ReadonlySet<VarId>, bound: Bound | undefined): Rule[] {
  const [told, found] = [!read.has('whoHears'), !read.has('testSwapSeats')];
  const when = told ? (found ? any(ONE_PERSON, GOES_ALONG) : ONE_PERSON) : found ? GOES_ALONG : undefined;
  return [
    ...(bound === 'person' || when === undefined ? [] : [byPerson(when)]),
    ...(read.has('testMuteDisplay') ? [] : [BY_MUTE]),
    ...(bound === undefined && !read.has('troubleTitles') ? [BY_SOURCE] : []),
  ];
}
