import type { Term } from '../process.js';
import type { Component } from '../components.js';
/** Full oxidation of so much organic matter: nitrogen to TAN, the rest by closure. */
export declare function mineralised(component: Component, amount?: number): readonly Term[];
//# sourceMappingURL=mineral.d.ts.map