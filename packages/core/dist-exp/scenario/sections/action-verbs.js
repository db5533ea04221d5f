import { compact } from '../file/reader.js';
import { readFeed } from './stock.js';
import { checkCart, checkChanges, checkOneWay, checkTargets, checkTopUp, } from '../checks/actions.js';
/** The fields of an action that stand under its verb, one of them perhaps under another key. */
const under = (path, renamed = {}) => (field) => field === undefined ? path : [...path, renamed[field] ?? field];
/** The one field of an action that is its verb's own value. */
const alone = (path) => () => path;
/** A number or a share of fish: one of them. */
function readTake(kind, given, reader, path, cast) {
    const { cohort, share, number } = given;
    const action = compact({ kind, cohort, share: share ?? 0, number });
    checkTargets(reader, action, cast, under(path));
    return checkOneWay(reader, path, 'how many', { share, number }) ? { doing: [action] } : undefined;
}
/** What is switched on or off: for good when on, until the end of an interval when off. */
const readSwitch = (switched, running) => (name, reader, path, cast) => {
    const action = switched(name, running);
    checkTargets(reader, action, cast, alone(path));
    return running ? { doing: [action] } : { doing: [action], undoing: [switched(name, true)] };
};
const pumpRuns = (pump, running) => ({ kind: 'pump', pump, running });
const airRuns = (vessel, running) => ({ kind: 'aeration', vessel, running });
const dosersRun = (vessel, running) => ({ kind: 'control', vessel, running });
function readPowerCut(cast) {
    const aerated = [...cast.vessels.values()].flatMap((vessel) => vessel !== undefined && vessel.aeration > 0 ? [vessel.name] : []);
    const dosed = [...new Set(cast.dosers.map(({ vessel }) => vessel))];
    const all = (running) => [
        ...[...cast.pumps.keys()].map((pump) => pumpRuns(pump, running)),
        ...aerated.map((vessel) => airRuns(vessel, running)),
        ...dosed.map((vessel) => dosersRun(vessel, running)),
    ];
    return { doing: all(false), undoing: all(true), cause: 'power cut' };
}
const readTopUpChange = (given, reader, path, { topUp }) => {
    const caps = given !== 'stopped' && given !== 'restored';
    if (!checkTopUp(reader, path, caps, topUp) || topUp === undefined)
        return undefined;
    const mains = topUp.sources.filter((source) => source.kind === 'mains');
    const [{ dailyCap, weeklyCap } = { dailyCap: Infinity }] = mains;
    const several = mains.some((source) => source.dailyCap !== dailyCap || source.weeklyCap !== weeklyCap);
    const restored = compact({ kind: 'top-up', dailyCap, weeklyCap, stopped: false });
    if (given === 'stopped')
        return { doing: [{ kind: 'top-up', stopped: true }], undoing: [{ kind: 'top-up', stopped: false }] };
    if (several) {
        reader.fault(path, 'more than one cap to go back to', {
            expected: 'supplies of top-up with the same cap',
        });
        return undefined;
    }
    return given === 'restored'
        ? { doing: [restored] }
        : { doing: [{ kind: 'top-up', ...given.cap }], undoing: [restored] };
};
const readSourceWater = ({ water, to }, reader, path, { waters }) => {
    const before = reader.lookup(waters, water, [...path, 'water'], 'water');
    const after = reader.lookup(waters, to, [...path, 'to'], 'water');
    if (before === undefined || after === undefined)
        return undefined;
    return {
        doing: [{ kind: 'source-water', water, to: after }],
        undoing: [{ kind: 'source-water', water, to: before }],
    };
};
const readChangeWater = ({ vessel, volume, share, water }, reader, path, cast) => {
    const action = compact({ kind: 'change-water', vessel, volume, share, water });
    checkTargets(reader, action, cast, under(path));
    return checkOneWay(reader, path, 'how much', { volume, share }) ? { doing: [action] } : undefined;
};
const readCartWater = ({ volume, water, into }, reader, path, cast) => {
    const { rainTank } = cast;
    const usual = reader.has(['rain-tank']) ? 'rain-tank' : 'reservoir';
    const where = into ?? reader.fallback([...path, 'into'], usual, usual);
    if (!checkCart(reader, { into: where, water }, cast, under(path)))
        return undefined;
    if (where === 'reservoir') {
        if (water !== undefined)
            return { doing: [{ kind: 'cart-water', volume, into: where, water }] };
        reader.fault([...path, 'water'], 'missing', { expected: 'a name of `waters`' });
        return undefined;
    }
    if (rainTank === undefined)
        return undefined;
    return { doing: [{ kind: 'cart-water', volume, into: where, water: rainTank.water }] };
};
const readFeedChange = (given, reader, path, cast) => {
    const { cohort, ration, factor } = given;
    const found = reader.lookup(cast.cohorts, cohort, [...path, 'cohort'], 'cohort');
    const otherFeed = given.feed !== undefined || given.protein !== undefined;
    const { feed: feedGiven, protein } = given;
    if (!checkChanges(reader, path, { ration, feed: feedGiven, protein, factor }))
        return undefined;
    const other = otherFeed ? readFeed(reader, path, given) : undefined;
    // Another protein alone leaves the name of the feed as it is.
    const feed = other === undefined || given.feed !== undefined
        ? other
        : { ...other, name: found?.feed.name ?? other.name };
    if (found === undefined || (otherFeed && feed === undefined))
        return undefined;
    const doing = compact({ kind: 'feed', cohort, ration, feed, factor });
    const undoing = compact({
        kind: 'feed',
        cohort,
        ration: ration === undefined ? undefined : found.ration,
        feed: feed === undefined ? undefined : found.feed,
        factor: factor === undefined ? undefined : 1,
    });
    return { doing: [doing], undoing: [undoing] };
};
function readPlanting(action, reader, path, cast) {
    checkTargets(reader, action, cast, alone(path));
    return { doing: [action] };
}
/** A dose, as an action or as part of a plan. */
export function readDose(given, reader, path, cast) {
    const { into, product, mass } = given;
    const action = { kind: 'dose', vessel: into, product, mass };
    checkTargets(reader, action, cast, under(path, { vessel: 'into' }));
    return { doing: [action] };
}
/** Draining solids, as an action or as part of a plan. */
export function readDrain(given, reader, path, cast) {
    const { vessel, share, water } = given;
    const none = () => reader.fallback([...path, 'water'], 0, '0 m3');
    const action = { kind: 'drain-solids', vessel, share, water: water ?? none() };
    checkTargets(reader, action, cast, under(path));
    return { doing: [action] };
}
/** One reader a verb of {@link timedActionSchema}. */
export const verbReaders = {
    stock: ({ cohort, number, mass }, reader, path, cast) => {
        const action = { kind: 'stock', cohort, number, mass };
        checkTargets(reader, action, cast, under(path));
        return { doing: [action] };
    },
    'harvest-fish': (given, ...rest) => readTake('harvest-fish', given, ...rest),
    'lose-fish': (given, ...rest) => readTake('lose-fish', given, ...rest),
    grade: (given, reader, path, cast) => {
        const { cohort, to, share } = given;
        const relativeMass = given['relative-mass'] ?? reader.fallback([...path, 'relative-mass'], 1, 1);
        const action = { kind: 'grade', cohort, share, relativeMass, to };
        checkTargets(reader, action, cast, under(path));
        return { doing: [action] };
    },
    plant: (planting, ...rest) => readPlanting({ kind: 'plant', planting }, ...rest),
    'harvest-crop': ({ planting, replant }, reader, path, cast) => {
        const again = replant ?? reader.fallback([...path, 'replant'], true, true);
        return readPlanting({ kind: 'harvest-crop', planting, replant: again }, reader, [...path, 'planting'], cast);
    },
    'leave-empty': (planting, ...rest) => readPlanting({ kind: 'leave-empty', planting }, ...rest),
    feed: readFeedChange,
    'top-up': readTopUpChange,
    'source-water': readSourceWater,
    'change-water': readChangeWater,
    'cart-water': readCartWater,
    dose: readDose,
    'pump-off': readSwitch(pumpRuns, false),
    'pump-on': readSwitch(pumpRuns, true),
    'air-off': readSwitch(airRuns, false),
    'air-on': readSwitch(airRuns, true),
    'control-off': readSwitch(dosersRun, false),
    'control-on': readSwitch(dosersRun, true),
    'power-cut': (_all, _reader, _path, cast) => readPowerCut(cast),
    clean: ({ vessel, biofilm, solids, stuns }, reader, path, cast) => {
        const action = {
            kind: 'clean',
            vessel,
            biofilm: biofilm ?? 0,
            solids: solids ?? 0,
            ...(stuns !== undefined && { stuns }),
        };
        checkTargets(reader, action, cast, under(path));
        if (biofilm === undefined && solids === undefined && stuns === undefined) {
            reader.fault(path, 'nothing that is removed', { expected: 'one or more of biofilm, solids, stuns' });
        }
        return { doing: [action] };
    },
    medicate: ({ vessel, kills, stuns }, reader, path, cast) => {
        const action = {
            kind: 'medicate',
            vessel,
            kills: kills ?? 0,
            ...(stuns !== undefined && { stuns }),
        };
        checkTargets(reader, action, cast, under(path));
        if (kills === undefined && stuns === undefined) {
            reader.fault(path, 'nothing that is done to the biofilm', { expected: 'one or both of kills, stuns' });
        }
        return { doing: [action] };
    },
    'drain-solids': readDrain,
};
//# sourceMappingURL=action-verbs.js.map