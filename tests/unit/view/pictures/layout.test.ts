import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSystem, loopWays, wideSystem } from '../../../../packages/view/src/pictures/system-layout.js';
import { spreadLabels } from '../../../../packages/view/src/pictures/labels.js';
import { dateTicks } from '../../../../packages/view/src/pictures/time-axis.js';
import { monthLabel } from '../../../../packages/view/src/pictures/harvest-bars.js';
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

describe('layOutSystem', () => {
  const vessel = (name: string) => ({ name, kind: 'tank', volume: 1, holds: [], life: [] });
  const way = (from: string, to: string, kind = 'gravity') => ({ from, to, kind, rate: 1 });
  const placed = layOutSystem(
    ['sump', 'bed-2', 'bed-1', 'bed-3'].map(vessel),
    [
      way('sump', 'bed-2', 'pumped'),
      way('sump', 'bed-1', 'pumped'),
      way('sump', 'bed-3', 'pumped'),
      ...['bed-1', 'bed-2', 'bed-3'].map((bed) => way(bed, 'sump')),
      { to: 'sump', kind: 'top-up with mains', rate: 0.1 },
    ],
    wideSystem,
  );

  it('draws each vessel once, side by side in the order of the file', () => {
    expect(placed.vessels.map(({ text }) => text.name.join(''))).toEqual(['sump', 'bed-2', 'bed-1', 'bed-3']);
    const [, ...beds] = placed.vessels.map(({ box }) => box.y);
    expect([...beds].sort((a, b) => a - b)).toEqual(beds);
  });

  it('closes the loop: what flows back ends at the vessel itself, clear of the others', () => {
    const back = placed.ways.filter((each) => each.back);
    expect(back).toHaveLength(3);
    const [{ box }] = placed.vessels;
    for (const { points, pumpedFrom } of back) {
      expect(points.at(-1)).toEqual({ x: box.x, y: box.y + box.height / 2 });
      expect(pumpedFrom).toBe('');
      const lowest = Math.max(...points.map(({ y }) => y));
      for (const each of placed.vessels) expect(lowest).toBeGreaterThan(each.box.y + each.box.height / 2);
      expect(lowest).toBeLessThan(placed.height);
    }
    expect(placed.ways.filter((each) => each.pumpedFrom === 'sump')).toHaveLength(3);
  });
});

describe('dateTicks', () => {
  it('has days of the month for weeks, months for a year, with the year at January', () => {
    expect(dateTicks('2025-10-30', [0, 4], 5)).toEqual(
      ['30 Oct', '31 Oct', '1 Nov', '2 Nov', '3 Nov'].map((text, day) => ({ day, text })),
    );
    const months = dateTicks('2025-10-01', [0, 112], 5);
    expect(months.map(({ day, text }) => [day, text])).toEqual([
      [0, 'Oct'],
      [31, 'Nov'],
      [61, 'Dec'],
      [92, 'Jan 26'],
    ]);
  });

  it('never has more than have room, in runs of any length', () => {
    for (const days of [1, 7, 20, 60, 69, 71, 180, 365, 1000, 3650])
      for (const start of ['2025-01-01', '2024-02-29', '2025-12-31']) {
        const ticks = dateTicks(start, [0, days], 5);
        expect(ticks.length, `${days} from ${start}`).toBeLessThanOrEqual(6);
        expect(ticks.length, `${days} from ${start}`).toBeGreaterThan(1);
      }
  });
});

describe('monthLabel', () => {
  it('has the year at the first month and in January', () => {
    expect([monthLabel('2025-11', true), monthLabel('2025-12', false), monthLabel('2026-01', false)]).toEqual(
      ['Nov 25', 'Dec', 'Jan 26'],
    );
  });
});
