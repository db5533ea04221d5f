import type { Named } from '../file/report.js';
import type { Pump, RainTank, Scenario, SourceWater, TopUp, Vessel } from '../scenario.js';
import { type FlowReading } from './network.js';
import type { ScenarioReport } from './scenario-report.js';
import type { LibraryNames } from './scenario-stock.js';
/** Checks the vessels by themselves. */
export declare function checkVessels(report: ScenarioReport, { vessels, days }: Scenario, names: Pick<LibraryNames, 'lime'>): Named<Vessel>;
/** Checks waters from outside. */
export declare function checkWaters(report: ScenarioReport, { waters }: Scenario): Named<SourceWater>;
/** Checks pumps by themselves. */
export declare function checkPumps(report: ScenarioReport, { pumps }: Scenario): Named<Pump>;
/** Checks flows, and the pumps against what they draw from. */
export declare function checkFlows(report: ScenarioReport, { flows }: Scenario, vessels: Named<Vessel>, pumps: Named<Pump>): FlowReading;
/** Checks the float valve and the rain tank; gives those that are there and without fault. */
export declare function checkSupply(report: ScenarioReport, scenario: Scenario, waters: Named<SourceWater>, reservoir: Vessel | undefined): {
    readonly topUp: TopUp | undefined;
    readonly rainTank: RainTank | undefined;
};
//# sourceMappingURL=scenario-water.d.ts.map