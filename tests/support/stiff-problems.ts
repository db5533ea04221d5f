import type { RateSystem } from '../../packages/core/src/solve/contract.js';
import { plainSystem } from './plain-system.js';
import { reactionNetwork } from './reaction-network.js';
import type { Reaction } from './reaction-network.js';

/**
 * Stiff test problems. Source [R]: Mazzia & Magherini, Test Set for Initial Value Problem Solvers, Univ.
 * Bari, release 2.4 (2008); Hairer & Wanner, Solving ODEs II, section IV.10. The end values were computed
 * again elsewhere with SciPy Radau [C]; they agree within 5.1e-12 relative.
 */
export interface StiffProblem {
  readonly name: string;
  system(): RateSystem;
  readonly start: readonly number[];
  readonly end: number;
  readonly values: readonly number[];
  /** Absolute tolerance of each state, below the size that its values have. */
  readonly absolute: readonly number[];
}

const roberReactions: readonly Reaction[] = [
  {
    k: 0.04,
    from: [0],
    moves: [
      [0, -1],
      [1, 1],
    ],
  },
  {
    k: 1e4,
    from: [1, 2],
    moves: [
      [0, 1],
      [1, -1],
    ],
  },
  {
    k: 3e7,
    from: [1, 1],
    moves: [
      [1, -1],
      [2, 1],
    ],
  },
];

export const rober: StiffProblem = {
  name: 'ROBER',
  system: () => reactionNetwork(3, roberReactions),
  start: [1, 0, 0],
  end: 1e11,
  values: [0.2083340149701255e-7, 0.8333360770334713e-13, 0.999999979166505],
  absolute: [1e-18, 1e-24, 1e-12],
};

/** ROBER at every power of ten from 1 to 1e11: t, y1, y2, y3. */
export const roberTable: readonly (readonly [number, number, number, number])[] = [
  [1, 0.9664597373330035, 0.3074626578578675e-4, 0.3350951640121071e-1],
  [10, 0.8413699238414729, 0.1623390937990473e-4, 0.1586138422491472],
  [1e2, 0.6172348823960878, 0.6153591274639123e-5, 0.3827589640126376],
  [1e3, 0.3368745306607069, 0.2013702318261393e-5, 0.6631234556369748],
  [1e4, 0.107300428537804, 0.480016697257166e-6, 0.8926990914454987],
  [1e5, 0.1786592114209946e-1, 0.7274751468436319e-7, 0.9821340061103859],
  [1e6, 0.2031483924973415e-2, 0.8142277783356159e-8, 0.9979685079327488],
  [1e7, 0.2076093439016395e-3, 0.830607748506761e-9, 0.9997923898254906],
  [1e8, 0.208241751217946e-4, 0.8329841429908955e-10, 0.9999791757415798],
  [1e9, 0.2083229471647004e-5, 0.8332935037760723e-11, 0.9999979167621954],
  [1e10, 0.2083328471883087e-6, 0.8333315602809495e-12, 0.9999997916663195],
  [1e11, 0.2083340149701255e-7, 0.8333360770334713e-13, 0.999999979166505],
];

export const hires: StiffProblem = {
  name: 'HIRES',
  system: () =>
    reactionNetwork(8, [
      {
        k: 1.71,
        from: [0],
        moves: [
          [0, -1],
          [1, 1],
        ],
      },
      {
        k: 0.43,
        from: [1],
        moves: [
          [0, 1],
          [1, -1],
        ],
      },
      {
        k: 8.32,
        from: [2],
        moves: [
          [0, 1],
          [2, -1],
        ],
      },
      { k: 0.0007, from: [], moves: [[0, 1]] },
      {
        k: 8.32,
        from: [1],
        moves: [
          [1, -1],
          [3, 1],
        ],
      },
      {
        k: 1.71,
        from: [2],
        moves: [
          [2, -1],
          [3, 1],
        ],
      },
      {
        k: 0.43,
        from: [3],
        moves: [
          [3, -1],
          [2, 1],
        ],
      },
      {
        k: 0.035,
        from: [4],
        moves: [
          [4, -1],
          [2, 1],
        ],
      },
      {
        k: 0.69,
        from: [3],
        moves: [
          [3, -1],
          [5, 1],
        ],
      },
      {
        k: 1.71,
        from: [4],
        moves: [
          [4, -1],
          [5, 1],
        ],
      },
      {
        k: 0.43,
        from: [5],
        moves: [
          [5, -1],
          [4, 1],
        ],
      },
      {
        k: 0.43,
        from: [6],
        moves: [
          [4, 1],
          [6, -1],
          [7, 1],
        ],
      },
      {
        k: 280,
        from: [5, 7],
        moves: [
          [5, -1],
          [6, 1],
          [7, -1],
        ],
      },
      {
        k: 0.69,
        from: [6],
        moves: [
          [5, 1],
          [6, -1],
          [7, 1],
        ],
      },
      {
        k: 0.69,
        from: [6],
        moves: [
          [6, -1],
          [7, 1],
        ],
      },
    ]),
  start: [1, 0, 0, 0, 0, 0, 0, 0.0057],
  end: 321.8122,
  values: [
    0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4, 0.1175651343283149e-2,
    0.2386356198831331e-2, 0.6238968252742796e-2, 0.2849998395185769e-2, 0.2850001604814231e-2,
  ],
  absolute: new Array<number>(8).fill(1e-13),
};

const EPS = 1e-6;

export const vdpol: StiffProblem = {
  name: 'VDPOL',
  system: () =>
    plainSystem({
      states: 2,
      f: (_t, y) => [y[1], ((1 - y[0] * y[0]) * y[1] - y[0]) / EPS],
      jacobian: (_t, y) => [
        [0, 1],
        [(-2 * y[0] * y[1] - 1) / EPS, (1 - y[0] * y[0]) / EPS],
      ],
    }),
  start: [2, 0],
  end: 2,
  values: [0.1706167732170483e1, -0.8928097010247975],
  absolute: [1e-11, 1e-11],
};

export const orego: StiffProblem = {
  name: 'OREGO',
  system: () =>
    plainSystem({
      states: 3,
      f: (_t, y) => [
        77.27 * (y[1] + y[0] * (1 - 8.375e-6 * y[0] - y[1])),
        (y[2] - (1 + y[0]) * y[1]) / 77.27,
        0.161 * (y[0] - y[2]),
      ],
      jacobian: (_t, y) => [
        [77.27 * (1 - 2 * 8.375e-6 * y[0] - y[1]), 77.27 * (1 - y[0]), 0],
        [-y[1] / 77.27, -(1 + y[0]) / 77.27, 1 / 77.27],
        [0.161, 0, -0.161],
      ],
    }),
  start: [1, 2, 3],
  end: 360,
  values: [0.1000814870318523e1, 0.1228178521549917e4, 0.1320554942846706e3],
  absolute: [1e-11, 1e-11, 1e-11],
};

const pollutionReactions: readonly (readonly [
  number,
  readonly number[],
  readonly (readonly [number, number])[],
])[] = [
  [
    0.35,
    [1],
    [
      [1, -1],
      [2, 1],
      [3, 1],
    ],
  ],
  [
    26.6,
    [2, 4],
    [
      [1, 1],
      [2, -1],
      [4, -1],
    ],
  ],
  [
    12300,
    [5, 2],
    [
      [1, 1],
      [2, -1],
      [5, -1],
      [6, 1],
    ],
  ],
  [
    0.00086,
    [7],
    [
      [5, 2],
      [7, -1],
      [8, 1],
    ],
  ],
  [
    0.00082,
    [7],
    [
      [7, -1],
      [8, 1],
    ],
  ],
  [
    15000,
    [7, 6],
    [
      [5, 1],
      [6, -1],
      [7, -1],
      [8, 1],
    ],
  ],
  [
    0.00013,
    [9],
    [
      [5, 1],
      [8, 1],
      [9, -1],
      [10, 1],
    ],
  ],
  [
    24000,
    [9, 6],
    [
      [6, -1],
      [9, -1],
      [11, 1],
    ],
  ],
  [
    16500,
    [11, 2],
    [
      [1, 1],
      [2, -1],
      [10, 1],
      [11, -1],
      [12, 1],
    ],
  ],
  [
    9000,
    [11, 1],
    [
      [1, -1],
      [11, -1],
      [13, 1],
    ],
  ],
  [
    0.022,
    [13],
    [
      [1, 1],
      [11, 1],
      [13, -1],
    ],
  ],
  [
    12000,
    [10, 2],
    [
      [1, 1],
      [2, -1],
      [10, -1],
      [14, 1],
    ],
  ],
  [
    1.88,
    [14],
    [
      [5, 1],
      [7, 1],
      [14, -1],
    ],
  ],
  [
    16300,
    [1, 6],
    [
      [1, -1],
      [6, -1],
      [15, 1],
    ],
  ],
  [
    4.8e6,
    [3],
    [
      [3, -1],
      [4, 1],
    ],
  ],
  [
    3.5e-4,
    [4],
    [
      [4, -1],
      [16, 1],
    ],
  ],
  [
    0.0175,
    [4],
    [
      [3, 1],
      [4, -1],
    ],
  ],
  [
    1e8,
    [16],
    [
      [6, 2],
      [16, -1],
    ],
  ],
  [
    4.44e11,
    [16],
    [
      [3, 1],
      [16, -1],
    ],
  ],
  [
    1240,
    [17, 6],
    [
      [5, 1],
      [6, -1],
      [17, -1],
      [18, 1],
    ],
  ],
  [
    2.1,
    [19],
    [
      [2, 1],
      [19, -1],
    ],
  ],
  [
    5.78,
    [19],
    [
      [1, 1],
      [3, 1],
      [19, -1],
    ],
  ],
  [
    0.0474,
    [1, 4],
    [
      [1, -1],
      [4, -1],
      [19, 1],
    ],
  ],
  [
    1780,
    [19, 1],
    [
      [1, -1],
      [19, -1],
      [20, 1],
    ],
  ],
  [
    3.12,
    [20],
    [
      [1, 1],
      [19, 1],
      [20, -1],
    ],
  ],
];

/** POLLU with the numbering of the test set, from 1, in the rows above. */
export const pollu: StiffProblem = {
  name: 'POLLU',
  system: () =>
    reactionNetwork(
      20,
      pollutionReactions.map(([k, from, moves]) => ({
        k,
        from: from.map((i) => i - 1),
        moves: moves.map(([i, by]) => [i - 1, by] as const),
      })),
    ),
  start: [0, 0.2, 0, 0.04, 0, 0, 0.1, 0.3, 0.01, 0, 0, 0, 0, 0, 0, 0, 0.007, 0, 0, 0],
  end: 60,
  values: [
    0.5646255480022769e-1, 0.1342484130422339, 0.4139734331099427e-8, 0.5523140207484359e-2,
    0.2018977262302196e-6, 0.1464541863493966e-6, 0.7784249118997964e-1, 0.3245075353396018,
    0.7494013383880406e-2, 0.1622293157301561e-7, 0.1135863833257075e-7, 0.2230505975721359e-2,
    0.208716288279863e-3, 0.1396921016840158e-4, 0.8964884856898295e-2, 0.4352846369330103e-17,
    0.6899219696263405e-2, 0.1007803037365946e-3, 0.1772146513969984e-5, 0.5682943292316392e-4,
  ],
  absolute: new Array<number>(20).fill(1e-20),
};

export const stiffProblems: readonly StiffProblem[] = [rober, hires, vdpol, orego, pollu];
