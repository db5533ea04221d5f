// Reads numbers as: base plan
import { sum } from '../base/sum.js';
import { conditionsOf } from '../library/conditions.js';
import { feedGiven } from './harvest.js';
/** What dosers that hold pH or alkalinity gave. */
function byDosers({ model, samples }) {
    const { dosers = [] } = model.scenario;
    const last = samples[samples.length - 1];
    return model.instances.flatMap(({ row, vessel, place, doser }) => {
        if (doser === undefined)
            return [];
        const name = model.layout.vessels[vessel];
        const product = dosers[doser].products.find((each) => place === `${name} (${each})`);
        return product === undefined ? [] : [[name, product, last.x[row] - samples[0].x[row]]];
    });
}
/** eq of alkalinity in one g of a product. */
function strength(parameters, product) {
    return parameters.value(`dose.${product}.alkalinity`);
}
/**
 * The base plan of a run: grams and equivalents of every product with alkalinity, for growers who must buy and feed it.
 * What has none (salt, citric acid) is left out.
 */
export function basePlan(run) {
    const { model, samples, doses } = run;
    const { parameters } = model;
    const last = samples[samples.length - 1];
    const given = [
        ...doses
            .filter(({ time }) => time >= samples[0].time && time <= last.time)
            .map(({ vessel, product, mass }) => [vessel, product, mass]),
        ...byDosers(run),
    ];
    const masses = new Map();
    for (const [vessel, product, mass] of given) {
        const key = `${vessel} ${product}`;
        const entry = masses.get(key) ?? { vessel, product, mass: [] };
        masses.set(key, entry);
        entry.mass.push(mass);
    }
    const uses = [...masses.values()].flatMap(({ vessel, product, mass }) => {
        const total = sum(mass);
        const equivalents = total * strength(parameters, product);
        const note = conditionsOf(parameters.row(`dose.${product}.alkalinity`));
        return equivalents === 0 ? [] : [{ product, vessel, mass: total, equivalents, note }];
    });
    return {
        days: last.time - samples[0].time,
        feed: feedGiven(run) / 1000,
        uses,
        base: sum(uses.map(({ equivalents }) => Math.max(0, equivalents))),
        acid: sum(uses.map(({ equivalents }) => Math.max(0, -equivalents))),
    };
}
//# sourceMappingURL=base-plan.js.map