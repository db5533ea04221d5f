import type { Fault } from '../base/faults.js';
import { nearest } from '../base/nearest.js';

/** What a run's summary calls quantities, by the name of their series. */
const summaryNames: Readonly<Record<string, string>> = {
  ...{ fish: 'fish-mass', crop: 'crop-mass', water: 'volume' },
  ...{ ammonia: 'tan', 'free-ammonia': 'un-ionised-ammonia' },
};

/**
 * What is wrong with the name of a series that there is none of: with the nearest of those there are, or where only a
 * quantity is named with the first series of it.
 */
export function noSeriesNamed(name: string, known: readonly string[]): Fault {
  const wanted = name
    .trim()
    .toLowerCase()
    .replace(/^[^@]+/, (quantity) => {
      const word = quantity.replace(' ', '-');
      return Object.hasOwn(summaryNames, word) ? summaryNames[word] : quantity;
    });
  const near = known.find((each) => each.toLowerCase().startsWith(`${wanted}@`)) ?? nearest(wanted, known);
  return {
    got: name,
    problem: 'no such series',
    expected: 'quantity@place, such as nitrate@sump',
    ...(near !== undefined && { nearest: near }),
  };
}
