import { createParameters } from '../../packages/core/src/library/parameters.js';
import { sum } from '../../packages/core/src/base/sum.js';
import { doneRun, extentOf, lastOf } from './run-of.js';
import { constant, planting, scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

const parameters = createParameters();
const area = 10;

/** Fruit of a crop picked in ample nitrate, kg fresh m-2, by the dry share of its fruit in the tables. */
export interface PickedFruit {
  readonly yield: number;
  /** Age at the first pick, d. */
  readonly first: number;
  /** g N per m2 and day in fruit and plants, mean over the season. */
  readonly uptake: number;
  /** Fruit, picked or not, of all dry mass that was made. */
  readonly share: number;
}

/** Grows a crop and picks it to an age, d, in the light of a day, mol m-2 d-1, at pH 5.8; salt is left out. */
export function pickedFruit(crop: string, days: number, light: number, temperature = 22): PickedFruit {
  const value = (property: string): number => parameters.value(`crop.${crop}.${property}`);
  const sump = vessel('sump', 100, { temperature: constant(temperature) });
  const start = [startOf(sump, { water: stillWater(100, 5.8, { nitrate: 1e4 }) })];
  const run = doneRun(
    scenarioOf([sump], {
      start,
      plantings: [planting('crop', 'sump', crop, area, { picks: value('pick-every') })],
      light: constant(light),
      overrides: [{ id: 'crop.salt-dilution', value: 1e9 }],
      days,
      every: days,
    }),
  );
  const picks = run.postings.filter(({ component }) => component === 'fruit-mass');
  const first = run.events.find(({ kind }) => kind === 'pick')?.time ?? Number.NaN;
  const made = (process: string): number => extentOf(run, lastOf(run), `${process}@crop`);
  return {
    yield: -sum(picks.map(({ amount }) => amount)) / value('fruit-dry-matter') / area / 1000,
    first,
    uptake: extentOf(run, lastOf(run), 'nitrate-uptake@crop') / area / days,
    share: made('fruit-growing') / (made('fruit-growing') + made('crop-growing')),
  };
}
