import type { ElementaryEffects } from './morris.js';

/**
 * Places of the inputs that matter in a screening: those that move the outcome by at least a `share` (0..1)
 * of what the strongest does, the strongest first, no more than so many (`most`); none where nothing moves it.
 */
export function fewOf(
  effects: readonly Pick<ElementaryEffects, 'muStar'>[],
  { share = 0.1, most = 8 }: { readonly share?: number; readonly most?: number } = {},
): readonly number[] {
  const order = effects
    .map(({ muStar }, input) => ({ muStar, input }))
    .filter(({ muStar }) => muStar > 0)
    .sort((a, b) => b.muStar - a.muStar);
  return order
    .filter(({ muStar }) => muStar >= share * order[0].muStar)
    .slice(0, most)
    .map(({ input }) => input);
}
