import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../../packages/core/src/result/budget.js';
import { deathsOf } from '../../../packages/core/src/result/deaths.js';
import { fatesOf } from '../../../packages/core/src/result/fates.js';
import { seriesOf } from '../../../packages/core/src/result/series.js';
import { uneatenOf } from '../../../packages/core/src/result/uneaten.js';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario } from '../../support/shipped-scenario.js';
import { timedCourse } from '../../support/timed-course.js';

describe('a power cut of six hours', () => {
  const run = doneRun(shippedScenario('power-cut'));

  it('takes the oxygen of a fish tank below 1 mg/L in three to four hours, because fish go on breathing without air', () => {
    const oxygen = timedCourse(run, 'oxygen', 'tank-2');
    expect(oxygen.at(30)).toBeGreaterThan(6);
    expect(oxygen.at(30 + 3 / 24)).toBeLessThan(1);
    const other = timedCourse(run, 'oxygen', 'tank-1');
    expect(other.at(30 + 3 / 24)).toBeGreaterThan(1);
    expect(other.at(30 + 4 / 24)).toBeLessThan(1);
    expect(oxygen.at(30 + 8 / 24)).toBeGreaterThan(6);
  });

  it('multiplies TAN in the tank three to six times, because no water goes to the filter, and is over in a day', () => {
    const tan = timedCourse(run, 'tan', 'tank-2');
    const ratio = tan.at(30.25) / tan.at(30);
    expect(ratio).toBeGreaterThan(3);
    expect(ratio).toBeLessThan(6);
    expect(tan.at(31.25)).toBeLessThan(1.1 * tan.at(30));
  });

  it('kills eight in ten juveniles and two thirds of the growers before the power is back, of want of oxygen, and none after', () => {
    for (const { cohort, days } of deathsOf(run)) {
      const left = seriesOf(run, `fish-number@${cohort}`);
      const lives = { growers: 0.34, juveniles: 0.18 }[cohort] ?? Number.NaN;
      expect(Math.abs(left.at(30.25) / left.at(30) - lives)).toBeLessThan(0.01);
      expect(left.at(30.125) / left.at(30)).toBeGreaterThan(0.98);
      expect(left.at(32) / left.at(30.25)).toBeGreaterThan(0.99);
      expect(days.find(({ day }) => day === 30)?.cause).toBe('oxygen');
    }
  });
});

describe('a filter washed too hard', () => {
  const run = doneRun(shippedScenario('scrubbed-filter'));

  it('peaks in TAN at 2.2 to 2.5 times and in nitrite at 3.5 to 4 times within a week, because nine tenths of the biofilm are gone', () => {
    for (const [component, least, most] of [
      ['tan', 2.2, 2.5],
      ['nitrite', 3.5, 4],
    ] as const) {
      const course = timedCourse(run, component);
      const peak = course.peak(30);
      expect(peak.value / course.at(30)).toBeGreaterThan(least);
      expect(peak.value / course.at(30)).toBeLessThan(most);
      expect(peak.time).toBeLessThan(37);
    }
  });

  it('is within a quarter of that of an unwashed one again in 2 to 3 weeks, because the rafts keep theirs and the rest grows', () => {
    const whole = doneRun(shippedScenario('glasshouse', 64));
    for (const component of ['tan', 'nitrite'] as const) {
      const over = (day: number): number =>
        timedCourse(run, component).at(day) / timedCourse(whole, component).at(day);
      expect(over(37)).toBeGreaterThan(1.5);
      expect(over(44)).toBeGreaterThan(1.25);
      expect(over(54)).toBeLessThan(1.25);
    }
  });
});

describe('a month at 18 instead of 26 degC', () => {
  const cold = doneRun(shippedScenario('cold-month'));
  const warm = doneRun(shippedScenario('glasshouse'));
  const day = 120;

  it('raises TAN by a third to double and nitrite by half, because fish leave feed that rots, and nitrifiers slow down', () => {
    const ratio = (component: 'tan' | 'nitrite'): number =>
      timedCourse(cold, component).at(day) / timedCourse(warm, component).at(day);
    expect(ratio('tan')).toBeGreaterThan(1.33);
    expect(ratio('tan')).toBeLessThan(2);
    expect(ratio('nitrite')).toBeGreaterThan(1.5);
    expect(ratio('nitrite')).toBeLessThan(2);
  });

  it('costs 3 to 20 % of the harvest of half a year, because crops grow by degree-days', () => {
    const harvest = ({ postings }: typeof cold): number =>
      postings
        .filter(({ account, component }) => account === 'harvested crop' && component === 'crop-mass')
        .reduce((sum, { amount }) => sum - amount, 0);
    const share = harvest(cold) / harvest(warm);
    expect(share).toBeLessThan(0.97);
    expect(share).toBeGreaterThan(0.8);
  });

  it('leaves less nitrate, because feed that rots breathes it: what fish and crops do not keep goes off as nitrogen gas', () => {
    const gas = (run: typeof cold): number =>
      fatesOf(budgetOf(run, 'nitrogen', 'system')).to.find(({ name }) => name === 'nitrogen gas')?.amount ??
      0;
    expect(timedCourse(cold, 'nitrate').at(day)).toBeLessThan(timedCourse(warm, 'nitrate').at(day));
    expect(gas(cold) - gas(warm)).toBeGreaterThan(100);
  });

  it('brings free ammonia to two thirds of what hurts fish between the third week of cold and the first days of warmth, because TAN doubles at a pH over 8', () => {
    const free = [...seriesOf(cold, 'un-ionised-ammonia@tank-1').values];
    const worst = free.indexOf(Math.max(...free));
    expect(free[worst]).toBeGreaterThan(0.028);
    expect(free[worst]).toBeLessThan(0.036);
    expect(worst).toBeGreaterThan(106);
    expect(worst).toBeLessThan(128);
    expect(Math.max(...seriesOf(warm, 'un-ionised-ammonia@tank-1').values)).toBeLessThan(0.01);
  });

  it('leaves eight tenths of the feed of that month, because at 18 degC these fish hardly eat', () => {
    const left = (run: typeof cold): readonly number[] => {
      const samples = run.samples.filter(({ time }) => time >= 92 && time <= 123);
      return uneatenOf({ ...run, samples }).map(({ share }) => share);
    };
    expect(left(cold)).toHaveLength(2);
    for (const share of left(cold)) {
      expect(share).toBeGreaterThan(0.75);
      expect(share).toBeLessThan(0.87);
    }
    for (const share of left(warm)) expect(share).toBeLessThan(0.06);
  });
});
