/** What a look at the file system finds; nothing where it fails, for whoever needs no reason. */
export function quietly<T>(look: () => T): T | undefined {
  try {
    return look();
  } catch {
    return undefined;
  }
}
