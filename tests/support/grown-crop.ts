import { createParameters } from '../../packages/core/src/library/parameters.js';
import { amountOf, doneRun, lastOf } from './run-of.js';
import { constant, planting, scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

const parameters = createParameters();
const area = 10;

/** A crop of some age that never lacked nitrate. */
export interface GrownCrop {
  /** Fresh, kg m-2, by the dry matter of the tables. */
  readonly yield: number;
  /** Fresh, g a plant, by the density that it stands at. */
  readonly head: number;
  /** g N per g dry. */
  readonly nitrogen: number;
  /** g N taken up, m-2 d-1, mean since planting. */
  readonly uptake: number;
}

/**
 * Grows a crop from seedlings in ample nitrate by the model, in the light of a day, mol m-2 d-1, at pH 5.8 as nutrient
 * solutions are held (what pH above it takes is another check).
 * @param plants to a m2, each a seedling as those of the tables; absent: the density of the tables
 */
export function grownCrop(
  crop: string,
  days: number,
  light: number,
  temperature = 22,
  plants?: number,
): GrownCrop {
  const value = (property: string): number => parameters.value(`crop.${crop}.${property}`);
  const dense = plants ?? value('density');
  const seedling = (value('seedling-mass') * dense) / value('density');
  const sump = vessel('sump', 100, { temperature: constant(temperature) });
  const start = [startOf(sump, { water: stillWater(100, 5.8, { nitrate: 1e4 }) })];
  const run = doneRun(
    scenarioOf([sump], {
      start,
      plantings: [{ ...planting('crop', 'sump', crop, area), seedling }],
      light: constant(light),
      // Ample nitrate is no salt here.
      overrides: [{ id: 'crop.salt-dilution', value: 1e9 }],
      days,
      every: days,
    }),
    { tolerance: 1e-7 },
  );
  const mass = amountOf(run, lastOf(run), 'crop-mass', 'crop') / area;
  const nitrogen = amountOf(run, lastOf(run), 'crop-nitrogen', 'crop') / area;
  const before = amountOf(run, run.samples[0], 'crop-nitrogen', 'crop') / area;
  const fresh = mass / value('dry-matter');
  return {
    yield: fresh / 1000,
    head: fresh / dense,
    nitrogen: nitrogen / mass,
    uptake: (nitrogen - before) / days,
  };
}
