import { createRandom } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../../../packages/core/src/base/normal.js';
import { alignedInstruments, offsetNote } from '../../../../packages/core/src/calibration/instruments.js';
import { readingError } from '../../../../packages/core/src/calibration/reading-loss.js';
import type { Observation } from '../../../../packages/core/src/calibration/readings.js';
import { dateAfter } from '../../../../packages/core/src/base/calendar.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import type { Measurable } from '../../../../packages/core/src/scenario/scenario.js';

const parameters = createParameters();
const errorOf = (reads: Measurable) => readingError(parameters, reads);

/** Readings every other day of water that wanders about a middle, by instruments that show a factor and a step more. */
function read(
  reads: Measurable,
  middle: number,
  instrumentOn: (day: number) => readonly { name?: string; times?: number; more?: number }[],
  seed = 1,
): readonly Observation[] {
  const random = createRandom(seed);
  const normal = () => normalQuantile(0.001 + 0.998 * random());
  const error = errorOf(reads);
  const deviation = (value: number): number => error.deviation(value);
  let wander = 0;
  return Array.from({ length: 60 }, (_, i) => 2 * i).flatMap((day) => {
    wander = 0.9 * wander + 0.4 * deviation(middle) * normal();
    return instrumentOn(day).map(({ name, times = 1, more = 0 }, column): Observation => {
      const value = (middle + wander) * times + more + 0.7 * deviation(middle) * normal();
      const half = deviation(middle) / 4;
      return {
        time: day,
        vessel: 0,
        reading: {
          ...{ date: dateAfter('2026-01-01', day), hour: 0, row: day + 2, column: String(column) },
          ...{ reads, vessel: 'tank', low: value - half, high: value + half, value, text: '' },
          ...(name === undefined ? {} : { instrument: name }),
        },
      };
    });
  });
}

describe('several instruments of one quantity', () => {
  it('a meter that reads 0.3 higher from a date on is told with its bounds, and earlier readings count as it shows', () => {
    const all = read('pH', 7.2, (day) => [day < 60 ? {} : { name: '2026-03-02', more: 0.3 }]);
    const { observations, offsets } = alignedInstruments(all, errorOf);
    expect(offsets).toHaveLength(1);
    const [{ at, shows, low, high }] = offsets;
    expect(low - at).toBeLessThan(0.3);
    expect(high - at).toBeGreaterThan(0.3);
    expect(high - low).toBeLessThan(0.4);
    expect(observations[0].reading.value - all[0].reading.value).toBeCloseTo(shows - at, 6);
    expect(observations.at(-1)).toEqual(all.at(-1));
    expect(offsetNote(offsets[0])).toMatch(
      /^pH in tank: the instrument \(from 2026-03-02\) reads 0\.\d+ higher than the one before \(to 2026-02-28\)/,
    );
  });

  it('a kit that reads a quarter more beside another is told more exactly than one that follows it', () => {
    const beside = read('nitrate', 40, () => [{ name: 'card' }, { name: 'meter', times: 1.25 }]);
    const after = read('nitrate', 40, (day) => [
      day < 60 ? { name: 'card' } : { name: 'meter', times: 1.25 },
    ]);
    const [a] = alignedInstruments(beside, errorOf).offsets;
    const [b] = alignedInstruments(after, errorOf).offsets;
    // Which of two that are read to the end stands for both is the first.
    expect(Math.max(a.shows / a.at, a.at / a.shows)).toBeCloseTo(1.25, 1);
    expect(b.low / b.at).toBeLessThan(1.25);
    expect(b.high / b.at).toBeGreaterThan(1.25);
    expect((a.high - a.low) / a.at).toBeLessThan((b.high - b.low) / b.at);
  });

  it('the bounds hold an offset of nothing, and 0.3, in most of twenty logs', () => {
    const held = (more: number): number =>
      Array.from({ length: 20 }, (_, seed) => {
        const all = read('pH', 7.2, (day) => [day < 60 ? {} : { name: 'b', more }], seed + 10);
        const [{ at, low, high }] = alignedInstruments(all, errorOf).offsets;
        return low - at < more && more < high - at ? 1 : 0;
      }).reduce<number>((sum, each) => sum + each, 0);
    // 18 are expected; 15 or fewer come by chance once in 20 of such tests.
    expect(held(0)).toBeGreaterThan(14);
    expect(held(0.3)).toBeGreaterThan(14);
  });

  it('one instrument, and one of which two readings are known, change nothing', () => {
    const one = read('pH', 7.2, () => [{ name: 'meter' }]);
    expect(alignedInstruments(one, errorOf)).toEqual({ observations: one, offsets: [] });
    const few = read('pH', 7.2, (day) => [day < 4 ? {} : { name: 'meter' }]);
    expect(alignedInstruments(few, errorOf)).toEqual({ observations: few, offsets: [] });
  });
});
