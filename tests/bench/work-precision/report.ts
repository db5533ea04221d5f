import { cpus } from 'node:os';
import { compilerFlags } from '../../numerics/peers/workshop.js';
import type { Contestant } from './contestant.js';
import { timeAt, type Point } from './point.js';

/** Bars of the demo year at a tolerance of 1e-6: most time, as a share of the peer's at the same error. */
const bars = [
  { against: ['CVODE KLU'], bar: 0.2 },
  { against: ['CVODE dense'], bar: 0.1 },
  { against: ['odex'], bar: 0.02 },
  { against: ['SciPy LSODA', 'SciPy BDF', 'SciPy Radau'], bar: 0.03 },
  { against: ['ARKODE KLU'], bar: undefined },
  { against: ['odex in Leat'], bar: undefined },
];

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');

/** Ratios at equal error of Leat's two measures to each peer. */
export function ratios(points: readonly Point[]): string {
  const of = (names: readonly string[]): Point[] => points.filter(({ name }) => names.includes(name));
  const rows = [1e-5, 1e-6].flatMap((tolerance) =>
    bars.flatMap(({ against, bar }) => {
      const peers = of(against);
      if (peers.length === 0) return [];
      return ['Leat', 'Leat, integration alone'].map((name) => {
        const ours = of([name]).find((point) => point.tolerance === tolerance);
        if (ours === undefined) throw new RangeError(`${name} was not run at ${String(tolerance)}`);
        const cell = (measure: 'error' | 'meanError'): string[] => {
          const best = against.map((peer) => timeAt(of([peer]), ours[measure], measure));
          const times = best.filter((time) => time !== undefined);
          const time = Math.min(...times);
          return times.length === 0
            ? ['not reached', '']
            : [time.toFixed(0), (ours.milliseconds / time).toPrecision(2)];
        };
        return [
          tolerance.toExponential(0),
          name,
          ours.milliseconds.toFixed(1),
          ours.error.toExponential(1),
          against.length > 1 ? `fastest of ${against.join(', ')}` : against[0],
          ...cell('error'),
          ...cell('meanError'),
          bar === undefined || tolerance !== 1e-6 ? '' : String(bar),
        ];
      });
    }),
  );
  return table(
    [
      'tolerance',
      'of',
      'ms',
      'error',
      'against',
      'its ms at that error',
      'ratio',
      'its ms at the mean error',
      'ratio',
      'bar',
    ],
    rows,
  );
}

/** Most time of Leat's integration, as a share of what the C translation of its method takes. */
const OF_TRANSLATION = 1.8;

/** Leat's integration against the same method in C, at equal tolerance. */
export function againstTranslation(points: readonly Point[]): string {
  const at = (name: string, tolerance: number): Point => {
    const found = points.find((point) => point.name === name && point.tolerance === tolerance);
    if (found === undefined) throw new RangeError(`${name} was not run at ${String(tolerance)}`);
    return found;
  };
  const rows = [1e-5, 1e-6].map((tolerance) => {
    const ours = at('Leat, integration alone', tolerance);
    const theirs = at('Leat in C', tolerance);
    return [
      tolerance.toExponential(0),
      ours.milliseconds.toFixed(1),
      theirs.milliseconds.toFixed(1),
      (ours.milliseconds / theirs.milliseconds).toPrecision(3),
      String(OF_TRANSLATION),
      String(ours.work['steps']),
      String(theirs.work['steps']),
    ];
  });
  return table(['tolerance', 'ms', 'ms in C', 'ratio', 'bar', 'steps', 'steps in C'], rows);
}

/** Every point. */
export function pointTable(points: readonly Point[]): string {
  return table(
    ['integrator', 'forcing', 'tolerance', 'largest error', 'mean error', 'ms', 'runs', 'work'],
    points.map((point) => [
      point.name,
      point.forcing,
      point.tolerance.toExponential(0),
      point.error.toExponential(1),
      point.meanError.toExponential(1),
      point.milliseconds.toPrecision(4),
      String(point.runs),
      Object.entries(point.work)
        .map(([name, count]) => `${name} ${String(count)}`)
        .join(', '),
    ]),
  );
}

/** The whole page. */
export function report(
  contestants: readonly Contestant[],
  points: readonly Point[],
  size: {
    readonly states: number;
    readonly segments: number;
    readonly jumps: number;
    readonly apart: number;
  },
): string {
  const given = [...new Map(contestants.map((contestant) => [contestant.name, contestant.given])).entries()];
  return `# Work and precision: the demo year by Leat and by reference tools

Written by \`npm run peers\`. All figures are of one run on one machine (${cpus()[0].model.trim()}, ${String(cpus().length)} cores, Node ${process.version});
only the ratios say something about the code. The demo year is \`glasshouse.yaml\` with 365 days: ${String(size.states)} states,
${String(size.segments)} segments of constant forcing, ${String(size.jumps)} jumps of the state between them.

- **The same model.** Peers integrate the derivative and the Jacobian that are translated from Leat's source (\`tests/numerics/peers\`), under
  Leat's recorded forcing, with Leat's jumps (values and first derivatives) and absolute tolerances. C is built with \`gcc ${compilerFlags.join(' ')}\`.
- **What is timed** is the whole year inside each process, warm, as time of the processor, so that what else runs on the
  machine counts less. Peers are handed their forcing; Leat as a whole also finds
  it, does the postings and keeps samples of every state and extent, which is why its integration alone is shown too. Times of Leat
  (with its modules of WebAssembly), of its method in C and of CVODE with KLU are medians over up to three rounds in turn, of which the last
  begins within five minutes;
  the others, which take longer, have one round. How many runs each time is of stands with it.
- **Error** is against Leat at a tolerance of 1e-12, which differs from CVODE at 1e-12 by ${size.apart.toExponential(1)}. The largest error is that of any
  state on any day, the mean error the root mean square over all; both as shares of the largest value of the state.
- **Changes of forcing**, of which a day has one or more: \`restart\` begins again at each, \`stop\` ends a step there and keeps the history,
  \`across\` steps over them; all begin again after a jump. A peer's time at an error is that of its best way.

${table(['integrator', 'what it was given'], given)}

## Ratios at equal error

${ratios(points)}

## The same method in C, at equal tolerance

Integration alone against the translation of the method (\`programs/rodas.c\`), which takes the same steps. Its rates are the plain
laws, place by place, and the plain search for pH; Leat's are kernels.

${againstTranslation(points)}

## Diagram

![error against time](work-precision.svg)

## Points

${pointTable(points)}
`;
}
