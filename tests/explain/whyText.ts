/** The evidence about one cause as the command prints it. */
import { documentText } from '../../src/explain/document-text.js';
import { PLAIN_TEXT, type TextOptions } from '../../src/explain/terminal.js';
import { whyBlocks, whyOf } from '../../src/explain/why.js';
import type { Audit } from '../../src/reasoning/audit.js';
import type { CauseId } from '../../src/rules/cause-ids.js';

export function whyText(
  audit: Audit,
  cause: CauseId,
  against?: CauseId,
  options: Partial<TextOptions> = {},
): string {
  return documentText(whyBlocks(whyOf(audit, cause, against)), { ...PLAIN_TEXT, ...options });
}
