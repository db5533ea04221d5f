import { type LimitCheck, type LimitReader } from './limit-check.js';
/** Guides on the design of the whole. */
export declare function limitsForSystem(reader: LimitReader): readonly LimitCheck[];
//# sourceMappingURL=limits-for-system.d.ts.map