import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/facts/acts.js';
import { EMPTY_BOOK, type FactBook, type Seat, withAnswer } from '../../src/facts/book.js';
import { type FactId, factSpec } from '../../src/facts/catalog.js';
import { COMPLAINTS, type ComplaintId } from '../../src/facts/complaints.js';
import { PAIRS } from '../../src/facts/contradictions/pairs.js';
import { contradictions } from '../../src/facts/contradictions.js';
import { anyBook } from '../support/books.js';

type Told = Partial<Record<FactId, number | string>>;

function bookOf(facts: Told, rest: Partial<FactBook> = {}): FactBook {
  return Object.entries(facts).reduce<FactBook>(
    (book, [id, value]) => withAnswer(book, id as FactId, { value, how: 'measured' }),
    { ...EMPTY_BOOK, ...rest },
  );
}
const ids = (facts: Told, rest: Partial<FactBook> = {}): string[] =>
  contradictions(bookOf(facts, rest)).map((each) => each.id);

describe('units mixed up', () => {
  it('shows as an entry about three times the taped distance, or a third of it', () => {
    expect(ids({ tapedCenter: 3, enteredCenter: 9.84 })).toEqual(['wrong-unit-enteredCenter']);
    expect(ids({ tapedCenter: 3, enteredCenter: 0.914 })).toEqual(['wrong-unit-enteredCenter']);
    expect(ids({ tapedMains: 3.2, enteredLeft: 10.5, enteredRight: 10.5 })).toEqual([
      'wrong-unit-enteredLeft',
      'wrong-unit-enteredRight',
    ]);
  });

  it('is held against the seat distance where nothing was taped', () => {
    expect(ids({ seatDistance: 3, enteredCenter: 9.84 })).toEqual(['wrong-unit-enteredCenter']);
    const seats: Seat[] = [{ name: 'a', xM: 0, yM: 3, row: 1, main: true }];
    expect(ids({ enteredCenter: 9.84 }, { seats })).toEqual(['wrong-unit-enteredCenter']);
  });

  it('is told within 15 % of 3.28 or of 0.305 and not beyond', () => {
    for (const ratio of [2.86, 3.28, 3.75, 3.77, 0.266, 0.3048, 0.35])
      expect(ids({ tapedCenter: 3, enteredCenter: 3 * ratio })).toHaveLength(1);
    for (const ratio of [0.26, 0.36, 1, 2, 2.85, 3.78, 5])
      expect(ids({ tapedCenter: 3, enteredCenter: 3 * ratio })).toEqual([]);
  });

  it('needs a distance to be held against: beside an entry of nothing there is none', () => {
    expect(ids({ enteredCenter: 3, enteredLeft: 0 })).toEqual([]);
    const seats: Seat[] = [{ name: 'a', xM: 0, yM: 0, row: 1, main: true }];
    expect(ids({ enteredCenter: 3 }, { seats })).toEqual([]);
  });

  it('shows between two entries even where nothing was measured', () => {
    expect(ids({ enteredCenter: 10, enteredLeft: 3.1 })).toEqual(['mixed-units']);
  });

  it('is told once: by what was measured where it shows there, and not by the other entry too', () => {
    expect(ids({ tapedCenter: 2.75, enteredCenter: 8.9, enteredLeft: 3.1 })).toEqual([
      'wrong-unit-enteredCenter',
    ]);
    // Another slip, of the right entry, hides nothing.
    const right = { tapedMains: 3, enteredRight: 9.84 };
    expect(ids({ ...right, enteredCenter: 1.05, enteredLeft: 3.1 })).toEqual([
      'wrong-unit-enteredRight',
      'mixed-units',
    ]);
  });

  it('is no multiple of its step: told, and not where 3 cm stand for a tenth of a foot', () => {
    expect(ids({ enteredCenter: 2.97, entryStep: 0.05 })).toEqual(['off-the-step']);
    expect(ids({ enteredLeft: 9.5 * 0.3048, entryStep: 0.3048 })).toEqual(['off-the-step']);
    expect(ids({ enteredLeft: 3.12, enteredCenter: 2.97, entryStep: 0.05 })).toEqual(['off-the-step']);
    expect(ids({ enteredCenter: 2.95, entryStep: 0.05 })).toEqual([]);
    expect(ids({ enteredCenter: 9.7 * 0.3048, entryStep: 0.03 })).toEqual([]);
    // Written with two decimals, as menus of meters show it.
    expect(ids({ enteredCenter: 2.96, enteredLeft: 3.2, entryStep: 0.1 * 0.3048 })).toEqual([]);
  });

  it('quotes both answers and blames nobody', () => {
    const [found] = contradictions(bookOf({ tapedCenter: 3, enteredCenter: 9.84 }));
    expect(found).toEqual({
      id: 'wrong-unit-enteredCenter',
      kind: 'hard',
      facts: ['enteredCenter', 'tapedCenter'],
      text: 'Entered distance, center is given as 9.84 m (32 ft 3 1/2 in), and taped distance, center is given as 3.00 m (9 ft 10 in). The one is about three times the other, as when feet are typed where meters are meant.',
    });
  });
});

describe('what is quoted', () => {
  const only = (facts: Told, rest: Partial<FactBook> = {}) => {
    const found = contradictions(bookOf(facts, rest));
    expect(found).toHaveLength(1);
    return found[0];
  };
  const list: Seat[] = [{ name: 'a', xM: 0, yM: 3, row: 1, main: true }];

  it('an entry of a third names meters typed for feet, and the taped or told distance', () => {
    expect(only({ seatDistance: 3, enteredCenter: 0.914 })).toEqual({
      id: 'wrong-unit-enteredCenter',
      kind: 'hard',
      facts: ['enteredCenter', 'seatDistance'],
      text: 'Entered distance, center is given as 91.4 cm (3 ft), and seat distance is given as 3.00 m (9 ft 10 in). The one is about a third of the other, as when meters are typed where feet are meant.',
    });
    expect(only({ enteredCenter: 9.84 }, { seats: list })?.facts).toEqual(['enteredCenter']);
    expect(only({ enteredCenter: 10, enteredLeft: 3.1 })).toMatchObject({
      kind: 'hard',
      facts: ['enteredCenter', 'enteredLeft'],
    });
  });

  it('a main is held against the slant from seat to main, a center against the straight way', () => {
    // 3.0 m back and mains 6.0 m apart: 4.24 m to a main. Pythagoras.
    const wide = { seatDistance: 3, mainsBase: 6 };
    expect(ids({ ...wide, enteredLeft: 4.2426 * 3.28 })).toEqual(['wrong-unit-enteredLeft']);
    expect(ids({ ...wide, enteredLeft: 3 * 3.05 })).toEqual([]);
    expect(ids({ ...wide, enteredCenter: 3 * 3.05 })).toEqual(['wrong-unit-enteredCenter']);
  });

  it('a tape is told as shorter or longer, with the distance that follows from the layout', () => {
    expect(only({ tapedCenter: 2, seatDistance: 3 })).toEqual({
      id: 'tape-against-layout',
      kind: 'soft',
      facts: ['tapedCenter', 'seatDistance'],
      text: 'Taped distance, center is given as 2.00 m (6 ft 6 1/2 in), and seat distance is given as 3.00 m (9 ft 10 in). The tape is shorter than the 3.00 m (9 ft 10 in) that follows from where seat and center are.',
    });
    expect(only({ tapedCenter: 4, seatDistance: 3 })?.text).toMatch(/The tape is longer than the 3\.00 m/);
    expect(only({ tapedCenter: 2 }, { seats: list })?.facts).toEqual(['tapedCenter']);
  });

  it('a tape is held against the slant to a center that is off to the side, back, or above the ears', () => {
    // 3-4-5 and 5-12-13 triangles.
    const offSide = { seatDistance: 3, mainSeatOffset: -2, centerSideOffset: 2 };
    expect(ids({ ...offSide, tapedCenter: 5 })).toEqual([]);
    expect(ids({ ...offSide, tapedCenter: 3.05 })).toEqual(['tape-against-layout']);
    const high = { seatDistance: 3, earHeight: 1, centerTweeterHeight: 5 };
    expect(ids({ ...high, tapedCenter: 5 })).toEqual([]);
    expect(ids({ ...high, tapedCenter: 3 })).toEqual(['tape-against-layout']);
    expect(ids({ seatDistance: 3, centerTweeterHeight: 5, tapedCenter: 3 })).toEqual([]);
    const listed: Seat[] = [{ name: 'a', xM: 0, yM: 3, row: 1, earHeightM: 1, main: true }];
    expect(ids({ centerTweeterHeight: 5, tapedCenter: 5 }, { seats: listed })).toEqual([]);
    expect(ids({ earHeight: 1, tapedCenter: 3, seatDistance: 3 })).toEqual([]);
  });

  it('a tape may differ by 30 cm near by and by 15 % farther off', () => {
    expect(ids({ seatDistance: 1, tapedCenter: 1.29 })).toEqual([]);
    expect(ids({ seatDistance: 1, tapedCenter: 1.31 })).toEqual(['tape-against-layout']);
    expect(ids({ seatDistance: 8, tapedCenter: 9.19 })).toEqual([]);
    expect(ids({ seatDistance: 8, tapedCenter: 9.21 })).toEqual(['tape-against-layout']);
  });

  it('a tape test is told with the difference its own figures give', () => {
    const figures = { tapedCenter: 3, tapedMains: 3.2, enteredCenter: 3.5, enteredLeft: 3.2 };
    const found = only({ ...figures, testTape: 'agrees' });
    expect(found).toMatchObject({
      kind: 'hard',
      facts: ['testTape', 'tapedCenter', 'tapedMains', 'enteredCenter', 'enteredLeft'],
    });
    expect(found?.text).toMatch(
      /By these figures the center differs from the mains by 50 cm \(19\.7 in\)\.$/,
    );
    expect(only({ ...figures, enteredCenter: 3, testTape: 'off' })?.kind).toBe('hard');
    expect(ids({ ...figures, enteredCenter: 3.08, testTape: 'off' })).toEqual([]);
  });

  it('something in the way may stand as far back as a second row', () => {
    const far = { obstacleDistance: 4, seatDistance: 3 };
    expect(ids({ ...far, rowSpacing: 1.5 })).toEqual([]);
    expect(ids({ ...far, centerBehindMains: 1.5 })).toEqual([]);
    expect(ids({ ...far, centerBehindMains: 0.5 })).toEqual(['obstacle-beyond-seat']);
    expect(only(far)).toMatchObject({ kind: 'hard', facts: ['obstacleDistance', 'seatDistance'] });
  });

  it('a list of seats is quoted with its seats and rows', () => {
    const two: Seat[] = [...list, { name: 'b', xM: 0, yM: 4.5, row: 2, main: false }];
    expect(only({ seating: 'one-row' }, { seats: two })).toEqual({
      id: 'one-row-but-list',
      kind: 'hard',
      facts: ['seating'],
      text: 'Seating is given as "one row". The case lists 2 seats in 2 rows.',
    });
    expect(only({ seating: 'several-rows' }, { seats: list })).toMatchObject({
      kind: 'soft',
      text: 'Seating is given as "several rows". The case lists 1 seat in 1 row.',
    });
    expect(only({ seatCount: 3 }, { seats: two })).toMatchObject({
      kind: 'hard',
      text: 'Seats in the front row is given as 3. The case lists 1 seat in the front row.',
    });
    expect(only({ seatDistance: 4 }, { seats: two })).toMatchObject({
      kind: 'hard',
      facts: ['seatDistance'],
      text: 'Seat distance is given as 4.00 m (13 ft 1 1/2 in). In the list of seats the main seat is at 3.00 m (9 ft 10 in).',
    });
    expect(only({ seating: 'single-seat', seatCount: 2 })).toMatchObject({
      kind: 'hard',
      facts: ['seating', 'seatCount'],
    });
  });
});

describe('distances and sizes', () => {
  it('a tape much shorter or longer than seat and center allow', () => {
    expect(ids({ tapedCenter: 2, seatDistance: 3 })).toEqual(['tape-against-layout']);
    expect(ids({ tapedCenter: 4, seatDistance: 3 })).toEqual(['tape-against-layout']);
    expect(ids({ tapedCenter: 3.2, seatDistance: 3 })).toEqual([]);
    expect(ids({ tapedCenter: 3.75, seatDistance: 3, centerBehindMains: 0.7 })).toEqual([]);
    expect(ids({ tapedCenter: 3 })).toEqual([]);
  });

  it('a tape test against the figures', () => {
    const figures = { tapedCenter: 3, tapedMains: 3.2, enteredCenter: 3.5, enteredLeft: 3.2 };
    expect(ids({ ...figures, testTape: 'agrees' })).toEqual(['tape-test-agrees-figures-not']);
    expect(ids({ ...figures, testTape: 'off' })).toEqual([]);
    const right = { ...figures, enteredCenter: 3 };
    expect(ids({ ...right, testTape: 'off' })).toEqual(['tape-test-off-figures-agree']);
    expect(ids({ ...right, testTape: 'agrees' })).toEqual([]);
  });

  it('anything above the ceiling, and not what reaches just to it', () => {
    for (const id of [
      'centerTweeterHeight',
      'mainsTweeterHeight',
      'earHeight',
      'displayMiddleHeight',
    ] as const) {
      expect(ids({ [id]: 2.6, ceilingHeight: 2.4 })).toEqual([`above-ceiling-${id}`]);
      expect(ids({ [id]: 2.4, ceilingHeight: 2.4 })).toEqual([]);
      expect(ids({ [id]: 2.6 })).toEqual([]);
    }
  });

  it.each<[string, Told, Told]>([
    ['box-wider-than-bay', { centerWidth: 0.6, bayWidth: 0.55 }, { centerWidth: 0.55, bayWidth: 0.55 }],
    ['box-higher-than-bay', { centerHeight: 0.25, bayHeight: 0.2 }, { centerHeight: 0.2, bayHeight: 0.25 }],
    ['recess-deeper-than-bay', { bayRecess: 0.5, bayDepth: 0.4 }, { bayRecess: 0.1, bayDepth: 0.4 }],
    [
      'box-and-recess-deeper-than-bay',
      { centerDepth: 0.3, bayRecess: 0.2, bayDepth: 0.4 },
      { centerDepth: 0.5, bayRecess: 0, bayDepth: 0.4 },
    ],
    [
      'cones-overlap',
      { centerMidSize: 0.17, centerDriverSpacing: 0.13 },
      { centerMidSize: 0.13, centerDriverSpacing: 0.13 },
    ],
    [
      'cones-beyond-box',
      { centerDriverSpacing: 0.6, centerWidth: 0.5 },
      { centerDriverSpacing: 0.6, centerWidth: 0.2, centerOrientation: 'upright' },
    ],
    [
      'tweeters-beyond-box',
      { centerTweeterSpacing: 0.6, centerWidth: 0.5 },
      { centerTweeterSpacing: 0.6, centerWidth: 0.5, centerLayout: 'paired-boxes' },
    ],
    [
      'crossover-order',
      { centerLowCrossover: 900, centerCrossover: 800 },
      { centerLowCrossover: 500, centerCrossover: 2500 },
    ],
    [
      'floor-but-high',
      { centerPlacement: 'floor', centerTweeterHeight: 1.2 },
      { centerPlacement: 'floor', centerTweeterHeight: 0.3 },
    ],
    [
      'obstacle-beyond-seat',
      { obstacleDistance: 4, seatDistance: 3 },
      { obstacleDistance: 2, seatDistance: 3 },
    ],
    [
      'heard-on-the-other-side',
      { voiceDirection: 'low', centerTweeterHeight: 1.8, displayMiddleHeight: 1.2 },
      { voiceDirection: 'low', centerTweeterHeight: 0.5, displayMiddleHeight: 1.2 },
    ],
    [
      'heard-on-the-other-side',
      { voiceDirection: 'high', centerTweeterHeight: 0.4, displayMiddleHeight: 1.2 },
      { voiceDirection: 'high', centerTweeterHeight: 1.3, displayMiddleHeight: 1.2 },
    ],
    [
      'loudness-against-meter',
      { voiceLoudness: 'softer', measuredCenterLevel: 78, measuredLeftLevel: 74 },
      { voiceLoudness: 'louder', measuredCenterLevel: 78, measuredLeftLevel: 74 },
    ],
    [
      'clap-against-measured',
      { clapRing: 'dry', reverberationTime: 1200 },
      { clapRing: 'dry', reverberationTime: 400 },
    ],
    [
      'clap-against-measured',
      { clapRing: 'long', reverberationTime: 200 },
      { clapRing: 'long', reverberationTime: 900 },
    ],
  ])('%s', (id, against, fits) => {
    expect(ids(against)).toContain(id);
    expect(ids(fits)).not.toContain(id);
    for (const fact of Object.keys(against) as FactId[]) {
      const { [fact]: _left, ...others } = against;
      expect(ids(others), `silent without ${fact}`).not.toContain(id);
    }
  });
});

describe('seats', () => {
  const list: Seat[] = [
    { name: 'a', xM: 0, yM: 3, row: 1, main: true },
    { name: 'b', xM: 0.6, yM: 3, row: 1, main: false },
  ];
  const twoRows: Seat[] = [...list, { name: 'c', xM: 0, yM: 4.5, row: 2, main: false }];

  it('one seat only, and several', () => {
    expect(ids({ seating: 'single-seat', seatCount: 2 })).toEqual(['single-seat-but-several']);
    expect(ids({ seating: 'single-seat', seatCount: 1 })).toEqual([]);
    expect(ids({ seating: 'single-seat' }, { seats: list })).toEqual(['single-seat-but-list']);
  });

  it('rows told and rows listed', () => {
    expect(ids({ seating: 'one-row' }, { seats: twoRows })).toEqual(['one-row-but-list']);
    expect(ids({ seating: 'several-rows' }, { seats: list })).toEqual(['several-rows-but-list']);
    expect(ids({ seating: 'several-rows' }, { seats: twoRows })).toEqual([]);
  });

  it('seats counted and listed, front row against front row', () => {
    expect(ids({ seatCount: 3 }, { seats: list })).toEqual(['seat-count-but-list']);
    expect(ids({ seatCount: 2 }, { seats: twoRows })).toEqual([]);
  });

  it('a main seat told in one place and listed in another', () => {
    expect(ids({ seatDistance: 4 }, { seats: list })).toEqual(['seatDistance-but-list']);
    expect(ids({ seatDistance: 3.2 }, { seats: list })).toEqual([]);
    expect(ids({ mainSeatOffset: 0.8 }, { seats: list })).toEqual(['mainSeatOffset-but-list']);
  });
});

describe('complaints', () => {
  it('that exclude each other are told together, as perhaps from different days', () => {
    expect(ids({}, { complaints: ['voice-too-quiet', 'voice-too-loud'] })).toEqual([
      'both-voice-too-quiet-and-voice-too-loud',
    ]);
    expect(ids({}, { complaints: ['voice-too-quiet', 'dull'] })).toEqual([]);
  });

  it('heard and not heard at once', () => {
    expect(ids({}, { complaints: ['dull'], absentComplaints: ['dull'] })).toEqual([
      'heard-and-not-heard-dull',
    ]);
    expect(ids({}, { complaints: ['dull'], absentComplaints: ['boomy'] })).toEqual([]);
  });

  it('of the center, where two-channel music is played straight and the center is silent', () => {
    const straight = { playedContent: 'two-channel-music', upmixUse: 'off' } as const;
    const [found, ...more] = contradictions(bookOf(straight, { complaints: ['dull', 'no-middle'] }));
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      id: 'silent-center',
      complaints: ['dull'],
      facts: ['playedContent', 'upmixUse'],
    });
    expect(ids(straight, { complaints: ['no-middle', 'voice-pulled-aside'] })).toEqual([]);
    expect(ids({ ...straight, playedContent: 'everything' }, { complaints: ['dull'] })).toEqual([]);
    expect(ids({ ...straight, upmixUse: 'sometimes' }, { complaints: ['dull'] })).toEqual([]);
  });

  it('beside plain taste', () => {
    const just = 'just-prefer-two-channels' as const;
    expect(ids({}, { complaints: [just, 'dull'] })).toEqual(['prefers-but-complains']);
    expect(ids({}, { complaints: [just] })).toEqual([]);
    expect(ids({ likesTwoChannel: 'something-wrong' }, { complaints: [just] })).toEqual([
      'prefers-but-wrong',
    ]);
    expect(ids({ likesTwoChannel: 'like-two' }, { complaints: ['dull'] })).toEqual(['taste-but-complains']);
    expect(ids({ likesTwoChannel: 'both' }, { complaints: ['dull'] })).toEqual([]);
  });

  it('against an answer that says the opposite', () => {
    expect(ids({ lipSync: 'in-step' }, { complaints: ['out-of-step-with-picture'] })).toEqual([
      'out-of-step-with-picture-but-lipSync',
    ]);
    expect(ids({ lipSync: 'voice-late' }, { complaints: ['out-of-step-with-picture'] })).toEqual([]);
    expect(ids({ troubleWhenLoud: 'no' }, { complaints: ['distorts-when-loud'] })).toHaveLength(1);
  });
});

describe('what is heard is told in full', () => {
  const only = (facts: Told, rest: Partial<FactBook> = {}) => {
    const found = contradictions(bookOf(facts, rest));
    expect(found).toHaveLength(1);
    return found[0];
  };
  const title = (id: keyof typeof COMPLAINTS) => COMPLAINTS[id].title;

  it('loudness by ear against the meter from 2 dB on', () => {
    const at = (voiceLoudness: string, centerDb: number) =>
      ids({ voiceLoudness, measuredCenterLevel: centerDb, measuredLeftLevel: 75 });
    expect([at('softer', 77), at('louder', 73)]).toEqual([
      ['loudness-against-meter'],
      ['loudness-against-meter'],
    ]);
    expect([at('softer', 76.9), at('louder', 73.1), at('softer', 70), at('louder', 80)]).toEqual([
      [],
      [],
      [],
      [],
    ]);
    expect(only({ voiceLoudness: 'softer', measuredCenterLevel: 78, measuredLeftLevel: 75 })).toMatchObject({
      kind: 'soft',
      facts: ['voiceLoudness', 'measuredCenterLevel', 'measuredLeftLevel'],
    });
  });

  it('a clap against the measured reverberation beyond 0.7 s and below 0.25 s', () => {
    const at = (clapRing: string, reverberationTime: number) => ids({ clapRing, reverberationTime });
    expect([at('dry', 701), at('long', 249)]).toEqual([['clap-against-measured'], ['clap-against-measured']]);
    expect([at('dry', 700), at('long', 250)]).toEqual([[], []]);
    expect(only({ clapRing: 'dry', reverberationTime: 900 })).toMatchObject({
      kind: 'soft',
      facts: ['clapRing', 'reverberationTime'],
    });
  });

  it('an act told with another outcome than the home test that is the same act', () => {
    const at = (testTilt: string, outcome: Outcome, complaint?: ComplaintId) =>
      contradictions(
        bookOf(
          { testTilt },
          { trials: [{ act: 'center-tilted', outcome, ...(complaint && { complaint }) }] },
        ),
      );
    const [found] = at('same', 'gone');
    expect(found).toMatchObject({
      id: 'trial-against-test-center-tilted',
      facts: ['testTilt'],
      kind: 'soft',
    });
    expect(found?.text).toContain('the trouble was gone. It is the same act.');
    // Told alike, of one complaint only, or with an outcome that no answer of the test stands for.
    expect([at('same', 'same'), at('same', 'gone', 'dull'), at('same', 'cannot-tell')]).toEqual([[], [], []]);
  });

  it('complaints that exclude each other, in their own words', () => {
    expect(only({}, { complaints: ['voice-missing', 'harsh'] })).toEqual({
      id: 'both-voice-missing-and-harsh',
      kind: 'soft',
      facts: [],
      complaints: ['voice-missing', 'harsh'],
      text: `Both are told: ${title('voice-missing')}, and ${title('harsh')}. It may be one on some days or titles and the other on others.`,
    });
    expect(only({}, { complaints: ['dull'], absentComplaints: ['dull'] })).toEqual({
      id: 'heard-and-not-heard-dull',
      kind: 'hard',
      facts: [],
      complaints: ['dull'],
      text: `It is told that ${title('dull')}, and also that this is not so.`,
    });
  });

  it('taste beside complaints', () => {
    const just = 'just-prefer-two-channels' as const;
    expect(only({}, { complaints: [just, 'dull', 'boomy'] })).toEqual({
      id: 'prefers-but-complains',
      kind: 'soft',
      facts: [],
      complaints: [just, 'dull', 'boomy'],
      text: `It is told that ${title(just)}, and also that ${title('dull')}. Both may be true; they have different answers.`,
    });
    const wrong = only({ likesTwoChannel: 'something-wrong' }, { complaints: [just] });
    expect(wrong).toMatchObject({ kind: 'soft', facts: ['likesTwoChannel'], complaints: [just] });
    expect(wrong?.text).toContain(`It is also told that ${title(just)}.`);
    const likes = only({ likesTwoChannel: 'like-two' }, { complaints: ['dull', 'boomy'] });
    expect(likes).toMatchObject({ kind: 'soft', facts: ['likesTwoChannel'], complaints: ['dull', 'boomy'] });
    expect(likes?.text).toContain(`It is also told that ${title('dull')}. Both may be true.`);
    expect(ids({ likesTwoChannel: 'like-two' })).toEqual([]);
    expect(ids({ likesTwoChannel: 'like-two' }, { complaints: [just] })).toEqual([]);
    expect(ids({ likesTwoChannel: 'something-wrong' }, { complaints: ['dull'] })).toEqual([]);
  });

  it('a complaint beside the answer that says the opposite', () => {
    const found = only({ lipSync: 'in-step' }, { complaints: ['out-of-step-with-picture'] });
    expect(found).toMatchObject({
      kind: 'soft',
      facts: ['lipSync'],
      complaints: ['out-of-step-with-picture'],
    });
    expect(found?.text).toContain(`It is also told that ${title('out-of-step-with-picture')}.`);
  });

  it('sizes as hard facts with what would follow, heights as soft ones beyond a hand', () => {
    const wide = only({ centerWidth: 0.6, bayWidth: 0.55 });
    expect(wide).toMatchObject({ kind: 'hard', facts: ['centerWidth', 'bayWidth'] });
    expect(wide?.text).toMatch(/The box would not go in\.$/);
    expect(only({ earHeight: 2.6, ceilingHeight: 2.4 })).toMatchObject({
      kind: 'hard',
      facts: ['earHeight', 'ceilingHeight'],
    });
    expect(ids({ obstacleHeight: 2.6, ceilingHeight: 2.4 })).toContain('above-ceiling-obstacleHeight');
    const deep = { centerDepth: 0.3, bayRecess: 0.11 };
    expect(only({ ...deep, bayDepth: 0.39 })).toMatchObject({
      kind: 'hard',
      facts: ['centerDepth', 'bayRecess', 'bayDepth'],
    });
    expect(ids({ ...deep, bayDepth: 0.405 })).toEqual([]);
    const floor = (centerTweeterHeight: number) => ids({ centerPlacement: 'floor', centerTweeterHeight });
    expect([floor(0.8), floor(0.81)]).toEqual([[], ['floor-but-high']]);
    expect(only({ centerPlacement: 'floor', centerTweeterHeight: 1.2 })).toMatchObject({
      kind: 'soft',
      facts: ['centerPlacement', 'centerTweeterHeight'],
    });
    const heard = (voiceDirection: string, centerTweeterHeight: number) =>
      ids({ voiceDirection, centerTweeterHeight, displayMiddleHeight: 1.2 });
    expect([heard('low', 1.41), heard('high', 0.99)]).toEqual([
      ['heard-on-the-other-side'],
      ['heard-on-the-other-side'],
    ]);
    expect([heard('low', 1.39), heard('high', 1.01), heard('high', 1.8), heard('low', 0.5)]).toEqual([
      [],
      [],
      [],
      [],
    ]);
    expect(only({ voiceDirection: 'low', centerTweeterHeight: 1.8, displayMiddleHeight: 1.2 })).toMatchObject(
      {
        kind: 'soft',
        facts: ['voiceDirection', 'centerTweeterHeight', 'displayMiddleHeight'],
      },
    );
  });

  it('seats to a quarter of a meter, and how many a list has', () => {
    const list: Seat[] = [
      { name: 'a', xM: 0, yM: 3, row: 1, main: true },
      { name: 'b', xM: 0.6, yM: 3, row: 1, main: false },
    ];
    expect(ids({ seatDistance: 3.25 }, { seats: list })).toEqual([]);
    expect(ids({ seatDistance: 2.74 }, { seats: list })).toEqual(['seatDistance-but-list']);
    expect(only({ seating: 'single-seat' }, { seats: list })).toMatchObject({
      kind: 'hard',
      facts: ['seating'],
      text: expect.stringMatching(/The case lists 2 seats in 1 row\.$/),
    });
    expect(ids({ seating: 'single-seat' }, { seats: list.slice(0, 1) })).toEqual([]);
  });
});

/** A value that makes one side of a pair true, and one that makes it false where there is one. */
function valueFor(side: (typeof PAIRS)[number]['a'], fits: boolean): number | string | undefined {
  const spec = factSpec(side.fact);
  if (side.is === 'told') {
    if (!fits) return undefined;
    return spec.kind === 'number'
      ? (spec.typical[0] ?? 1)
      : spec.kind === 'choice'
        ? Object.keys(spec.choices)[0]
        : 'a.txt';
  }
  if (fits) return side.is[0];
  return spec.kind === 'choice'
    ? Object.keys(spec.choices).find((value) => !(side.is as readonly string[]).includes(value))
    : undefined;
}

describe.each(PAIRS)('$id', ({ id, a, b, kind }) => {
  const both = (first: boolean, second: boolean): Told => {
    const facts: Told = {};
    const va = valueFor(a, first);
    const vb = valueFor(b, second);
    if (va !== undefined) facts[a.fact] = va;
    if (vb !== undefined) facts[b.fact] = vb;
    return facts;
  };

  it('is told where both stand, with both answers in its words', () => {
    const found = contradictions(bookOf(both(true, true))).find((each) => each.id === id);
    expect(found).toMatchObject({ kind, facts: [a.fact, b.fact] });
    for (const fact of [a.fact, b.fact])
      expect(found?.text.toLowerCase()).toContain(factSpec(fact).label.toLowerCase());
  });

  it('is silent where one side says otherwise, is not known, or was not asked', () => {
    expect(ids(both(true, false))).not.toContain(id);
    expect(ids(both(false, true))).not.toContain(id);
    const known = bookOf(both(true, true));
    for (const fact of [a.fact, b.fact]) {
      const unknown = contradictions(withAnswer(known, fact, { how: 'unknown' })).map((each) => each.id);
      expect(unknown).not.toContain(id);
    }
  });
});

describe('contradictions of any book', () => {
  it('are plain sentences about told facts, never change the book, and do not depend on order or units', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const found = contradictions(book);
        expect(new Set(found.map((each) => each.id)).size).toBe(found.length);
        for (const { facts, text } of found) {
          expect(text).toMatch(/^[A-Z].*\.$/);
          expect(text).not.toMatch(/undefined|NaN|wrong answer|you lied|mistake/i);
          for (const fact of facts) expect(book.answers.get(fact)).toHaveProperty('value');
        }
        const backward = { ...book, answers: new Map([...book.answers].reverse()) };
        expect(contradictions(backward)).toEqual(found);
        const units = book.units === 'metric' ? 'imperial' : 'metric';
        expect(contradictions({ ...book, units }).map((each) => each.id)).toEqual(
          found.map((each) => each.id),
        );
      }),
      { numRuns: 300 },
    );
  });

  it('are none where nothing was told', () => {
    expect(contradictions(EMPTY_BOOK)).toEqual([]);
  });
});
