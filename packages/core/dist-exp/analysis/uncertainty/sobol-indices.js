import { mean } from 'd3-array';
import { createRandom } from '../../base/random.js';
import { quantilesOf } from './quantiles.js';
import { openSampling } from './sampling.js';
import { moved } from './one-at-a-time.js';
/**
 * The points of Saltelli's scheme: for each of N `basePoints`, one point of sample A, one of B, and A with
 * each input in turn from B: `inputs` + 2 points a base point, together. A and B are halves of one Sobol
 * sequence moved by `seed`. Throws InputError for a number of base points that cannot be, and more than 400 inputs.
 */
export function sobolDesign(inputs, basePoints, seed) {
    const ids = Array.from({ length: 2 * inputs }, (_, i) => `input ${i}`);
    const draw = openSampling({ method: 'sobol', members: basePoints, seed }, ids);
    return Array.from({ length: basePoints }, (_, j) => {
        const u = draw(j);
        const a = u.slice(0, inputs);
        const b = u.slice(inputs);
        const mixed = Array.from({ length: inputs }, (__, i) => moved(a, i, b[i]));
        return [a, b, ...mixed];
    }).flat();
}
/** The estimators of one input over some base points. */
function indicesOver(rows, input) {
    const all = rows.flatMap((row) => [row[0], row[1]]);
    const centre = mean(all) ?? Number.NaN;
    const variance = mean(all, (value) => (value - centre) ** 2) ?? Number.NaN;
    const first = mean(rows, (row) => (row[1] - centre) * (row[input + 2] - row[0])) ?? Number.NaN;
    const total = mean(rows, (row) => (row[0] - row[input + 2]) ** 2 / 2) ?? Number.NaN;
    return { first: first / variance, total: total / variance };
}
function estimate(value, resampled) {
    const [low, high] = quantilesOf(resampled, [0.025, 0.975]);
    return { value, low, high };
}
/**
 * First and total Sobol indices from the outcomes at the points of `sobolDesign`: first by Saltelli et al.
 * (Computer Physics Communications 181, 2010, table 2 b), total by Jansen (same, table 2 f), intervals by
 * bootstrap over base points. A base point with a NaN among its outcomes is left out whole. An estimate
 * may lie a little outside 0..1; NaN where the outcome does not vary.
 * @param inputs how many, as given to `sobolDesign`
 * @param options `seed` and number of `resamples` (default 200) of the bootstrap
 */
export function sobolIndices(inputs, outcomes, options) {
    const width = inputs + 2;
    const rows = Array.from({ length: outcomes.length / width }, (_, j) => Float64Array.from({ length: width }, (__, i) => outcomes[j * width + i])).filter((row) => !row.some(Number.isNaN));
    const random = createRandom(options.seed);
    const picks = Array.from({ length: options.resamples ?? 200 }, () => rows.map(() => rows[Math.floor(random() * rows.length)]));
    const indices = Array.from({ length: inputs }, (_, input) => {
        const { first, total } = indicesOver(rows, input);
        const again = picks.map((picked) => indicesOver(picked, input));
        return {
            first: estimate(first, again.map((each) => each.first)),
            total: estimate(total, again.map((each) => each.total)),
        };
    });
    return { indices, used: rows.length };
}
//# sourceMappingURL=sobol-indices.js.map