import { formatQuantity } from '../../base/units.js';
import { compact } from '../file/reader.js';
import { bounded, section } from '../file/values.js';
import { checkPumpLevels } from '../checks/levels.js';
import { sourcesOf } from '../checks/network.js';
import { most, pumpRanges, timerRanges } from '../checks/ranges.js';
/** One pump of `pumps`. */
export const pumpSchema = section({
    timer: section({
        on: bounded(timerRanges.on, 'time on'),
        off: bounded(timerRanges.off, 'time off'),
        offset: bounded(timerRanges.offset, 'first switched on; default: 0 d').optional(),
    }, 'a clock that repeats; default: none, it runs always').optional(),
    inlet: bounded(pumpRanges.inlet, 'volume of the vessel drawn from at which the pump sucks air and trips; range: 0 or more, less than the vessel ' +
        'holds; default: 0, but a pump in the reservoir must say it').optional(),
    restart: bounded(pumpRanges.restart, 'volume at which it starts again; range: above the inlet, at most what the vessel holds; default: a full ' +
        'vessel, but needed beside an inlet').optional(),
}, 'a pump: all flows that name it start and stop together');
/** Pumps as written, before it is known what they draw from. */
export function parsePumps(reader) {
    return reader.named('pumps', most.pumps, (path) => reader.parse(pumpSchema, path));
}
/**
 * Inlet and restart. A pump in the reservoir must say its inlet; elsewhere standpipes hold the level
 * and the inlet is at the bottom. Restart must be written with an inlet, and is a full vessel otherwise.
 */
function readLevels(reader, path, given, source, isReservoir) {
    const before = reader.faults.length;
    const { volume } = source;
    const limit = formatQuantity(volume, 'volume');
    if (isReservoir && given.inlet === undefined) {
        reader.fault([...path, 'inlet'], 'missing', {
            expected: 'the volume of the reservoir at which the pump sucks air',
        });
    }
    if (given.inlet !== undefined && given.restart === undefined) {
        reader.fault([...path, 'restart'], 'missing', { expected: 'the volume at which the pump starts again' });
    }
    checkPumpLevels(reader, path, given, source);
    if (reader.faults.length > before)
        return undefined;
    return {
        inlet: given.inlet ?? reader.fallback([...path, 'inlet'], 0, formatQuantity(0, 'volume')),
        restart: given.restart ?? reader.fallback([...path, 'restart'], volume, limit),
    };
}
/** Completes the pumps by what they draw from. */
export function completePumps(reader, given, flows, vessels, reservoir) {
    const pumps = new Map();
    for (const [name, pump] of given) {
        pumps.set(name, undefined);
        const path = ['pumps', name];
        const sources = sourcesOf(reader, path, name, flows);
        const [from] = sources;
        const source = from === undefined ? undefined : vessels.get(from);
        if (pump === undefined || sources.size !== 1 || source === undefined)
            continue;
        const levels = readLevels(reader, path, pump, source, from === reservoir);
        if (levels === undefined)
            continue;
        const { timer } = pump;
        const offset = timer === undefined ? 0 : (timer.offset ?? reader.fallback([...path, 'timer', 'offset'], 0, '0 d'));
        pumps.set(name, compact({
            name,
            timer: timer === undefined ? undefined : { on: timer.on, off: timer.off, offset },
            ...levels,
        }));
    }
    return pumps;
}
//# sourceMappingURL=pumps.js.map