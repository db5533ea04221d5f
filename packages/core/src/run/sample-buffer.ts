import { INSTANT } from '../base/instant.js';

/** Hands out the arrays in which the samples of a run are kept. */
export interface SampleBuffer {
  /** An array of so many numbers, which hold whatever they held. */
  array(size: number): Float64Array;
}

/** Buffers that are used anew. */
export interface ReusedBuffer extends SampleBuffer {
  /** Takes all arrays back: whatever they held is lost as they are handed out again. */
  clear(): void;
}

/** A buffer of fresh arrays. */
export const freshBuffer: SampleBuffer = { array: (size) => new Float64Array(size) };

/**
 * A buffer that hands out the same arrays again after `clear`, for runs that are read out one after another: the
 * members of an ensemble then leave next to nothing to be swept up.
 */
export function reusedBuffer(): ReusedBuffer {
  const arrays: Float64Array[] = [];
  let next = 0;
  return {
    array(size) {
      const place = next++;
      const kept = arrays[place] as Float64Array | undefined;
      if (kept?.length === size) return kept;
      return (arrays[place] = new Float64Array(size));
    },
    clear() {
      next = 0;
    },
  };
}

/** Output times from 0 to the end, the end included. */
export function outputTimes(days: number, every: number): readonly number[] {
  const count = Math.floor(days / every + INSTANT);
  const times = Array.from({ length: count + 1 }, (_, index) => index * every);
  if (days - times[count] > INSTANT) times.push(days);
  else times[count] = days;
  return times;
}
