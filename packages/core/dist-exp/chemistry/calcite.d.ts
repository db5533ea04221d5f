import type { Values } from '../library/values.js';
/** Solubility product of calcite, mol2 L-2, without activities, at degC. Plummer & Busenberg 1982. */
export declare function calciteSolubility(values: Values, temperature: number): number;
/** How fast clean calcite dissolves: by `hydrogen` ions and `carbonDioxide`, m d-1, and by `water`, mol m-2 d-1. */
export interface CalciteAttack {
    readonly hydrogen: number;
    readonly carbonDioxide: number;
    readonly water: number;
}
/** How fast clean calcite dissolves in water without any, at degC. Plummer, Wigley & Parkhurst 1978. */
export declare function calciteAttack(values: Values, temperature: number): CalciteAttack;
//# sourceMappingURL=calcite.d.ts.map