/** What clears every cause alike: what goes along with a person or a player, and what stops with the display. */
import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../src/rules/index.js';
import { type Case, faultsOf, lowers } from '../claims/claim.js';

const fault = (id: (typeof CAUSES)[number]['id'], told: Case): string[] =>
  faultsOf([id, {}, lowers(id, told, 2.5)]);

describe('the display muted', () => {
  const cleared = CAUSES.filter(({ id }) => id !== 'double-playback');
  it.each(cleared.map(({ id }) => id))(
    'clears %s where the trouble is gone, and says nothing where not',
    (id) => {
      expect(fault(id, { testMuteDisplay: 'gone' })).toEqual([]);
      expect(fault(id, { testMuteDisplay: 'same' })).not.toEqual([]);
    },
  );
});

describe('one person alone', () => {
  // A matter of one listener may go along with a person.
  const cleared = CAUSES.filter(({ id }) => id !== 'listener' && id !== 'preference');
  it.each(cleared.map(({ id }) => id))('clears %s where it goes along with that person', (id) => {
    expect(fault(id, { testSwapSeats: 'goes-with-person' })).toEqual([]);
  });
  it('is no reason to clear a taste', () => {
    expect(fault('preference', { whoHears: 'one-person' })).not.toEqual([]);
  });
});

describe('one player alone', () => {
  // What depends on what comes in may well be at work for one player alone.
  const bound = [
    'routing',
    'programme',
    'double-playback',
    'spread-off',
    'fixed-extraction',
    'ambience-setting',
    'surround-spill',
  ];
  const cleared = CAUSES.filter(({ id, boundTo }) => !bound.includes(id) && boundTo === undefined);
  it.each(cleared.map(({ id }) => id))('clears %s, and says nothing where all players show it', (id) => {
    expect(fault(id, { troubleTitles: 'one-source' })).toEqual([]);
    expect(fault(id, { troubleTitles: 'all' })).not.toEqual([]);
  });
  it.each(bound)('does not clear %s', (id) => {
    expect(fault(id as (typeof CAUSES)[number]['id'], { troubleTitles: 'one-source' })).not.toEqual([]);
  });
});
