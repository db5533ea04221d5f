import { sizeSpread, sweepGrid, sweepValues, valueInUnit, valueRange, type SizeMember } from '@leat/core';
import { describe, expect, it } from 'vitest';

const member = (value: number | undefined, other: Partial<SizeMember> = {}): SizeMember => ({
  kind: value === undefined ? 'holds-nowhere' : 'found',
  ...(value === undefined ? {} : { value }),
  binding: [0],
  broke: [],
  ...other,
});

describe('sizeSpread', () => {
  it('gives median and bands of sizes, and counts what is asked', () => {
    const outcomes = Array.from({ length: 21 }, (_, i) => member(i * 10, { survives: i <= 12 }));
    const spread = sizeSpread(outcomes, 'smallest', 2);
    expect(spread).toMatchObject({ median: 100, band50: [50, 150], band90: [10, 190], survive: 13 });
    expect(spread).toMatchObject({ members: 21, beyond: 0, atEnd: 0, binds: [21, 0] });
  });

  it('lets a size beyond the range be infinite, on the side that is not wanted', () => {
    const three = [member(1), member(2), member(undefined)];
    expect(sizeSpread(three, 'smallest', 1)).toMatchObject({ median: 2, beyond: 1, band90: [1.1, Infinity] });
    expect(sizeSpread(three, 'largest', 1)).toMatchObject({ median: 1, band90: [-Infinity, 1.9] });
  });

  it('says nothing of a chosen size that was not asked about', () => {
    expect(sizeSpread([member(1)], 'smallest', 1).survive).toBeUndefined();
  });
});

describe('valueRange', () => {
  const names = { from: '--from', to: '--to' };
  it('takes ends in two units of one quantity', () => {
    expect(valueRange('50 L', '0.4 m3', names)).toEqual({ from: 50, to: 400, unit: 'L' });
    expect(valueRange('10 degC', '68 degF', names)).toMatchObject({ from: 10, unit: 'degC' });
    expect(valueRange('1', '5', names)).toEqual({ from: 1, to: 5, unit: '' });
  });

  it.each([
    [['5', '5 L'], '--from', 'a number without a unit'],
    [['5 L', '6'], '--to', 'a number without a unit'],
    [['5 L', '5 kg'], '--to', 'not the same kind of quantity as one in L'],
    [['5 L', '5 L'], '--to', 'an empty range'],
    [['', '5 L'], '--from', 'not a quantity'],
  ] as const)('names the end that is wrong in %j', ([from, to], file, problem) => {
    expect(valueRange(from, to, names)).toEqual([expect.objectContaining({ file, problem })]);
  });

  it('refuses a unit where there is none', () => {
    expect(valueInUnit('5 L', '', '--chosen')).toMatchObject({
      problem: 'a unit where the other end has none',
    });
  });
});

describe('a grid', () => {
  it('has equal steps, and whole numbers each once', () => {
    expect(sweepValues({ from: 0, to: 0.3, whole: false }, 4)).toEqual([0, 0.1, 0.2, 0.3]);
    expect(sweepValues({ from: 1, to: 4, whole: true }, 9)).toEqual([1, 2, 3, 4]);
    expect(() => sweepValues({ from: 0, to: 1, whole: false }, 1)).toThrow(RangeError);
  });

  it('runs the last quantity fastest', () => {
    expect(sweepGrid([[1, 2], [5, 6]])).toEqual([[1, 5], [1, 6], [2, 5], [2, 6]]); // prettier-ignore
  });
});
