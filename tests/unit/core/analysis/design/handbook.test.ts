import { handbookFilter } from '@leat/core';
import { describe, expect, it } from 'vitest';

const demand = { feed: 1000, ammoniaPerFeed: 0.03, arealRate: 0.5, specificSurface: 250 };

describe('handbookFilter', () => {
  it('divides what is made by what a surface removes', () => {
    const { load, surface, volume } = handbookFilter(demand);
    expect(load).toBeCloseTo(30, 12);
    expect(surface).toBeCloseTo(60, 12);
    expect(volume).toBeCloseTo(0.24, 12);
  });

  it('takes off what exchanged water carries away', () => {
    expect(handbookFilter({ ...demand, dilution: 10 }).surface).toBeCloseTo(40, 12);
    expect(handbookFilter({ ...demand, dilution: 30 })).toEqual({ load: 0, surface: 0, volume: 0 });
  });

  it.each([
    [{ feed: -1 }, 'feed is -1; expected 0 or more'],
    [{ ammoniaPerFeed: Number.NaN }, 'ammoniaPerFeed is NaN; expected 0 or more'],
    [{ arealRate: 0 }, 'arealRate is 0; expected more than 0'],
    [{ specificSurface: Infinity }, 'specificSurface is Infinity; expected more than 0'],
    [{ dilution: 31 }, 'dilution is 31 g/d; expected no more than the 30 g/d made'],
  ])('refuses %o', (wrong, message) => {
    expect(() => handbookFilter({ ...demand, ...wrong })).toThrow(new RangeError(message));
  });
});
