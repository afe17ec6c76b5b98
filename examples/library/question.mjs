// An owner's own words become a draft case, and the answer to them is the question worth most.
import { readFileSync } from 'node:fs';
import { auditCase, next, readWords, report } from 'center-audit';

const { draft, taken } = await readWords(readFileSync('examples/post.txt', 'utf8'));
const audit = await auditCase(draft);
for (const { phrase, fact } of taken) console.log(`“${phrase}” tells ${fact}`);

const question = next(audit);
console.log(`${report(audit).verdict.headline}\n${question.text} (${question.because})`);
