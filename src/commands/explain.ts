/** `center-audit explain`: the reference page of an id. */
import { pagesOf, renderPagesMarkdown, renderPagesText } from '../explain/pages/index.js';
import { textOptions } from '../explain/terminal.js';
import { causesAfter } from '../reasoning/priors.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { type FormatOptions, formatOf, textFlags } from './options.js';
import { priorsInUse, priorsLine } from './priors-in-use.js';

export async function run(io: Io, id: string, options: GlobalOptions & FormatOptions): Promise<ExitCode> {
  const format = formatOf<'text' | 'markdown' | 'json'>(options);
  const found = priorsInUse(io, options);
  const learned = found && { causes: causesAfter(found.solved), priors: priorsLine(found) };
  const pages = await pagesOf(id, learned);
  switch (format) {
    case 'text':
      io.out(renderPagesText(pages, textOptions(io, textFlags(options))));
      break;
    case 'markdown':
      io.out(renderPagesMarkdown(pages));
      break;
    case 'json':
      io.out(`${JSON.stringify({ format: 'center-audit/explain', version: 1, pages }, null, 2)}\n`);
  }
  return EXIT.done;
}
