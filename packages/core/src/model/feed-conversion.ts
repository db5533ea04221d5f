// Reads numbers as: measured feed conversion
import { type Fault, InputError } from '../base/faults.js';
import type { Parameters } from '../library/parameters.js';
import { readRange } from '../library/read-range.js';
import type { Cohort, Scenario } from '../scenario/scenario.js';
import { fishAtStart } from './fish-at-start.js';
import type { Metabolism } from './scope.js';

/** From the worst user of feed of a species (0) to the best (1): more is retained, and less holds the fish. */
function metabolismAt({ species }: Cohort, parameters: Parameters, place: number): Metabolism {
  const worst = parameters.value('fish.retention-lowest');
  const best = parameters.value('fish.retention-highest');
  const upkeep = readRange(parameters, `fish.${species}.maintenance`);
  return {
    retention: worst + (best - worst) * place,
    maintenance: upkeep.high + (upkeep.low - upkeep.high) * place,
  };
}

/** Feed offered per gain, g per g, of a cohort as at its start, at a place between the worst and the best. */
function conversionAt(cohort: Cohort, parameters: Parameters, place: number): number {
  const { offered, gain } = fishAtStart(cohort, parameters, metabolismAt(cohort, parameters, place));
  return gain > 0 ? offered / gain : Infinity;
}

/** Halvings of the way between the worst and the best: to the last digit of a number. */
const HALVINGS = 60;

const digits = (value: number): string => String(Number(value.toPrecision(3)));

/** What a feed conversion must lie between, in words. */
function bounds(best: number, worst: number): string {
  if (!Number.isFinite(best)) return 'a larger ration: at this one they do not grow';
  return Number.isFinite(worst) ? `${digits(best)} to ${digits(worst)}` : `${digits(best)} or more`;
}

/** What fish make of energy where a measured feed conversion comes out, or why there is none. */
function metabolismFor(cohort: Cohort, measured: number, parameters: Parameters): Metabolism | Fault {
  const worst = conversionAt(cohort, parameters, 0);
  const best = conversionAt(cohort, parameters, 1);
  if (!(measured >= best && measured <= worst)) {
    return {
      key: `fish.${cohort.name}.feed-conversion`,
      got: String(measured),
      problem: 'fish of this size on this feed and ration cannot have this feed conversion',
      expected: bounds(best, worst),
    };
  }
  let [low, high] = [0, 1];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (conversionAt(cohort, parameters, middle) > measured) low = middle;
    else high = middle;
  }
  return metabolismAt(cohort, parameters, (low + high) / 2);
}

/**
 * What the fish of each cohort make of energy for which a measured feed conversion is given, by its name: as they stand at
 * the start, at their ration, in sound water of the temperature for which upkeep is stated.
 * @throws InputError with every conversion that no fish of that kind can have at its ration, and between which it must lie
 */
export function metabolismsOf(scenario: Scenario, parameters: Parameters): ReadonlyMap<string, Metabolism> {
  const found = new Map<string, Metabolism>();
  const faults: Fault[] = [];
  for (const cohort of scenario.fish) {
    if (cohort.feedConversion === undefined) continue;
    const metabolism = metabolismFor(cohort, cohort.feedConversion, parameters);
    if ('problem' in metabolism) faults.push(metabolism);
    else found.set(cohort.name, metabolism);
  }
  if (faults.length > 0) throw new InputError(faults);
  return found;
}
