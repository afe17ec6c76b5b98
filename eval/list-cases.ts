/** Writes cases/README.md: the numbered list of the shipped cases and what each shows. */
import { writeFileSync } from 'node:fs';
import { CASES_FOLDER, caseList, loadCases } from './load-cases.js';

writeFileSync(`${CASES_FOLDER}README.md`, caseList(loadCases()));
