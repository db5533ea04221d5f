import type { Values } from '../../library/values.js';
import type { Component } from '../components.js';
import type { Term } from '../process.js';
/**
 * Cells that die or come off a surface, per g COD: solids, of which a share of the demand hardly breaks down; nitrogen
 * beyond that of solids is organic, by closure.
 */
export declare function detached(component: Component, values: Values): readonly Term[];
//# sourceMappingURL=waste.d.ts.map