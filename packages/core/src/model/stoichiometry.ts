import type { Process, Term } from '../processes/process.js';
import { sparseLu } from '../solve/sparse-lu.js';
import { contentOf, type Conserved, type Content, type Values } from './composition.js';
import { packPattern } from './sparse.js';

/** A term with its coefficient known and its content beside it. */
export interface ClosedTerm extends Omit<Term, 'coefficient'> {
  readonly coefficient: number;
  readonly content: Content;
}

/**
 * Works out the coefficients that a row leaves to conservation: one linear equation for each
 * quantity that a term closes (never more than a handful). Rows are not exchanged: a term must itself hold some
 * of what it closes.
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
  const equations = sparseLu(packPattern(closes.map(() => [...unknown.keys()])));
  closes.forEach((quantity, row) => {
    unknown.forEach(({ content }, column) => {
      equations.values[equations.place(row, column)] = content[quantity];
    });
  });
  if (!equations.factor())
    throw new RangeError(`${process.id}: ${closes.join(', ')} do not fix the coefficients left open`);
  const found = Float64Array.from(
    closes,
    (quantity) =>
      -terms.reduce(
        (sum, { term, content }) =>
          typeof term.coefficient === 'number' ? sum + term.coefficient * content[quantity] : sum,
        0,
      ),
  );
  equations.solve(found);
  let next = 0;
  return terms.map(({ term, content }) => ({
    ...term,
    content,
    coefficient: typeof term.coefficient === 'number' ? term.coefficient : found[next++],
  }));
}
