/** The near miss: which known word was meant by a mistyped one. */

/** Longest word that is compared; nothing in the catalog is longer. */
const LONGEST = 60;

/** Number of single-letter changes, swaps of neighbors included, that turn `a` into `b`. */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        cost = Math.min(cost, (beforeLast[column - 2] ?? 0) + 1);
      }
      current.push(cost);
    }
    beforeLast = last;
    last = current;
  }
  return last[b.length] ?? 0;
}

/** The known word nearest to `typed`, or undefined when nothing is near (more than a third of it differs). */
export function nearest(typed: string, known: readonly string[]): string | undefined {
  if (typed.length === 0 || typed.length > LONGEST) return undefined;
  const wanted = bare(typed);
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const word of known) {
    const distance = editDistance(wanted, bare(word));
    if (distance < bestDistance) {
      best = word;
      bestDistance = distance;
    }
  }
  if (best === undefined) return undefined;
  const allowed = Math.max(1, Math.floor(Math.max(wanted.length, bare(best).length) / 3));
  return bestDistance <= allowed ? best : undefined;
}

/** What an error adds where a near miss is known. */
export const didYouMean = (near: string | undefined): string =>
  near === undefined ? '' : `; did you mean ${near}?`;

export const sameWord = (a: string, b: string): boolean => bare(a) === bare(b);

/** Case, dashes, underscores and spaces do not tell words apart. */
function bare(word: string): string {
  return word.toLowerCase().replace(/[-_\s]/g, '');
}
