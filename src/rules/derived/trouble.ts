/** At which seats the trouble is heard, put together from what was told and from seats compared. */
import { choice, derive } from '../../compute/reader.js';

export const trouble = {
  // Rules on the main seat do not bear on a trouble of the others; while nobody has told, they do.
  troubleAtSide: derive(
    choice('trouble told to be at the seats off to the side alone', ['yes', 'no'] as const),
    ['troubleSeats', 'testSitMiddle'],
    (r) => {
      const seats = r.toldChoice('troubleSeats');
      if (seats !== undefined) return seats === 'off-middle' ? 'yes' : 'no';
      return r.toldChoice('testSitMiddle') === 'clear-in-middle' ? 'yes' : 'no';
    },
  ),
};
