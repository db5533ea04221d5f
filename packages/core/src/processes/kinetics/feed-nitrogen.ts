import type { Values } from '../../model/composition.js';

/** Nitrogen of feed, g N per g: protein x nitrogen in protein (0.16: the 6.25 convention). */
export function feedNitrogen(values: Values): number {
  return values.value('feed.protein') * values.value('protein.nitrogen');
}
