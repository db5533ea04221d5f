import { checkDrain, checkFloat, checkPumpLevels, checkRainTank } from './levels.js';
import { checkEnds, checkShares, sourcesOf } from './network.js';
import { airRanges, floodedRanges, capRanges, dailyRanges, drainRanges, flowRanges, limeRanges, most, pumpRanges, rainTankRanges, timerRanges, topUpRanges, vesselRanges, waterRanges, words, } from './ranges.js';
import { anyNumber, checkDailyValue, checkNamed } from './scenario-values.js';
/** Checks the vessels by themselves. */
export function checkVessels(report, { vessels, days }, names) {
    if (vessels.length === 0)
        report.fault(['vessels'], 'missing', { expected: 'at least one vessel' });
    const water = { ...dailyRanges.water, days };
    return checkNamed(report, 'vessels', vessels, most.vessels, (vessel, path) => {
        const { kind, volume, temperature, drain, lime } = vessel;
        const sound = [
            report.oneOf(kind, words.vesselKind, [...path, 'kind']),
            report.numbers(vessel, vesselRanges, path),
            report.numbers(vessel, airRanges, path, { optional: ['airShare'] }),
            report.numbers(vessel, floodedRanges, path, { optional: ['flooded'] }),
            checkDailyValue(report, temperature, [...path, 'temperature'], water),
            drain === undefined ||
                (report.holds(drain, [...path, 'drain']) && report.numbers(drain, drainRanges, [...path, 'drain'])),
            lime === undefined ||
                (report.holds(lime, [...path, 'lime']) &&
                    report.known(lime.kind, names.lime, [...path, 'lime', 'kind'], 'lime') &&
                    report.numbers(lime, limeRanges, [...path, 'lime'])),
        ].every(Boolean);
        const { flooded } = vessel;
        if (drain !== undefined && flooded !== undefined)
            report.fault([...path, 'flooded'], 'a bed that drains is not averaged too', {
                expected: 'one of both',
            });
        return sound && (drain === undefined || checkDrain(report, path, drain.to, volume));
    });
}
/** Checks waters from outside. */
export function checkWaters(report, { waters }) {
    return checkNamed(report, 'waters', waters, most.waters, (water, path) => report.numbers(water, waterRanges, path));
}
function checkFlow(report, flow, path, vessels, pumps) {
    const before = report.faults.length;
    checkEnds(report, path, flow, vessels);
    if (!report.oneOf(flow.kind, ['pumped', 'gravity'], [...path, 'kind']))
        return false;
    if (flow.kind === 'pumped') {
        report.known(flow.pump, pumps, [...path, 'pump'], 'pump');
        report.within(flow.rate, flowRanges.rate, [...path, 'rate']);
    }
    else
        report.within(flow.share, flowRanges.share, [...path, 'share']);
    return report.faults.length === before;
}
/** Checks pumps by themselves. */
export function checkPumps(report, { pumps }) {
    return checkNamed(report, 'pumps', pumps, most.pumps, (pump, path) => {
        const { timer } = pump;
        const at = [...path, 'timer'];
        const sound = report.numbers(pump, pumpRanges, path);
        if (timer === undefined)
            return sound;
        const { on, off } = timerRanges;
        return report.holds(timer, at) && report.numbers(timer, { on, off, offset: anyNumber }, at) && sound;
    });
}
/** Checks flows, and the pumps against what they draw from. */
export function checkFlows(report, { flows }, vessels, pumps) {
    if (!report.checkCount(['flows'], flows.length, most.flows))
        return { flows: [], edges: [], whole: false };
    const sound = flows.map((flow, index) => checkFlow(report, flow, ['flows', index], vessels, pumps));
    const edges = flows.map(({ kind, from, to }, index) => ({
        path: ['flows', index],
        ...{ from, to, pumped: kind === 'pumped' },
    }));
    const reading = { flows: flows.filter((_, index) => sound[index]), edges, whole: sound.every(Boolean) };
    if (reading.whole) {
        const falling = new Map();
        flows.forEach((flow, index) => {
            if (flow.kind !== 'gravity')
                return;
            const others = falling.get(flow.from) ?? [];
            others.push({ path: ['flows', index], share: flow.share });
            falling.set(flow.from, others);
        });
        for (const [from, leaving] of falling)
            checkShares(report, from, leaving);
    }
    for (const [name, pump] of pumps) {
        const path = ['pumps', name];
        const [from, ...others] = sourcesOf(report, path, name, reading);
        const source = from === undefined || others.length > 0 ? undefined : vessels.get(from);
        if (pump !== undefined && source !== undefined)
            checkPumpLevels(report, path, pump, source);
    }
    return reading;
}
function checkRain(report, { rainTank, days }, waters) {
    const path = ['rainTank'];
    if (rainTank === undefined || !report.holds(rainTank, path))
        return undefined;
    const before = report.faults.length;
    report.known(rainTank.water, waters, [...path, 'water'], 'water');
    if (report.numbers(rainTank, rainTankRanges, path))
        checkRainTank(report, path, rainTank);
    checkDailyValue(report, rainTank.rain, [...path, 'rain'], { ...dailyRanges.rain, days });
    return report.faults.length > before ? undefined : rainTank;
}
function checkSource(report, source, path, waters) {
    if (!report.holds(source, path))
        return;
    if (!report.oneOf(source.kind, ['rain-tank', 'mains'], [...path, 'kind']))
        return;
    if (source.kind === 'rain-tank') {
        report.lacks(path, 'rain tank', 'rain-tank');
        return;
    }
    report.known(source.water, waters, [...path, 'water'], 'water');
    report.numbers(source, capRanges, path, { optional: ['weeklyCap'], endless: ['dailyCap', 'weeklyCap'] });
}
function checkValve(report, { topUp }, waters, reservoir) {
    const list = ['topUp', 'sources'];
    if (topUp === undefined || !report.holds(topUp, ['topUp']))
        return undefined;
    if (!report.isList(topUp.sources, list))
        return undefined;
    const before = report.faults.length;
    const sound = report.numbers(topUp, topUpRanges, ['topUp']);
    const supplies = { path: list, count: topUp.sources.length };
    checkFloat(report, ['topUp'], topUp.level, supplies, sound ? reservoir : undefined);
    topUp.sources.forEach((source, index) => checkSource(report, source, [...list, index], waters));
    return report.faults.length > before ? undefined : topUp;
}
/** Checks the float valve and the rain tank; gives those that are there and without fault. */
export function checkSupply(report, scenario, waters, reservoir) {
    const rainTank = checkRain(report, scenario, waters);
    return { rainTank, topUp: checkValve(report, scenario, waters, reservoir) };
}
//# sourceMappingURL=scenario-water.js.map