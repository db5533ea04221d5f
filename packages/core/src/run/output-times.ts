import { INSTANT } from '../base/instant.js';

/** Output times from 0 to the end, the end included. */
export function outputTimes(days: number, every: number): readonly number[] {
  const count = Math.floor(days / every + INSTANT);
  const times = Array.from({ length: count + 1 }, (_, index) => index * every);
  if (days - times[count] > INSTANT) times.push(days);
  else times[count] = days;
  return times;
}
