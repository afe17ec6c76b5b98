/** `30 cm left`, `5 deg down`: a word for the direction instead of a sign. */

interface Sides {
  readonly plus: string;
  readonly minus: string;
}

/** The text without its word of direction, and which way it pointed, if one was there. */
export function stripSide(text: string, sides: Sides): { text: string; turned?: 'plus' | 'minus' } {
  const trimmed = text.trim();
  const lower = trimmed.toLowerCase();
  for (const turned of ['plus', 'minus'] as const) {
    const word = sides[turned];
    for (const tail of [` to the ${word}`, ` on the ${word}`, ` ${word}`]) {
      if (lower.endsWith(tail)) return { text: trimmed.slice(0, -tail.length), turned };
    }
  }
  return { text: trimmed };
}
