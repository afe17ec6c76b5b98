/** `center-audit facts`: all facts a case can hold, or the JSON Schema of a case file. */
import { type Block, bullets, heading } from '../explain/document.js';
import { documentText } from '../explain/document-text.js';
import { capital, idText } from '../explain/words.js';
import { FACT_IDS, type FactId, factSpec } from '../facts/catalog.js';
import { FAMILIES, type FactSpec } from '../facts/spec.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { type FormatOptions, wantsJson } from './options.js';
import { printResult } from './print.js';

interface FactsOptions extends GlobalOptions, FormatOptions {
  readonly schema?: boolean;
}

export async function run(io: Io, options: FactsOptions): Promise<ExitCode> {
  wantsJson(options);
  if (options.schema) {
    const { caseJsonSchema } = await import('../facts/json-schema.js');
    io.out(`${JSON.stringify(caseJsonSchema(), null, 2)}\n`);
    return EXIT.done;
  }
  const list = { format: 'center-audit/facts', version: 1, facts: FACT_IDS.map(forPrograms) };
  printResult(io, options, list, (_, text) => documentText(factBlocks(), text));
  return EXIT.done;
}

function forPrograms(id: FactId): object {
  const { askedWhen, assume, ...spec } = factSpec(id) as FactSpec & { readonly assume?: object };
  return { id, ...spec, askedWhen: askedWhen ?? null, assume: assume ?? null };
}

/** One layout at every width: an id and its unit differ too much in length for columns. */
function factBlocks(): Block[] {
  return FAMILIES.flatMap((family) => [
    heading(2, capital(idText(family))),
    bullets(
      FACT_IDS.filter((id) => factSpec(id).family === family).map((id) => {
        const spec = factSpec(id);
        return [{ strong: id }, `: ${spec.label} (${valueWords(spec)})`];
      }),
    ),
  ]);
}

function valueWords(spec: FactSpec): string {
  switch (spec.kind) {
    case 'choice':
      return `one of ${Object.keys(spec.choices).length} choices`;
    case 'number':
      return spec.unit === '1' ? 'a number' : spec.unit;
    case 'file':
      return 'path of a text file';
  }
}
