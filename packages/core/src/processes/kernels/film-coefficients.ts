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

/** Heterotrophs that cover one half of a surface, g COD: half / (half + H) of it is left bare to nitrifiers. */
export function bareHalf(values: Values, { surface }: Conditions): number {
  return values.value('heterotroph.cover') * surface;
}
