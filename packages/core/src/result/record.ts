import { sha256 } from '../base/hashes.js';
import { type Component, unitOf } from '../processes/components.js';
import type { Run } from '../run/run.js';
import type { SavedState, Scenario } from '../scenario/scenario.js';

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

/** JSON with sorted keys, numbers that JSON lacks as words, and no `where` (it says on which line a thing stood). */
function canonical(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) return JSON.stringify(String(value));
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  const entries = Object.entries(value)
    .filter(([key, held]) => held !== undefined && key !== 'where')
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${canonical(held)}`).join(',')}}`;
}

/** Hash of plain values, 64 hexadecimal digits: the same for the same values whatever the order of keys. */
export function contentHash(value: unknown): string {
  return sha256(canonical(value));
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
    seed: run.model.scenario.rules.some(({ kit }) => kit.error) ? run.model.scenario.seed : null,
    given: [...new Set(run.model.scenario.overrides.map(({ id }) => id))].sort(),
  };
}

/** Everything that stands in a system at the end of a run, by name; `start: { saved: FILE }` goes on from it. */
export interface EndState extends SavedState {
  readonly schema: 'leat-state';
  readonly version: 1;
  readonly title: string;
  /** d since the start of the run that made it. */
  readonly time: number;
  readonly states: readonly {
    readonly component: Component;
    /** Vessel, cohort or batch of a planting. */
    readonly place: string;
    readonly vessel: string;
    /** In `unit`. */
    readonly amount: number;
    readonly unit: string;
  }[];
}

/** The state of a run at its last output time, to start another run from. */
export function endStateOf(run: Run): EndState {
  const { layout, scenario } = run.model;
  const last = run.samples[run.samples.length - 1];
  return {
    schema: 'leat-state',
    version: 1,
    title: scenario.title,
    time: last.time,
    volumes: Object.fromEntries(layout.vessels.map((vessel, index) => [vessel, last.volume[index]])),
    rainTank: last.rain,
    ages: Object.fromEntries(
      layout.batches.flatMap((batch, index) =>
        Number.isNaN(run.ages[index]) ? [] : [[batch.name, run.ages[index]]],
      ),
    ),
    states: layout.states.map(({ component, place, vessel }, index) => ({
      component,
      place,
      vessel: layout.vessels[vessel],
      amount: last.y[index],
      unit: unitOf[component],
    })),
  };
}
