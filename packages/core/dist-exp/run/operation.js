/** How a system is operated at the start of a run. */
export function openOperation(model) {
    const { scenario } = model;
    return {
        ration: scenario.cohorts.map((cohort) => cohort.ration),
        factor: new Float64Array(scenario.cohorts.length).fill(1),
        feed: scenario.cohorts.map((cohort) => cohort.feed),
        pumpOn: scenario.pumps.map(() => true),
        aerating: scenario.vessels.map(() => true),
        dosing: (scenario.dosers ?? []).map(() => true),
        waters: new Map(scenario.waters.map((water) => [water.name, water])),
        caps: (scenario.topUp?.sources ?? []).map((source) => source.kind === 'mains' ? source.dailyCap : Infinity),
        weeklyCaps: (scenario.topUp?.sources ?? []).map((source) => source.kind === 'mains' ? (source.weeklyCap ?? Infinity) : Infinity),
        topUpStopped: false,
    };
}
//# sourceMappingURL=operation.js.map