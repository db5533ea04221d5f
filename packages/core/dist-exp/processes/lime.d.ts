import type { Process } from './process.js';
/**
 * Lime that dissolves, per mol: active share x area x (k1 h + k2 CO2 + k3) x what is wanting of saturation. Plummer,
 * Wigley & Parkhurst 1978, with 1 - saturation for their 1 - saturation^(2/3), and the area in proportion to the mass:
 * the same at both ends, without an infinite slope where nothing is left.
 */
export declare const dissolution: Process;
/**
 * Lime that falls on wetted surface, per mol: rate x surface x how far saturation is beyond that at which it begins.
 */
export declare const scale: Process;
//# sourceMappingURL=lime.d.ts.map