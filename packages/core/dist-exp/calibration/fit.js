import { scenarioHash, version } from '../result/record.js';
import { openFitProblem } from './fit-problem.js';
import { differenceStep, enough, searchProblem } from './search.js';
import { minimaFrom } from './search.js';
import { logHash } from './readings.js';
import { diagnosticsOf } from './diagnostics.js';
/** Days ahead in which a further test is looked for. */
const testsAhead = 28;
/**
 * Fits a system to a log: the numbers with the highest posterior probability (ranges of the tables as priors, readings
 * as intervals of a kit that errs and is sometimes spoilt), with what the log tells of them.
 * @throws InputError as openFitProblem does; RangeError where the model breaks off at the middle of the priors
 */
export function fit(request) {
    const { log, furtherStarts = 1, seed = 1 } = request;
    const problem = openFitProblem(request);
    const minima = minimaFrom(searchProblem(problem), furtherStarts, seed, {
        gain: enough,
        most: 30,
        carryOn: true,
    });
    const best = minima.reduce((low, each) => (each.value < low.value ? each : low));
    const all = minima.map(({ value, converged, steps }) => ({ value, converged, steps }));
    const ahead = openFitProblem(request, testsAhead);
    const diagnostics = diagnosticsOf(ahead, best, differenceStep);
    return {
        title: problem.scenario.title,
        provenance: {
            version,
            scenario: scenarioHash(request.system.read([]).scenario),
            log: logHash(log, problem.until),
            from: log.from,
            until: problem.until,
            free: problem.free.map(({ name }) => name),
            unloggedFeed: request.unloggedFeed ?? 'last',
            starts: all.length,
            seed,
        },
        readings: problem.observations.length,
        starts: all,
        notes: [
            ...problem.notes,
            ...(all.every(({ converged }) => converged) ? [] : ['warning: a search stopped before it was at rest']),
        ],
        ...diagnostics,
    };
}
//# sourceMappingURL=fit.js.map