/**
 * What a home test tells of every cause that it bears on, one rule each, so that all causes say it alike. A main put in
 * the place of the center shares the place; the center carried beside a main shares that one's, which can be done with
 * towers too; swapped channels share box and place. And what a place does, a row hears alike.
 */
import { answers, type Rule } from './cause.js';
import { is } from './condition.js';
import type { Tells } from './strength.js';

/** Alike there names the place; unlike there clears it. */
export function placeNotBox<const G extends string>(group: G): Rule & { readonly group: G } {
  return answers({
    id: 'alike-beside-a-main',
    group,
    when: is('testBesideMain', 'alike'),
    tells: { yes: 'telling', no: 'telling' },
    yes: 'Beside a main, at the same height, the center sounds like it: the place of the center makes the difference.',
    no: 'Beside a main, at the same height, the center sounds as unlike as before, so its place is not what makes it.',
    because:
      'With the place shared only box and channel can differ; what is gone there was made by the place.',
  });
}

/** Unlike there names box or settings; alike there clears them. */
export function boxNotPlace<const G extends string>(group: G): Rule & { readonly group: G } {
  return answers({
    id: 'unlike-beside-a-main',
    group,
    when: is('testBesideMain', 'differs'),
    tells: { yes: 'telling', no: 'telling' },
    yes: 'Beside a main, at the same height, the center sounds as unlike as before: the box or its settings make the difference.',
    no: 'Beside a main, at the same height, the center sounds like it, so neither the box nor its settings are to blame.',
    because: 'With the place shared only box and channel can differ.',
  });
}

/** A main in the place of the center: a good box that turns bad there names the place. The rates are of the cause. */
export function mainWrongThereToo<const G extends string>(
  group: G,
  tells: Tells,
): Rule & { readonly group: G } {
  return answers({
    id: 'main-wrong-there-too',
    group,
    when: is('testMainInPlace', 'wrong'),
    tells,
    yes: 'One of the mains, put into that place, sounds wrong there too: the place is to blame.',
    no: 'One of the mains, put into that place, sounds right there: the box is to blame, not the place.',
    because: 'A loudspeaker known to be good that turns bad in a place names the place.',
  });
}

/** What colors every seat of a row alike is not heard at its ends alone. `what` as it stands in a sentence. */
export function alikeAlongTheRow<const G extends string>(
  group: G,
  what: string,
  because: string,
): Rule & { readonly group: G } {
  return answers({
    id: 'only-off-the-middle',
    group,
    when: is('troubleSeats', 'off-middle'),
    tells: { yes: 'telling', no: 'slight', against: true },
    yes: `It is worse at the seats off to the side, while ${what} would be heard alike along the row.`,
    no: `It is no worse at the seats off to the side, as is to be expected of ${what}.`,
    because,
    source: 'geometry',
  });
}

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

/** What is gone without a center is made by it, or by what is sent to it. */
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
