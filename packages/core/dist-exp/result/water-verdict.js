import { waterTaken } from './harvest.js';
/** Share of the volume at the float valve below which a reservoir is low: less is the play of a day. */
const LOW = 0.95;
/** What ends in a low reservoir. */
const sparing = ['rain-tank-empty', 'cap-reached', 'top-up'];
/** When the reservoir stood low, and how low it came. */
function lowWater({ model, samples }) {
    const { topUp, reservoir } = model.scenario;
    if (topUp === undefined)
        return { days: 0 };
    const vessel = model.layout.vessels.indexOf(reservoir);
    const shares = samples.map(({ volume }) => volume[vessel] / topUp.level);
    const low = samples.filter((_, i) => i > 0 && shares[i] < LOW);
    const [first] = low;
    return {
        days: low.length * model.scenario.every,
        ...(low.length > 0 && { first: first.time }),
        lowest: Math.min(...shares),
    };
}
function stopped({ events, samples }) {
    const end = samples[samples.length - 1].time;
    const trips = events.filter(({ kind }) => kind === 'pump-trip');
    return [...new Set(trips.map(({ place }) => place))].map((pump) => {
        const own = trips.filter(({ place }) => place === pump);
        const total = own.reduce((days, { time }) => {
            const again = events.find((event) => event.kind === 'pump-restart' && event.place === pump && event.time >= time);
            return days + (again?.time ?? end) - time;
        }, 0);
        return { pump, times: own.length, first: own[0].time, total };
    });
}
/** Whether a run had water enough, from what its water did. */
export function waterVerdict(run) {
    const { events, samples } = run;
    const of = (kind) => events.filter((event) => event.kind === kind);
    const dry = of('dry');
    const caps = of('cap-reached');
    const [empty] = of('rain-tank-empty');
    const pumps = stopped(run);
    const low = lowWater(run);
    const worse = events.find(({ kind }) => kind === 'dry' || kind === 'pump-trip');
    const spare = events.filter(({ kind, time }) => sparing.includes(kind) && time <= (low.first ?? -1)).at(-1);
    const first = spare ?? worse;
    const days = samples[samples.length - 1].time - samples[0].time;
    const state = dry.length > 0 ? 'dry' : pumps.length > 0 ? 'pump' : low.first !== undefined ? 'short' : 'enough';
    return {
        state,
        lowDays: low.days,
        ...(low.first !== undefined && { lowFirst: low.first }),
        ...(low.lowest !== undefined && { lowest: low.lowest }),
        perDay: days > 0 ? waterTaken(run) / days : 0,
        ...(empty && { rainTankEmpty: empty.time }),
        capDays: new Set(caps.map(({ time }) => Math.floor(time))).size,
        ...(caps.length > 0 && { capFirst: caps[0].time }),
        pumps,
        dry: [...new Set(dry.map(({ place }) => place))],
        ...(dry.length > 0 && { dryFirst: dry[0].time }),
        ...(first && { first }),
    };
}
//# sourceMappingURL=water-verdict.js.map