/** A nonlinear regression problem with certified values: NIST Statistical Reference Datasets, nonlinear regression. */
export interface Certified {
  readonly name: string;
  readonly level: 'lower' | 'higher';
  readonly model: (x: number, b: ArrayLike<number>) => number;
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly starts: readonly (readonly number[])[];
  /** A published start from which the method does not get there, and where it ends. */
  readonly missed?: { readonly start: readonly number[]; readonly why: string };
  readonly values: readonly number[];
  readonly deviations?: readonly number[];
  /** Residual sum of squares. */
  readonly squares: number;
}

const range = (from: number, step: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + step * i);

/** Seven of the problems, six of the higher level of difficulty; data of the U.S. government, free to use. */
export const certified: readonly Certified[] = [
  {
    name: 'Misra1a',
    level: 'lower',
    model: (x, b) => b[0] * (1 - Math.exp(-b[1] * x)),
    x: [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0],
    y: [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78],
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    values: [2.3894212918e2, 5.5015643181e-4],
    deviations: [2.7070075241, 7.2668688436e-6],
    squares: 1.2455138894e-1,
  },
  {
    name: 'MGH09',
    level: 'higher',
    model: (x, b) => (b[0] * (x * x + x * b[1])) / (x * x + x * b[2] + b[3]),
    x: [4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625],
    y: [0.1957, 0.1947, 0.1735, 0.16, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246],
    starts: [
      [25, 39, 41.5, 39],
      [0.25, 0.39, 0.415, 0.39],
    ],
    values: [1.9280693458e-1, 1.9128232873e-1, 1.2305650693e-1, 1.3606233068e-1],
    deviations: [1.1435312227e-2, 1.9633220911e-1, 8.0842031232e-2, 9.0025542308e-2],
    squares: 3.0750560385e-4,
  },
  {
    name: 'Thurber',
    level: 'higher',
    model: (x, b) =>
      (b[0] + b[1] * x + b[2] * x ** 2 + b[3] * x ** 3) / (1 + b[4] * x + b[5] * x ** 2 + b[6] * x ** 3),
    x: [
      -3.067, -2.981, -2.921, -2.912, -2.84, -2.797, -2.702, -2.699, -2.633, -2.481, -2.363, -2.322, -1.501,
      -1.46, -1.274, -1.212, -1.1, -1.046, -0.915, -0.714, -0.566, -0.545, -0.4, -0.309, -0.109, -0.103, 0.01,
      0.119, 0.377, 0.79, 0.963, 1.006, 1.115, 1.572, 1.841, 2.047, 2.2,
    ],
    y: [
      80.574, 84.248, 87.264, 87.195, 89.076, 89.608, 89.868, 90.101, 92.405, 95.854, 100.696, 101.06,
      401.672, 390.724, 567.534, 635.316, 733.054, 759.087, 894.206, 990.785, 1090.109, 1080.914, 1122.643,
      1178.351, 1260.531, 1273.514, 1288.339, 1327.543, 1353.863, 1414.509, 1425.208, 1421.384, 1442.962,
      1464.35, 1468.705, 1447.894, 1457.628,
    ],
    starts: [
      [1000, 1000, 400, 40, 0.7, 0.3, 0.03],
      [1300, 1500, 500, 75, 1, 0.4, 0.05],
    ],
    values: [
      1.28813968e3, 1.4910792535e3, 5.8323836877e2, 7.5416644291e1, 9.6629502864e-1, 3.9797285797e-1,
      4.9727297349e-2,
    ],
    deviations: [
      4.6647963344, 3.9571156086e1, 2.8698696102e1, 5.567537027, 3.1333340687e-2, 1.4984928198e-2,
      6.5842344623e-3,
    ],
    squares: 5.6427082397e3,
  },
  {
    name: 'MGH10',
    level: 'higher',
    model: (x, b) => b[0] * Math.exp(b[1] / (x + b[2])),
    x: range(50, 5, 16),
    y: [
      34780, 28610, 23650, 19630, 16370, 13720, 11540, 9744, 8261, 7030, 6005, 5147, 4427, 3820, 3307, 2872,
    ],
    starts: [[0.02, 4000, 250]],
    missed: { start: [2, 400000, 25000], why: 'it creeps along a bent valley, not there after 1000 steps' },
    values: [5.609636471e-3, 6.1813463463e3, 3.4522363462e2],
    squares: 8.7945855171e1,
  },
  {
    name: 'BoxBOD',
    level: 'higher',
    model: (x, b) => b[0] * (1 - Math.exp(-b[1] * x)),
    x: [1, 2, 3, 5, 7, 10],
    y: [109, 149, 149, 191, 213, 224],
    starts: [[100, 0.75]],
    missed: { start: [1, 1], why: 'the first step leads to a plain where b2 changes nothing' },
    values: [2.1380940889e2, 5.4723748542e-1],
    squares: 1.1680088766e3,
  },
  {
    name: 'Eckerle4',
    level: 'higher',
    model: (x, b) => (b[0] / b[1]) * Math.exp(-0.5 * ((x - b[2]) / b[1]) ** 2),
    x: [...range(400, 5, 8), ...range(436.5, 1.5, 20), ...range(470, 5, 7)],
    y: [
      0.0001575, 0.0001699, 0.000235, 0.0003102, 0.0004917, 0.000871, 0.0017418, 0.00464, 0.0065895,
      0.0097302, 0.0149002, 0.023731, 0.0401683, 0.0712559, 0.1264458, 0.2073413, 0.2902366, 0.3445623,
      0.3698049, 0.3668534, 0.3106727, 0.2078154, 0.1164354, 0.0616764, 0.03372, 0.0194023, 0.0117831,
      0.0074357, 0.0022732, 0.00088, 0.0004579, 0.0002345, 0.0001586, 0.0001143, 0.000071,
    ],
    starts: [
      [1, 10, 500],
      [1.5, 5, 450],
    ],
    values: [1.5543827178, 4.0888321754, 4.5154121844e2],
    deviations: [1.5408051163e-2, 4.6803020753e-2, 4.6800518816e-2],
    squares: 1.4635887487e-3,
  },
  {
    name: 'MGH17',
    level: 'higher',
    model: (x, b) => b[0] + b[1] * Math.exp(-x * b[3]) + b[2] * Math.exp(-x * b[4]),
    x: range(0, 10, 33),
    y: [
      0.844, 0.908, 0.932, 0.936, 0.925, 0.908, 0.881, 0.85, 0.818, 0.784, 0.751, 0.718, 0.685, 0.658, 0.628,
      0.603, 0.58, 0.558, 0.538, 0.522, 0.506, 0.49, 0.478, 0.467, 0.457, 0.448, 0.438, 0.431, 0.424, 0.42,
      0.414, 0.411, 0.406,
    ],
    starts: [
      [50, 150, -100, 1, 2],
      [0.5, 1.5, -1, 0.01, 0.02],
    ],
    values: [3.7541005211e-1, 1.9358469127, -1.4646871366, 1.286753464e-2, 2.2122699662e-2],
    squares: 5.4648946975e-5,
  },
];
