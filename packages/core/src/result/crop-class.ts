import type { Planting } from '../scenario/scenario.js';

/** Crops grown for their fruit, in the sense of FAO 589 (feed per area differs from leafy crops). */
const fruiting = ['tomato', 'cucumber', 'eggplant', 'pepper', 'bean'];

/** Area planted with leafy and with fruiting crops, m2. */
export function areaByClass(plantings: readonly Planting[]): {
  readonly leafy: number;
  readonly fruiting: number;
} {
  const area = (wanted: boolean): number =>
    plantings
      .filter(({ crop }) => fruiting.includes(crop) === wanted)
      .reduce((total, planting) => total + planting.area, 0);
  return { leafy: area(false), fruiting: area(true) };
}
