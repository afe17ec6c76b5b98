import { expect, it } from 'vitest';
import { listener } from '../../src/rules/causes/listener.js';

it('speaks of people without a word of blame or diagnosis', () => {
  const words = JSON.stringify(listener).toLowerCase();
  for (const hard of ['deaf', 'old', 'hearing loss', 'imagin', 'fault', 'wrong with', 'impair'])
    expect(words.match(new RegExp(`\\b${hard}`)), hard).toBeNull();
});
