import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { dayFrom, dayOfPeak } from '../../support/first-day.js';
import { courseOf, doneRun } from '../../support/run-of.js';
import { teachingSystem } from '../../support/teaching-system.js';

/** A start on surfaces that were never cycled, lightly loaded, beds bare. */
function start(temperature: number): {
  tan: number[];
  nitrite: number[];
  nitrate: number[];
  converted: number;
} {
  const seed = createParameters().value('biofilm.seed-aob');
  const run = doneRun(teachingSystem({ days: 160, temperature, seed, planted: false, load: 0.5 }));
  const [tan, nitrite, nitrate] = (['tan', 'nitrite', 'nitrate'] as const).map((component) =>
    courseOf(run, component, 'tank-1'),
  );
  // Converted: both below 1 mg/L for good, the warning level of FAO 589 s7.3.1 [R].
  const converted = Math.max(
    dayFrom(tan, (value) => value < 1),
    dayFrom(nitrite, (value) => value < 1),
  );
  return { tan, nitrite, nitrate, converted };
}

const warm = start(25);

describe('a start-up at 25 degC', () => {
  it('shows TAN, then nitrite, then nitrate (FAO 589 [M])', () => {
    expect(Math.max(...warm.tan)).toBeGreaterThan(1);
    expect(Math.max(...warm.nitrite)).toBeGreaterThan(1);
    expect(dayOfPeak(warm.nitrite)).toBeGreaterThan(dayOfPeak(warm.tan));
    const half = (warm.nitrate[warm.converted] + warm.nitrate[0]) / 2;
    expect(dayFrom(warm.nitrate, (value) => value > half)).toBeGreaterThan(dayOfPeak(warm.tan));
    expect(warm.nitrate[warm.converted]).toBeGreaterThan(warm.nitrate[0] + 3);
  });

  it('peaks in TAN about day 10-14 (8-18) and in nitrite about day 25-30 (18-35) (classic picture, 25-27 degC [M])', () => {
    expect(dayOfPeak(warm.tan)).toBeGreaterThanOrEqual(8);
    expect(dayOfPeak(warm.tan)).toBeLessThanOrEqual(18);
    expect(dayOfPeak(warm.nitrite)).toBeGreaterThanOrEqual(18);
    expect(dayOfPeak(warm.nitrite)).toBeLessThanOrEqual(35);
  });

  it('has converted fully after 25-45 days (FAO 589: 25-40 at 24-27 degC [M])', () => {
    expect(warm.converted).toBeGreaterThanOrEqual(25);
    expect(warm.converted).toBeLessThanOrEqual(45);
  });
});

describe('a start-up at 15 degC', () => {
  it('takes about twice as long: 1.5 to 3 times (classic picture [M])', () => {
    const ratio = start(15).converted / warm.converted;
    expect(ratio).toBeGreaterThan(1.5);
    expect(ratio).toBeLessThan(3);
  });
});
