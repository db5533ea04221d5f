// Reads numbers as: start in a file
import * as z from 'zod';
import { formatQuantity, parseQuantity } from '../../base/units.js';
import { complain, kindComplaint } from '../file/complaint.js';
import { bounded, number, section, word } from '../file/values.js';
import { checkStartVolume, roomProblem } from '../checks/levels.js';
import { grownRange, savedRanges, startRanges } from '../checks/ranges.js';
import { pressureShare } from '../../weather/penman-monteith.js';
import { valueOn } from '../value-on.js';
import { readSaved } from './saved.js';
import { completeQuality, startWaterSchema } from './waters.js';
const expected = 'cycled, uncycled, a share of cycled such as "40 %", or a map of aob and nob';
const biofilmText = `biofilm: ${expected}; range: shares from 0 to 1`;
/** Where what the system starts with comes from if it is not written. */
const fromSaved = 'default: that of the saved state, needed where there is none';
const biofilmSchema = z
    .union([
    z.string(),
    z.number(),
    section({
        aob: bounded(startRanges.aob, 'ammonia oxidisers as a share of the room'),
        nob: bounded(startRanges.nob, 'nitrite oxidisers as a share of the room'),
    }, 'each group as a share of the room on the surface'),
], { error: ({ input }) => kindComplaint(input, expected) })
    .meta({ description: biofilmText, examples: ['cycled', 'uncycled', '40 %'] })
    .transform((written, context) => {
    const refuse = (problem) => {
        context.addIssue({ code: 'custom', message: complain({ problem, expected }) });
        return z.NEVER;
    };
    if (typeof written === 'object') {
        const passed = roomProblem(written);
        if (passed !== undefined)
            return refuse(passed);
        return { kind: 'shares', ...written };
    }
    if (written === 'uncycled')
        return { kind: 'uncycled' };
    if (written === 'cycled')
        return { kind: 'cycled', share: 1 };
    const answer = typeof written === 'number' ? { value: written } : parseQuantity(written, 'share');
    if (!('value' in answer))
        return refuse(/^[a-z]/i.test(String(written)) ? 'unknown word' : answer.problem);
    if (answer.value < 0 || answer.value > 1)
        return refuse('out of range');
    return { kind: 'cycled', share: answer.value };
});
const grownText = 'pH of the water that the film has grown in';
/** What one vessel holds at the start, where it differs. */
export const startVesselSchema = section({
    biofilm: biofilmSchema.meta({ description: `${biofilmText}; default: that of the system` }).optional(),
    'grown-at': bounded(grownRange, `${grownText}; default: that of the system`)
        .meta({ examples: [7.5] })
        .optional(),
    water: startWaterSchema
        .meta({ description: 'its own water, laid over that of the system; default: that of the system' })
        .optional(),
    settled: bounded(startRanges.settled, 'all settled solids, dry; default: none').optional(),
    volume: bounded(startRanges.volume, 'water in the reservoir; range: 0 to what it holds, other vessels are full; default: the level of the ' +
        'float, else full').optional(),
}, 'state of one vessel at the start');
const saved = word('a state saved by a run, to go on from on the day it was saved: it wins over what stands here, which then may be ' +
    'left out; default: none').meta({ examples: ['end.json'] });
const day = bounded(savedRanges.day, 'the day that a run with a saved state begins on, where that is another: 0 begins anew with what stood there; ' +
    'default: the time at which it was saved').meta({ examples: [0] });
const grownAt = bounded(grownRange, `${grownText}; default: that of its water at the start`).meta({
    examples: [7.5],
});
const common = {
    'grown-at': grownAt.optional(),
    saved: saved.optional(),
    day: day.optional(),
    vessels: z.unknown().optional(),
};
const words = 'state at the start';
/** The section `start` without its vessels. */
const startSchema = section({ biofilm: biofilmSchema, water: startWaterSchema, ...common }, words);
/** The section `start` of a run that may go on from a saved state. */
export const goingOnSchema = section({
    biofilm: biofilmSchema.meta({ description: `${biofilmText}; ${fromSaved}` }).optional(),
    water: startWaterSchema.meta({ description: `water at the start; ${fromSaved}` }).optional(),
    ...common,
}, words);
const parameterRange = section({
    value: number('the number', -1e12, 1e12),
    low: number('lowest; default: the value, which is then not drawn', -1e12, 1e12).optional(),
    high: number('highest; default: the value, which is then not drawn', -1e12, 1e12).optional(),
}, 'a number of the tables given anew with its range');
/** One entry of `parameters`: a number, in the unit of its table, with or without a range. */
export const parameterSchema = z.union([number('a number in the unit of its table', -1e12, 1e12), parameterRange], {
    error: ({ input }) => kindComplaint(input, 'a number in the unit of its table, or a map of value, low, high'),
});
function readBiofilm(reader, given) {
    const { parameters } = reader;
    if (given.kind === 'shares')
        return { aob: given.aob, nob: given.nob };
    if (given.kind === 'uncycled') {
        return { aob: parameters.value('biofilm.seed-aob'), nob: parameters.value('biofilm.seed-nob') };
    }
    return {
        aob: given.share * parameters.value('biofilm.cycled-aob'),
        nob: given.share * parameters.value('biofilm.cycled-nob'),
    };
}
/** Solids that stand at the start, parted as those of faeces: what breaks down, and what hardly does. */
function parted({ parameters }, solids) {
    const refractory = parameters.value('solids.refractory-share') * solids;
    return [solids - refractory, refractory];
}
/** Biofilm of a vessel, and what it has grown in: a fresh one has grown in no water. */
function readFilm(reader, film, grown, vessel) {
    const grownAt = grown.own ?? grown.common;
    const shares = readBiofilm(reader, film);
    if (film.kind === 'uncycled') {
        if (grown.own !== undefined)
            fresh(reader, ['start', 'vessels', vessel, 'grown-at']);
        return { ...shares, grownAt: 'fresh' };
    }
    return grownAt === undefined ? shares : { ...shares, grownAt };
}
function fresh(reader, path) {
    reader.fault(path, 'an uncycled film has grown in no water', {
        expected: '`biofilm: cycled`, or no `grown-at`',
    });
}
/** A vessel's own water laid over that of the system: what it names wins, `like` replaces all of it. */
function layOver(common, own) {
    if (own === undefined)
        return common ?? {};
    if (own.like !== undefined || common === undefined)
        return own;
    const written = Object.entries(own).filter(([, value]) => value !== undefined);
    return { ...common, ...Object.fromEntries(written) };
}
function readOwn(reader, context) {
    const own = new Map();
    const section = ['start', 'vessels'];
    for (const name of reader.keys(section)) {
        const path = [...section, name];
        const known = reader.known(name, context.vessels, path, 'vessel');
        const given = reader.parse(startVesselSchema, path);
        if (known)
            own.set(name, given);
    }
    return own;
}
/** Water in a vessel at the start: the reservoir may be low, and begins at the float where there is one. */
function readVolume(reader, vessel, given, context) {
    const path = ['start', 'vessels', vessel.name, 'volume'];
    const isReservoir = vessel.name === context.frame.reservoir;
    const written = given?.volume;
    if (written === undefined) {
        if (!isReservoir || context.topUp === undefined)
            return vessel.volume;
        return reader.fallback(path, context.topUp.level, formatQuantity(context.topUp.level, 'volume'));
    }
    checkStartVolume(reader, path, written, vessel, isReservoir);
    return written;
}
/** Whether the section says that the run goes on from a saved state. */
function goesOn(reader) {
    return reader.has(['start', 'saved']);
}
/** What a saved state holds in its vessels, as if it had been written in the file, by vessel. */
function savedStarts(reader, vessels, saved) {
    const starts = new Map();
    if (saved === undefined)
        return starts;
    const amounts = new Map(saved.states.map(({ component, place, amount }) => [`${component}@${place}`, amount]));
    const capacity = reader.parameters.value('biofilm.capacity');
    for (const [vessel, volume] of Object.entries(saved.volumes)) {
        const amount = (component) => amounts.get(`${component}@${vessel}`) ?? 0;
        const room = (vessels.get(vessel)?.surface ?? 0) * capacity;
        const share = (component) => (room > 0 ? amount(component) / room : 0);
        const of = (component) => amount(component) / volume;
        starts.set(vessel, {
            vessel,
            water: {
                ...{ tan: of('tan'), nitrite: of('nitrite'), nitrate: of('nitrate'), solids: of('solids') },
                ...{ alkalinity: of('alkalinity'), carbon: of('carbon') },
                ...{ oxygen: of('oxygen'), chloride: of('chloride'), calcium: of('calcium') },
                ...{ refractory: of('refractory'), dissolved: of('dissolved') },
                ...{ 'organic-nitrogen': of('organic-nitrogen') },
            },
            volume,
            ...{ aob: share('aob'), nob: share('nob'), settled: amount('settled') },
            settledRefractory: amount('settled-refractory'),
        });
    }
    return starts;
}
/** Reads the section `start` and gives the state of every vessel. */
export function readStart(reader, context) {
    const { frame, vessels, waters } = context;
    const common = reader.parse(goesOn(reader) ? goingOnSchema : startSchema, ['start']);
    const own = readOwn(reader, context);
    if (common === undefined)
        return { start: [] };
    if (common.day !== undefined && common.saved === undefined)
        reader.fault(['start', 'day'], 'is of a saved state only', { expected: 'saved: FILE beside it' });
    const saved = common.saved === undefined ? undefined : readSaved(reader, common.saved, common.day, context);
    const fromState = savedStarts(reader, vessels, saved);
    const pressure = pressureShare(reader.parameters, frame.altitude);
    if (common.biofilm?.kind === 'uncycled' && common['grown-at'] !== undefined)
        fresh(reader, ['start', 'grown-at']);
    const qualities = new Map();
    const quality = (path, given, temperature) => {
        const key = JSON.stringify([path, temperature]);
        if (!qualities.has(key))
            qualities.set(key, completeQuality(reader, path, given, { temperature, pressure }, waters));
        return qualities.get(key);
    };
    const startOf = ([name, vessel]) => {
        const given = own.get(name);
        if (vessel === undefined || (own.has(name) && given === undefined))
            return [];
        const kept = fromState.get(name);
        if (kept !== undefined)
            return [kept];
        const biofilm = given?.biofilm ?? common.biofilm;
        if (common.saved !== undefined &&
            (biofilm === undefined || (common.water ?? given?.water) === undefined)) {
            if (saved === undefined)
                return [];
            const missing = biofilm === undefined ? 'biofilm' : 'water';
            reader.fault(['start', missing], 'missing', {
                expected: `what ${name} starts with, which the saved state does not hold`,
            });
            return [];
        }
        const path = given?.water === undefined ? ['start', 'water'] : ['start', 'vessels', name, 'water'];
        const water = layOver(common.water, given?.water);
        const found = quality(path, water, valueOn(vessel.temperature, frame.startDate, 0));
        const volume = readVolume(reader, vessel, given, context);
        if (found === undefined || biofilm === undefined)
            return [];
        const film = readFilm(reader, biofilm, { common: common['grown-at'], own: given?.['grown-at'] }, name);
        const { tan, nitrite, nitrate, alkalinity, carbon, oxygen, chloride, calcium } = found;
        const [solids, refractory] = parted(reader, water.solids ?? 0);
        const [settled, settledRefractory] = parted(reader, given?.settled ?? 0);
        const nitrogen = { tan, nitrite, nitrate };
        const start = { refractory, ...nitrogen, solids, alkalinity, carbon, oxygen, chloride, calcium };
        return [{ vessel: name, water: start, volume, ...film, settled, settledRefractory }];
    };
    const start = [...vessels].flatMap(startOf);
    return { start, ...(saved && { saved }) };
}
//# sourceMappingURL=start.js.map