import { inhibition, inhibitionSlope, monod, monodSlope } from './rate-terms.js';
const bareDecayKernel = {
    rates: (all, v, r) => {
        for (const { count, row, at, k } of all) {
            for (let i = 0, n = 0; i < count; i++, n += 3) {
                r[row + i] = k[n] * monod(v[at[n]], k[n + 1]) * v[at[n + 1]] * inhibition(v[at[n + 2]], k[n + 2]);
            }
        }
    },
    partials: (all, v) => {
        for (const { count, at, k, d } of all) {
            for (let i = 0, n = 0; i < count; i++, n += 3) {
                const breath = k[n] * monod(v[at[n]], k[n + 1]);
                const bare = inhibition(v[at[n + 2]], k[n + 2]);
                d[n] = k[n] * monodSlope(v[at[n]], k[n + 1]) * v[at[n + 1]] * bare;
                d[n + 1] = breath * bare;
                d[n + 2] = breath * v[at[n + 1]] * inhibitionSlope(v[at[n + 2]], k[n + 2]);
            }
        }
    },
};
/** k0 M(O2; k1) X I(H; k2), of variables [O2, X, H]: cells that breathe themselves away where no heterotrophs cover them. */
export const bareDecay = {
    rate: (v, at, k) => k[0] * monod(v[at[0]], k[1]) * v[at[1]] * inhibition(v[at[2]], k[2]),
    partials: (v, at, k, d) => {
        const breath = k[0] * monod(v[at[0]], k[1]);
        const bare = inhibition(v[at[2]], k[2]);
        d[0] = k[0] * monodSlope(v[at[0]], k[1]) * v[at[1]] * bare;
        d[1] = breath * bare;
        d[2] = breath * v[at[1]] * inhibitionSlope(v[at[2]], k[2]);
    },
    kernel: bareDecayKernel,
};
/**
 * How the share of cells that are awake moves, 1/d, of variables [O2, awake]: k0 M(O2; k1) (1 - w) awakes them, and
 * k2 (1 - M)² w stuns them where air is lacking.
 */
export const waking = {
    rate: (v, at, k) => {
        const breath = monod(v[at[0]], k[1]);
        return k[0] * breath * (1 - v[at[1]]) - k[2] * (1 - breath) * (1 - breath) * v[at[1]];
    },
    partials: (v, at, k, d) => {
        const breath = monod(v[at[0]], k[1]);
        const slope = monodSlope(v[at[0]], k[1]);
        d[0] = slope * (k[0] * (1 - v[at[1]]) + 2 * k[2] * (1 - breath) * v[at[1]]);
        d[1] = -k[0] * breath - k[2] * (1 - breath) * (1 - breath);
    },
};
//# sourceMappingURL=resting.js.map