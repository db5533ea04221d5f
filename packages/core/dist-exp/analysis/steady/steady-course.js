import { INSTANT } from '../../base/instant.js';
import { absoluteTolerances } from '../../run/tolerances.js';
import { rosenbrock } from '../../solve/rosenbrock.js';
import { enter } from './cycle.js';
/** Least length of the course, d: the longest averaging time of a limit. */
const MONTH = 30;
const HOUR = 1 / 24;
const TOLERANCE = 1e-9;
/**
 * A month of a state that lasts, in the form of a run, so that series, limits and measures read it like any other:
 * a sample a day where it is constant, one an hour (and at each jump) where it repeats. Integrated, not assumed:
 * what did not come back would be seen.
 */
export function steadyCourse(model, cycle, system, from) {
    const { layout, streams, rows } = model;
    const y = Float64Array.from(from);
    const x = new Float64Array(system.rates);
    const carried = new Float64Array(streams.length);
    const samples = [];
    const integrator = rosenbrock(system, {
        relative: TOLERANCE,
        absolute: absoluteTolerances(model, TOLERANCE),
    });
    const take = (segment, since, time, atY, atX) => {
        samples.push({
            time,
            y: Float64Array.from(atY),
            x: Float64Array.from(atX.subarray(0, rows.length)),
            volume: segment.volume.map((volume, vessel) => volume + segment.slope[vessel] * since),
            carried: carried.map((volume, s) => volume + segment.flow[s] * since),
            rain: segment.rain,
            spilled: 0,
            posted: 0,
            temperature: cycle.temperature,
            ionic: cycle.ionic,
            fed: segment.fed,
            evapotranspiration: streams.reduce((sum, stream, s) => stream.kind === 'evaporation' || stream.kind === 'transpiration' ? sum + segment.flow[s] : sum, 0),
        });
    };
    const step = cycle.constant ? 1 : HOUR;
    take(cycle.segments[0], 0, 0, y, x);
    for (let begun = 0; begun < MONTH; begun += cycle.period) {
        for (const segment of cycle.segments) {
            enter(cycle.regime, segment);
            const length = segment.to - segment.from;
            const inside = Array.from({ length: Math.ceil(segment.to / step) }, (_, i) => i * step).filter((time) => time > segment.from + INSTANT && time < segment.to - INSTANT);
            integrator.restart();
            integrator.advance(segment.from, segment.to, y, x, {
                times: inside,
                take: (at, atY, atX) => {
                    take(segment, at - segment.from, begun + at, atY, atX);
                },
            });
            take(segment, length, begun + segment.to, y, x);
            segment.flow.forEach((flow, s) => (carried[s] += flow * length));
        }
    }
    return {
        model,
        outcome: { kind: 'done', time: samples[samples.length - 1].time },
        samples,
        postings: [],
        doses: [],
        events: [],
        ages: new Float64Array(layout.batches.length).fill(Number.NaN),
        work: { ...integrator.work },
        integrator: integrator.name,
        tolerance: TOLERANCE,
    };
}
//# sourceMappingURL=steady-course.js.map