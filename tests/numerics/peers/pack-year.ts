import { absoluteTolerances } from '../../../packages/core/src/run/tolerances.js';
import type { Recording } from './record-year.js';
import type { Shape } from './shape.js';

/**
 * A recorded year as one array of doubles, for a program in another language:
 *   header        number of segments, doubles in a regime, states, days
 *   tolerances    absolute tolerance of each state at a relative tolerance of 1
 *   start         state at the start
 *   segments     each: from, to, place of its jump in this array or -1, regime (`shape.pack`)
 *   jumps         each: number of rows, state before; rows: state, value, number of slopes, (state, slope)...
 */
export function packYear({ model, segments }: Recording, shape: Shape): Float64Array {
  const states = model.layout.states.length;
  const days = Math.round(segments[segments.length - 1].to);
  const head = [segments.length, shape.size, states, days];
  const fixed = [...head, ...absoluteTolerances(model, 1), ...segments[0].start];
  let next = fixed.length + segments.length * (3 + shape.size);
  const jumps: number[][] = [];
  const packed = segments.map(({ from, to, regime, jump }) => {
    const place = jump === undefined ? -1 : next;
    if (jump !== undefined) {
      const rows = jump.rows.flatMap(({ state, value, slopes }) => [
        state,
        value,
        slopes.length,
        ...slopes.flat(),
      ]);
      const block = [jump.rows.length, ...jump.before, ...rows];
      jumps.push(block);
      next += block.length;
    }
    return [from, to, place, ...shape.pack(regime)];
  });
  return Float64Array.from([fixed, ...packed, ...jumps].flat());
}
