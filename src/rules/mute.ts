/**
 * The display muted: what is gone then was in its loudspeakers, or in the two voices together, and in nothing else.
 * One rule for the causes that this clears, so that all say it alike. It never speaks for them.
 */
import { answers, type Rule } from './cause.js';
import { is } from './condition.js';

export function clearedByMute<const G extends string>(group: G): Rule & { readonly group: G } {
  return answers(
    {
      id: 'gone-with-display-muted',
      group,
      says: {
        yes: 'With the display muted the trouble is gone, so it is not made here.',
        no: 'With the display muted the trouble is not gone.',
        unknown: 'The display has not been muted for a comparison yet.',
      },
      because: 'Muting the display changes no place, no level and no setting of the system.',
      source: 'practice',
    },
    is('testMuteDisplay', 'gone'),
    { yes: 'strong', against: true },
  );
}
