/** Which open answer or home test tells two causes apart. */

import type { FactId } from '../facts/catalog.js';
import { factSpec } from '../facts/catalog.js';
import { largestFirst } from '../lib/ties.js';
import type { CauseId } from '../rules/cause-ids.js';
import type { Audit } from './audit.js';
import { openFacts } from './hypotheses.js';
import { knownChance } from './knows.js';
import { answerChances, baseRates, hypothesesOf, movablePlaces } from './predict.js';

interface Separator {
  readonly fact: FactId;
  readonly minutes: number;
  /** Decibans between the two causes that putting it is expected to add, whichever of them is true; nothing comes of one that cannot be told. */
  readonly expectedDb: number;
}

/** Who is expected to learn less than this from putting it, in decibans, does not put it. */
const LEAST_DB = 1;

/** Open questions and tests that separate two causes, most decibans for the minute first. */
export function separators(audit: Audit, a: CauseId, b: CauseId): Separator[] {
  const place = (id: CauseId): number => audit.causes.findIndex((cause) => cause.id === id);
  const [i, j] = [place(a), place(b)];
  return openFacts(audit.heard)
    .filter((fact) => movablePlaces(audit, fact).some((moved) => moved === i || moved === j))
    .flatMap((fact): Separator[] => {
      const hypotheses = hypothesesOf(audit, fact);
      const chances = answerChances(hypotheses, baseRates(hypotheses), audit.causes.length);
      // Expected weight of evidence between the two, the mean over either being true (Good & Card).
      const told = chances.reduce((sum, row) => {
        const [p, q] = [row[i] ?? 0, row[j] ?? 0];
        return sum + 0.5 * (p - q) * 10 * Math.log10(p / q);
      }, 0);
      const expectedDb = told * knownChance(audit.book, fact);
      return expectedDb >= LEAST_DB ? [{ fact, minutes: factSpec(fact).minutes, expectedDb }] : [];
    })
    .sort((x, y) => largestFirst(x.expectedDb / x.minutes, y.expectedDb / y.minutes));
}
