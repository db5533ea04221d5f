import { noWork } from './contract.js';
import { checkTolerance, errorNorm, worstState } from './step-control.js';
import { firstStep } from './step-control.js';
import { RodasStep } from './rodas-step.js';
import { sparseLu } from './sparse-lu.js';
import { StepControl } from './step-control.js';
const MAX_STEPS = 100_000;
/** Steps shorter than this share of the time reached, or of the segment, are too small. */
const LEAST_OF_TIME = 16 * Number.EPSILON;
const LEAST_OF_SEGMENT = Number.EPSILON * Number.EPSILON;
class Rosenbrock {
    tolerance;
    options;
    name = 'rosenbrock';
    work = noWork();
    step;
    memory;
    control = new StepControl();
    gain;
    sampleY;
    sampleX;
    constructor(system, tolerance, options, makeSolver) {
        this.tolerance = tolerance;
        this.options = options;
        checkTolerance(tolerance, system.states);
        this.memory = this.control.memory;
        this.step = new RodasStep(system, this.work, makeSolver);
        this.gain = new Float64Array(system.rates);
        this.sampleY = new Float64Array(system.states);
        this.sampleX = new Float64Array(system.rates);
        this.restart();
    }
    restart() {
        this.control.restart(this.options?.firstStep);
    }
    advance(from, to, y, x, outputs) {
        if (!(to >= from))
            throw new RangeError(`cannot go from ${String(from)} to ${String(to)}`);
        const { step, control, work } = this;
        const maxSteps = this.options?.maxSteps ?? MAX_STEPS;
        control.beginSegment();
        let time = from;
        let tries = 0;
        let sampled = 0;
        while (time < to) {
            if (!step.begin(time, y))
                return { kind: 'not-finite', time, worst: step.failed };
            const least = Math.max(LEAST_OF_TIME * Math.abs(time), LEAST_OF_SEGMENT * (to - from));
            for (;;) {
                if (tries++ >= maxSteps)
                    return { kind: 'too-many-steps', time, worst: this.limiting(y) };
                const remaining = to - time;
                const h = control.fit(remaining, control.natural ?? this.guess(y, remaining));
                const failure = this.try(h, y);
                if (failure === undefined) {
                    const reached = h === remaining ? to : time + h;
                    if (outputs !== undefined)
                        sampled = this.sample(outputs, sampled, time, reached, x);
                    y.set(step.next);
                    for (let k = 0; k < x.length; k++)
                        x[k] += this.gain[k];
                    time = reached;
                    work.steps++;
                    break;
                }
                work.rejected++;
                if (!(control.retry > least)) {
                    const worst = failure === 'step-too-small' ? this.limiting(y) : step.failed;
                    return { kind: failure, time, worst };
                }
            }
        }
        return { kind: 'done' };
    }
    /** Tries one step and tells the step control; undefined when it is accepted. */
    try(h, y) {
        const { step, control } = this;
        const attempt = step.attempt(h);
        const outcome = attempt === 'computed' && !step.extents(1, this.gain) ? 'not-finite' : attempt;
        const error = outcome === 'computed' ? errorNorm(step.error, y, step.next, this.tolerance) : NaN;
        if (outcome === 'computed' && error <= 1) {
            control.accept(h, error);
            return undefined;
        }
        if (outcome === 'computed' && error < Infinity) {
            control.reject(h, error);
            return 'step-too-small';
        }
        control.fail(h);
        return outcome === 'computed' ? 'step-too-small' : outcome;
    }
    guess(y, span) {
        const slope = this.sampleY;
        const bend = new Float64Array(y.length);
        this.step.derivatives(slope, bend);
        const guess = firstStep(y, slope, bend, this.tolerance, span);
        this.control.natural = guess;
        return guess;
    }
    /** Delivers the samples in (time, reached]; returns how many are delivered in all. */
    sample(outputs, from, time, reached, x) {
        const { times } = outputs;
        let next = from;
        for (; next < times.length && times[next] <= reached; next++) {
            const share = (times[next] - time) / (reached - time);
            this.step.solution(share, this.sampleY);
            this.step.extents(share, this.sampleX);
            for (let k = 0; k < x.length; k++)
                this.sampleX[k] += x[k];
            outputs.take(times[next], this.sampleY, this.sampleX);
        }
        return next;
    }
    limiting(y) {
        return worstState(this.step.error, y, this.tolerance);
    }
}
/** As `rosenbrock`, with the linear solver chosen by the caller. */
export function rosenbrockWith(makeSolver) {
    return (system, tolerance, options) => new Rosenbrock(system, tolerance, options, makeSolver);
}
/**
 * The stiff integrator: RODAS of order 4(3) with exact Jacobian, error control by step size, and dense
 * output of order 3. `maxSteps` bounds the tries in one segment (100,000 unless said otherwise).
 */
export const rosenbrock = /* @__PURE__ */ rosenbrockWith(sparseLu);
//# sourceMappingURL=rosenbrock.js.map