/** The command `calc` as people and programs use it. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { calc } from '../support/calc.js';

describe('calc for people', () => {
  it('alone lists every calculator with its inputs', async () => {
    const { out, code } = await calc(undefined);
    expect(code).toBe(0);
    for (const word of ['sound-speed', 'tonal-match', 'delayMs', '[earHeightM=1.05]', 'subInverted=false']) {
      expect(out).toContain(word);
    }
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('shows a result with unit, formula, source and how far to trust it', async () => {
    const { out, err, code } = await calc('pair-null', ['spacingM=0.26', 'angleDeg=30']);
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toContain('1320 Hz');
    expect(out).toContain('c / (2 d sin(angle))');
    expect(out).toContain('(computed here)');
  });

  it('says which values it assumed', async () => {
    const { out } = await calc('floor-bounce', ['sourceHeightM=0.35', 'distanceM=3']);
    expect(out).toContain('1.05 m (usual)');
  });

  it('writes none where there is nothing', async () => {
    const { out } = await calc('comb', ['delayMs=0']);
    expect(out).toMatch(/nullsHz +none/);
  });

  it('explains one calculator on request', async () => {
    for (const ask of [{ help: true }, {}]) {
      const { out, code } = await calc('bass-sum', 'help' in ask ? [] : ['--help'], ask);
      expect(code).toBe(0);
      for (const word of ['crossoverHz', 'needed', 'usual: LR4', 'center-audit calc bass-sum']) {
        expect(out).toContain(word);
      }
    }
  });

  it('names the nearest calculator for a slip', async () => {
    await expect(calc('flor-bounce', [])).rejects.toThrow(/did you mean floor-bounce/);
    await expect(calc('nothing-like-it', [])).rejects.toThrow(/accepted: sound-speed, comb/);
  });

  it('shows what is needed when nothing is given', async () => {
    await expect(calc('arrival', [])).rejects.toThrow(
      /left: is missing[\s\S]*example: center-audit calc arrival/,
    );
  });
});

describe('words on the command line', () => {
  const json = async (name: string, args: string[]) =>
    JSON.parse((await calc(name, args, { json: true })).out);
  const places = ['left=[-1.5,0]', 'center=0,0', 'right=[1.5, 0]', 'seat=0,3'];

  it('takes lists with and without brackets, objects, and dotted keys alike', async () => {
    const whole = await json('arrival', [...places, 'entered={"left":3.3,"center":3,"right":3.3}']);
    const parts = ['entered.left=3.3', 'entered.center=3', 'entered.right=3.3'];
    expect(await json('arrival', [...places, ...parts])).toEqual(whole);
  });

  it('takes a single number as a list of one', async () => {
    const args = ['type=peaking', 'frequencyHz=1000', 'gainDb=6', 'q=1', 'frequenciesHz=1000'];
    expect((await json('filter', args)).magnitudeDb[0]).toBeCloseTo(6, 9);
  });

  it('takes true and false', async () => {
    const args = ['crossoverHz=80', 'enclosure=vented', 'lowLimitHz=50'];
    expect(await json('bass-sum', [...args, 'subInverted=false'])).toEqual(await json('bass-sum', args));
    expect(await json('bass-sum', [...args, 'subInverted=true'])).not.toEqual(await json('bass-sum', args));
  });

  const refused: [string, string[], RegExp][] = [
    ['no equals sign', ['delayMs'], /no KEY=VALUE/],
    ['an empty value', ['delayMs='], /no number/],
    ['words', ['delayMs=one'], /"one" is no number/],
    ['infinity', ['delayMs=Infinity'], /no number/],
    ['a decimal comma', ['delayMs=1,2'], /"1,2" is no number/],
    ['a hexadecimal number', ['delayMs=0x10'], /no number/],
    ['a number too large to hold', ['delayMs=1e999'], /not finite/],
    ['the same key twice', ['delayMs=1', 'delayMs=2'], /given twice/],
    ['a dotted key of a number', ['delayMs.left=1'], /not known/],
    ['a key of the prototype', ['__proto__=1', 'delayMs=1'], /"__proto__" is not known/],
    ['a method as a key', ['constructor=1', 'delayMs=1'], /"constructor" is not known/],
  ];
  for (const [what, args, message] of refused) {
    it(`refuses ${what}`, async () => {
      await expect(calc('comb', args)).rejects.toThrow(message);
    });
  }

  it('refuses a dotted key that is no channel, and one beside the whole', async () => {
    await expect(calc('arrival', [...places, 'entered.centre=3'])).rejects.toThrow(/did you mean center/);
    await expect(calc('arrival', [...places, 'latencyMs={"left":1}', 'latencyMs.left=2'])).rejects.toThrow(
      /twice/,
    );
  });

  it('cleans what it quotes back', async () => {
    const message = await calc('comb', ['\u001b[31mred\u001b[0m=1']).catch(String);
    expect(message).toContain('"red" is not known');
    expect(message).not.toContain('\u001b');
  });
});

describe('a JSON object on standard input', () => {
  it('gives what the same words give, whichever way round the dash stands', async () => {
    const words = await calc('comb', ['delayMs=1', 'relativeLevelDb=-6'], { json: true });
    const stdin = '{"delayMs": 1, "relativeLevelDb": -6}';
    expect(await calc('comb', ['-'], { json: true, stdin })).toEqual(words);
    expect(await calc('-', ['comb'], { json: true, stdin })).toEqual(words);
    expect(await calc('comb', ['-', 'relativeLevelDb=-6'], { json: true, stdin: '{"delayMs": 1}' })).toEqual(
      words,
    );
  });

  const refused: [string, string, RegExp][] = [
    ['nothing', '', /file is empty/],
    ['a list', '[1]', /no JSON object/],
    ['a broken object', '{"delayMs": }', /line 1, column 13/],
    ['a key twice', '{"delayMs": 1, "delayMs": 2}', /second time/],
    ['NaN', '{"delayMs": NaN}', /line 1/],
    ['deep nesting', `{"delayMs": ${'['.repeat(50)}${']'.repeat(50)}}`, /nested deeper/],
  ];
  for (const [what, stdin, message] of refused) {
    it(`refuses ${what}`, async () => {
      await expect(calc('comb', ['-'], { stdin })).rejects.toThrow(message);
    });
  }

  it('does not wait for a terminal', async () => {
    await expect(calc('comb', ['-'])).rejects.toThrow(/terminal/);
  });

  it('refuses a key that stands in both places', async () => {
    await expect(calc('comb', ['-', 'delayMs=1'], { stdin: '{"delayMs": 1}' })).rejects.toThrow(
      /command line and on standard input/,
    );
  });
});

describe('calc for programs', () => {
  it('prints nothing but the result', async () => {
    const { out, err } = await calc('recess', ['recessM=0.2', 'mouthWidthM=0.6', 'mouthHeightM=0.22'], {
      json: true,
    });
    expect(Object.keys(JSON.parse(out))).toEqual(['resonanceHz']);
    expect(err).toBe('');
  });

  it('lists the calculators with inputs, defaults and outputs', async () => {
    const list = JSON.parse((await calc(undefined, [], { json: true })).out);
    expect(list).toHaveLength(20);
    const elevation = list.find(({ name }: { name: string }) => name === 'elevation');
    expect(elevation.inputs[1]).toMatchObject({
      key: 'earHeightM',
      unit: 'm',
      required: false,
      default: 1.05,
    });
    expect(elevation.outputs[0]).toMatchObject({ key: 'elevationDeg', unit: 'deg' });
  });
});

describe('tonal-match reads files', () => {
  const folder = mkdtempSync(join(tmpdir(), 'calc-files-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const file = (name: string, text: string | Uint8Array): string => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  const flat = Array.from({ length: 120 }, (_, i) => `${20 * 2 ** (i / 12)}\t80`).join('\n');
  const good = file('good.txt', `# frequency level\n${flat}\n`);
  const run = (center: string, json = true) =>
    calc('tonal-match', [`left=${good}`, `center=${center}`, `right=${good}`], { json });

  it('finds no difference between equal responses and proposes nothing', async () => {
    const { out } = await run(good);
    expect(JSON.parse(out)).toMatchObject({ levelOffsetDb: 0, rmsDb: 0, bandsOver3Db: 0, filters: [] });
    expect((await run(good, false)).out).toMatch(/filters +none/);
  });

  it('tells on the side which lines were put in order', async () => {
    const lines = flat.split('\n');
    const shuffled = file('shuffled.txt', [...lines.slice(60), ...lines.slice(0, 60)].join('\n'));
    const { err, out } = await run(shuffled);
    expect(err).toContain('out of order');
    expect(JSON.parse(out).levelOffsetDb).toBe(0);
  });

  const refused: [string, string | Uint8Array, RegExp][] = [
    ['an empty file', '', /no measurement found/],
    ['a single measurement', '1000 80\n', /only one frequency/],
    ['a bad line, by number', `# head\n1000 80\n1200 -\n1500 80\n`, /line 3/],
    ['zero bytes', new Uint8Array([49, 0, 50]), /zero bytes/],
    ['more than 2 MiB', `${'# filler\n'.repeat(250_000)}`, /bytes/],
    ['a range that is too short', '5000 80\n6000 80\n7000 80\n', /300 to 3000 Hz/],
  ];
  for (const [what, text, message] of refused) {
    it(`refuses ${what}`, async () => {
      await expect(run(file('center.txt', text))).rejects.toThrow(message);
      await expect(run(file('center.txt', text))).rejects.toHaveProperty('name', 'UserError');
    });
  }
});
