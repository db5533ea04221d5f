import type { ScenarioReader } from './scenario-reader.js';
import { type Cast } from '../checks/actions.js';
import type { Action } from '../scenario.js';
import type { timedActionSchema } from './action-schema.js';
import type { Path } from '../file/tree.js';
/** What an action does, and what undoes it at the end of an interval (absent: it cannot be undone). */
export interface ActionPair {
    readonly doing: readonly Action[];
    readonly undoing?: readonly Action[];
    /** What the actions are part of, for the log. */
    readonly cause?: string;
}
type Given = ReturnType<typeof timedActionSchema.parse>;
/** Reads one verb; `path` leads to it. Undefined where there is a fault. */
export type ReadVerb<Verb extends keyof Given> = (given: NonNullable<Given[Verb]>, reader: ScenarioReader, path: Path, cast: Cast) => ActionPair | undefined;
/** A dose, as an action or as part of a plan. */
export declare function readDose(given: {
    into: string;
    product: string;
    mass: number;
}, reader: ScenarioReader, path: Path, cast: Cast): ActionPair;
/** Draining solids, as an action or as part of a plan. */
export declare function readDrain(given: {
    vessel: string;
    share: number;
    water?: number | undefined;
}, reader: ScenarioReader, path: Path, cast: Cast): ActionPair;
/** One reader a verb of {@link timedActionSchema}. */
export declare const verbReaders: {
    readonly [Verb in keyof Omit<Given, 'at' | 'from' | 'until' | 'for' | 'every'>]-?: ReadVerb<Verb>;
};
export {};
//# sourceMappingURL=action-verbs.d.ts.map