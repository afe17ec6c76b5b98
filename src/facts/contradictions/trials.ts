/** An act told with one outcome, and the home test that is the same act with another. */
import { actSpec, isActId, OUTCOMES } from '../acts.js';
import { told } from '../book.js';
import { type Check, clash } from './clash.js';

export const trialAgainstTest: Check = (book) =>
  book.trials.flatMap(({ act, outcome, complaint }) => {
    const spec = isActId(act) ? actSpec(act) : undefined;
    const answer = spec?.mirror?.answers[outcome];
    const test = spec?.mirror && told(book, spec.mirror.fact);
    if (!spec?.mirror || complaint !== undefined || answer === undefined) return [];
    if (test === undefined || test === answer) return [];
    const note = `But it was also told: ${spec.done}, and ${OUTCOMES[outcome]}. It is the same act.`;
    return [clash(book, `trial-against-test-${act}`, 'soft', [spec.mirror.fact], note)];
  });
