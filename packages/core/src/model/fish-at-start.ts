// Reads numbers as: fish at the start
import type { Parameters } from '../library/parameters.js';
import {
  digestedNitrogen,
  growth,
  growthCoefficients,
  leanUpkeep,
  upkeepCoefficients,
  usualFat,
} from '../processes/kernels/fish-energy.js';
import { intake, STATED_MASS } from '../processes/kernels/intake.js';
import { leanDemand } from '../processes/kernels/lean-body.js';
import { anyConditions } from '../processes/process.js';
import type { Cohort } from '../scenario/scenario.js';
import { offerOf } from '../scenario/offer.js';
import { type Metabolism, scopeTo } from './scope.js';

/** What a cohort makes of its feed on its first day, in sound water at the temperature for which its upkeep is stated. */
export interface FishAtStart {
  /** g d-1. */
  readonly offered: number;
  /** Of that, g d-1. */
  readonly eaten: number;
  /** Wet, upkeep taken off, g d-1. */
  readonly gain: number;
  /** Nitrogen given off dissolved: TAN, and urea and the like which become TAN, g N d-1. */
  readonly excreted: number;
}

/** Water with so much oxygen, g m-3, that want of it shows nowhere. */
const AMPLE = 1e9;

/**
 * A cohort on its first day; one that is stocked later as if one fish were there.
 * @param metabolism what they make of energy, in place of what their species does
 */
export function fishAtStart(cohort: Cohort, parameters: Parameters, metabolism?: Metabolism): FishAtStart {
  const { species, feed, mass, ration } = cohort;
  const number = cohort.number > 0 ? cohort.number : 1;
  const values = scopeTo(parameters, { species, feed, ...(metabolism && { metabolism }) });
  const body = number * mass;
  const { fed, share } = offerOf(ration, body, number);
  const temperature = values.value('species.reference-temperature');
  const at = { ...anyConditions, temperature, fed, fedShare: share };
  const fat = body * usualFat(values, mass / STATED_MASS);
  const v = Float64Array.of(AMPLE, 0, 0, 0, 0, body, number, fat);
  const places = [0, 1, 2, 3, 4, 5, 6, 7];
  const k = growthCoefficients(values, at);
  const grown = growth(v, places, k);
  const lost = leanUpkeep.rate(v, [0, 5, 6, 7], upkeepCoefficients(values, at)) / leanDemand(values);
  const gain = grown - lost;
  const eaten = intake(v, places, k);
  const excreted = digestedNitrogen(values) * eaten - gain * values.value('species.body-nitrogen');
  return { offered: fed + share * body, eaten, gain, excreted };
}
