import type { Process } from './process.js';
/**
 * A product fed by the pH of the water in which the probe stands, per g: most x s((set point - pH)/band) for a base, of (pH - set point) for an
 * acid; s(x) = x2 (3 - 2x) between 0 and 1.
 */
export declare const dosingByPh: Process;
/** A product fed by the alkalinity of the water in which the probe stands, per g; as `dosingByPh`. */
export declare const dosingByAlkalinity: Process;
//# sourceMappingURL=dosers.d.ts.map