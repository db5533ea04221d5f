/** What makes a stream run. */
export const streamKinds = [
    'pumped',
    'gravity',
    'top-up',
    'exchange',
    'leak',
    'overflow',
    'evaporation',
    'transpiration',
];
/** All streams that a scenario can have, whether or not they run at a given time. */
export function layStreams(scenario) {
    const places = new Map(scenario.vessels.map(({ name }, index) => [name, index]));
    const vesselOf = (name) => places.get(name) ?? -1;
    const reservoir = vesselOf(scenario.reservoir);
    const flows = scenario.flows.map((flow, index) => ({
        id: `${flow.from} > ${flow.to}`,
        kind: flow.kind,
        from: vesselOf(flow.from),
        to: vesselOf(flow.to),
        index,
        carries: true,
    }));
    const sources = (scenario.topUp?.sources ?? []).map((source, index) => {
        const water = source.kind === 'mains' ? source.water : (scenario.rainTank?.water ?? '');
        return {
            id: source.kind === 'mains'
                ? `${source.water} > ${scenario.reservoir}`
                : `rain tank > ${scenario.reservoir}`,
            kind: 'top-up',
            from: -1,
            to: reservoir,
            account: 'source water',
            water,
            index,
            carries: true,
        };
    });
    const out = (kind, from, index = -1) => ({
        id: `${scenario.vessels[from].name} > ${kind}`,
        kind,
        from,
        to: -1,
        account: kind === 'evaporation' ? 'air' : 'discharge',
        index,
        carries: kind !== 'evaporation',
    });
    const losses = scenario.vessels.flatMap((vessel, from) => [
        ...(vessel.exchange > 0 ? [out('exchange', from)] : []),
        ...(vessel.leak > 0 ? [out('leak', from)] : []),
        ...(vessel.open > 0 || vessel.covered > 0 ? [out('evaporation', from)] : []),
    ]);
    const transpiration = scenario.plantings.map((planting, index) => ({
        id: `${planting.vessel} > ${planting.name}`,
        kind: 'transpiration',
        from: vesselOf(planting.vessel),
        to: -1,
        account: 'air',
        index,
        carries: false,
    }));
    return [...flows, ...sources, ...losses, out('overflow', reservoir), ...transpiration];
}
//# sourceMappingURL=streams.js.map