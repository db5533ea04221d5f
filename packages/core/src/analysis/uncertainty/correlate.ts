import { sin } from '../../base/trigonometry.js';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { InputError, type Fault } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { normalCdf, normalQuantile } from '../../base/normal.js';
import type { RankCorrelation } from '../../library/correlations.js';

function faultsOf(correlations: readonly RankCorrelation[], ids: readonly string[]): readonly Fault[] {
  return correlations.flatMap(({ a, b, rank }): Fault[] => {
    const key = `${a} ${b}`;
    const unknown = [a, b].filter((id) => !ids.includes(id));
    const faults: Fault[] = unknown.map((id) => {
      const near = nearest(id, ids);
      return { key, got: id, problem: 'not a number that is drawn here', ...(near && { nearest: near }) };
    });
    if (a === b) faults.push({ key, problem: 'a number is not correlated with itself' });
    if (!(rank > -1 && rank < 1))
      faults.push({
        key,
        got: String(rank),
        problem: 'not a rank correlation',
        expected: 'above -1 and below 1',
      });
    return faults;
  });
}

/**
 * Makes independent uniform numbers correlated by ranks: a Gaussian copula whose normal correlation is
 * 2 sin(pi rank / 6) (Pearson 1907). Numbers that no correlation names stay as they are; the first of
 * each that are named keeps its strata, the others keep their distribution.
 *
 * Throws InputError for ids that are not drawn, and correlations that cannot hold together.
 */
export function correlate(
  given: readonly RankCorrelation[],
  ids: readonly string[],
): (u: Float64Array) => Float64Array {
  const correlations = given.filter(
    ({ a, b, whereDrawn = false }) => !whereDrawn || (ids.includes(a) && ids.includes(b)),
  );
  const faults = faultsOf(correlations, ids);
  if (faults.length > 0) throw new InputError(faults);
  if (correlations.length === 0) return (u) => u;
  const named = ids.flatMap((id, i) => (correlations.some(({ a, b }) => a === id || b === id) ? [i] : []));
  const matrix = Matrix.eye(named.length);
  for (const { a, b, rank } of correlations) {
    const i = named.indexOf(ids.indexOf(a));
    const j = named.indexOf(ids.indexOf(b));
    const normal = 2 * sin((Math.PI * rank) / 6);
    matrix.set(i, j, normal);
    matrix.set(j, i, normal);
  }
  const cholesky = new CholeskyDecomposition(matrix);
  if (!cholesky.isPositiveDefinite())
    throw new InputError([
      { problem: 'the correlations cannot hold together', expected: 'a positive definite matrix' },
    ]);
  const lower = cholesky.lowerTriangularMatrix;
  return (u) => {
    const z = named.map((i) => normalQuantile(u[i]));
    const out = Float64Array.from(u);
    named.forEach((place, row) => {
      if (row === 0) return;
      const mixed = z.reduce(
        (sum, each, column) => (column > row ? sum : sum + lower.get(row, column) * each),
        0,
      );
      out[place] = normalCdf(mixed);
    });
    return out;
  };
}
