/** Pages of the calculators, from their own table; loaded only when such a page is wanted. */
import type { Calculator } from '../calculators/calculator.js';
import { heading, paragraph, table, withoutEmpty } from '../document.js';
import { capital, markText, sentence } from '../words.js';
import type { Page } from './page.js';

export async function calculatorPages(): Promise<Page[]> {
  const { CALCULATORS } = await import('../calculators/index.js');
  return CALCULATORS.map(calculatorPage);
}

function calculatorPage(calculator: Calculator): Page {
  const { name, title, answers, inputs, outputs, formula, validity, source, example } = calculator;
  return {
    kind: 'calculator',
    id: name,
    title,
    blocks: withoutEmpty([
      paragraph(answers),
      { kind: 'code', text: `center-audit calc ${name} ${example}`.trim() },
      heading(2, 'Inputs'),
      table(
        ['key', 'unit', 'meaning', 'accepted', 'default'],
        Object.entries(inputs).map(([key, input]) => [
          key,
          input.unit || '-',
          input.meaning,
          input.accepted,
          input.usual === undefined
            ? input.required
              ? 'must be given'
              : 'may be left out'
            : String(input.usual),
        ]),
      ),
      heading(2, 'Results'),
      table(
        ['key', 'unit', 'meaning'],
        Object.entries(outputs).map(([key, output]) => [key, output.unit || '-', output.meaning]),
      ),
      heading(2, 'Formula'),
      { kind: 'code', text: formula },
      heading(2, 'Where it holds'),
      paragraph(sentence(validity)),
      heading(2, 'Source'),
      paragraph(`${capital(source.cite)} [${markText(source.mark)}].`),
    ]),
  };
}
