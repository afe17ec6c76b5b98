import { listener } from '../../src/rules/causes/listener.js';
import { testCause } from '../support/testCause.js';

testCause(listener, {
  firstPosts: [
    { complaints: ['voice-unclear-everywhere'], facts: { whoHears: 'one-person' } },
    { complaints: ['voice-unclear-everywhere'], facts: { testSwapSeats: 'goes-with-person' } },
  ],
  fires: [
    {
      name: 'one person at every seat, and with seats exchanged, is told from the place',
      facts: { whoHears: 'one-person', testSwapSeats: 'goes-with-person' },
      rules: ['one-person-hears-it', 'goes-along-with-person'],
    },
  ],
  silent: [
    {
      name: 'what everyone hears is not one person',
      facts: { whoHears: 'everyone', testSwapSeats: 'stays-with-seat' },
      rules: ['one-person-hears-it', 'goes-along-with-person'],
    },
    {
      name: 'what whoever sits in one place hears is the place',
      facts: { whoHears: 'one-place' },
      rules: ['one-person-hears-it'],
    },
    {
      name: 'a single listener has nobody to be compared with, so nothing is said',
      facts: { whoHears: 'only-me' },
      rules: ['one-person-hears-it'],
    },
  ],
  cannotTell: [
    { name: 'nobody compared', facts: {}, rule: 'one-person-hears-it', asks: ['whoHears'] },
    { name: 'seats not exchanged', facts: {}, rule: 'goes-along-with-person', asks: ['testSwapSeats'] },
  ],
});
