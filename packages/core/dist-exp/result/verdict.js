// Reads numbers as: verdict
import { sum } from '../base/sum.js';
import { deathsOf, sharesDead } from './deaths.js';
import { filterVerdict } from './filter-verdict.js';
import { harvestOf } from './harvest.js';
import { cropNitrogenShare } from './crop-nitrogen.js';
import { limitsOf } from './limits.js';
import { allSeries } from './series.js';
import { waterVerdict } from './water-verdict.js';
/** Deaths of every cohort that ever had fish, the most first. */
function toldDeaths(run) {
    const shares = sharesDead(run);
    const all = deathsOf(run).flatMap(({ cohort, stocked, causes, wipedOut }, i) => stocked > 0
        ? [
            {
                ...{ cohort, vessel: run.model.scenario.cohorts[i].vessel, ...shares[i] },
                cause: causes.find(({ cause }) => cause !== 'other')?.cause ?? 'other',
                ...(wipedOut !== undefined && { wipedOut }),
            },
        ]
        : []);
    return all.sort((a, b) => b.share - a.share);
}
/** Passed limits of one kind of harm as troubles, one for each quantity, direction and value, in order of time. */
function troubles(limits, harm) {
    const groups = new Map();
    for (const limit of limits) {
        if (limit.harm !== harm || !limit.passed)
            continue;
        const key = `${limit.quantity} ${limit.direction} ${limit.value} ${limit.whom}`;
        groups.set(key, [...(groups.get(key) ?? []), limit]);
    }
    return [...groups.values()].map(troubleOf).sort((a, b) => a.first - b.first);
}
function troubleOf(group) {
    const byTime = [...group].sort((a, b) => (a.first ?? Infinity) - (b.first ?? Infinity));
    const [{ quantity, direction, value, unit, whom }] = byTime;
    const sign = direction === 'above' ? 1 : -1;
    const far = (limit) => sign * (limit.worst ?? Number.NaN);
    const worst = group.reduce((most, limit) => (far(limit) > far(most) ? limit : most));
    return {
        ...{ quantity, direction, value, unit, whom },
        places: [...new Set(byTime.map(({ place }) => place))],
        first: byTime[0].first ?? Number.NaN,
        total: Math.max(...group.map(({ total }) => total)),
        worst: worst.worst ?? Number.NaN,
        worstAt: worst.worstAt ?? Number.NaN,
    };
}
/** Kinds of harm to fish, the worst first, and what a verdict calls them. */
const fishHarms = ['lethal', 'harmful', 'uncomfortable'];
const stateOf = { lethal: 'lethal', harmful: 'at-risk', uncomfortable: 'uncomfortable' };
/** Share of a cohort whose death is told. */
const TOLD = 0.05;
const longestFirst = (list) => [...list].sort((a, b) => b.total - a.total);
function fishVerdict(run, limits) {
    const numbers = run.model.layout.fish.map(({ number }) => number);
    if (!run.samples.some(({ y }) => numbers.some((state) => y[state] > 0)))
        return undefined;
    const all = toldDeaths(run);
    const deaths = all.filter(({ share }) => share >= TOLD);
    const dead = all.flatMap(({ halfBy }) => (halfBy === undefined ? [] : [halfBy]));
    const worst = fishHarms
        .map((harm) => longestFirst(troubles(limits, harm)))
        .find(({ length }) => length > 0);
    const state = worst === undefined
        ? 'safe'
        : stateOf[fishHarms.find((harm) => troubles(limits, harm).length > 0) ?? 'lethal'];
    if (dead.length > 0) {
        const from = Math.min(...dead);
        // Of what: what was passed before half were dead, the deadliest kind first.
        const before = fishHarms
            .flatMap((harm) => longestFirst(troubles(limits, harm)))
            .filter(({ first }) => first <= from);
        return { state: 'dead', from, troubles: before.slice(0, 1), deaths };
    }
    const from = worst === undefined ? undefined : Math.min(...worst.map(({ first }) => first));
    return {
        state: deaths.length > 0 && state !== 'lethal' ? 'at-risk' : state,
        ...(from !== undefined && { from }),
        troubles: worst ?? [],
        deaths,
    };
}
function cropsVerdict(run, limits) {
    const { plantings } = run.model.scenario;
    if (plantings.length === 0)
        return undefined;
    const { crops } = harvestOf(run);
    const names = [...new Set(crops.map(({ crop }) => crop))];
    const harvested = names.map((crop) => {
        const those = crops.filter((each) => each.crop === crop);
        const dry = those.some(({ fresh }) => fresh === undefined);
        return { crop, dry, mass: sum(those.map((each) => each.fresh ?? each.dry)) };
    });
    const salt = troubles(limits, 'crop').find(({ quantity }) => quantity === 'chloride');
    return {
        harvested: harvested.sort((a, b) => b.mass - a.mass),
        shortOfNitrogen: cropNitrogenShare(run),
        ...(salt && { salt }),
    };
}
/** Kinds of events that disturb a system, whatever they were meant for. */
const disturbing = new Set([
    ...['pump', 'aeration', 'control', 'stock', 'lose-fish', 'medicate', 'clean', 'change-water', 'cart-water'],
    ...['top-up', 'source-water', 'dose', 'feed', 'leave-empty', 'drain-solids', 'pump-trip', 'dry'],
]);
/** Kinds that are routine where they come again and again alike, and begin nothing. */
const routine = new Set(['stock', 'feed', 'dose', 'drain-solids', 'change-water', 'cart-water']);
/** Days within which what was done is named beside what went wrong. */
const BEFORE = 3;
/** Whether the like of it was done more than four times in a run. */
const isRoutine = (run, { kind, place, text }) => routine.has(kind) &&
    run.events.filter((each) => each.kind === kind && each.place === place && each.text === text).length > 4;
function beginningOf(run, limits, water, filter) {
    const hurt = [...troubles(limits, 'lethal'), ...troubles(limits, 'harmful')];
    const found = [
        ...hurt.map((trouble) => ({ time: trouble.first, what: { kind: 'limit', trouble } })),
        ...(water.first === undefined
            ? []
            : [{ time: water.first.time, what: { kind: 'water', event: water.first } }]),
        ...(filter?.from === undefined ? [] : [{ time: filter.from, what: { kind: 'filter', filter } }]),
    ];
    if (found.length === 0)
        return undefined;
    const first = found.reduce((early, each) => (each.time < early.time ? each : early));
    const after = run.events
        .filter((event) => disturbing.has(event.kind) &&
        event.time <= first.time &&
        event.time >= first.time - BEFORE &&
        !(first.what.kind === 'water' && event === first.what.event) &&
        !isRoutine(run, event))
        .at(-1);
    return { ...first, ...(after && { after }) };
}
/**
 * What a run comes to, for who runs the system: what happens to the fish, the water, the filter and the crops, and what
 * went wrong first. Worked out from limits by the harm of passing them, deaths, events and the harvest. A design aid: fish
 * welfare stays with local codes and licensed practice.
 * @param limits and series of the run, where they are at hand
 */
export function verdictOf(run, limits = limitsOf(run), series = allSeries(run)) {
    const fish = fishVerdict(run, limits);
    const water = waterVerdict(run);
    const filter = filterVerdict(run, series);
    const crops = cropsVerdict(run, limits);
    const beginning = beginningOf(run, limits, water, filter);
    const [outside] = troubles(limits, 'domain');
    const ends = [
        ...(outside === undefined ? [] : [{ time: outside.first, why: 'domain', trouble: outside }]),
        ...(fish !== undefined && (fish.state === 'dead' || fish.state === 'lethal')
            ? [
                {
                    time: Math.min(fish.from ?? 0, ...troubles(limits, 'lethal').map(({ first }) => first)),
                    why: 'fish',
                },
            ]
            : []),
        ...(run.outcome.kind === 'done' ? [] : [{ time: run.outcome.time, why: 'broken-off' }]),
    ];
    return {
        ...(ends.length > 0 && {
            holdsUntil: ends.reduce((early, each) => (each.time < early.time ? each : early)),
        }),
        ...(fish && { fish }),
        water,
        ...(filter && { filter }),
        ...(crops && { crops }),
        ...(beginning && { beginning }),
    };
}
//# sourceMappingURL=verdict.js.map