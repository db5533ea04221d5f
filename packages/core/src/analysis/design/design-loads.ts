// Reads numbers as: daily loads of a design
import type { Model } from '../../model/model.js';
import { metabolismsOf } from '../../model/feed-conversion.js';
import { type FishAtStart, fishAtStart } from '../../model/fish-at-start.js';
import { offerOf } from '../../scenario/offer.js';
import type { DailyValue, Scenario } from '../../scenario/scenario.js';
import { valueOn } from '../../scenario/value-on.js';
import { sum } from '../../base/sum.js';

/** Mean over the days of the run. */
function mean(value: DailyValue, scenario: Scenario): number {
  const days = Array.from({ length: Math.max(1, Math.ceil(scenario.days)) }, (_, day) => day);
  return sum(days.map((day) => valueOn(value, scenario.startDate, day))) / days.length;
}

/** Feed offered to each cohort at the start, g d-1 (0 for one that is stocked later). */
export function feedAtStart(scenario: Scenario): readonly number[] {
  return scenario.fish.map(({ ration, number, mass }) => {
    const { fed, share } = offerOf(ration, number * mass, number);
    return fed + share * number * mass;
  });
}

/** TAN by the design rule, g N d-1: protein fed x `limit.tan-per-protein` (Timmons & Ebeling). */
export function tanByRule(model: Model): number {
  const { scenario, parameters } = model;
  const protein = feedAtStart(scenario).map((feed, index) => feed * scenario.fish[index].feed.protein);
  return sum(protein) * parameters.value('limit.tan-per-protein.value');
}

/** Cohorts that are there at the start, as they are in sound water. */
export function fishOfDesign({
  scenario,
  parameters,
}: Model): readonly (FishAtStart & { readonly cohort: string })[] {
  const metabolisms = metabolismsOf(scenario, parameters);
  return scenario.fish
    .filter(({ number }) => number > 0)
    .map((cohort) => ({
      ...fishAtStart(cohort, parameters, metabolisms.get(cohort.name)),
      cohort: cohort.name,
    }));
}

/**
 * TAN that fish give off by this model, g N d-1, as at the start in sound water: with the urea and other dissolved organic
 * nitrogen that becomes TAN.
 */
export const tanByModel = (model: Model): number => sum(fishOfDesign(model).map(({ excreted }) => excreted));

/**
 * Water lost a day, m3 d-1, mean over the run: evaporation, transpiration of full crops, leaks and
 * exchange.
 */
export function waterLost(model: Model): number {
  const { scenario, parameters } = model;
  const et0 = mean(scenario.et0, scenario);
  const open = parameters.value('water.open-coefficient');
  const covered = parameters.value('water.covered-coefficient');
  const vessels = scenario.vessels.map(
    (vessel) => et0 * (open * vessel.open + covered * vessel.covered) + vessel.leak + vessel.exchange,
  );
  const crops = scenario.plantings.map(
    ({ area, crop, start, cover = 1 }) =>
      (start === 'empty' ? 0 : area) * cover * et0 * parameters.value(`crop.${crop}.kc-full`),
  );
  return sum([...vessels, ...crops]);
}
