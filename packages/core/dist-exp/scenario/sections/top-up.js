import * as z from 'zod';
import { kindComplaint } from '../file/complaint.js';
import { compact } from '../file/reader.js';
import { bounded, section, share, word } from '../file/values.js';
import { checkFloat, checkRainTank } from '../checks/levels.js';
import { dailyRanges, rainTankRanges, topUpRanges } from '../checks/ranges.js';
import { cap } from './cap.js';
import { daily, readDaily } from './daily.js';
/** The section `rain-tank`. */
export const rainTankSchema = section({
    capacity: bounded(rainTankRanges.capacity, 'what it holds'),
    volume: bounded(rainTankRanges.volume, 'what is in it at the start; range: 0 to the capacity'),
    roof: bounded(rainTankRanges.roof, 'roof that drains into it'),
    runoff: share('share of the rain on the roof that reaches it; default: 1').optional(),
    rain: daily('depth-rate', 'rain; range: 0 to 2 m/d'),
    water: word('what the rain holds: a name of `waters`'),
}, 'a store of rain');
const source = section({
    water: word('a name of `waters`'),
    cap: cap('most in one day or one week, as written; default: no cap').optional(),
}, 'a supply');
/** The section `top-up`. */
export const topUpSchema = section({
    level: bounded(topUpRanges.level, 'volume of the reservoir at which the float closes; range: more than 0, at most what it holds'),
    rate: bounded(topUpRanges.rate, 'most that the valve lets in'),
    from: z
        .array(z.union([word('`rain-tank` or a name of `waters`'), source], {
        error: ({ input }) => kindComplaint(input, '`rain-tank`, a name of `waters`, or a map of water and cap'),
    }), { error: ({ input }) => kindComplaint(input, 'a list of supplies, the first used first') })
        .meta({ description: 'supplies, the first used first: `rain-tank`, a name of `waters`, or a map' }),
}, 'top-up of the reservoir by a float valve');
function readRainTank(reader, frame, waters) {
    if (!reader.has(['rain-tank']))
        return undefined;
    const given = reader.parse(rainTankSchema, ['rain-tank']);
    if (given === undefined)
        return undefined;
    const { capacity, volume, water } = given;
    reader.known(water, waters, ['rain-tank', 'water'], 'water');
    checkRainTank(reader, ['rain-tank'], given);
    const need = { ...dailyRanges.rain, days: frame.days };
    const rain = readDaily(reader, ['rain-tank', 'rain'], given.rain, need);
    const runoff = given.runoff ?? reader.fallback(['rain-tank', 'runoff'], 1, 1);
    return rain === undefined ? undefined : { capacity, volume, roof: given.roof * runoff, rain, water };
}
function readTopUp(reader, waters, reservoir) {
    if (!reader.has(['top-up']))
        return undefined;
    const given = reader.parse(topUpSchema, ['top-up']);
    if (given === undefined)
        return undefined;
    const { level, rate, from } = given;
    const supplies = { path: ['top-up', 'from'], count: from.length };
    checkFloat(reader, ['top-up'], level, supplies, reservoir);
    const sources = from.map((source, index) => {
        const path = ['top-up', 'from', index];
        if (source === 'rain-tank') {
            reader.lacks(path, 'rain tank', 'rain-tank');
            return { kind: 'rain-tank' };
        }
        const { water, cap } = typeof source === 'string' ? { water: source, cap: undefined } : source;
        const at = typeof source === 'string' ? path : [...path, 'water'];
        reader.known(water, typeof source === 'string' ? ['rain-tank', ...waters.keys()] : waters, at, 'water');
        return { kind: 'mains', water, dailyCap: Infinity, ...cap };
    });
    return { level, rate, sources };
}
/** Reads `top-up` and `rain-tank`. */
export function readSupply(reader, frame, waters, reservoir) {
    return compact({
        rainTank: readRainTank(reader, frame, waters),
        topUp: readTopUp(reader, waters, reservoir),
    });
}
//# sourceMappingURL=top-up.js.map