import type { Course } from '../run/run.js';
import type { SeriesSource } from './series-source.js';

/**
 * Series of every fish cohort: whole mass, number, mean mass (NaN while there are none) and feed
 * offered on the day.
 */
export function cohortSources(run: Course): readonly SeriesSource[] {
  const { scenario, layout } = run.model;
  return scenario.cohorts.flatMap(({ name }, index): SeriesSource[] => {
    const { mass, number } = layout.fish[index];
    return [
      { name: `fish-mass@${name}`, unit: 'g', value: ({ y }) => y[mass] },
      { name: `fish-number@${name}`, unit: 'fish', value: ({ y }) => y[number] },
      { name: `fish-mean-mass@${name}`, unit: 'g', value: ({ y }) => y[mass] / y[number] },
      { name: `feed@${name}`, unit: 'g/d', value: ({ fed }) => fed[index] },
    ];
  });
}
