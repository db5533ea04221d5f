import type { Fault } from '../base/faults.js';
import { nearest } from '../base/nearest.js';

/**
 * What is wrong with the name of a series that there is none of: with the nearest of those there are, or where only a
 * quantity is named with the first series of it.
 */
export function noSeriesNamed(name: string, known: readonly string[]): Fault {
  const wanted = name.trim().toLowerCase();
  const near = known.find((each) => each.toLowerCase().startsWith(`${wanted}@`)) ?? nearest(name, known);
  return {
    got: name,
    problem: 'no such series',
    expected: 'quantity@place, such as nitrate@sump',
    ...(near !== undefined && { nearest: near }),
  };
}
