// Reads numbers as: pace of a start-up
import { exp, log } from '../base/elementary.js';
import { createParameters } from '../library/parameters.js';
import type { Run } from '../run/run.js';
import type { Scenario } from '../scenario/scenario.js';
import { heldIn } from './window.js';

/**
 * How much slower nitrite oxidisers may come up in a start-up than their growth in the tables: up to three times, evenly by the
 * logarithm, in so many steps. What the tables have is growth at its best; acids, lack of phosphate or of carbon, and free
 * ammonia slow it, and no reading tells of that before nitrite falls. Judgment [P]; chosen among five such beliefs in view of
 * the three unkind twins of odd seeds that are start-ups.
 */
const slowness = { most: 3, steps: 5 } as const;

/** A film that grows so many times over in a run begins as a start-up. Judgment [P]. */
const startUp = 10;

const growth = 'nob.growth';

function slowed(scenario: Scenario, times: number): Scenario {
  const value = createParameters(scenario.overrides).value(growth) / times;
  return {
    ...scenario,
    overrides: [...scenario.overrides.filter(({ id }) => id !== growth), { id: growth, value }],
  };
}

/**
 * A start-up at each pace that its nitrite oxidisers may have, each as likely as the other beforehand: readings tell which it
 * is, once nitrite falls. Undefined where a run is no start-up, or even the slowest is long over.
 * @param runs of the scenario, one going on from the other
 * @param today d since its start
 */
export function pacesOf(
  runs: readonly Run[],
  scenario: Scenario,
  today: number,
): readonly Scenario[] | undefined {
  const held = runs.flatMap((run) =>
    run.samples.map(({ time }, i) => ({ time, nob: heldIn(run, 'nob', i) })),
  );
  const most = Math.max(...held.map(({ nob }) => nob));
  if (!(most > startUp * held[0].nob)) return undefined;
  const half = held.find(({ nob }) => nob >= most / 2)?.time ?? 0;
  if (today > slowness.most * half) return undefined;
  return Array.from({ length: slowness.steps }, (_, i) =>
    slowed(scenario, exp((log(slowness.most) * i) / (slowness.steps - 1))),
  );
}
