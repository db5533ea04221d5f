import { reactionNetwork } from './reaction-network.js';
import type { Reaction } from './reaction-network.js';
import type { StiffProblem } from './stiff-problem.js';

// prettier-ignore
const reactions: readonly Reaction[] = [
  { k: 1.71, from: [0], moves: [[0, -1], [1, 1]] },
  { k: 0.43, from: [1], moves: [[0, 1], [1, -1]] },
  { k: 8.32, from: [2], moves: [[0, 1], [2, -1]] },
  { k: 0.0007, from: [], moves: [[0, 1]] }, { k: 8.32, from: [1], moves: [[1, -1], [3, 1]] },
  { k: 1.71, from: [2], moves: [[2, -1], [3, 1]] },
  { k: 0.43, from: [3], moves: [[3, -1], [2, 1]] },
  { k: 0.035, from: [4], moves: [[4, -1], [2, 1]] },
  { k: 0.69, from: [3], moves: [[3, -1], [5, 1]] },
  { k: 1.71, from: [4], moves: [[4, -1], [5, 1]] },
  { k: 0.43, from: [5], moves: [[5, -1], [4, 1]] },
  { k: 0.43, from: [6], moves: [[4, 1], [6, -1], [7, 1]] },
  { k: 280, from: [5, 7], moves: [[5, -1], [6, 1], [7, -1]] },
  { k: 0.69, from: [6], moves: [[5, 1], [6, -1], [7, 1]] },
  { k: 0.69, from: [6], moves: [[6, -1], [7, 1]] },
];

export const hires: StiffProblem = {
  name: 'HIRES',
  system: () => reactionNetwork(8, reactions),
  start: [1, 0, 0, 0, 0, 0, 0, 0.0057],
  end: 321.8122,
  values: [
    0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4, 0.1175651343283149e-2,
    0.2386356198831331e-2, 0.6238968252742796e-2, 0.2849998395185769e-2, 0.2850001604814231e-2,
  ],
  absolute: new Array<number>(8).fill(1e-13),
};
