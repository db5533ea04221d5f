import { describe, expect, it } from 'vitest';
import { InputError } from '../../../../packages/core/src/base/faults.js';
import { allSeries, seriesNames, seriesOf } from '../../../../packages/core/src/result/series.js';
import { smallRun } from './small-run.js';

const run = smallRun();

describe('seriesNames', () => {
  it('names each series once, quantity@place', () => {
    const names = seriesNames(run);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual(
      expect.arrayContaining([
        'tan@tank',
        'pH@sump',
        'un-ionised-ammonia@tank',
        'carbon-dioxide@tank',
        'aob@sump',
        'fish-mean-mass@tilapia',
        'crop-mass@lettuce',
        'feed@system',
        'top-up@system',
      ]),
    );
    expect(names).not.toContain('aob@tank');
  });
});

describe('seriesOf', () => {
  it('turns amounts into concentrations, per volume or per surface', () => {
    expect(seriesOf(run, 'chloride@tank').values[0]).toBe(40);
    expect(seriesOf(run, 'aob@sump').values[0]).toBe(0.5);
    expect(seriesOf(run, 'aob@sump').unit).toBe('g COD/m2');
  });

  it('works out pH, un-ionised ammonia and carbon dioxide (Emerson 1975, Plummer & Busenberg 1982)', () => {
    // 2 meq/L of alkalinity and 2.1 mmol/L of carbon at 20 degC, TAN 1 mg/L: bicarbonate with 0.14 mmol/L of CO2.
    const pH = seriesOf(run, 'pH@tank').values[0];
    const share = 1 / (1 + 10 ** (9.4025 - pH));
    expect(pH).toBeCloseTo(6.382 + Math.log10(1.99 / 0.103), 1);
    expect(seriesOf(run, 'un-ionised-ammonia@tank').values[0]).toBeCloseTo(share, 5);
    expect(seriesOf(run, 'carbon-dioxide@tank').values[0]).toBeCloseTo(44.01 * 0.105, 0);
  });

  it('adds up the batches of a planting and gives mean fish mass', () => {
    expect(seriesOf(run, 'crop-mass@lettuce').values[0]).toBe(120);
    expect(seriesOf(run, 'fish-mean-mass@tilapia').values[0]).toBe(100);
  });

  it('gives top-up as the mean of the step that ends', () => {
    const topUp = seriesOf(run, 'top-up@system');
    expect(topUp.values[0]).toBe(0);
    expect(topUp.values[5]).toBeCloseTo(0.03, 12);
  });

  it('goes in straight lines between output times and nowhere outside them', () => {
    const feed = seriesOf(run, 'nitrate@tank');
    const mass = seriesOf(run, 'crop-nitrogen@lettuce');
    expect(feed.at(10)).toBe(feed.values[10]);
    expect(mass.at(2.25)).toBeCloseTo(0.75 * mass.values[2] + 0.25 * mass.values[3], 12);
    expect(() => mass.at(10.001)).toThrow(RangeError);
    expect(() => mass.at(Number.NaN)).toThrow(/no value at NaN d/);
  });

  it('names the nearest series when there is none of a name', () => {
    expect(() => seriesOf(run, 'nitrat@sump')).toThrow(InputError);
    expect(() => seriesOf(run, 'nitrat@sump')).toThrow(
      'no such series; got nitrat@sump; expected quantity@place, such as nitrate@sump; did you mean nitrate@sump?',
    );
  });

  it.each([
    ['fish@tilapia', 'fish-mass@tilapia'],
    ['free ammonia@tank', 'un-ionised-ammonia@tank'],
    ['water@sump', 'volume@sump'],
  ])('names the series of what the summary calls %s', (name, meant) => {
    expect(() => seriesOf(run, name)).toThrow(`did you mean ${meant}?`);
  });
});

describe('allSeries', () => {
  it('gives every series, each as long as the run', () => {
    const all = allSeries(run);
    expect(all.map(({ name }) => name)).toEqual(seriesNames(run));
    for (const { values } of all) expect(values).toHaveLength(run.samples.length);
  });
});
