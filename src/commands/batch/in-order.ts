/** Results in the order of their tasks while several are worked on, and never more than a few of them held. */

/**
 * @param start begins a task and says how many may be under way together with it
 * Tasks are taken only as results are taken, so a slow reader slows the whole line down (backpressure).
 */
export async function* inOrder<T, R>(
  tasks: AsyncIterable<T> | Iterable<T>,
  start: (task: T) => { readonly result: Promise<R>; readonly window: number },
): AsyncGenerator<R> {
  const underWay: Promise<R>[] = [];
  for await (const task of tasks) {
    const { result, window } = start(task);
    // Settled results wait here for those before them; a failure is thrown when its turn comes.
    result.catch(() => {});
    underWay.push(result);
    while (underWay.length >= window) yield (await underWay.shift()) as R;
  }
  while (underWay.length > 0) yield (await underWay.shift()) as R;
}
