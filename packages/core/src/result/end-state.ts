import { unitOf, type Component } from '../model/component.js';
import type { SavedState } from '../scenario/scenario.js';
import type { Run } from '../run/run.js';

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
    volumes: Object.fromEntries(layout.cells.map((cell, index) => [cell, last.volume[index]])),
    rainTank: last.rain,
    ages: Object.fromEntries(
      layout.batches.flatMap((batch, index) =>
        Number.isNaN(run.ages[index]) ? [] : [[batch.name, run.ages[index]]],
      ),
    ),
    states: layout.states.map(({ component, place, vessel }, index) => ({
      component,
      place,
      vessel,
      amount: last.y[index],
      unit: unitOf[component],
    })),
  };
}
