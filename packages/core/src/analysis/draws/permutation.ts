import { mix } from './hash.js';

const rounds = 6;

/**
 * The place of i in a random order of 0 .. n-1, worked out alone, so that no order of a million need be
 * kept: a Feistel network over the next power of four (Luby and Rackoff 1988), gone through again until it
 * ends below n (cycle walking).
 * @param n 1 to 2^32
 */
export function placeOf(i: number, n: number, key: number): number {
  const half = Math.max(1, Math.ceil(Math.log2(n) / 2));
  const size = 2 ** half;
  let place = i;
  do {
    let left = Math.floor(place / size);
    let right = place % size;
    for (let round = 0; round < rounds; round++) {
      const next = (left ^ mix(right ^ mix(key + round))) & (size - 1);
      left = right;
      right = next;
    }
    place = left * size + right;
  } while (place >= n);
  return place;
}
