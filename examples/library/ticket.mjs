// A support desk audits a case it was sent, and gets the ticket for the next colleague.
import { readFileSync } from 'node:fs';
import { auditCase, CaseError, readCase, reportAs } from 'center-audit';

try {
  const sent = readCase(readFileSync('cases/demo.json'));
  const audit = await auditCase(sent);
  console.log(await reportAs(audit, 'ticket', { caseName: 'T-1042' }));
} catch (error) {
  if (!(error instanceof CaseError)) throw error;
  for (const { path, line, what, accepted } of error.problems)
    console.error(`line ${line}, ${path}: ${what}; accepted: ${accepted}`);
}
