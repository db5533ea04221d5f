// Reads numbers as: handbook sizes
import { sum } from '../../base/sum.js';
import { conditionsOf } from '../../library/conditions.js';
import { areaByClass } from '../../result/limits-for-crops.js';
import { feedAtStart } from './design-loads.js';
/**
 * Sizes a filter as handbooks do: ammonia from feed, less dilution, over an areal rate, over a specific surface.
 * It knows no temperature, pH, oxygen or start-up but what the areal rate was taken at; it stands beside the
 * model's answer for comparison. FAO 589 Appendix 4; Miller, Florida A&M training slides.
 * Throws RangeError where a number is not finite, feed, ammonia or dilution is below 0, rate or surface is not above
 * 0, or dilution takes more than is made.
 */
export function handbookFilter(demand) {
    const { feed, ammoniaPerFeed, dilution = 0, arealRate, specificSurface } = demand;
    const fromZero = { feed, ammoniaPerFeed, dilution };
    for (const [name, value] of Object.entries(fromZero)) {
        if (!(value >= 0 && value < Infinity))
            throw new RangeError(`${name} is ${value}; expected 0 or more`);
    }
    for (const [name, value] of Object.entries({ arealRate, specificSurface })) {
        if (!(value > 0 && value < Infinity))
            throw new RangeError(`${name} is ${value}; expected more than 0`);
    }
    const made = feed * ammoniaPerFeed;
    if (dilution > made) {
        throw new RangeError(`dilution is ${dilution} g/d; expected no more than the ${made} g/d made`);
    }
    const load = made - dilution;
    const surface = load / arealRate;
    return { load, surface, volume: surface / specificSurface };
}
/** Temperatures up to and from which the two published pairs of areal rates are stated, degC. */
const COOL = 20;
const WARM = 25;
/**
 * Vessels whose surface for biofilm depends on what is varied, as indices: media, not the walls that come with a
 * larger vessel.
 */
export function surfacesVaried({ atFrom, atTo }) {
    return atFrom.scenario.vessels.flatMap(({ surface, volume }, vessel) => {
        const other = atTo.scenario.vessels[vessel];
        return other.surface === surface || other.volume !== volume ? [] : [vessel];
    });
}
const surfaceOf = (model, vessels) => sum(vessels.map((vessel) => model.scenario.vessels[vessel].surface));
const plantedOf = (model) => {
    const { leafy, fruiting } = areaByClass(model.scenario.plantings);
    return leafy + fruiting;
};
/** Feed and protein, g, on the day on which most protein is given. */
function mostFed({ samples, model }) {
    const { cohorts } = model.scenario;
    return samples
        .map(({ fed }) => ({
        feed: sum(fed),
        protein: sum(cohorts.map(({ feed }, i) => fed[i] * feed.protein)),
    }))
        .reduce((a, b) => (b.protein > a.protein ? b : a));
}
function meanTemperature({ samples, model }, vessels) {
    const some = vessels.length > 0 ? vessels : model.layout.vessels.map((_, vessel) => vessel);
    return (sum(samples.flatMap(({ temperature }) => some.map((vessel) => temperature[vessel]))) /
        (samples.length * some.length));
}
/** A value by a row of the tables. */
function valueBy(run, id, applies, valueAt) {
    const row = run.model.parameters.row(id);
    const { unit, source, page, mark } = row;
    const conditions = conditionsOf(row);
    const rate = run.model.parameters.value(id);
    return { value: valueAt(rate), rate, rateUnit: unit, conditions, source, page, mark, applies };
}
const arealRates = (temperature) => [
    ['limit.areal-rate-low.value', temperature <= COOL],
    ['limit.areal-rate-high.value', temperature <= COOL],
    ['limit.areal-rate-fao.value', true],
    ['limit.areal-rate-warm-low.value', temperature >= WARM],
    ['limit.areal-rate-warm-high.value', temperature >= WARM],
];
/**
 * What handbooks would give for what is varied, from the feed of the day of most feed: surface by areal rate where it
 * changes a surface for biofilm, planted area by feed per area, a load by the surface of filters. Undefined where no
 * handbook rule is known here (water, doses, volumes without media).
 * @param run at the answer, or wherever the search came nearest
 */
export function handbookOf(ends, run) {
    const { from, to, atFrom, atTo } = ends;
    const { parameters } = run.model;
    const vessels = surfacesVaried(ends);
    const temperature = meanTemperature(run, vessels);
    const most = mostFed(run);
    const perProtein = parameters.value('limit.tan-per-protein.value');
    const base = {
        ...most,
        tanByProtein: most.protein * perProtein,
        tanByFeed: most.feed * parameters.value('limit.tan-per-feed.value'),
        temperature,
    };
    const per = (of) => (of(atTo) - of(atFrom)) / (to - from);
    const surface = per((model) => surfaceOf(model, vessels));
    if (surface > 0 && most.feed > 0) {
        const values = arealRates(temperature).map(([id, applies]) => valueBy(run, id, applies, (arealRate) => {
            const ammoniaPerFeed = base.tanByProtein / most.feed;
            return handbookFilter({ feed: most.feed, ammoniaPerFeed, arealRate, specificSurface: surface })
                .volume;
        }));
        return { ...base, rule: 'surface', perUnit: surface, values };
    }
    const planted = per(plantedOf);
    if (planted > 0 && most.feed > 0) {
        const { fruiting } = areaByClass(atTo.scenario.plantings);
        const kind = fruiting > plantedOf(atTo) / 2 ? 'fruiting' : 'leafy';
        const values = ['high', 'low'].map((end) => valueBy(run, `limit.feed-per-area-${kind}-${end}.value`, true, (rate) => from + (most.feed / rate - plantedOf(atFrom)) / planted));
        return { ...base, rule: 'planted-area', perUnit: planted, values };
    }
    const fedBy = per(({ scenario }) => sum(feedAtStart(scenario)));
    if (fedBy > 0) {
        const filters = run.model.scenario.vessels.flatMap(({ kind }, vessel) => kind === 'biofilter' || kind === 'media-bed' ? [vessel] : []);
        const present = surfaceOf(run.model, filters);
        const share = most.protein / most.feed;
        const atStart = sum(feedAtStart(atFrom.scenario));
        const values = arealRates(temperature).map(([id, applies]) => valueBy(run, id, applies, (rate) => from + ((present * rate) / (share * perProtein) - atStart) / fedBy));
        return { ...base, rule: 'load', perUnit: fedBy, values };
    }
    return undefined;
}
//# sourceMappingURL=handbook.js.map