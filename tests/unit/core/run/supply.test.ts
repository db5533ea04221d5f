import { describe, expect, it } from 'vitest';
import type { TimedAction, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import type { Run } from '../../../../packages/core/src/run/run.js';
import { seriesOf } from '../../../../packages/core/src/result/series.js';
import { concentration, doneRun, lastOf } from '../../../support/run-of.js';
import { constant, planting, scenarioOf, sourceWater, vessel } from '../../../support/scenario-builder.js';

const none = { kind: 'mains', water: 'mains', dailyCap: Infinity } as const;

/** A sump of 10 m3 that loses 0.17 m3 a day. */
function sumpWith(other: Partial<Scenario>): Run {
  return doneRun(scenarioOf([vessel('sump', 10, { exchange: 0.17 })], { days: 16, every: 0.25, ...other }));
}

const brought = (run: Run): number[] => {
  const top = run.model.streams.findIndex(({ kind }) => kind === 'top-up');
  return run.samples.map(({ carried }) => carried[top]);
};

describe('a weekly cap', () => {
  // Exact: 0.17 a day until 0.5 of the week is spent.
  it('is spent as it is needed, and whole again on days 7 and 14', () => {
    const source = { ...none, weeklyCap: 0.5 };
    const run = sumpWith({ topUp: { level: 10, rate: 0.17, sources: [source] } });
    const exact = (time: number): number => {
      const week = Math.floor(time / 7);
      return week * 0.5 + Math.min(0.5, 0.17 * (time - 7 * week));
    };
    brought(run).forEach((volume, i) => {
      expect(volume).toBeCloseTo(exact(run.samples[i].time), 11);
    });
  });

  it('holds beside a daily one: the nearer of both ends the supply', () => {
    const source = { ...none, dailyCap: 0.1, weeklyCap: 0.45 };
    const run = sumpWith({ topUp: { level: 10, rate: 50, sources: [source] }, every: 1 });
    brought(run).forEach((volume, day) => {
      expect(volume).toBeCloseTo(Math.floor(day / 7) * 0.45 + Math.min(0.45, 0.1 * (day % 7)), 11);
    });
  });

  it('set by an action takes the place of the daily cap', () => {
    const source = { ...none, dailyCap: 0.1 };
    const actions: TimedAction[] = [{ at: 7, action: { kind: 'top-up', weeklyCap: 0.3 } }];
    const run = sumpWith({ topUp: { level: 10, rate: 50, sources: [source] }, actions, days: 14 });
    expect(brought(run).at(-1)).toBeCloseTo(0.7 + 0.3, 11);
    expect(run.events.find(({ kind }) => kind === 'top-up')?.text).toBe('cap 300 L/week');
  });
});

describe('carted water', () => {
  const cart = (volume: number, into: 'rain-tank' | 'reservoir'): TimedAction => ({
    at: 2,
    action: { kind: 'cart-water', volume, into, water: 'tanker' },
  });
  const waters = [sourceWater('mains'), sourceWater('tanker', { chloride: 5 })];

  it('into the reservoir raises it and mixes; what passes its overflow is lost', () => {
    const run = sumpWith({ waters, actions: [cart(0.3, 'reservoir')], days: 3, every: 1 });
    expect(lastOf(run).volume[0]).toBeCloseTo(10 - 3 * 0.17 + 0.3, 11);
    const mixed = (50 * (10 - 2 * 0.17) + 5 * 0.3) / (10 - 2 * 0.17 + 0.3);
    expect(concentration(run, lastOf(run), 'chloride', 'sump')).toBeCloseTo(mixed, 9);
    const over = sumpWith({ waters, actions: [cart(1, 'reservoir')], days: 3, every: 1 });
    expect(lastOf(over).volume[0]).toBeCloseTo(10 - 0.17, 11);
    expect(over.events.find(({ kind }) => kind === 'cart-water')?.text).toBe(
      '1000 L of tanker, 660 L ran over',
    );
    const water = over.postings.filter(({ component }) => component === 'water');
    expect(water.map(({ account }) => account)).toEqual(['source water']);
    expect(water[0].amount).toBeCloseTo(0.34, 11);
  });

  it('into the rain tank fills it; what runs over, and rain on a full tank, is told as spilled', () => {
    const rainTank = { capacity: 1, volume: 0.5, roof: 10, rain: constant(0.01), water: 'tanker' };
    const run = sumpWith({ waters, rainTank, actions: [cart(0.4, 'rain-tank')], days: 4 });
    // Rain of 0.1 a day: 0.7 on day 2, 1.1 with the tanker's 0.4.
    const { values } = seriesOf(run, 'rain-tank-spilled@system');
    run.samples.forEach(({ time, rain }, i) => {
      expect(rain).toBeCloseTo(time <= 2 ? 0.5 + 0.1 * time : 1, 11);
      expect(values[i]).toBeCloseTo(time <= 2 ? 0 : 0.1 + 0.1 * (time - 2), 11);
    });
  });
});

describe('the cover of a planting', () => {
  it('takes its share of the transpiration', () => {
    const bed = vessel('bed', 10);
    const lost = (cover?: number): number => {
      const lettuce = planting(
        'lettuce',
        'bed',
        'lettuce-butterhead',
        4,
        cover === undefined ? {} : { cover },
      );
      const run = doneRun(
        scenarioOf([bed], { plantings: [{ ...lettuce, harvest: 8 }], et0: constant(0.005), days: 10 }),
      );
      return 10 - lastOf(run).volume[0];
    };
    expect(lost()).toBeGreaterThan(0.1);
    expect(lost(0.6)).toBeCloseTo(0.6 * lost(), 12);
    expect(lost(0)).toBe(0);
  });
});
