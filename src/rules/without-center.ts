/**
 * The center set to none, so that left and right carry its part: whatever the center, its channel or an upmix into it
 * makes is gone then. One rule for the causes that this clears, so that all say it alike.
 */
import { answers, type Rule } from './cause.js';
import { is } from './condition.js';

export function staysWithoutCenter<const G extends string>(group: G): Rule & { readonly group: G } {
  return answers({
    id: 'gone-without-center',
    group,
    when: is('testPhantom', 'gone'),
    tells: { yes: 'hint', no: 'strong' },
    yes: 'With the center set to none the trouble is gone.',
    no: 'With the center set to none the trouble is not gone, so neither the center nor what is sent to it makes it.',
    because:
      'Set to none, left and right get what the center had. What stays is in them, in the room or in the program.',
  });
}
