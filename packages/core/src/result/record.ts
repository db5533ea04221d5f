import { contentHash } from '../base/content-hash.js';
import type { Run } from '../run/run.js';
import type { Scenario } from '../scenario/scenario.js';

/** Version of the library, the same as in its package.json. */
export const version = '0.1.0';

/** What must be the same for a run to give the same bytes. */
export interface Manifest {
  readonly version: string;
  /** SHA-256 of the resolved scenario. */
  readonly scenario: string;
  readonly integrator: string;
  /** Relative tolerance of the integration. */
  readonly tolerance: number;
  /** Seed of the random numbers; null where none are drawn. */
  readonly seed: number | null;
  /** Ids of the numbers of the tables that the user gave, sorted: in the scenario or in tables of the user's own. */
  readonly given: readonly string[];
}

/**
 * Hash of what a scenario says, 64 hexadecimal digits: the same for two files that say the same in
 * other units or on other lines, another for any other number. Saved fits and ensembles carry it, so the form that is
 * hashed has names of its own: what a timed action does stands under `deed`.
 */
export function scenarioHash(scenario: Scenario): string {
  const actions = scenario.actions.map(({ at, action }) => ({ at, deed: action }));
  return contentHash({ ...scenario, actions });
}

/** The manifest of a run. Holds no time of day and no place on a disk. */
export function manifestOf(run: Run): Manifest {
  return {
    version,
    scenario: scenarioHash(run.model.scenario),
    integrator: run.integrator,
    tolerance: run.tolerance,
    seed: run.model.scenario.rules.some((rule) =>
      [rule, ...(rule.also?.conditions ?? [])].some(({ kit }) => kit.error),
    )
      ? run.model.scenario.seed
      : null,
    given: [...new Set(run.model.scenario.overrides.map(({ id }) => id))].sort(),
  };
}
