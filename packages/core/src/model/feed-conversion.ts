// Reads numbers as: measured feed conversion
import { type Fault, InputError } from '../base/faults.js';
import type { Parameters } from '../library/parameters.js';
import type { Cohort, Scenario } from '../scenario/scenario.js';
import { fishAtStart } from './fish-at-start.js';

/** Feed offered per gain, g per g, of a cohort as at its start, of fish that retain so much of digested energy. */
function conversionAt(cohort: Cohort, parameters: Parameters, retention: number): number {
  const { offered, gain } = fishAtStart(cohort, parameters, retention);
  return gain > 0 ? offered / gain : Infinity;
}

/** Halvings of a range of retention: to the last digit of a number. */
const HALVINGS = 60;

/** Retention at which a measured feed conversion comes out, or why there is none. */
function retentionFor(cohort: Cohort, measured: number, parameters: Parameters): number | Fault {
  let low = parameters.value('fish.retention-lowest');
  let high = parameters.value('fish.retention-highest');
  const worst = conversionAt(cohort, parameters, low);
  const best = conversionAt(cohort, parameters, high);
  if (!(measured >= best && measured <= worst)) {
    const digits = (value: number): string => String(Number(value.toPrecision(3)));
    const least = Number.isFinite(best) ? digits(best) : '';
    return {
      key: `fish.${cohort.name}.feed-conversion`,
      got: String(measured),
      problem: 'fish of this size on this feed and ration cannot have this feed conversion',
      expected:
        least === ''
          ? 'a larger ration: at this one they do not grow'
          : Number.isFinite(worst)
            ? `${least} to ${digits(worst)}`
            : `${least} or more`,
    };
  }
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (conversionAt(cohort, parameters, middle) > measured) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Share of digested energy that the fish of each cohort retain for which a measured feed conversion is given, by its name.
 * @throws InputError with every conversion that no fish of that kind can have at its ration, and between which it must lie
 */
export function retentionsOf(scenario: Scenario, parameters: Parameters): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const faults: Fault[] = [];
  for (const cohort of scenario.cohorts) {
    if (cohort.feedConversion === undefined) continue;
    const retention = retentionFor(cohort, cohort.feedConversion, parameters);
    if (typeof retention === 'number') found.set(cohort.name, retention);
    else faults.push(retention);
  }
  if (faults.length > 0) throw new InputError(faults);
  return found;
}
