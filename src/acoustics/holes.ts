/** How deep a hole that a model computes is heard: models of direct sound know no room, and a room fills deep holes. */

/** The room fills holes that are deeper than this, dB: the validity of all models of direct sound. Our own choice. */
export const DEEPEST_DB = 20;

/** Depth of a dip as it is heard, dB, 0 or above; null stands for a hole in which nothing at all is left. */
export function heardDepthDb(dipDb: number | null): number {
  return dipDb === null ? DEEPEST_DB : Math.min(DEEPEST_DB, Math.abs(dipDb));
}
