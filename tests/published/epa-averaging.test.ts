import { describe, expect, it } from 'vitest';
import { judgedCourse } from '../support/ammonia-course.js';

// US EPA 2013 (EPA-822-R-13-001) [R]: the acute criterion is a one-hour mean; the chronic one a 30-day rolling mean,
// within which the highest four-day mean is not above 2.5 times the criterion.
const hour = 1 / 24;
const minute = hour / 60;

/** A level inside [from, until) and another outside. */
const block =
  (from: number, until: number, inside: number, outside: number) =>
  (day: number): number =>
    day >= from && day < until ? inside : outside;

describe('the acute criterion, a mean of one hour', () => {
  const peak = (minutes: number) =>
    judgedCourse(block(0.1, 0.1 + minutes * minute, 2, 0), { days: 0.3, every: minute, of: 'acute' })[
      'ammonia-acute-ratio'
    ];

  it('stands twice the criterion for 28 minutes', () => {
    expect(peak(28)).toMatchObject({ judged: true, resolved: true, passed: false });
  });

  it('does not stand it for 32', () => {
    expect(peak(32)).toMatchObject({ judged: true, passed: true });
  });

  it('is told at once where the level stays: one hour after it rose to 1.01 of it', () => {
    const limit = judgedCourse(block(0.1, 1, 1.01, 0.99), { days: 0.3, every: minute, of: 'acute' })[
      'ammonia-acute-ratio'
    ];
    expect(limit.first).toBeGreaterThan(0.1 + 29 * minute);
    expect(limit.first).toBeLessThan(0.1 + 32 * minute);
  });
});

describe('the chronic criterion, a rolling mean of 30 days', () => {
  const options = { days: 75, every: hour, of: 'chronic' } as const;
  const months = (level: number) => judgedCourse(block(20, 35, level, 0.5), options)['ammonia-chronic-ratio'];

  it('stands 15 days at 1.45 where the other 15 are at 0.5 (mean 0.975)', () => {
    expect(months(1.45)).toMatchObject({ judged: true, passed: false });
  });

  it('does not stand 15 days at 1.55 (mean 1.025), and tells the day by the window that ends there', () => {
    const limit = months(1.55);
    expect(limit.passed).toBe(true);
    // The mean passes 1 when x days at 1.55 and 30 - x at 0.5 make 30: x = 15 / 1.05.
    expect(limit.first).toBeCloseTo(20 + 15 / 1.05, 1);
    expect(limit.worst).toBeCloseTo(1.025, 2);
  });

  it('does not judge a course of 29 days', () => {
    const short = judgedCourse(() => 5, { days: 29, every: hour, of: 'chronic' });
    expect(short['ammonia-chronic-ratio'].judged).toBe(false);
    expect(short['ammonia-4-day-ratio'].passed).toBe(true);
  });
});

describe('the highest four-day mean, 2.5 times the chronic criterion', () => {
  const options = { days: 60, every: hour, of: 'chronic' } as const;
  const days = (length: number, level: number) => judgedCourse(block(40, 40 + length, level, 0.5), options);

  it.each([
    [4, 2.45, false],
    [4, 2.55, true],
    [3, 3.1, false], // (3 x 3.1 + 0.5) / 4 = 2.45
    [3, 3.24, true], // 2.555
  ])('%d days at %f times it: passed is %s', (length, level, passed) => {
    expect(days(length, level)['ammonia-4-day-ratio']).toMatchObject({ judged: true, passed });
  });

  it('is a rule of its own: the 30-day mean is kept there', () => {
    expect(days(4, 2.55)['ammonia-chronic-ratio'].passed).toBe(false);
  });
});
