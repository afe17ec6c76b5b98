import { describe, expect, it } from 'vitest';
import { readText } from '../../src/reading/read.js';

/** What was taken, as `fact=value`, with `not` in front of a denial. */
const taken = (text: string): string[] =>
  readText(text).taken.map(({ fact, value, negated }) => `${negated ? 'not ' : ''}${fact}=${value}`);

describe('the scope of a denial', () => {
  it.each([
    ['The voice is not muffled.', 'not dull=true'],
    ["it isn't boomy at all", 'not boomy=true'],
    ['No echo or buzzing.', 'not echo=true', 'not rattles=true'],
    ['It never rattled.', 'not rattles=true'],
  ])('%s', (text, ...facts) => {
    expect(taken(text)).toEqual(facts);
  });

  it('clears only what it denies', () => {
    expect(taken('Not muffled, just boomy.')).toEqual(['not dull=true', 'boomy=true']);
  });

  it('is not opened by "not only"', () => {
    expect(taken('Not only muffled but boomy too.')).toEqual(['dull=true', 'boomy=true']);
  });

  it('turns a choice into its opposite', () => {
    expect(taken('There is no subwoofer.')).toEqual(['subwoofer=none']);
  });
});

describe('what stays unread', () => {
  it.each([
    ['My neighbor says the center is boomy.'],
    ['Should I turn the center to none?'],
    ['Would it help to set the center to small?'],
    ['At my sister the voices are muffled.'],
    ['I paid $899, it is 15 years old and has 7 x 110 W.'],
    ['The left speaker sounds dull.'],
  ])('%s', (text) => {
    expect(taken(text)).toEqual([]);
  });

  it('is listed sentence by sentence', () => {
    const { left } = readText('The voice is dull. Paid $899 for it. Thanks!');
    expect(left.map(({ phrase }) => phrase)).toEqual(['Paid $899 for it.', 'Thanks!']);
  });
});

describe('what is unsure', () => {
  it('becomes a question where the owner does not know', () => {
    const { taken: sure, unsure } = readText("I'm not sure whether the center is set to small.");
    expect(sure.map(({ fact }) => fact)).not.toContain('centerBassSize');
    expect(unsure).toContainEqual(
      expect.objectContaining({ fact: 'centerBassSize', question: expect.stringContaining('?') }),
    );
  });

  it('becomes a question where it is told both ways', () => {
    const { taken: sure, unsure } = readText('The center is ported. The center is a sealed box.');
    expect(sure).toEqual([]);
    expect(unsure).toMatchObject([{ fact: 'centerEnclosure', values: ['sealed', 'vented'] }]);
  });

  it('becomes a question where a side is missing', () => {
    expect(readText('The center is 20 cm off the middle.').unsure).toMatchObject([
      { fact: 'centerSideOffset' },
    ]);
  });
});

describe('how something was told', () => {
  it.each([
    ['We sit about 3 m away.', 'guessed'],
    ['We sit 3 m away.', 'recalled'],
    ['We sit 3 m away, measured with a laser.', 'measured'],
    ['The menu says center 3 m.', 'read'],
  ])('%s %s', (text, how) => {
    expect(readText(text).taken.find(({ value }) => value === 3)).toMatchObject({ how });
  });

  it('calls nothing read that nobody read', () => {
    expect(
      readText('The center is ported, and the towers have horns.').taken.map(({ how }) => how),
    ).not.toContain('read');
  });
});

describe('trials', () => {
  it.each([
    ['Turned the upmix off and it was gone.', 'testUpmixOff=gone'],
    ['In plain stereo the stage is back.', 'testUpmixOff=gone'],
    ['I pulled it forward to the edge, no change.', 'testPullForward=same'],
    ['Tilted it up, much clearer.', 'testTilt=clearer'],
    ['Muted the TV: nothing.', 'testMuteDisplay=same'],
    ['Bypassing the EQ changes nothing.', 'testEqBypass=same'],
  ])('%s', (text, fact) => {
    expect(taken(text)).toContain(fact);
  });

  it('says nothing of an act without an outcome', () => {
    expect(taken('I turned the upmix off.')).not.toContain('testUpmixOff=gone');
  });

  it('reads no plan as an act', () => {
    expect(taken('I will turn the upmix off tonight, maybe it is gone then.')).toEqual([]);
  });
});

describe('what is played', () => {
  it('tells where it is bad from where it is fine', () => {
    expect(taken('Films are fine, with CDs the stage collapses.')).toEqual(
      expect.arrayContaining(['not playedContent=multichannel-film', 'playedContent=two-channel-music']),
    );
  });
});
