import type { Bands } from '../../packages/cli/src/report/bands.js';
import type { ToldRun } from '../../packages/cli/src/report/told-run.js';

const drawn = ['tan', 'nitrite', 'nitrate', 'pH'];

/** Bands about a run, made up for the test: so many percent to both sides of each value. */
export function banded({ account }: ToldRun): Bands {
  const series = account.series.filter(({ name }) => drawn.some((each) => name === `${each}@tank-1`));
  const scaled = (values: ArrayLike<number>, factor: number): readonly number[] =>
    Array.from(values, (value) => value * factor);
  const chance = {
    id: 'fish.nile-tilapia.limit-nitrite',
    quantity: 'nitrite',
    place: 'tank-1',
    direction: 'above',
    value: 1,
    unit: 'mg N/L',
    whom: 'nile-tilapia',
  } as const;
  return {
    members: 200,
    seed: 7,
    time: account.time,
    series: series.map(({ name, unit, values }) => ({
      name,
      unit,
      median: scaled(values, 1),
      half: { low: scaled(values, 0.93), high: scaled(values, 1.07) },
      ninety: { low: scaled(values, 0.85), high: scaled(values, 1.18) },
    })),
    limits: [
      { ...chance, probability: 0.125 },
      { ...chance, place: 'tank-2', probability: 0 },
    ],
  };
}
