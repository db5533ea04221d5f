import { deviate95, normalCdf } from '../base/normal.js';
import { quantile } from '../library/distributions.js';
/**
 * The number at a standard deviate: -1.645 is its 5 % point, 0 its median, 1.645 its 95 % point. So every prior is a
 * standard normal in the deviate, and hard bounds lie at infinity.
 */
export function valueAt(prior, deviate) {
    const side = deviate < 0 ? prior.low : prior.high;
    const turns = Math.abs(deviate) / deviate95;
    switch (prior.distribution) {
        // As `quantile`, without the way through a share, which has no room left beyond 8 deviates.
        case 'normal':
            return prior.value + turns * (side - prior.value);
        case 'lognormal':
            return prior.value * (side / prior.value) ** turns;
        default:
            return quantile(prior, normalCdf(deviate));
    }
}
/** What the water of a vessel may be fitted to hold at the start. */
export const startQuantities = [
    'ammonia',
    'nitrite',
    'nitrate',
    'alkalinity',
    'oxygen',
    'chloride',
    'solids',
    'settled',
];
//# sourceMappingURL=free-parameter.js.map