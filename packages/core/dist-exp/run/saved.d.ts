import type { Component } from '../processes/components.js';
import type { Model } from '../model/model.js';
import type { SavedMorning, SavedState } from '../scenario/saved-state.js';
import type { ResumableRun, RunState } from './run-state.js';
/** Everything that stands in a system at the end of a run, by name; `start: { saved: FILE }` goes on from it. */
export interface EndState extends SavedState {
    readonly schema: 'leat-state';
    readonly version: 2;
    readonly title: string;
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
/** The state of a run before its numerical methods are opened. */
type Started = Omit<RunState, 'memory'>;
/**
 * The state of a run at its end, to go on from: whatever the rest of it depends on. Two runs in a row are one: to the
 * same bytes where the first ends with a day.
 */
export declare function endStateOf({ model, state }: Pick<ResumableRun, 'model' | 'state'>): EndState;
/** The morning of a saved state, where it knows every place of a scenario; else it is to be found anew. */
export declare function savedMorning({ scenario }: Model): SavedMorning | undefined;
/** Lays a saved state over the state of a run that is about to begin at its time. */
export declare function goOn(model: Model, saved: SavedState, state: Started): void;
/** What the numerical methods remembered, where a saved state is of just the states of a model. */
export declare function rememberedIn({ layout }: Model, saved: SavedState | undefined): RunState['memory'] | undefined;
export {};
//# sourceMappingURL=saved.d.ts.map