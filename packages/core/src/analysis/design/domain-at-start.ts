import type { Model } from '../../model/model.js';
import { limitsOf, type LimitResult } from '../../result/limits.js';
import { openRun } from '../../result/open-run.js';

/**
 * What a system is outside of at its start, of where the laws of the model were measured: nothing is simulated. Empty
 * where it begins inside.
 */
export function domainAtStart(model: Model): readonly LimitResult[] {
  return limitsOf(openRun(model).finish()).filter(({ harm, passed }) => harm === 'domain' && passed);
}
