#!/usr/bin/env node
/**
 * The door of the program: looks at the version of Node before anything is loaded that an older one could not even read,
 * and lets Node keep compiled code where it can. So nothing here may be newer than the oldest Node that knows modules.
 */
import * as nodeModule from 'node:module';

const OLDEST = [20, 19];

const found = process.versions.node.split('.').map(Number);
const isTooOld =
  (found[0] ?? 0) < (OLDEST[0] ?? 0) || (found[0] === OLDEST[0] && (found[1] ?? 0) < (OLDEST[1] ?? 0));
if (isTooOld) {
  process.stderr.write(
    `center-audit needs Node ${OLDEST.join('.')} or newer; this is Node ${process.versions.node}.\n`,
  );
  process.exitCode = 2;
} else {
  // Not there before Node 22.1; it keeps compiled code in a folder of its own and never fails loudly.
  (nodeModule as { enableCompileCache?: () => void }).enableCompileCache?.();
  import('./commands/main.js');
}
