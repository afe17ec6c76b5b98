/** Words of a thing that name no such thing where they stand: "the center of the picture", "the front edge". */
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

/** Words that part nothing and say nothing. */
export const LITTLE = new Set(
  'the a an of my our your its is are be about only just exactly roughly really very'.split(' '),
);

const PICTURES = new Set(['picture', 'screen', 'image', 'television', 'display'].map(canonical));

/** "The center of the picture", "its center": no loudspeaker. */
export function isMiddleOfPicture(words: readonly Word[], place: number): boolean {
  const { raw } = words[place] as Word;
  if (raw !== 'center' && raw !== 'centre' && raw !== 'middle') return false;
  const before = words[place - 1];
  if (before?.raw === 'its' || PICTURES.has(before?.text ?? '')) return true;
  if (words[place + 1]?.raw !== 'of') return false;
  return [2, 3].some((ahead) => PICTURES.has(words[place + ahead]?.text ?? ''));
}

const PLACING = new Set(['above', 'over', 'under', 'below', 'underneath', 'beneath']);

/** "It hangs above the television": the television is only where. */
export function isPlaceOnly(words: readonly Word[], place: number): boolean {
  let before = place - 1;
  while (LITTLE.has(words[before]?.raw ?? '')) before--;
  return PLACING.has(words[before]?.raw ?? '') && words[before - 1]?.quantity === undefined;
}

const SIDES = new Set('edge wall of row one seat seats half baffle panel lip side face'.split(' '));
/** "The front edge", "in front of": no pair of loudspeakers. */
export const isSideOfSomething = (words: readonly Word[], place: number): boolean =>
  words[place]?.raw === 'front' && (SIDES.has(words[place + 1]?.raw ?? '') || words[place - 1]?.raw === 'in');
