/** Boxes of names, and what runs through them. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf, crosses, overlap } from '../../../../src/explain/plots/svg/boxes.js';

describe('boxes', () => {
  const box = { x: 10, y: 10, width: 20, height: 10 };
  it('overlap where they share room, not where they touch', () => {
    expect(overlap(box, { ...box, x: 29 })).toBe(true);
    expect(overlap(box, { ...box, y: 19 })).toBe(true);
    for (const moved of [{ x: 30 }, { x: -10 }, { y: 20 }, { y: 0 }])
      expect(overlap(box, { ...box, ...moved })).toBe(false);
  });
  it('stand around a text by its anchor', () => {
    const { width } = boxOf('sofa', { x: 100, y: 50 });
    expect(boxOf('sofa', { x: 100, y: 50 }).x).toBe(100);
    expect(boxOf('sofa', { x: 100, y: 50, anchor: 'end' }).x).toBe(100 - width);
    expect(boxOf('sofa', { x: 100, y: 50, anchor: 'middle' }).x).toBe(100 - width / 2);
  });
  it('are crossed by a line through them, steep or flat, and not by one beside or short of them', () => {
    for (const through of [
      [
        [0, 15],
        [40, 15],
      ],
      [
        [20, 0],
        [20, 40],
      ],
      [
        [0, 0],
        [40, 30],
      ],
      [
        [15, 15],
        [16, 16],
      ],
    ] as const)
      expect(crosses(box, through)).toBe(true);
    for (const beside of [
      [
        [0, 5],
        [40, 5],
      ],
      [
        [35, 0],
        [35, 40],
      ],
      [
        [0, 15],
        [9, 15],
      ],
      [
        [0, 30],
        [12, 40],
      ],
    ] as const)
      expect(crosses(box, beside)).toBe(false);
  });
  it('are crossed exactly where some point of the line lies inside', () => {
    const at = fc.integer({ min: -20, max: 60 });
    fc.assert(
      fc.property(at, at, at, at, (x1, y1, x2, y2) => {
        const inside = Array.from({ length: 401 }, (_, i) => i / 400).some((t) => {
          const [x, y] = [x1 + t * (x2 - x1), y1 + t * (y2 - y1)];
          return x >= 10 && x <= 30 && y >= 10 && y <= 20;
        });
        if (inside)
          expect(
            crosses(box, [
              [x1, y1],
              [x2, y2],
            ]),
          ).toBe(true);
        const near = Array.from({ length: 401 }, (_, i) => i / 400).some((t) => {
          const [x, y] = [x1 + t * (x2 - x1), y1 + t * (y2 - y1)];
          return x >= 9 && x <= 31 && y >= 9 && y <= 21;
        });
        if (!near)
          expect(
            crosses(box, [
              [x1, y1],
              [x2, y2],
            ]),
          ).toBe(false);
      }),
    );
  });
});
