import type { Component } from '../processes/components.js';
import { type Conserved } from '../processes/components.js';
import type { Model } from '../model/model.js';
/** One `coefficient` of a process: units of the component gained (+) or lost (-) per unit of extent. */
export interface TableEntry {
    readonly component: Component;
    /** Account outside, where the component is not in the system. */
    readonly outside?: string;
    readonly coefficient: number;
}
/** One process with the coefficients it has at some places. */
export interface TableProcess {
    readonly process: string;
    /** Unit of the extent; coefficients are per that. */
    readonly unit: string;
    /** Rows of the model that have these coefficients. */
    readonly rows: readonly string[];
    readonly entries: readonly TableEntry[];
    /** What the row makes (+) or destroys (-) of each conserved quantity, as a share of what it moves. */
    readonly closure: Readonly<Record<Conserved, number>>;
}
/**
 * The stoichiometric table of a model: each process once, not at each place; a process whose
 * coefficients differ from place to place (species, feed, crop) once for each set. Transport by water is
 * left out: it moves each component one for one.
 */
export declare function processTable(model: Model): readonly TableProcess[];
//# sourceMappingURL=process-table.d.ts.map