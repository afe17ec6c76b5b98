// An owner's own words become a draft case, and the answer to them is the question worth most.
import { auditCase, next, readWords, report } from 'center-audit';

const words =
  'My wife cannot make out the dialog from the end of the sofa, 9 ft away. In the middle it is fine.';
const { draft, taken } = await readWords(words);
const audit = await auditCase(draft);
for (const { phrase, fact } of taken) console.log(`“${phrase}” tells ${fact}`);

const question = next(audit);
console.log(`${report(audit).verdict.headline}\n${question.text} (${question.because})`);
