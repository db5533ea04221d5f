import { describe, expect, it } from 'vitest';
import { dateOrder } from '../../../../packages/core/src/log/dates.js';
import { readDate } from '../../../../packages/core/src/log/dates.js';

describe('a date as people write it', () => {
  it.each([
    ['2026-03-05', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['2026/3/5', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['2026-03-05T18:00', { year: 2026, month: 3, day: 5, hour: 0.75 }],
    ['2026-03-05 06:00:00', { year: 2026, month: 3, day: 5, hour: 0.25 }],
    ['5/3/2026', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['5.3.26', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['5/3', { month: 3, day: 5, hour: 0 }],
    ['5 Mar 2026', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['5-Mar-26', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['5th March', { month: 3, day: 5, hour: 0 }],
    ['Mar 5, 2026', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['Thu March 5', { month: 3, day: 5, hour: 0 }],
    ['5/3/2026 12:00 am', { year: 2026, month: 3, day: 5, hour: 0 }],
    ['5/3/2026 6:00 pm', { year: 2026, month: 3, day: 5, hour: 0.75 }],
    // 2026-03-12 is serial 46093 of a spreadsheet (1899-12-30 is 0).
    ['46093', { year: 2026, month: 3, day: 12, hour: 0 }],
    ['46093.5', { year: 2026, month: 3, day: 12, hour: 0.5 }],
    ['29/2/2024', { year: 2024, month: 2, day: 29, hour: 0 }],
  ])('%s', (text, expected) => {
    expect(readDate(text, 'day-month-year')).toEqual(expected);
  });

  it.each(['', '31/2/2026', '29/2/2026', '5 Foo 2026', 'yesterday', '2026-13-01', '5/3/2026 25:00', '12'])(
    '%j is none',
    (text) => {
      expect(readDate(text, 'day-month-year')).toBeUndefined();
    },
  );

  it('the month first where that is the order', () => {
    expect(readDate('3/5/2026', 'month-day-year')).toEqual({ year: 2026, month: 3, day: 5, hour: 0 });
  });
});

describe('which comes first, day or month', () => {
  it.each([
    [['1/3/26', '13/3/26'], { order: 'day-month-year', evidence: 'a date with a first figure above 12' }],
    [['3/1/26', '3/13/26'], { order: 'month-day-year', evidence: 'a date with a second figure above 12' }],
    [['3/1/26', '3/2/26', '3/5/26'], { order: 'month-day-year', evidence: 'the rows run on day by day' }],
    [['1/3/26', '2/3/26', '5/3/26'], { order: 'day-month-year', evidence: 'the rows run on day by day' }],
    [['2026-03-01', '4/4/26'], { order: 'day-month-year', evidence: 'no date is open to doubt' }],
    [['13/3/26', '3/14/26'], { problem: 'some dates have the day first, others the month' }],
    [['3/4/26'], { problem: 'the dates do not say whether day or month comes first' }],
  ])('%j', (texts, expected) => {
    expect(dateOrder(texts)).toEqual(expected);
  });

  it('a date that is in no calendar is no evidence', () => {
    expect(dateOrder(['31/2/26', '3/13/26'])).toMatchObject({ order: 'month-day-year' });
  });
});
