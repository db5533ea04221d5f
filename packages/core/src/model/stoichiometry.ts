import { Matrix, solve } from 'ml-matrix';
import type { Process, Term } from '../processes/process.js';
import { contentOf, type Conserved, type Content, type Values } from './composition.js';

/** A term with its coefficient known and its content beside it. */
export interface ClosedTerm extends Omit<Term, 'coefficient'> {
  readonly coefficient: number;
  readonly content: Content;
}

/**
 * Works out the coefficients that a row leaves to conservation: one linear equation for each
 * quantity that a term closes (dense, ml-matrix: never more than a handful).
 * @throws RangeError when the equations do not fix the unknowns.
 */
export function closeRow(
  process: Pick<Process, 'id' | 'stoichiometry'>,
  values: Values,
): readonly ClosedTerm[] {
  const terms = process
    .stoichiometry(values)
    .map((term) => ({ term, content: contentOf(term.component, values) }));
  const unknown = terms.filter(({ term }) => typeof term.coefficient !== 'number');
  const closes = unknown.map(({ term }) => (term.coefficient as { closes: Conserved }).closes);
  let found: readonly number[] = [];
  if (unknown.length > 0) {
    const matrix = new Matrix(closes.map((quantity) => unknown.map(({ content }) => content[quantity])));
    const known = closes.map((quantity) => [
      -terms.reduce(
        (sum, { term, content }) =>
          typeof term.coefficient === 'number' ? sum + term.coefficient * content[quantity] : sum,
        0,
      ),
    ]);
    try {
      found = solve(matrix, new Matrix(known)).to1DArray();
    } catch {
      throw new RangeError(`${process.id}: ${closes.join(', ')} do not fix the coefficients left open`);
    }
  }
  let next = 0;
  return terms.map(({ term, content }) => ({
    ...term,
    content,
    coefficient: typeof term.coefficient === 'number' ? term.coefficient : found[next++],
  }));
}
