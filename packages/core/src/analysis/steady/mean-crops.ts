import type { Conditions } from '../../processes/process.js';
import type { CropClock, CropStand } from '../../run/crop-clock.js';
import type { Model } from '../../model/model.js';

/** Ages at which a crop's cycle is looked at. */
const AGES = 200;
const HALVINGS = 50;

/** Mean of a crop's coefficient over its cycle, from planting to harvest; 0 where nothing is planted. */
function meanCoefficient(model: Model, crops: CropClock, batch: number): number {
  const planted = crops.planted[batch];
  if (Number.isNaN(planted)) return 0;
  const { harvest } = model.scenario.plantings[model.layout.batches[batch].planting];
  let total = 0;
  for (let i = 0; i < AGES; i++) total += crops.coefficient(batch, planted + ((i + 0.5) / AGES) * harvest);
  return total / AGES;
}

/** A clock for a bed whose crops are cut and planted in turn: transpiration is the mean over the cycle of each. */
export function meanClock(model: Model, crops: CropClock): CropClock {
  const means = model.layout.batches.map((_, batch) => meanCoefficient(model, crops, batch));
  return { ...crops, coefficient: (batch) => means[batch] };
}

/**
 * The stand of a batch that takes up as much nitrogen a day as it does in the mean from planting to harvest, grown
 * undisturbed: on the way up, before its uptake is greatest.
 */
export function meanStand(model: Model, crops: CropClock, batch: number, conditions: Conditions): CropStand {
  const { harvest } = model.scenario.plantings[model.layout.batches[batch].planting];
  const nitrogen = (age: number): number => crops.stand(batch, age, conditions).nitrogen;
  const step = harvest / AGES;
  const uptake = (age: number): number => (nitrogen(age + step / 2) - nitrogen(age - step / 2)) / step;
  const mean = (nitrogen(harvest) - nitrogen(0)) / harvest;
  const ages = Array.from({ length: AGES }, (_, i) => (i + 0.5) * step);
  const top = ages.find((age) => uptake(age) >= mean) ?? harvest;
  let low = 0;
  let high = top;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (uptake(middle) < mean) low = middle;
    else high = middle;
  }
  return crops.stand(batch, high, conditions);
}
