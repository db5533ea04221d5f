// Reads numbers as: causes of death
import { causesOfDeath, hazardsOf, type CauseOfDeath } from '../processes/kernels/hazard.js';
import { anyConditions } from '../processes/process.js';
import { waterState } from './layout.js';
import type { Model } from './model.js';
import { scopeTo } from './scope.js';
import { openWaterChemistry, type Waters } from './water-chemistry.js';

/** One cause of death and how many die of it, as a share of those alive, d-1. */
export interface Hazard {
  readonly cause: CauseOfDeath;
  readonly perDay: number;
}

/** What the fish of a cohort die of in their water at a moment, the worst first; nothing of what water without a pH would do. */
export function hazardsIn(model: Model, cohort: number, waters: Waters): readonly Hazard[] {
  return openHazards(model, cohort)(waters);
}

/** As `hazardsIn`, for many moments: the numbers of the species and the last constants of the water are kept. */
export function openHazards(model: Model, cohort: number): (waters: Waters) => readonly Hazard[] {
  const { vessel } = model.layout.fish[cohort];
  const values = scopeTo(model.parameters, { species: model.scenario.fish[cohort].species });
  const chemistryOf = openWaterChemistry(model.parameters);
  return (waters) => {
    const per = (component: 'oxygen' | 'nitrite' | 'chloride'): number =>
      waters.y[waterState(vessel, component)] / waters.volume[vessel];
    const { ammonia, carbonDioxide } = chemistryOf(waters, vessel);
    const water = Float64Array.of(per('oxygen'), ammonia, per('nitrite'), per('chloride'), carbonDioxide);
    const at = { ...anyConditions, temperature: waters.temperature[vessel] };
    return hazardsOf(values, at, water)
      .map((perDay, index) => ({ cause: causesOfDeath[index], perDay }))
      .filter(({ perDay }) => Number.isFinite(perDay))
      .sort((a, b) => b.perDay - a.perDay);
  };
}

/** Of each cohort the row of the model whose extent is the number of fish that have died. */
export function rowsOfDeaths({ layout, rows }: Model): readonly number[] {
  return layout.fish.map(({ number }) =>
    rows.findIndex(({ entries }) =>
      entries.some(({ state, coefficient }) => state === number && coefficient < 0),
    ),
  );
}
