// Reads numbers as: harvest
import { dateAfter } from '../base/calendar.js';
import { sum } from '../base/sum.js';
/** g of feed given in a run, eaten or not. */
export function feedGiven({ model, samples }) {
    const first = samples[0];
    const last = samples[samples.length - 1];
    return sum(model.instances.flatMap(({ process, row }) => process.unit === 'g feed' ? [last.x[row] - first.x[row]] : []));
}
/** m3 of water taken in through the float valve. */
export function waterTaken({ model, samples }) {
    const first = samples[0];
    const last = samples[samples.length - 1];
    return sum(model.streams.flatMap(({ kind }, i) => (kind === 'top-up' ? [last.carried[i] - first.carried[i]] : [])));
}
/** All that was posted to an account between the first and the last sample. */
function takings({ samples, postings }, account) {
    return samples.slice(1).flatMap((sample, i) => postings
        .slice(samples[i].posted, sample.posted)
        .filter((posting) => posting.account === account && posting.state >= 0)
        .map(({ state, amount }) => ({ time: samples[i].time, state, amount: -amount })));
}
function byMonth({ model }, taken, factor) {
    const months = new Map();
    for (const { time, amount } of taken) {
        const month = dateAfter(model.scenario.startDate, Math.floor(time)).slice(0, 7);
        months.set(month, [...(months.get(month) ?? []), amount * factor]);
    }
    return [...months].map(([month, masses]) => ({ month, mass: sum(masses) }));
}
function cropYields(run) {
    const { scenario, layout, parameters } = run.model;
    const all = takings(run, 'harvested crop');
    return scenario.plantings.map(({ name, crop, picks, cut: regrows }, index) => {
        const batches = layout.batches.filter(({ planting }) => planting === index);
        // Of a crop that bears fruit that is what is harvested; its plants are cleared away.
        const bears = picks !== undefined;
        const taken = all.filter(({ state }) => batches.some(({ mass, fruit }) => (bears ? fruit : mass) === state));
        const dry = sum(taken.map(({ amount }) => amount));
        const share = bears ? `crop.${crop}.fruit-dry-matter` : `crop.${crop}.dry-matter`;
        const density = `crop.${crop}.density`;
        const fresh = parameters.has(share) ? 1 / parameters.value(share) : undefined;
        const cut = sum(taken.map(({ state }) => batches.find(({ mass }) => mass === state)?.area ?? 0));
        return {
            planting: name,
            crop,
            dry,
            ...(fresh !== undefined && { fresh: dry * fresh }),
            ...(parameters.has(density) && !bears && !regrows && { plants: cut * parameters.value(density) }),
            months: byMonth(run, taken, fresh ?? 1),
        };
    });
}
function fishYields(run) {
    const { scenario, layout } = run.model;
    const all = takings(run, 'harvested fish');
    return scenario.cohorts.map(({ name, species }, index) => {
        const { mass, number } = layout.fish[index];
        const of = (state) => all.filter((taking) => taking.state === state);
        const masses = of(mass);
        return {
            cohort: name,
            species,
            number: sum(of(number).map(({ amount }) => amount)),
            mass: sum(masses.map(({ amount }) => amount)),
            months: byMonth(run, masses, 1),
        };
    });
}
/**
 * What a run harvested: crops by planting and month, fish by cohort, and feed and water beside them. A month is that of
 * the last output before, so with an output step of days some of it may stand a few days early. Fresh mass is the dry
 * mass over the dry share of the tables.
 */
export function harvestOf(run) {
    const crops = cropYields(run);
    return {
        crops,
        fish: fishYields(run),
        fresh: sum(crops.map(({ fresh = 0 }) => fresh)),
        area: sum(run.model.scenario.plantings.map(({ area }) => area)),
        feed: feedGiven(run),
        water: waterTaken(run),
    };
}
//# sourceMappingURL=harvest.js.map