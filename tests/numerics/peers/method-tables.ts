import type { Model } from '../../../packages/core/src/model/model.js';
import { eliminate } from '../../../packages/core/src/solve/sparse-order.js';
import { eachTerm, jacobianPattern } from '../../../packages/core/src/solve/jacobian.js';
import { groupProducts, type ProductPlaces } from '../../../packages/core/src/solve/sums-of-products.js';
import { waterComponents } from '../../../packages/core/src/processes/components.js';

/** An array of C. */
export const table = (type: 'int' | 'double', name: string, values: ArrayLike<number>): string =>
  `static const ${type} ${name}[] = {${Array.from(values, String).join(', ')}};`;

const products = (name: string, { start, left, right }: ProductPlaces): string =>
  [
    table('int', `${name}_start`, start),
    table('int', `${name}_left`, left),
    table('int', `${name}_right`, right),
  ].join('\n');

/**
 * Places of a step by Leat's own method: of the sums that it makes, and of its sparse LU, ordered as the library orders
 * them. `moved` holds the stoichiometry; of each sum of products `left` is a place in it (in the partials for `spread`).
 * @throws RangeError where a rate reads an amount of what is in water, by which partials by time are not found
 */
export function methodTables(model: Model): string {
  const { layout, dependence, stoichiometry: s, rows, instances } = model;
  const water = layout.vessels.length * waterComponents.length;
  for (const { reads, process } of instances)
    if (reads.some((reading) => reading.kind === 'amount' && reading.state < water))
      throw new RangeError(`${process.id} reads an amount of what is in water`);
  const rateOf: number[] = [];
  rows.forEach((_, k) => {
    for (let e = s.start[k]; e < s.start[k + 1]; e++) rateOf.push(k);
  });
  const system = { states: layout.states.length, rates: rows.length, stoichiometry: s, dependence };
  const { order, filled } = eliminate(jacobianPattern(system));
  const rank = new Int32Array(order.length);
  order.forEach((old, k) => (rank[old] = k));
  const placeOf = (row: number, column: number): number =>
    filled.column.subarray(0, filled.start[rank[row] + 1]).indexOf(rank[column], filled.start[rank[row]]);
  const terms = { places: [] as number[], coefficients: [] as number[], partials: [] as number[] };
  eachTerm(system, (row, column, partial, coefficient) => {
    terms.places.push(placeOf(row, column));
    terms.coefficients.push(coefficient);
    terms.partials.push(partial);
  });
  const jacobian = groupProducts(terms.places, terms.coefficients, terms.partials, filled.column.length);
  const entries = Int32Array.from(dependence.column, (_, p) => p);
  return [
    `enum { ENTRIES = ${String(filled.column.length)} };`,
    table('double', 'moved', s.value),
    products(
      'moves',
      groupProducts(
        s.column,
        Int32Array.from(s.column, (_, p) => p),
        rateOf,
        layout.states.length,
      ),
    ),
    products('jacobian', jacobian),
    table('int', 'dependence_start', dependence.start),
    table('int', 'dependence_column', dependence.column),
    table('int', 'dependence_entry', entries),
    table('int', 'lu_start', filled.start),
    table('int', 'lu_column', filled.column),
    table(
      'int',
      'lu_diagonal',
      Int32Array.from(order, (_, i) => filled.column.indexOf(i, filled.start[i])),
    ),
    table('int', 'lu_order', order),
  ].join('\n');
}
