import { limitsOf } from '../../result/limits.js';
import { openRun } from '../../result/open-run.js';
/**
 * What a system is outside of at its start, of where the laws of the model were measured: nothing is simulated. Empty
 * where it begins inside.
 */
export function domainAtStart(model) {
    return limitsOf(openRun(model).finish()).filter(({ harm, passed }) => harm === 'domain' && passed);
}
//# sourceMappingURL=domain-at-start.js.map