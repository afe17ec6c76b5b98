/**
 * The center carried beside a main, at its height: both have the same place there. Unlike a main in the place of the
 * center it can be done with towers too. One rule for causes of the place, one for causes of the box and its channel.
 */
import { answers, type Rule } from './cause.js';
import { is } from './condition.js';

/** Chance that both sound alike there where the place is the cause, and for the other causes together (judgement). */
const ALIKE = { byPlace: 0.85, otherwise: 0.3 } as const;
/** Chance that they still differ there where box or settings are the cause, and for the others (judgement). */
const UNLIKE = { byBox: 0.85, otherwise: 0.25 } as const;

/** Alike there names the place; unlike there clears it. */
export function placeNotBox<const G extends string>(group: G): Rule & { readonly group: G } {
  return answers(
    {
      id: 'alike-beside-a-main',
      group,
      says: {
        yes: 'Beside a main, at the same height, the center sounds like it: the place of the center makes the difference.',
        no: 'Beside a main, at the same height, the center sounds as unlike as before, so its place is not what makes it.',
        unknown: 'The center has not been stood beside a main.',
      },
      because:
        'With the place shared only box and channel can differ; what is gone there was made by the place.',
      source: 'practice',
    },
    is('testBesideMain', 'alike'),
    ALIKE.byPlace,
    ALIKE.otherwise,
  );
}

/** Unlike there names box or settings; alike there clears them. */
export function boxNotPlace<const G extends string>(group: G): Rule & { readonly group: G } {
  return answers(
    {
      id: 'unlike-beside-a-main',
      group,
      says: {
        yes: 'Beside a main, at the same height, the center sounds as unlike as before: the box or its settings make the difference.',
        no: 'Beside a main, at the same height, the center sounds like it, so neither the box nor its settings are to blame.',
        unknown: 'The center has not been stood beside a main.',
      },
      because: 'With the place shared only box and channel can differ.',
      source: 'practice',
    },
    is('testBesideMain', 'differs'),
    UNLIKE.byBox,
    UNLIKE.otherwise,
  );
}
