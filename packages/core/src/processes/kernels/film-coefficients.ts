import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import { arrhenius } from './rate-terms.js';

/** What comes to a film through still water. */
export type Coming = 'tan' | 'oxygen' | 'dissolved';

/** Water that transfer to the film of a surface would clear of a substance, m3 d-1: velocity x surface. */
export function transferOf(values: Values, { surface, temperature }: Conditions, coming: Coming): number {
  const ofTan =
    values.value('biofilm.transfer') *
    arrhenius(values.value('biofilm.transfer-theta'), temperature) *
    surface;
  return coming === 'tan' ? ofTan : ofTan * values.value(`biofilm.transfer-${coming}`);
}

/**
 * What heterotrophs H leave bare of a surface to nitrifiers, 1 - most H / (half + H): [half (g COD), most]. Where there is
 * much organic matter the rate of nitrifiers falls by so much and no more (Zhu & Chen 2001).
 */
export function covering(values: Values, { surface }: Conditions): readonly [number, number] {
  return [values.value('heterotroph.cover') * surface, values.value('heterotroph.cover-most')];
}
