/** A bounded memo: the oldest entry leaves when a new one would exceed the limit. */
export type Memo<V> = (key: string, compute: () => V) => V;

/** @param limit most entries kept, above 0 */
export function boundedMemo<V>(limit: number): Memo<V> {
  const entries = new Map<string, { value: V }>();
  return (key, compute) => {
    const hit = entries.get(key);
    if (hit !== undefined) return hit.value;
    const value = compute();
    if (entries.size >= limit) {
      const oldest = entries.keys().next();
      if (!oldest.done) entries.delete(oldest.value);
    }
    entries.set(key, { value });
    return value;
  };
}
