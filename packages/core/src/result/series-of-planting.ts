import type { Course } from '../run/run.js';
import { sum } from '../sum.js';
import type { SeriesSource } from './series-source.js';

/** Series of every planting: dry mass and nitrogen of all its batches together. */
export function plantingSources(run: Course): readonly SeriesSource[] {
  const { scenario, layout } = run.model;
  return scenario.plantings.flatMap(({ name }, index): SeriesSource[] => {
    const batches = layout.batches.filter(({ planting }) => planting === index);
    return [
      {
        name: `crop-mass@${name}`,
        unit: 'g dry',
        value: ({ y }) => sum(batches.map((batch) => y[batch.mass])),
      },
      {
        name: `crop-nitrogen@${name}`,
        unit: 'g N',
        value: ({ y }) => sum(batches.map((batch) => y[batch.nitrogen])),
      },
    ];
  });
}
