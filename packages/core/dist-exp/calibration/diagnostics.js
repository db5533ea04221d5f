import { group, median } from 'd3-array';
import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';
import { dateAfter } from '../base/calendar.js';
import { deviate95 } from '../base/normal.js';
import { soughtOf } from './fit-problem.js';
import { valueAt } from './free-parameter.js';
import { lossOf } from './reading-loss.js';
import { differences } from './search.js';
/** Curvature of the losses over standard deviates, the priors' included. */
export function informationOf(jacobian, curvature) {
    const information = Matrix.eye(jacobian.columns);
    for (let i = 0; i < jacobian.rows; i++) {
        for (let j = 0; j < jacobian.columns; j++) {
            for (let k = 0; k < jacobian.columns; k++) {
                information.set(j, k, information.get(j, k) + curvature[i] * jacobian.get(i, j) * jacobian.get(i, k));
            }
        }
    }
    return information;
}
/** Covariance of the deviates: the inverse of the information, whose eigenvalues are never below 1. */
export function covarianceOf(information) {
    return inverse(information);
}
/** Correlations of a covariance. */
function correlationsOf(covariance) {
    const size = covariance.rows;
    return Array.from({ length: size }, (_, j) => Array.from({ length: size }, (__, k) => covariance.get(j, k) / Math.sqrt(covariance.get(j, j) * covariance.get(k, k))));
}
/** A root of a covariance: R with R Rᵀ = C, to draw with. */
export function rootOf(covariance) {
    const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(covariance, {
        assumeSymmetric: true,
    });
    return eigenvectorMatrix.mmul(Matrix.diag(realEigenvalues.map((value) => Math.sqrt(Math.max(value, 0)))));
}
/** What one reading is worth, by the covariance as it stands (linear in the deviates). */
function worthOf(candidate, covariance, names, dateOf) {
    const { reads, vessel, time, variance, row } = candidate;
    const size = names.length;
    const along = names.map((_, j) => {
        let sum = 0;
        for (let k = 0; k < size; k++)
            sum += covariance.get(j, k) * row[k];
        return sum;
    });
    const spread = along.reduce((sum, each, j) => sum + each * row[j], 0);
    const shares = along.map((each, j) => 1 - Math.sqrt(Math.max(1 - (each * each) / ((variance + spread) * covariance.get(j, j)), 0)));
    const best = shares.reduce((most, share, j) => (share > shares[most] ? j : most), 0);
    return {
        reads,
        vessel,
        date: dateOf(time),
        bits: Math.log2(1 + spread / variance) / 2,
        narrows: { name: names[best], share: shares[best] },
    };
}
/** Above this share of its prior's standard deviation a number has learned next to nothing. */
const unmoved = 0.9;
/** Correlation beyond which two numbers count as one. */
const asOne = 0.95;
/** Residuals beyond this many spreads count as spoilt. */
const spoiltBeyond = 5;
const testable = ['ammonia', 'nitrite', 'nitrate', 'pH', 'alkalinity', 'oxygen'];
function numberOf(free, deviate, deviation) {
    const verdict = deviation > unmoved ? 'stays' : Math.abs(deviate) > deviation ? 'moved' : 'narrowed';
    return {
        ...free,
        value: valueAt(free.prior, deviate),
        deviate,
        deviation,
        low: valueAt(free.prior, deviate - deviate95 * deviation),
        high: valueAt(free.prior, deviate + deviate95 * deviation),
        verdict,
    };
}
/** Reading less model in spreads of kit and step; undefined where a bound is open. */
function residualOf({ reading }, predicted, problem) {
    const { low, high, reads } = reading;
    if (!Number.isFinite(low) || !Number.isFinite(high))
        return undefined;
    const kit = problem.errorOf(reads).deviation(predicted);
    return ((low + high) / 2 - predicted) / Math.hypot(kit, (high - low) / Math.sqrt(12));
}
function coursesOf(problem, predicted) {
    const indexed = problem.observations.map((observation, i) => ({ observation, i }));
    return [
        ...group(indexed, ({ observation: { reading } }) => `${reading.reads}@${reading.vessel}`).values(),
    ].map((own) => {
        const { reads, vessel } = own[0].observation.reading;
        const residuals = own
            .map(({ observation, i }) => residualOf(observation, predicted[i], problem))
            .filter((each) => each !== undefined);
        const count = own.length;
        if (residuals.length < 5)
            return { reads, vessel, count };
        // The median of the absolute normal deviate is 0.6745.
        return {
            reads,
            vessel,
            count,
            spread: (median(residuals, Math.abs) ?? Number.NaN) / 0.6745,
            offset: median(residuals) ?? Number.NaN,
        };
    });
}
/** Tests that could be made on the days ahead, where the log tests already. */
function candidatesOf(problem) {
    const vessels = [...new Set(problem.observations.map(({ vessel }) => vessel))].sort((a, b) => a - b);
    const { ahead } = problem;
    const last = problem.days - ahead - 1;
    return vessels.flatMap((vessel) => testable.flatMap((reads) => Array.from({ length: ahead }, (_, i) => ({ reads, vessel, time: last + 1 + i }))));
}
function nextTests(problem, candidates, predicted, jacobian, covariance) {
    const steps = new Map([...group(problem.observations, ({ reading }) => reading.reads)].map(([reads, own]) => {
        const widths = own.map(({ reading: { low, high } }) => high - low).filter(Number.isFinite);
        return [reads, median(widths) ?? 0];
    }));
    const first = problem.observations.length;
    const names = problem.free.map(({ name }) => name);
    const dateOf = (time) => dateAfter(problem.scenario.startDate, time);
    const worth = candidates.map(({ reads, vessel, time }, i) => {
        const kit = problem.errorOf(reads).deviation(predicted[first + i]);
        const candidate = {
            reads,
            vessel: problem.scenario.vessels[vessel].name,
            time,
            variance: kit ** 2 + (steps.get(reads) ?? 0) ** 2 / 12,
            row: jacobian.getRow(first + i),
        };
        return worthOf(candidate, covariance, names, dateOf);
    });
    const best = [...group(worth, ({ reads, vessel }) => `${reads}@${vessel}`).values()].map((own) => own.reduce((most, each) => (each.bits > most.bits ? each : most)));
    return best.sort((a, b) => b.bits - a.bits);
}
/**
 * What a log tells at a minimum: bands, what moved, what is entangled, how readings lie about the model, which are taken
 * for spoilt, and which test to make next. Bands are those of the curvature there (Laplace), in the deviates.
 * @param problem made with days ahead for the tests
 * @param step of the central differences, in deviates
 */
export function diagnosticsOf(problem, minimum, step) {
    const { free, observations } = problem;
    const candidates = candidatesOf(problem);
    const sought = [...soughtOf(observations), ...candidates];
    const predict = (at) => problem.predict(at, sought);
    const predicted = predict(minimum.at);
    if (predicted === undefined)
        throw new RangeError('the run breaks off in the days after the log');
    const jacobian = differences(predict, minimum.at, predicted, () => step, true);
    const curvature = observations.map(({ reading: { low, high, reads } }, i) => lossOf(low, high, predicted[i], problem.errorOf(reads)).curvature);
    const read = jacobian.subMatrix(0, observations.length - 1, 0, free.length - 1);
    const covariance = covarianceOf(informationOf(read, curvature));
    const correlations = correlationsOf(covariance);
    const entangled = free.flatMap(({ name: a }, j) => free.flatMap(({ name: b }, k) => k > j && Math.abs(correlations[j][k]) > asOne ? [{ a, b, correlation: correlations[j][k] }] : []));
    return {
        numbers: free.map((each, j) => numberOf(each, minimum.at[j], Math.sqrt(covariance.get(j, j)))),
        covariance: covariance.to2DArray(),
        entangled,
        courses: coursesOf(problem, predicted),
        spoilt: observations.flatMap((observation, i) => {
            const residual = residualOf(observation, predicted[i], problem);
            const { row, column, text } = observation.reading;
            return residual !== undefined && Math.abs(residual) > spoiltBeyond
                ? [{ row, column, text, predicted: predicted[i] }]
                : [];
        }),
        nextTests: nextTests(problem, candidates, predicted, jacobian, covariance),
    };
}
//# sourceMappingURL=diagnostics.js.map