import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import type { Model } from '../../../packages/core/src/model/model.js';
import {
  A,
  ALPHA,
  C,
  GAMMA,
  GROWS_FROM,
  rightSideWeights,
  solutionWeights,
  STAGES,
  TIME_SHARE,
} from '../../../packages/core/src/solve/rodas-tableau.js';
import { methodTables, table } from './method-tables.js';
import type { Shape } from './shape.js';
import { NotTranslated, openSource, type Code, type Source } from './translate/code.js';
import { worthOf } from './translate/constants.js';
import { openCWriter, type CType, type CWriter } from './translate/to-c.js';
import { isWritten } from './translate/usage.js';

/** The loops of the solver, each a function of C of the same name before which `loop_` stands. */
const LOOPS = ['sums', 'factor', 'solve', 'combine', 'finite', 'squares'];

/** Numbers of the solver by file; C has them by the same names. */
const NUMBERS: Readonly<Record<string, readonly string[]>> = {
  'solve/step-control.ts': [
    'SAFETY',
    'MOST_SHRINK',
    'MOST_GROWTH',
    'AGAIN',
    'FAILURE_SHRINK',
    'LEAST_ERROR',
    'LAST_SEGMENT',
    'AIM',
  ],
  'solve/rosenbrock.ts': ['MAX_STEPS', 'LEAST_OF_TIME', 'LEAST_OF_SEGMENT', 'SHORT'],
  'solve/short-stretch.ts': ['MOST_ERROR'],
};

/**
 * Writes Leat's own method as C, but for what programs/rodas.c says of its course: the loops, translated from the source
 * statement by statement; its coefficients and the numbers of its step control, from the tables and the source; the
 * sums, the partials by time and the places of the factors, from the model.
 */
export function emitMethod(model: Model, shape: Shape): string {
  const folder = fileURLToPath(new URL('../../../packages/core/src', import.meta.url));
  const source = openSource(folder, ['solve/rosenbrock.ts']);
  const writer = openCWriter(source);
  const loops = LOOPS.map((name) => {
    const code = source.function('solve/loops.ts', name);
    return `#define loop_${name} ${writer.use(code, typesOf(source, code), `loop ${name}`)}`;
  });
  const short = shortWeights(source, writer);
  const root = writer.use(arrow(source, 'solve/step-control.ts', 'fourthRoot'), ['double'], 'fourth root');
  return `/* Written from the source of the solver and the compiled model; see emit-method.ts. */
static inline double larger_of(double a, double b) { return a > b || isnan(a) ? a : b; }

${writer.text()}

${loops.join('\n')}
#define fourth_root ${root}
${numbers(source)}

${tableau()}

${short}

${methodTables(model)}

${partialsByTime(model, shape)}
`;
}

/** Types of the parameters of a loop, by what the source says of them. */
function typesOf({ checker }: Source, code: Code): CType[] {
  return code.node.parameters.map(({ type }, i) => {
    switch (type?.getText()) {
      case 'Float64Array':
        return isWritten(checker, code, i) ? 'double *' : 'const double *';
      case 'Int32Array':
        return 'const int *';
      case 'i32':
        return 'int';
      default:
        return 'double';
    }
  });
}

function arrow(source: Source, file: string, name: string): Code {
  const node = source.constant(file, name);
  if (!ts.isArrowFunction(node)) throw new RangeError(`${name} in ${file} is no function`);
  return { node, bound: new Map() };
}

function numbers(source: Source): string {
  return Object.entries(NUMBERS)
    .flatMap(([file, names]) =>
      names.map(
        (name) => `static const double ${name} = ${String(numberOf(source, source.constant(file, name)))};`,
      ),
    )
    .join('\n');
}

function numberOf({ checker }: Source, expression: ts.Expression): number {
  const worth = worthOf(checker, expression);
  if (worth === undefined) throw new NotTranslated(expression, 'no number');
  return worth;
}

/** The coefficients; extents, summed at once over a step, get those of the right sides of the stages. */
function tableau(): string {
  const weights = new Float64Array(STAGES);
  const rights = new Float64Array(STAGES);
  solutionWeights(1, weights);
  rightSideWeights(weights, rights);
  const rows = (name: string, values: readonly (readonly number[])[]): string =>
    `static const double ${name}[STAGES][STAGES] = {${values.map((row) => `{${row.join(', ') || '0'}}`).join(', ')}};`;
  return [
    `enum { STAGES = ${String(STAGES)}, GROWS_FROM = ${String(GROWS_FROM)} };`,
    `static const double GAMMA = ${String(GAMMA)};`,
    table('double', 'ALPHA', ALPHA),
    table('double', 'TIME_SHARE', TIME_SHARE),
    rows('A', A),
    rows('C', C),
    table('double', 'RIGHT_WEIGHTS', rights),
  ].join('\n');
}

/** What the slopes of a short stretch weigh in its answer and in its estimate. */
function shortWeights(source: Source, writer: CWriter): string {
  const file = 'solve/short-stretch.ts';
  const difference = source.constant(file, 'DIFFERENCE');
  if (!ts.isArrayLiteralExpression(difference)) throw new RangeError('DIFFERENCE is no list');
  const weights = arrow(source, file, 'weightsAt');
  const whole = [0, 1, 2].map((part) => `${writer.use(weights, ['double'], 'weight', part)}(1.0)`);
  return [
    table(
      'double',
      'DIFFERENCE',
      difference.elements.map((element) => numberOf(source, element)),
    ),
    `static inline void short_weights(double *w) { ${whole.map((weight, i) => `w[${String(i)}] = ${weight};`).join(' ')} }`,
  ].join('\n');
}

/**
 * Partials of the rates by time at constant amounts, as water moves: of all concentrations by their partials by states,
 * and of what is per m3 of water by the volume itself.
 */
function partialsByTime({ rows }: Model, { groups, slope }: Shape): string {
  const vesselOf = rows.map(() => -1);
  for (const { volumetric, instances } of groups)
    if (volumetric) for (const instance of instances) vesselOf[instance.row] = instance.vessel;
  return `${table('int', 'rate_vessel', vesselOf)}
/* By what a look at the water left: rates and their partials by states, which stand in dr. */
static void model_by_time(const double *regime, const double *r, double *rt) {
  const double *rise = regime + ${String(slope)};
  int moves = 0;
  memset(rt, 0, RATES * sizeof(double));
  for (int vessel = 0; vessel < VESSELS; vessel++) moves |= rise[vessel] != 0;
  if (!moves) return;
  for (int k = 0; k < RATES; k++) {
    double sum = 0;
    for (int p = dependence_start[k]; p < dependence_start[k + 1]; p++) {
      const int s = dependence_column[p];
      if (s < VESSELS * WATER) sum -= dr[p] * v[s] * rise[s / WATER];
    }
    const int vessel = rate_vessel[k];
    rt[k] = vessel < 0 ? sum : sum + rise[vessel] * r[k] * per_volume[vessel];
  }
}`;
}
