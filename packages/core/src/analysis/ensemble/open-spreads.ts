import { binnedSpreads } from './binned-spreads.js';
import { exactSpreads } from './exact-spreads.js';
import { mostExact, type Spreads } from './spreads.js';

/** Spreads of cells over members: exact for up to 128, binned for more. */
export function openSpreads(cells: number, members: number): Spreads {
  return members <= mostExact ? exactSpreads(cells, members) : binnedSpreads(cells, members);
}
