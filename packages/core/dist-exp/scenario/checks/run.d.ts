import type { Report } from '../file/report.js';
interface Outputs {
    readonly days: number;
    readonly every: number;
}
/** Bounds the outputs of a run. */
export declare function checkOutputs(report: Report, { days, every }: Outputs): void;
/** Bounds what a run keeps before it is begun: outputs times vessels. */
export declare function checkKept(report: Report, { days, every }: Outputs, vessels: number): void;
export {};
//# sourceMappingURL=run.d.ts.map