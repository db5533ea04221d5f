import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopWays } from '../../../../packages/view/src/pictures/system-layout.js';
import { spreadLabels } from '../../../../packages/view/src/pictures/labels.js';
import { drawnPoints } from '../../../../packages/view/src/pictures/course-picture.js';

describe('loopWays', () => {
  it('names the way that leads back to where the water set out', () => {
    const ways = [
      { from: 'sump', to: 'tank' },
      { from: 'tank', to: 'bed' },
      { from: 'bed', to: 'sump' },
      { from: 'tank', to: 'sump' },
    ];
    expect([...loopWays(ways, 'sump')]).toEqual([2, 3]);
    expect([...loopWays(ways.slice(0, 2), 'sump')]).toEqual([]);
  });
});

describe('spreadLabels', () => {
  it('keeps labels apart and in order, and those that do not touch where they are', () => {
    expect(spreadLabels([10, 50, 12], 8, [0, 100])).toEqual([10, 50, 18]);
    const any = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(any, (wanted) => {
        const places = spreadLabels(wanted, 10, [0, 100]);
        const sorted = [...places].sort((a, b) => a - b);
        for (let i = 1; i < sorted.length; i += 1)
          expect(sorted[i] - sorted[i - 1]).toBeGreaterThanOrEqual(10);
        expect(sorted[0]).toBeGreaterThanOrEqual(0);
        expect(sorted[sorted.length - 1]).toBeLessThanOrEqual(100);
      }),
    );
  });
});

describe('drawnPoints', () => {
  it('keeps every point of a short course, and first, last, highest and lowest of a long one', () => {
    expect(drawnPoints([3, 1, 2], 10)).toEqual([0, 1, 2]);
    const values = Array.from({ length: 5000 }, (_, i) => (i === 1234 ? 50 : i === 3333 ? -50 : Math.sin(i)));
    const drawn = drawnPoints(values, 400);
    expect(drawn.length).toBeLessThanOrEqual(402);
    for (const index of [0, 1234, 3333, 4999]) expect(drawn).toContain(index);
  });
});
