/** Streams that leave each vessel, by their indices, ascending. */
function streamsFrom({ layout, streams }) {
    const leaving = layout.vessels.map(() => []);
    streams.forEach(({ from }, s) => {
        if (from >= 0)
            leaving[from].push(s);
    });
    return leaving;
}
/** Vessels in an order in which gravity water only runs forward. */
function downhill({ layout, streams }, leaving) {
    const next = leaving.map((list) => list.filter((s) => streams[s].kind === 'gravity'));
    const reached = layout.vessels.map(() => false);
    const uphill = [];
    layout.vessels.forEach((_, first) => {
        if (reached[first])
            return;
        reached[first] = true;
        // A vessel is done when all that it runs into is; a list and not a recursion, for long chains.
        const path = [{ vessel: first, tried: 0 }];
        for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
            if (top.tried === next[top.vessel].length) {
                uphill.push(top.vessel);
                path.pop();
                continue;
            }
            const { to } = streams[next[top.vessel][top.tried++]];
            if (reached[to])
                continue;
            reached[to] = true;
            path.push({ vessel: to, tried: 0 });
        }
    });
    return uphill.reverse();
}
function pumpedStreams({ scenario, streams }) {
    return streams.flatMap(({ kind, index, from, to }, stream) => {
        const line = kind === 'pumped' ? scenario.flows[index] : undefined;
        if (line?.kind !== 'pumped')
            return [];
        const pump = scenario.pumps.findIndex(({ name }) => name === line.pump);
        return [{ stream, pump, from, to, rate: line.rate }];
    });
}
function vesselStreams({ scenario, streams }, vessel, leaving, dryShare) {
    const of = (kind) => leaving.filter((s) => streams[s].kind === kind);
    const full = vessel.volume;
    const dry = full * dryShare;
    return {
        vessel,
        full,
        dry,
        levels: [full, dry, ...(vessel.drain === undefined ? [] : [vessel.drain.to])],
        pumped: of('pumped'),
        losses: leaving.flatMap((stream) => {
            const { kind, index: planting } = streams[stream];
            return kind === 'exchange' || kind === 'leak' || kind === 'evaporation' || kind === 'transpiration'
                ? [{ stream, kind, planting }]
                : [];
        }),
        gravity: of('gravity').map((stream) => {
            const { index, to } = streams[stream];
            const line = scenario.flows[index];
            return { stream, to, share: line.kind === 'gravity' ? line.share : 0 };
        }),
        overflows: of('overflow'),
    };
}
/** Lays out the water of a model. */
export function layWater(model) {
    const { scenario, streams, parameters } = model;
    const dryShare = parameters.value('vessel.dry');
    const leaving = streamsFrom(model);
    const reservoir = scenario.vessels.findIndex(({ name }) => name === scenario.reservoir);
    const vessels = scenario.vessels.map((vessel, index) => vesselStreams(model, vessel, leaving[index], dryShare));
    const pumped = pumpedStreams(model);
    return {
        vessels,
        order: [...downhill(model, leaving).filter((vessel) => vessel !== reservoir), reservoir],
        reservoir,
        pumps: scenario.pumps.map(({ name, inlet, restart }, pump) => {
            const drawn = new Set(pumped.filter((line) => line.pump === pump).map(({ from }) => from));
            // No pump draws a vessel lower than what counts as dry.
            const draws = [...drawn].map((vessel) => ({
                vessel,
                inlet: Math.max(inlet, vessels[vessel].dry),
                restart,
            }));
            return { name, draws };
        }),
        pumped,
        valve: scenario.topUp,
        topUps: streams.flatMap(({ kind, index }, stream) => kind === 'top-up' ? [{ stream, source: index }] : []),
        tank: scenario.rainTank,
        streamCount: streams.length,
    };
}
//# sourceMappingURL=water-network.js.map