// Reads numbers as: state at the start
import { waterComponents } from '../processes/components.js';
import { flankGrownAt } from '../processes/kernels/acclimation.js';
import { waterState } from '../model/layout.js';
import { fatOf } from './stock.js';
import type { Model } from '../model/model.js';
import { INSTANT } from '../base/instant.js';
import { openVesselIons, waterChemistry, type Waters } from '../model/water-chemistry.js';
import type { StartVessel } from '../scenario/scenario.js';
import { quantityOf } from '../scenario/supplies.js';
import { openLook } from './close-look.js';
import { startControls } from './controls.js';
import { type CropClock, openCropClock } from './crop-clock.js';
import { conditionsAt, type Day, openDay } from './forcing.js';
import { openHydraulics, startWater } from './hydraulics.js';
import { openLedger } from './ledger.js';
import { openOperation } from './operation.js';
import type { RunParts, RunRecord, RunState } from './run-state.js';
import { goOn, savedMorning } from './saved.js';

/**
 * The state of a run at its start, but for what the numerical methods remember.
 * @param weatherOf the day whose weather it is
 */
export function startState(model: Model, weatherOf?: number): Omit<RunState, 'memory'> {
  const { saved } = model.scenario;
  const time = saved?.time ?? 0;
  const water = startWater(model);
  const crops = openCropClock(model);
  const day = openDay(model, weatherOf ?? Math.floor(time + INSTANT));
  const state = {
    time,
    y: startAmounts(model, crops, day, water.volume, time),
    x: new Float64Array(model.rows.length),
    water,
    operation: openOperation(model),
    planted: crops.planted,
    day,
    controls: startControls(model.scenario),
    spent: (model.scenario.dosers ?? []).map(() => false),
    nextAction: 0,
    nextOutput: 0,
    marks: 0,
    look: openLook(),
  };
  if (saved !== undefined) goOn(model, saved, state);
  if (savedMorning(model) === undefined) findIons(model, state);
  return state;
}

/** Ions of the water as the run begins, for who reads it before the first morning: rules, and the program that runs it. */
function findIons({ parameters, layout }: Model, { y, water, day }: Omit<RunState, 'memory'>): void {
  const ionsOf = openVesselIons(parameters);
  layout.vessels.forEach((_, vessel) => (day.ionic[vessel] = ionsOf(y, water.volume[vessel], vessel)));
}

/** Opens the parts of a run over its state, with nothing left behind yet. */
export function openParts(model: Model, state: RunState): RunParts {
  const record: RunRecord = { samples: [], between: [], postings: [], events: [], doses: [] };
  return {
    model,
    state,
    record,
    ledger: openLedger(model, state.y, record),
    crops: openCropClock(model, state.planted),
    hydraulics: openHydraulics(model, state.water),
  };
}

/** The states at the start; sets the ages of the crops. */
function startAmounts(
  model: Model,
  crops: CropClock,
  day: Pick<Day, 'temperature' | 'air' | 'light' | 'bearing'>,
  volume: ArrayLike<number>,
  time: number,
): Float64Array {
  const { scenario, layout, parameters } = model;
  const y = new Float64Array(layout.states.length);
  const room = parameters.value('biofilm.capacity');
  const vesselOf = new Map(layout.vessels.map((name, vessel) => [name, vessel]));
  const ionsOf = openVesselIons(parameters);
  const ionic = new Float64Array(layout.vessels.length);
  for (const start of scenario.start) {
    const vessel = vesselOf.get(start.vessel) ?? -1;
    for (const component of waterComponents) {
      y[waterState(vessel, component)] = (start.water[quantityOf(component)] ?? 0) * volume[vessel];
    }
    ionic[vessel] = ionsOf(y, volume[vessel], vessel);
    const surface = scenario.vessels[vessel].surface;
    if (layout.aob[vessel] >= 0) y[layout.aob[vessel]] = start.aob * room * surface;
    if (layout.nob[vessel] >= 0) y[layout.nob[vessel]] = start.nob * room * surface;
    if (layout.heterotrophs[vessel] >= 0)
      y[layout.heterotrophs[vessel]] = (start.heterotrophs ?? 0) * surface;
    if (layout.acclimation[vessel] >= 0)
      y[layout.acclimation[vessel]] = startFlank(
        model,
        start,
        { y, volume, temperature: day.temperature, ionic },
        vessel,
      );
    if (layout.awake[vessel] >= 0) y[layout.awake[vessel]] = 1;
    if (layout.settled[vessel] >= 0) {
      y[layout.settled[vessel]] = start.settled;
      y[layout.settledRefractory[vessel]] = start.settledRefractory ?? 0;
    }
    const { lime } = scenario.vessels[vessel];
    if (lime !== undefined)
      y[layout.calcite[vessel]] = lime.mass / parameters.value('molar.calcium-carbonate');
  }
  for (const { component, states } of layout.own) {
    const { start = 0, place } = component;
    states.forEach((state, vessel) => {
      if (state < 0) return;
      const there = typeof start === 'number' ? start : (start[layout.vessels[vessel]] ?? 0);
      y[state] = place === 'water' ? there * volume[vessel] : there;
    });
  }
  scenario.fish.forEach((cohort, index) => {
    y[layout.fish[index].number] = cohort.number;
    y[layout.fish[index].mass] = cohort.number * cohort.mass;
    y[layout.fish[index].fat] = fatOf(model, index, cohort.number, cohort.mass);
  });
  layout.batches.forEach((batch, index) => {
    const planting = scenario.plantings[batch.planting];
    if (planting.start === 'empty') return;
    const order = layout.batches.slice(0, index).filter((other) => other.planting === batch.planting).length;
    const apart = planting.start === 'staggered' ? (order * planting.harvest) / planting.batches : 0;
    const age = planting.age - apart + (planting.age < apart ? planting.harvest : 0);
    const waters = { y, volume, temperature: day.temperature, ionic };
    const { pH } = waterChemistry(parameters, waters, batch.vessel);
    const conditions = conditionsAt(model, batch.vessel, { ...day, ionic }, 0, 0, index);
    const stand = crops.stand(index, age, conditions, pH);
    y[batch.mass] = stand.mass;
    y[batch.nitrogen] = stand.nitrogen;
    if (batch.fruit >= 0) y[batch.fruit] = stand.fruit;
    crops.planted[index] = time - age;
  });
  return y;
}

/** Lower flank of the bell of a film at the start, pH; see `StartVessel.grownAt`. */
function startFlank({ parameters }: Model, { grownAt }: StartVessel, waters: Waters, vessel: number): number {
  if (grownAt === 'fresh') return parameters.value('nitrifier.flank-fresh');
  return flankGrownAt(parameters, grownAt ?? waterChemistry(parameters, waters, vessel).pH);
}
