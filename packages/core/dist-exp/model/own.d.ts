import type { Distribution, Mark } from '../library/table-row.js';
import type { Parameters } from '../library/parameters.js';
import type { Values } from '../library/values.js';
import type { Scenario } from '../scenario/scenario.js';
import { type Account, type Component, type Content } from '../processes/components.js';
import type { Coefficient, Process, Variable } from '../processes/process.js';
/** The name of a component: one of ours, or one of a user's own. */
export type ComponentName = Component | (string & Record<never, never>);
/** Something that a user's own processes make and use, held as a state beside ours. */
export interface OwnComponent {
    /** A small letter, then small letters, digits and `-`; none of our names. */
    readonly id: string;
    /** What it is counted in: `g N`. */
    readonly unit: string;
    /**
     * Where it stands: in all `water` (it then goes where water goes), on every `surface`, on every `floor`, or in the
     * vessels of these names. Beside water it stays in its vessel.
     */
    readonly place: 'water' | 'surface' | 'floor' | readonly string[];
    /** What one unit of it holds of each conserved quantity; of those left out it holds nothing. */
    readonly content: (values: Values) => Partial<Content>;
    /**
     * What there is of it at the start, everywhere or by vessel: in water a concentration, `unit` m-3; elsewhere an amount
     * in a vessel, `unit`. Absent: nothing.
     */
    readonly start?: number | Readonly<Record<string, number>>;
    /** What is much of it, in the measure of `start`, above 0: solved to this times the tolerance. Absent: 1. */
    readonly scale?: number;
}
/** One entry of a row of a user's own process, as `ProcessTerm`, of components of ours and of their own. */
export interface OwnTerm {
    readonly component: ComponentName;
    /** Units gained (+) or lost (-) per unit of extent, or the conserved quantity that it closes. */
    readonly coefficient: Coefficient;
    readonly outside?: Account;
}
/**
 * A process of a user's own. It works at every place of its kind in whose vessel all of the user's own components stand
 * that it reads, makes or uses.
 */
export interface OwnProcess extends Omit<Process, 'reads' | 'stoichiometry' | 'kernel' | 'place'> {
    readonly place: 'water' | 'surface' | 'floor' | 'cohort' | 'batch';
    /** What its rate depends on; own components in water as concentrations, elsewhere as amounts. */
    readonly reads: readonly (Variable | (string & Record<never, never>))[];
    /** What one unit of extent makes and uses. */
    readonly stoichiometry: (values: Values) => readonly OwnTerm[];
}
/** A number of a user's own processes, with all that is known of it. */
export interface OwnNumber {
    /** A word of the user's own, a dot, a property: `zeolite.capacity`. */
    readonly id: string;
    /** In `unit`. */
    readonly value: number;
    readonly unit: string;
    /** Ends of its range, in the same unit; absent: it is fixed. */
    readonly low?: number;
    /** The upper end. */
    readonly high?: number;
    /** How it varies in its range; absent: `uniform` where there is one. */
    readonly distribution?: Distribution;
    /** What it holds for. */
    readonly conditions?: string;
    /** Who says so, in full: author, year, title, where. */
    readonly source: string;
    readonly page?: string;
    /** How it came here, as in our tables (`marks`). */
    readonly mark: Mark;
}
/** What a user adds to a model, without a change of the library. */
export interface Additions {
    readonly components?: readonly OwnComponent[];
    readonly processes?: readonly OwnProcess[];
    readonly numbers?: readonly OwnNumber[];
}
/** The same as `extension` makes it: with its check beside it, so that who extends nothing is not sent the check. */
export interface Extension extends Required<Additions> {
    /**
     * Checks it against a scenario and the numbers of a run. Returns these numbers, with its own beside them.
     * @throws InputError with every fault, each at its path (`processes.uptake.reads[1]`); RangeError where a row does not close
     */
    readonly check: (scenario: Scenario, given: Parameters) => Parameters;
}
/** What one unit of a component of a user's own holds. */
export declare function ownContent({ content }: OwnComponent, values: Values): Content;
/**
 * A user's own component by the type of ours. Lists by component hold ours alone: whoever looks one up there for a state
 * of a model asks the model first.
 */
export declare const asOurs: ({ id }: Pick<OwnComponent, "id">) => Component;
/** The processes that a user adds, by the type of ours. */
export declare const ownProcesses: ({ processes }: Additions) => readonly Process[];
/** What one unit of any component holds, ours or a user's own. */
export declare function contentWith(components: readonly OwnComponent[]): (component: Component, values: Values) => Content;
//# sourceMappingURL=own.d.ts.map