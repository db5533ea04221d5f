import type { Parameters } from '../library/parameters.js';
import type { Scenario } from '../scenario/scenario.js';

/**
 * Numbers that are free where none is named: those that a log of ammonia, nitrite and nitrate bears upon. Chosen by
 * judgment [P]; those that a log tells nothing of stay at their prior, and the fit says so.
 */
const usual = [
  'biofilm.capacity',
  'biofilm.seed-aob',
  'biofilm.seed-nob',
  'biofilm.cycled-aob',
  'biofilm.cycled-nob',
  'aob.growth',
  'aob.k-tan',
  'nob.growth',
  'nob.k-nitrite',
  'denitrification.activity',
  'solids.hydrolysis-settled',
];

const ofFish = ['energy-retention'];

/** The numbers that are free where none is named: of those above, what this system reads. */
export function defaultFree(
  scenario: Scenario,
  parameters: Parameters,
  used: readonly string[],
): readonly string[] {
  const species = [...new Set(scenario.fish.map((cohort) => cohort.species))];
  const fish = species.flatMap((each) => ofFish.map((property) => `fish.${each}.${property}`));
  const read = new Set(used);
  return [
    ...[...usual, ...fish].filter((id) => {
      if (!read.has(id) || !parameters.has(id)) return false;
      const { low, high, distribution } = parameters.row(id);
      return distribution !== 'fixed' && low < high;
    }),
    ...(scenario.saved === undefined ? ['start.nitrate'] : []),
  ];
}
