/**
 * Left and center swapped at the amplifier: the box, its cable and its place stay together while the channel moves
 * away. One rule for every cause that lies in the box or in its place, so that all say it alike.
 */
import { answers, type Rule } from './cause.js';
import { is } from './condition.js';

/** What stays may be any fault of box, cable or place, so it speaks weakly; what moves away is none of them. */
export function staysInPlace<const G extends string>(group: G): Rule & { readonly group: G } {
  return answers({
    id: 'stays-in-its-place',
    group,
    when: is('testSwapAtAmplifier', 'stays'),
    tells: { yes: 'slight', no: 'strong' },
    yes: 'With left and center swapped at the amplifier the trouble stays with the center, with its box or its place.',
    no: 'With left and center swapped at the amplifier the trouble does not stay with the center, so neither its box nor its place makes it.',
    because:
      'The swap gives the box in this place another channel; what moves away with the channel is not made by box or place.',
  });
}
