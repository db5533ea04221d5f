import { describe, expect, it } from 'vitest';
import { InputError, type Fault } from '../../../../packages/core/src/base/faults.js';
import { createParameters, drawParameters } from '../../../../packages/core/src/library/parameters.js';
import { rowOf } from '../../../../packages/core/src/library/rows-in-use.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import { tableRows } from '../../../../packages/core/src/library/table-rows.js';
import type { Override } from '../../../../packages/core/src/library/own-row.js';

function faultsOf(overrides: readonly Override[]): readonly Fault[] {
  try {
    createParameters(overrides);
  } catch (error) {
    if (error instanceof InputError) return error.faults;
    throw error;
  }
  return [];
}

describe('createParameters', () => {
  it('gives the number of the table and remembers what was read', () => {
    const parameters = createParameters();
    expect(parameters.value('molar.nitrogen')).toBe(14.007);
    expect(parameters.value('aob.growth')).toBe(tableRows.get('aob.growth')?.value);
    rowOf(parameters, 'nob.growth');
    parameters.number('nob.growth');
    expect(parameters.used()).toEqual(['aob.growth', 'molar.nitrogen']);
    expect(parameters.has('aob.growth')).toBe(true);
    expect(parameters.has('aob.grwth')).toBe(false);
  });

  it('suggests the nearest id for an unknown one, and does not count it as read', () => {
    const parameters = createParameters();
    const message = 'no number "aob.grwoth" in the tables; did you mean aob.growth?';
    expect(() => parameters.value('aob.grwoth')).toThrow(new RangeError(message));
    expect(() => rowOf(parameters, 'qqqqqqqqqqqqqqqq')).toThrow('no number "qqqqqqqqqqqqqqqq" in the tables');
    expect(parameters.used()).toEqual([]);
  });

  it('puts a given number in place, marked as given', () => {
    const parameters = createParameters([{ id: 'aob.growth', value: 0.7, low: 0.65, high: 0.8 }]);
    expect(parameters.value('aob.growth')).toBe(0.7);
    const row = rowOf(parameters, 'aob.growth');
    expect(row).toMatchObject({ low: 0.65, high: 0.8, source: 'scenario', mark: 'U', unit: '1/d' });
    expect(parameters.warnings).toEqual([]);
    expect(createParameters().value('aob.growth')).toBe(0.6);
  });

  it('warns of a number outside the published range', () => {
    expect(createParameters([{ id: 'aob.growth', value: 2 }]).warnings).toEqual([
      'aob.growth is 2 1/d, outside its published range 0.3 .. 0.9',
    ]);
  });

  it('reports every fault at once', () => {
    const faults = faultsOf([
      { id: 'aob.grwth', value: 1, where: 'parameters.aob.grwth' },
      { id: 'aob.growth', value: NaN },
      { id: 'aob.yield', value: -0.1 },
      { id: 'aob.k-tan', value: 0 },
      { id: 'solids.yield', value: 1.5 },
      { id: 'nob.growth', value: 1, low: 2, high: 3 },
      { id: 'nob.yield', value: 0.06 },
      { id: 'nob.yield', value: 0.07 },
      { id: 'log.outlier-spread', value: 0.5 },
      { id: 'log.outlier-share', value: 0.6 },
      { id: 'log.start-spread', value: 1 },
    ]);
    expect(faults.map((fault) => fault.problem)).toEqual([
      'no such number in the tables',
      'aob.growth is not a finite number',
      'aob.yield is below zero',
      'aob.k-tan is zero',
      'solids.yield is a share above 1',
      'range of nob.growth does not hold its value',
      'nob.yield is given twice',
      'log.outlier-spread is out of sense',
      'log.outlier-share is out of sense',
      'log.start-spread is out of sense',
    ]);
    expect(faults[0]).toMatchObject({ key: 'parameters.aob.grwth', nearest: 'aob.growth' });
  });

  it('lets an error of pH be above 1, which is no share', () => {
    expect(faultsOf([{ id: 'log.pH.error-absolute', value: 1.5 }])).toEqual([]);
    expect(rowOf(createParameters(), 'log.pH.error-absolute').unit).toBe('pH');
  });

  it('lets a curve constant and a temperature be negative', () => {
    const overrides = [
      { id: 'carbonate.k1.a', value: -356 },
      { id: 'crop.spinach.base-temperature', value: -1 },
    ];
    expect(faultsOf(overrides)).toEqual([]);
  });
});

describe('drawParameters', () => {
  it('stays in range over 200 seeds', () => {
    const outside = new Set<string>();
    const beyond = new Map<string, number>();
    for (let seed = 0; seed < 200; seed++) {
      const drawn = drawParameters(createRandom(seed));
      for (const base of tableRows.values()) {
        const value = drawn.number(base.id).value;
        const soft = base.distribution === 'normal' || base.distribution === 'lognormal';
        const wrong =
          base.distribution === 'fixed' ? value !== base.value : value < base.low || value > base.high;
        if (!soft && wrong) outside.add(base.id);
        if (soft && !(value > 0 && Number.isFinite(value))) outside.add(base.id);
        if (soft && wrong) beyond.set(base.id, (beyond.get(base.id) ?? 0) + 1);
      }
    }
    expect([...outside]).toEqual([]);
    // 10 % of 200 are expected outside low..high: 20, with a standard deviation of 4.2.
    const soft = [...tableRows.values()].filter((row) => row.distribution === 'lognormal');
    const mean = [...beyond.values()].reduce((sum, count) => sum + count, 0) / soft.length;
    expect(mean).toBeGreaterThan(17);
    expect(mean).toBeLessThan(23);
  });

  it('gives the same numbers for the same seed and others for another', () => {
    const draw = (seed: number): number => drawParameters(createRandom(seed)).value('aob.growth');
    expect(draw(7)).toBe(draw(7));
    expect(draw(7)).not.toBe(draw(8));
  });

  it('keeps a number given without a range, and draws one given with it', () => {
    const kept = drawParameters(createRandom(1), [{ id: 'aob.growth', value: 0.5 }]);
    expect(kept.value('aob.growth')).toBe(0.5);
    const range = [{ id: 'fish.nile-tilapia.limit-oxygen', value: 3, low: 2, high: 4 }];
    const value = drawParameters(createRandom(1), range).value('fish.nile-tilapia.limit-oxygen');
    expect(value).not.toBe(3);
    expect(value).toBeGreaterThan(2);
    expect(value).toBeLessThan(4);
  });
});
