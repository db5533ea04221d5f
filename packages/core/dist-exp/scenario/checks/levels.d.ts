import type { Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { RainTank, Vessel } from '../scenario.js';
/** Whether the lower outlet of a vessel lies below its standpipe; a fault where it does not. */
export declare function checkDrain(report: Report, path: Path, to: number, volume: number): boolean;
/** Whether a bed drains no more than it holds, and does so in one way; a fault where not. */
export declare function checkFlood(report: Report, path: Path, drained: number, { volume, drain }: {
    readonly volume: number;
    readonly drain?: unknown;
}): boolean;
/** Checks where a pump sucks air and starts again against what its vessel holds; what is absent is not judged. */
export declare function checkPumpLevels(report: Report, path: Path, { inlet, restart }: {
    readonly inlet?: number | undefined;
    readonly restart?: number | undefined;
}, { name, volume }: Vessel): void;
/** Checks that the float closes below the overflow of the reservoir, and that it has a supply. */
export declare function checkFloat(report: Report, path: Path, level: number, from: {
    readonly path: Path;
    readonly count: number;
}, reservoir: Vessel | undefined): void;
/** Checks that a rain tank holds no more than it can. */
export declare function checkRainTank(report: Report, path: Path, { volume, capacity }: Pick<RainTank, 'volume' | 'capacity'>): void;
/** Checks the water that a vessel starts with: only the reservoir may be low. */
export declare function checkStartVolume(report: Report, path: Path, volume: number, vessel: Vessel, isReservoir: boolean): void;
/** What is wrong with the shares of the room that the two groups of nitrifiers take at the start, if anything. */
export declare function roomProblem({ aob, nob, }: {
    readonly aob: number;
    readonly nob: number;
}): string | undefined;
//# sourceMappingURL=levels.d.ts.map