import type { RateSystem } from '../../packages/core/src/solve/contract.js';
import { reactionNetwork } from './reaction-network.js';

/** A seeded generator of numbers in 0..1 (Park & Miller 1988 [R]). */
export function drawsFrom(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

export interface RandomNetwork {
  readonly system: RateSystem;
  /** What each state holds of each conserved thing: totals of `contents[q][i] y[i]` stay. */
  readonly contents: readonly (readonly number[])[];
  readonly start: Float64Array;
}

/**
 * A mass-action network with two conserved things: each reaction turns one or two states into two others
 * in such amounts that both totals stay, with rate constants over six decades.
 */
export function randomNetwork(states: number, reactions: number, seed: number): RandomNetwork {
  const draw = drawsFrom(seed);
  const pick = (): number => Math.floor(draw() * states);
  const contents = [0, 1].map(() => Array.from({ length: states }, () => 0.2 + draw()));
  const list = Array.from({ length: reactions }, () => {
    const [from, other] = [pick(), pick()];
    let [one, two] = [pick(), pick()];
    let determinant = 0;
    while (Math.abs(determinant) < 0.1) {
      [one, two] = [pick(), pick()];
      determinant = contents[0][one] * contents[1][two] - contents[0][two] * contents[1][one];
    }
    const [a, b] = [contents[0][from], contents[1][from]];
    const first = (a * contents[1][two] - b * contents[0][two]) / determinant;
    const second = (b * contents[0][one] - a * contents[1][one]) / determinant;
    // What would be made in a negative amount is itself used up, so it belongs to the factors.
    const used = [from, ...(first < 0 ? [one] : []), ...(second < 0 ? [two] : [])];
    return {
      k: 10 ** (6 * draw() - 3),
      from: used.includes(other) ? used : [...used, other],
      moves: [
        [from, -1],
        [one, first],
        [two, second],
      ] as const,
    };
  });
  return {
    system: reactionNetwork(states, list),
    contents,
    start: Float64Array.from({ length: states }, () => 0.1 + draw()),
  };
}
