import { formatQuantity } from '../../base/units.js';
const written = (volume) => formatQuantity(volume, 'volume');
/** Whether the lower outlet of a vessel lies below its standpipe; a fault where it does not. */
export function checkDrain(report, path, to, volume) {
    if (to < volume)
        return true;
    report.fault([...path, 'drain', 'to'], 'not below the volume', {
        expected: 'less than the volume of the vessel',
    });
    return false;
}
/** Whether a bed drains no more than it holds, and does so in one way; a fault where not. */
export function checkFlood(report, path, drained, { volume, drain }) {
    if (drain !== undefined)
        report.fault([...path, 'flood'], 'a bed drains by `drain` or, averaged, by `flood`', {
            expected: 'one of both',
        });
    if (drained > volume)
        report.fault([...path, 'flood', 'drained'], 'more than the vessel holds', {
            expected: `at most ${written(volume)}`,
        });
    return drain === undefined && drained <= volume;
}
/** Checks where a pump sucks air and starts again against what its vessel holds; what is absent is not judged. */
export function checkPumpLevels(report, path, { inlet, restart }, { name, volume }) {
    const limit = written(volume);
    if (inlet !== undefined && inlet >= volume) {
        report.fault([...path, 'inlet'], `inlet above the water of ${name}`, { expected: `less than ${limit}` });
    }
    else if (restart !== undefined && restart <= (inlet ?? 0)) {
        report.fault([...path, 'restart'], 'not above the inlet', { expected: `between inlet and ${limit}` });
    }
    else if (restart !== undefined && restart > volume) {
        report.fault([...path, 'restart'], `above the water of ${name}`, { expected: `at most ${limit}` });
    }
}
/** Checks that the float closes below the overflow of the reservoir, and that it has a supply. */
export function checkFloat(report, path, level, from, reservoir) {
    if (from.count === 0)
        report.fault(from.path, 'an empty list', { expected: 'at least one supply' });
    if (reservoir !== undefined && level > reservoir.volume) {
        const expected = `at most ${written(reservoir.volume)}`;
        report.fault([...path, 'level'], `above the overflow of ${reservoir.name}`, { expected });
    }
}
/** Checks that a rain tank holds no more than it can. */
export function checkRainTank(report, path, { volume, capacity }) {
    if (volume > capacity)
        report.fault([...path, 'volume'], 'more than the tank holds', {
            expected: `at most ${written(capacity)}`,
        });
}
/** Checks the water that a vessel starts with: only the reservoir may be low. */
export function checkStartVolume(report, path, volume, vessel, isReservoir) {
    const limit = written(vessel.volume);
    if (!isReservoir && volume !== vessel.volume) {
        report.fault(path, 'only the reservoir may start below its full volume', { expected: limit });
    }
    else if (volume > vessel.volume)
        report.fault(path, 'more than the vessel holds', { expected: `at most ${limit}` });
}
/** What is wrong with the shares of the room that the two groups of nitrifiers take at the start, if anything. */
export function roomProblem({ aob, nob, }) {
    return aob + nob > 1 ? 'the shares of the room pass 1' : undefined;
}
//# sourceMappingURL=levels.js.map