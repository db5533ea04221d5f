import type { Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Flow, Vessel } from '../scenario.js';
/** One flow as far as it can be told, even where something in it is faulty; a name not told is empty. */
export interface Edge {
    readonly path: Path;
    readonly from: string;
    readonly to: string;
    readonly pumped: boolean;
}
/** All flows: those without fault, and the edges of the network they form. */
export interface FlowReading {
    readonly flows: readonly Flow[];
    readonly edges: readonly Edge[];
    /** Whether every flow was understood and joins vessels that there are. */
    readonly whole: boolean;
}
/** Checks that the ends of a flow are two vessels that there are. */
export declare function checkEnds(report: Report, path: Path, { from, to }: {
    readonly from: string;
    readonly to: string;
}, vessels: Named<unknown>): void;
/** Checks that the shares of what leaves a vessel by gravity sum to 1; a fault stands at the last of them. */
export declare function checkShares(report: Report, from: string, flows: readonly {
    readonly path: Path;
    readonly share: number;
}[]): void;
/** The vessels that a pump draws from: there is one, and the fault of more or none is told. */
export declare function sourcesOf(report: Report, path: Path, name: string, { flows, whole }: Pick<FlowReading, 'flows' | 'whole'>): ReadonlySet<string>;
/**
 * Checks the network as a whole: a reservoir that there is; a way in and, by gravity, a way out for every
 * other vessel; no loop by gravity alone; everything reached by water from the reservoir; and no vessel
 * drawn down by its pumps.
 */
export declare function checkNetwork(report: Report, vessels: Named<Vessel>, reading: FlowReading, reservoir: string | undefined): void;
//# sourceMappingURL=network.d.ts.map