import type { Values } from '../library/values.js';
import { type Component, type Conserved, type Content } from '../processes/components.js';
import type { Process, Term } from '../processes/process.js';
import type { Override } from '../library/override.js';
import type { OwnNumber } from './own.js';
import { type Subject } from './scope.js';
/** A term with its coefficient known and its content beside it. */
export interface ClosedTerm extends Omit<Term, 'coefficient'> {
    readonly coefficient: number;
    readonly content: Content;
}
/** What one unit of a component holds with some numbers: `contentOf`, or that of a model with components of a user's own. */
export type ContentIn = (component: Component, values: Values) => Content;
/**
 * Works out the coefficients that a row leaves to conservation: one linear equation for each
 * quantity that a term closes (never more than a handful). Rows are not exchanged: a term must itself hold some
 * of what it closes.
 * @throws RangeError when the equations do not fix the unknowns.
 */
export declare function closeRow(process: Pick<Process, 'id' | 'stoichiometry'>, values: Values, content?: ContentIn): readonly ClosedTerm[];
/** A row that makes or destroys something. */
export interface Leak {
    readonly process: string;
    readonly quantity: Conserved;
    /** Made (+) or destroyed (-) per unit of the row. */
    readonly amount: number;
}
/** Quantities that a row does not keep: composition x row, against the sum of its absolute parts. */
export declare function leaksOf(process: string, terms: readonly ClosedTerm[]): readonly Leak[];
/**
 * Checks that a process keeps every conserved quantity with each of the given sets of values.
 * @throws RangeError saying what the row makes or destroys.
 */
export declare function checkClosure(process: Pick<Process, 'id' | 'unit' | 'stoichiometry'>, sets: Iterable<Values>, content?: ContentIn): void;
/**
 * A check that the row of a process closes at so many random draws of the numbers. What was checked when an earlier
 * system was compiled is not reckoned again: a slider compiles the same rows at every move.
 * @param own what a user's own processes need beside: content of their components, and their numbers; these are checked anew
 * @returns the check; it throws RangeError as `checkClosure` does
 */
export declare function checkAtDraws(count: number, overrides: readonly Override[], own?: {
    readonly content: ContentIn;
    readonly numbers: readonly OwnNumber[] | undefined;
}): (process: Process, subject: Subject) => void;
//# sourceMappingURL=stoichiometry.d.ts.map