import { readScenario, seriesOf } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import type { StartVessel } from '../../../packages/core/src/scenario/scenario.js';
import { relativeDeviation } from '../../support/deviation.js';
import { flankAfter, restingRate } from '../../support/held-film.js';
import { matureRate } from '../../support/mature-surface.js';
import { doneRun } from '../../support/run-of.js';
import { scenarioOf, startOf, stillWater, vessel } from '../../support/scenario-builder.js';

const parameters = createParameters();
const fresh = parameters.value('nitrifier.flank-fresh');
const time = parameters.value('nitrifier.acclimation-time');

/** Flank of a film without cells in still water of a pH, day by day. */
function course(pH: number, start: Partial<StartVessel>): { flank: Float64Array; days: readonly number[] } {
  const cell = vessel('cell', 1, { surface: 10 });
  const water = stillWater(2, pH);
  const run = doneRun(scenarioOf([cell], { days: 60, start: [startOf(cell, { water, ...start })] }), {
    tolerance: 1e-9,
  });
  return { flank: seriesOf(run, 'flank@cell').values, days: run.samples.map((sample) => sample.time) };
}

describe('the flank of a film', () => {
  it('of a fresh film goes to that of its water in a time constant (exact solution)', () => {
    const { flank, days } = course(6, { grownAt: 'fresh' });
    const end = flankAfter(6);
    const exact = days.map((day) => end + (fresh - end) * Math.exp(-day / time));
    expect(relativeDeviation([...flank], exact)).toBeLessThan(1e-7);
  });

  it('lies a pH below the water, but not above that of a fresh film nor below the lowest', () => {
    const distance = parameters.value('nitrifier.flank-distance');
    for (const pH of [4.8, 5, 6, 7]) expect(flankAfter(pH)).toBeCloseTo(pH - distance, 2);
    for (const pH of [8, 9, 10]) expect(flankAfter(pH)).toBeCloseTo(fresh, 2);
    for (const pH of [2, 3, 3.9])
      expect(flankAfter(pH)).toBeCloseTo(parameters.value('nitrifier.flank-lowest'), 2);
  });

  it('starts at that of the water of the start, of another said to have been grown in, or fresh', () => {
    expect(course(6.4, {}).flank[0]).toBeCloseTo(flankAfter(6.4), 9);
    expect(course(6.4, { grownAt: 7 }).flank[0]).toBe(flankAfter(7));
    expect(course(6.4, { grownAt: 'fresh' }).flank[0]).toBe(fresh);
  });
});

describe('a film at rest in held water', () => {
  it('oxidises what the whole model does, led ammonia for 300 days, within 1 %', () => {
    // 2 meq/L at pH 7.5 are 2.14 mmol/L of carbon; nitrite on its way through inhibits next to nothing.
    for (const temperature of [15, 25]) {
      const whole = matureRate({ temperature, tan: 2 });
      const rest = restingRate({ pH: 7.5, temperature, carbon: 2.14 });
      expect(Math.abs(rest / whole - 1)).toBeLessThan(0.01);
    }
  });
});

describe('`grown-at` in a system file', () => {
  const text = (start: string): string => `
title: Films
days: 1
reservoir: sump
climate: { water-temperature: 20 degC, et0: 0 mm/d }
waters: { tap: { nitrate: 0 mg N/L, chloride: 10 mg/L, alkalinity: 2 meq/L, pH: 7 } }
vessels:
  filter: { kind: biofilter, volume: 1 m3, area: 1 m2, media: { type: volcanic-tuff, volume: 100 L } }
  sump: { kind: sump, volume: 1 m3, area: 1 m2, surface: 1 m2 }
pumps: { main: { inlet: 100 L, restart: 200 L } }
flows:
  - { from: sump, to: filter, pump: main, rate: 1 m3/h }
  - { from: filter, to: sump }
start: ${start}
`;
  const grownIn = (start: string): unknown[] =>
    readScenario(text(start), { file: 'films.yaml' }).start.map(({ grownAt }) => grownAt);

  it('is of all vessels, or of one; an uncycled film has grown nowhere', () => {
    expect(grownIn('{ biofilm: cycled, water: { like: tap } }')).toEqual([undefined, undefined]);
    expect(grownIn('{ biofilm: cycled, grown-at: 6, water: { like: tap } }')).toEqual([6, 6]);
    expect(
      grownIn(
        '{ biofilm: cycled, grown-at: 6, water: { like: tap }, vessels: { filter: { grown-at: 7.5 }, sump: { biofilm: uncycled } } }',
      ),
    ).toEqual([7.5, 'fresh']);
  });

  it('of an uncycled film is a fault, at its place', () => {
    const problem = 'an uncycled film has grown in no water';
    const start =
      '{ biofilm: uncycled, grown-at: 6, water: { like: tap }, vessels: { sump: { grown-at: 7 } } }';
    expect(() => grownIn(start)).toThrow(
      new RegExp(`start.grown-at: ${problem}[^]*start.vessels.sump.grown-at: ${problem}`),
    );
  });
});
