import { describe, expect, it } from 'vitest';
import { names } from '../../../../packages/core/src/library/names.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { readRange } from '../../../../packages/core/src/library/read-range.js';
import { tableRows } from '../../../../packages/core/src/library/table-rows.js';

const upkeep = (species: string): string => `fish.${species}.maintenance`;

describe('the ranges that a run reads', () => {
  it.each(names('fish'))('are those of the tables: what holds %s', (species) => {
    const row = tableRows.get(upkeep(species));
    expect(readRange(createParameters(), upkeep(species))).toEqual({ low: row?.low, high: row?.high });
    expect(row?.low).toBeLessThan(row?.high ?? 0);
  });

  it('are those of the user where one was given, the last of several, a point where none was', () => {
    const [id, value] = [upkeep('nile-tilapia'), 0.004];
    const row = {
      unit: '1/d',
      distribution: 'uniform',
      conditions: '-',
      source: 'log',
      page: '-',
      mark: 'U',
    };
    const given = { id, value: 0.003, low: 0.002, high: 0.005, row: row as never };
    expect(readRange(createParameters([given]), id)).toEqual({ low: 0.002, high: 0.005 });
    expect(readRange(createParameters([given, { id, value }]), id)).toEqual({ low: value, high: value });
  });

  it('are not had of other numbers', () => {
    expect(() => readRange(createParameters(), 'aob.growth')).toThrow('no run reads the range of aob.growth');
    expect(() => readRange(createParameters(), 'aob.grwoth')).toThrow('did you mean aob.growth?');
  });
});
