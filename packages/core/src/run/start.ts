// Reads numbers as: state at the start
import { waterComponents } from '../processes/components.js';
import { waterState } from '../model/layout.js';
import type { Model } from '../model/model.js';
import type { SavedState } from '../scenario/scenario.js';
import type { CropClock } from './crop-clock.js';
import { conditionsAt, type Day } from './forcing.js';

/** Fills y with the state at the start, and sets the ages of the crops. */
export function startState(
  model: Model,
  crops: CropClock,
  day: Day,
  volume: ArrayLike<number>,
): Float64Array {
  const { scenario, layout, parameters } = model;
  const y = new Float64Array(layout.states.length);
  const room = parameters.value('biofilm.capacity');
  const vesselOf = new Map(layout.vessels.map((name, vessel) => [name, vessel]));
  for (const start of scenario.start) {
    const vessel = vesselOf.get(start.vessel) ?? -1;
    for (const component of waterComponents) {
      y[waterState(vessel, component)] = start.water[component] * volume[vessel];
    }
    const surface = scenario.vessels[vessel].surface;
    if (layout.aob[vessel] >= 0) y[layout.aob[vessel]] = start.aob * room * surface;
    if (layout.nob[vessel] >= 0) y[layout.nob[vessel]] = start.nob * room * surface;
    if (layout.settled[vessel] >= 0) y[layout.settled[vessel]] = start.settled;
  }
  scenario.cohorts.forEach((cohort, index) => {
    y[layout.fish[index].number] = cohort.number;
    y[layout.fish[index].mass] = cohort.number * cohort.mass;
  });
  layout.batches.forEach((batch, index) => {
    const planting = scenario.plantings[batch.planting];
    if (planting.start === 'empty') return;
    const order = layout.batches.slice(0, index).filter((other) => other.planting === batch.planting).length;
    const apart = planting.start === 'staggered' ? (order * planting.harvest) / planting.batches : 0;
    const age = planting.age - apart + (planting.age < apart ? planting.harvest : 0);
    const stand = crops.stand(index, age, conditionsAt(model, batch.vessel, day, 0, 0, index));
    y[batch.mass] = stand.mass;
    y[batch.nitrogen] = stand.nitrogen;
    crops.planted[index] = -age;
  });
  if (scenario.saved !== undefined) goOn(model, scenario.saved, crops, y);
  return y;
}

/** Puts a saved state in place of what the scenario says; places that it does not know stay as they are. */
function goOn(model: Model, saved: SavedState, crops: CropClock, y: Float64Array): void {
  const amounts = new Map(saved.states.map((state) => [`${state.component}@${state.place}`, state.amount]));
  model.layout.states.forEach((state, index) => {
    y[index] = amounts.get(`${state.component}@${state.place}`) ?? y[index];
  });
  model.layout.batches.forEach((batch, index) => {
    if (amounts.has(`crop-mass@${batch.name}`))
      crops.planted[index] = -(saved.ages[batch.name] ?? Number.NaN);
  });
}
