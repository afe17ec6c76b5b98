import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { begin } from '../../src/interview/conversation.js';
import { promptOf } from '../../src/interview/screens.js';
import { bookOf, type State, top } from '../../src/interview/state.js';
import { answer, asking, inHand, SETTINGS, saidBy, type } from './talk.js';

const IMPERIAL = { ...EMPTY_BOOK, units: 'imperial' as const };
const POST =
  'Since I got the matching center everything sounds boomy. We sit about 10 ft back, towers 8 ft apart.\nTurned the upmix off and it was gone.';

describe('the opening words', () => {
  const read = (): State => type(begin(EMPTY_BOOK, SETTINGS), POST);

  it('are put as one list of what was understood', () => {
    expect(top(read()).kind).toBe('understood');
    expect(promptOf(read()).choices).toEqual(
      expect.arrayContaining([
        expect.stringContaining('boomy'),
        expect.stringContaining('10 ft'),
        expect.stringContaining('upmix off'),
      ]),
    );
  });

  it('go into the case at Enter, and what they tell is not asked again', () => {
    const kept = type(read(), '');
    expect(bookOf(kept)).toMatchObject({
      words: POST,
      units: 'imperial',
      complaints: ['boomy'],
      trials: [{ act: 'upmix-off', outcome: 'gone' }],
    });
    expect(answer(kept, 'seatDistance')).toBeCloseTo(3.048, 3);
    expect(['words', 'complaints', 'units', 'seatDistance', 'mainsBase']).not.toContain(inHand(kept));
  });

  it('lose the lines that are struck by number', () => {
    const seat = promptOf(read()).choices.findIndex((line) => line.startsWith('seat distance'));
    const kept = type(read(), String(seat + 1), '');
    expect(answer(kept, 'seatDistance')).toBeUndefined();
    expect(answer(kept, 'mainsBase')).toBeCloseTo(2.438, 3);
  });

  it('are struck as a whole by 0', () => {
    expect(bookOf(type(read(), '0'))).toMatchObject({ complaints: [], trials: [], words: POST });
  });

  it('are mended by saying it again', () => {
    const kept = type(read(), 'No, we sit 12 ft away', '');
    expect(answer(kept, 'seatDistance')).toBeCloseTo(3.658, 3);
    expect(bookOf(kept).complaints).toEqual(['boomy']);
  });
});

describe('what must not be done, and whether it is settled', () => {
  const read = (): State =>
    type(begin(EMPTY_BOOK, SETTINGS), 'Everything sounds boomy. No drilling please. Problem solved.');
  const lines = (state: State): string[] => [...promptOf(state).choices];

  it('stand in the list, and go into the case with it', () => {
    expect(lines(read())).toEqual(
      expect.arrayContaining(['must be so: no holes are drilled', 'the trouble is settled']),
    );
    expect(bookOf(type(read(), ''))).toMatchObject({ constraints: ['no-holes'], solved: true });
  });
  it('are struck by their numbers alone', () => {
    const places = lines(read()).flatMap((line, i) => (/holes|settled/.test(line) ? [String(i + 1)] : []));
    const kept = bookOf(type(read(), places.join(' '), ''));
    expect(kept).toMatchObject({ complaints: ['boomy'], constraints: [] });
    expect(kept.solved).toBeUndefined();
  });
  it('are mended by saying more', () => {
    const more = type(read(), 'and we cannot buy anything');
    expect(lines(more).filter((line) => line.startsWith('must be so'))).toHaveLength(2);
    expect(bookOf(type(more, '')).constraints).toEqual(['no-purchase', 'no-holes']);
  });
});

describe('a sentence at a question', () => {
  it('answers it, and offers the rest for one key', () => {
    const told = type(
      asking('seatDistance'),
      'We sit 3 m away, the towers are 2.5 m apart and the center is on the sideboard',
    );
    expect(answer(told, 'seatDistance')).toBe(3);
    expect(top(told)).toMatchObject({ kind: 'understood', besides: true });
    const kept = type(told, '');
    expect(answer(kept, 'mainsBase')).toBe(2.5);
    expect(answer(kept, 'centerPlacement')).toBe('shelf-top');
  });

  it('leaves the rest out at 0', () => {
    const kept = type(asking('seatDistance'), 'We sit 3 m away, the towers are 2.5 m apart', '0');
    expect(answer(kept, 'seatDistance')).toBe(3);
    expect(answer(kept, 'mainsBase')).toBeUndefined();
  });

  it('that tells something else only is offered, and the question stays', () => {
    const kept = type(asking('seating'), 'the towers are 2.5 m apart', '');
    expect(answer(kept, 'mainsBase')).toBe(2.5);
    expect(inHand(kept)).toBe('seating');
  });
});

describe('answers in the words of people', () => {
  it.each([
    ['playedContent', 'everything', 'everything'],
    ['playedContent', 'tv and films', 'everything'],
    ['seating', 'sofa', 'one-row'],
    ['centerPlacement', 'in the cabinet under the tv', 'bay'],
    ['centerLayout', 'MTM I think', 'mid-tweeter-mid'],
    ['displaySpeakers', 'yes', 'playing'],
    ['subwoofer', 'yes', 'one'],
    ['voiceBoost', 'no', 'off'],
    ['centerLayout', 'dunno', 'unknown'],
    ['displaySpeakers', 'no idea, how would I hear that', 'unknown'],
    ['seatDistance', 'idk', 'unknown'],
    ['centerLayout', "I don't know, sorry", 'unknown'],
  ] satisfies [FactId, string, string][])('%s: %s', (fact, typed, value) => {
    const state = type(asking(fact), typed);
    expect(saidBy(state)).not.toContain('none of the');
    expect(answer(type(state, '0'), fact)).toBe(value);
  });

  it('are a guess where they are hedged', () => {
    expect(bookOf(type(asking('centerLayout'), 'MTM I think')).answers.get('centerLayout')).toMatchObject({
      how: 'guessed',
    });
  });

  it.each([
    ['about two and a half feet', 0.762],
    ['31', 0.7874],
    ['31 inches', 0.7874],
  ])('a height: %s', (typed, value) => {
    expect(answer(type(asking('centerTweeterHeight', IMPERIAL), typed), 'centerTweeterHeight')).toBeCloseTo(
      value,
      4,
    );
  });

  it('clash with no mark', () => {
    for (const key of ['w', 'h', 's', 'f'])
      expect(top(type(asking('voiceDirection'), key)).kind).not.toBe('meant');
  });
});

describe('answers set aside', () => {
  it('come back from an earlier sitting when they apply again', () => {
    const before = { order: [], put: [], parked: { enteredCenter: { value: 3.05, how: 'read' } } } as const;
    const book = {
      ...EMPTY_BOOK,
      complaints: ['dull'] as const,
      answers: new Map([['entryKind', { value: 'delays', how: 'read' }] as const]),
    };
    const state = begin(book, SETTINGS, before);
    expect(state.parked.get('enteredCenter')).toEqual({ value: 3.05, how: 'read' });
  });
});
