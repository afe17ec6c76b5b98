/** Files that come with the program, from its bundle as well as from its source. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** @param path below the folder that holds package.json */
export function packageFile(path: string): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error(`${path} did not come with the program`);
    folder = parent;
  }
  return join(folder, path);
}
