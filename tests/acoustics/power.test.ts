import { describe, expect, it } from 'vitest';
import { fullLevelDb, powerForLevelW } from '../../src/acoustics/power.js';

describe('power for a level at the seat', () => {
  // Two published worked examples (a magazine's sidebar on maximum level; a forum's sum for a cinema at home), read.
  it.each([
    [92, 160, 1, 114],
    [88, 800, 4, 105],
  ])('%d dB, %d W, %d m give %d dB', (sensitivityDb, powerW, distanceM, levelDb) => {
    expect(fullLevelDb({ sensitivityDb, powerW, distanceM })).toBeCloseTo(levelDb, 0);
  });

  it('twice the distance takes four times the power, 3 dB less sensitivity twice, 10 dB more ten times', () => {
    const usual = { levelDb: 80, sensitivityDb: 87, distanceM: 3 };
    const watts = powerForLevelW(usual);
    expect(powerForLevelW({ ...usual, distanceM: 6 }) / watts).toBeCloseTo(4, 9);
    expect(powerForLevelW({ ...usual, sensitivityDb: 84 }) / watts).toBeCloseTo(10 ** 0.3, 9);
    expect(powerForLevelW({ ...usual, levelDb: 90 }) / watts).toBeCloseTo(10, 9);
  });

  it('a usual box at a usual seat passes talk with a watt or so, a loud film with some tens of watts', () => {
    const seat = { sensitivityDb: 87, distanceM: 3 };
    expect(powerForLevelW({ ...seat, levelDb: 65 })).toBeLessThan(1);
    expect(powerForLevelW({ ...seat, levelDb: 85 })).toBeGreaterThan(20);
    expect(powerForLevelW({ ...seat, levelDb: 85 })).toBeLessThan(80);
  });

  it('refuses what no room can have', () => {
    expect(() => powerForLevelW({ levelDb: 80, sensitivityDb: 87, distanceM: 0 })).toThrow(/distanceM/);
    expect(() => fullLevelDb({ sensitivityDb: 87, powerW: -1, distanceM: 1 })).toThrow(/powerW/);
  });
});
