import { type LimitCheck, type LimitReader } from './limit-check.js';
/**
 * Where the laws of the model were measured: outside it a run goes on, by its laws, and is no forecast. Held against
 * every vessel at every output.
 */
export declare function limitsOfDomain(reader: LimitReader): readonly LimitCheck[];
//# sourceMappingURL=limits-of-domain.d.ts.map