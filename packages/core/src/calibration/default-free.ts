import type { Parameters } from '../library/parameters.js';
import { rangedOf } from '../library/ranged-row.js';
import type { Scenario } from '../scenario/scenario.js';

/**
 * Numbers that are free where none is named: by a screening of every number that a run reads (each moved by one deviate of
 * its prior, in a backyard, in five vessels and in two invented tanks, one cycled and one not), those that move readings of
 * ammonia, nitrite and nitrate most, one of each group that acts alike. Those that a log tells nothing of stay at their
 * prior, and the fit says so.
 */
const usual = [
  'biofilm.capacity',
  'biofilm.seed-aob',
  'biofilm.seed-nob',
  'aob.growth',
  'aob.k-tan',
  'aob.decay',
  'nob.growth',
  'nob.k-nitrite',
  'nob.decay',
  'denitrification.activity',
  'solids.settling-velocity',
  'solids.hydrolysis-suspended',
];

const ofFish = ['energy-digestibility'];

/** Water that leaves unseen, as shares of all water a day: none, a little, most that a keeper overlooks. Judgment [P]. */
const unseen = { middle: 0.002, most: 0.06 } as const;

/**
 * Discharge that no log tells of: spills, leaks, changes that were not written down, and nitrate lost as gas in corners, which
 * a log cannot tell from it. Only where something fills up what leaves.
 */
function unseenDischarge(scenario: Scenario): readonly string[] {
  const vessel = scenario.vessels.find(({ name }) => name === scenario.reservoir);
  if (vessel === undefined || scenario.topUp === undefined) return [];
  const litres = 1000 * scenario.start.reduce((sum, { volume }) => sum + volume, 0);
  const own = 1000 * vessel.exchange;
  const middle = own > 0 ? own : unseen.middle * litres;
  return [`vessels.${vessel.name}.exchange=0..${middle}..${own + unseen.most * litres} L/d`];
}

/** The numbers that are free where none is named: of those above, what this system reads, and unseen discharge. */
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
      const { low, high, distribution } = rangedOf(parameters.number(id));
      return distribution !== 'fixed' && low < high;
    }),
    ...unseenDischarge(scenario),
    ...(scenario.saved === undefined ? ['start.nitrate'] : []),
  ];
}
