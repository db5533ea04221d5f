// Reads numbers as: audit of a design
import { sum } from '../../base/sum.js';
import { areaByClass } from '../../result/limits-for-crops.js';
import { feedAtStart, tanByModel, tanByRule, waterLost } from './design-loads.js';
const duty = (timer) => timer === undefined ? 1 : timer.on / (timer.on + timer.off);
/**
 * Water led into each vessel, m3 d-1, with every pump running by its clock and every vessel at its
 * standpipe: pumped flows, and what comes down by gravity. Top-up and losses are left out. Throws
 * RangeError where gravity leads round in a circle.
 */
export function designFlows(scenario) {
    const clocks = new Map(scenario.pumps.map(({ name, timer }) => [name, duty(timer)]));
    const pumped = scenario.flows.flatMap((flow) => flow.kind === 'pumped'
        ? [{ from: flow.from, to: flow.to, rate: flow.rate * (clocks.get(flow.pump) ?? 1) }]
        : []);
    const gravity = scenario.flows.flatMap((flow) => (flow.kind === 'gravity' ? [flow] : []));
    const known = new Map();
    const inflow = (vessel, above) => {
        const found = known.get(vessel);
        if (found !== undefined)
            return found;
        if (above.includes(vessel))
            throw new RangeError(`water runs down in a circle: ${[...above, vessel].join(' > ')}`);
        let total = 0;
        for (const flow of pumped)
            if (flow.to === vessel)
                total += flow.rate;
        for (const flow of gravity) {
            if (flow.to === vessel)
                total += flow.share * overflow(flow.from, [...above, vessel]);
        }
        known.set(vessel, total);
        return total;
    };
    const overflow = (vessel, above) => {
        if (vessel === scenario.reservoir)
            return 0;
        const drawn = pumped.filter(({ from }) => from === vessel).reduce((total, { rate }) => total + rate, 0);
        return Math.max(0, inflow(vessel, above) - drawn);
    };
    return new Map(scenario.vessels.map(({ name }) => [name, inflow(name, [])]));
}
function verdictOf(value, { low, high }) {
    if (low === undefined && high === undefined)
        return 'none';
    if (low !== undefined && value < low)
        return 'below';
    return high !== undefined && value > high ? 'above' : 'inside';
}
/** An item with its bounds, sourced to a row of the tables. */
function item(model, bare, bounds = {}, id) {
    const row = id === undefined ? undefined : model.parameters.row(id);
    const cited = row === undefined ? {} : { source: row.source, page: row.page, mark: row.mark };
    return { ...bare, ...bounds, verdict: verdictOf(bare.value, bounds), ...cited };
}
function turnover(model) {
    const { scenario, parameters } = model;
    const flows = designFlows(scenario);
    return scenario.vessels.map(({ name, kind, volume }) => {
        const bare = {
            name: 'turnover',
            place: name,
            value: (flows.get(name) ?? 0) / volume,
            unit: '1/d',
            note: 'water led in per day over volume, pumps by their clocks',
        };
        if (kind !== 'fish-tank')
            return item(model, bare);
        const bound = (end) => parameters.value(`limit.turnover-tank-${end}.value`);
        return item(model, bare, { low: bound('low'), high: bound('high') }, 'limit.turnover-tank-low.value');
    });
}
function feedPerArea(model) {
    const { scenario, parameters } = model;
    const { leafy, fruiting } = areaByClass(scenario.plantings);
    const area = leafy + fruiting;
    if (area === 0)
        return [];
    const bound = (end) => (leafy * parameters.value(`limit.feed-per-area-leafy-${end}.value`) +
        fruiting * parameters.value(`limit.feed-per-area-fruiting-${end}.value`)) /
        area;
    const bare = {
        name: 'feed per planted area',
        place: 'system',
        value: sum(feedAtStart(scenario)) / area,
        unit: 'g/(m2 d)',
        note: `feed at the start over ${area} m2 (range by leafy and fruiting area, 32 % protein feed)`,
    };
    return [
        item(model, bare, { low: bound('low'), high: bound('high') }, 'limit.feed-per-area-leafy-low.value'),
    ];
}
function tan(model) {
    const bare = (name, value, note) => ({
        name,
        place: 'system',
        value,
        unit: 'g N/d',
        note,
    });
    return [
        item(model, bare('TAN by rule', tanByRule(model), 'rule x protein fed at the start'), {}, 'limit.tan-per-protein.value'),
        item(model, bare('TAN by this model', tanByModel(model), 'what fish give off at the start: TAN, and urea that becomes it')),
    ];
}
function surface(model) {
    const { scenario, parameters } = model;
    const load = tanByModel(model);
    const present = sum(scenario.vessels.map((vessel) => vessel.surface));
    if (load === 0)
        return [];
    return ['areal-rate', 'areal-rate-warm'].map((rate) => {
        const at = (end) => parameters.value(`limit.${rate}-${end}.value`);
        const low = load / at('high');
        const high = load / at('low');
        const bare = {
            name: rate === 'areal-rate' ? 'surface, 15-20 degC' : 'surface, above 25 degC',
            place: 'system',
            value: present,
            unit: 'm2',
            note: `present, against what ${load.toPrecision(3)} g TAN/d needs at ${at('low')} to ${at('high')} g/(m2 d); spare surface is room to grow, not ready capacity`,
        };
        return item(model, bare, { low, high }, `limit.${rate}-low.value`);
    });
}
function stocking(model) {
    const { scenario, parameters } = model;
    return scenario.vessels.flatMap(({ name, volume }) => {
        const cohorts = scenario.cohorts.filter((cohort) => cohort.vessel === name && cohort.number > 0);
        if (cohorts.length === 0)
            return [];
        const bounds = cohorts.map(({ species }) => ({
            id: `fish.${species}.density-high`,
            value: parameters.value(`fish.${species}.density-high`),
        }));
        const least = bounds.reduce((a, b) => (b.value < a.value ? b : a));
        const bare = {
            name: 'stocking density',
            place: name,
            value: sum(cohorts.map(({ number, mass }) => number * mass)) / volume,
            unit: 'g/m3',
            note: 'fish at the start over volume',
        };
        return [item(model, bare, { high: least.value }, least.id)];
    });
}
function water(model) {
    const { scenario, parameters } = model;
    const bare = {
        name: 'water lost',
        place: 'system',
        value: waterLost(model) / sum(scenario.vessels.map(({ volume }) => volume)),
        unit: '1/d',
        note: 'evaporation, transpiration of full crops, leaks and exchange over volume',
    };
    const bound = (end) => parameters.value(`limit.water-loss-${end}.value`);
    return item(model, bare, { low: bound('low'), high: bound('high') }, 'limit.water-loss-low.value');
}
/**
 * Looks a design over without running it: what it turns over, feeds, makes, filters, stocks and loses,
 * each beside its published range. Numbers are of the start of the run. A design aid, not an approval.
 */
export function auditOf(model) {
    return [
        ...turnover(model),
        ...feedPerArea(model),
        ...tan(model),
        ...surface(model),
        ...stocking(model),
        water(model),
    ];
}
//# sourceMappingURL=audit.js.map