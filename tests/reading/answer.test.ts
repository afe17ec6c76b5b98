/** What is typed at a question in the words of people: a hedge makes it a guess, a measure of the body a length. */
import { describe, expect, it } from 'vitest';
import type { FactId } from '../../src/facts/catalog.js';
import { answerIn } from '../../src/reading/answer.js';

const read = (id: FactId, typed: string) => answerIn(typed, id, 'metric');

describe('an answer with a hedge', () => {
  it.each([
    ['voiceDirection', 'below, I think', 'low'],
    ['voiceDirection', 'from the television I suppose', 'picture'],
    ['centerBassSize', 'probably small', 'small'],
    ['subwoofer', 'one I believe', 'one'],
    ['listeningLevel', "normal I'd say", 'normal'],
    ['troubleWhenLoud', 'yes, I think so', 'yes'],
    ['lastChange', 'nothing as far as I know', 'nothing'],
    ['entryKind', 'distances, if I remember right', 'distances'],
  ] as const)('is taken as a guess: %s, %j', (id, typed, value) => {
    expect(read(id, typed)).toEqual({ value, how: 'guessed' });
  });
  it('is none where nothing is told, or asked back', () => {
    expect(read('voiceDirection', 'i have to think about that')).toBeUndefined();
    expect(read('upmixUse', 'what is an upmix')).toBeUndefined();
    expect(read('voiceDirection', 'from the tv')).toEqual({ value: 'picture', how: 'recalled' });
  });
});

// Of a grown person, round figures: common practice, no source.
describe('a measure of the body', () => {
  it.each([
    ['centerHeight', 'knee height', 0.5],
    ['centerHeight', 'at knee height, roughly', 0.5],
    ['shelfSetback', 'about a hand width', 0.1],
    ['shelfSetback', 'two hand-widths', 0.2],
    ['tapedCenter', "four arm's lengths", 2.8],
  ] as const)('is a guessed length: %s, %j', (id, typed, value) => {
    const answer = read(id, typed);
    expect(answer).toMatchObject({ how: 'guessed' });
    expect(answer && 'value' in answer && answer.value).toBeCloseTo(value, 3);
  });
});
