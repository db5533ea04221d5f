import { createRandom } from '../base/random.js';
import { drawParameters, type Parameters } from '../library/parameters.js';
import type { Values } from '../library/values.js';
import {
  type Component,
  type Conserved,
  conserved,
  type Content,
  contentOf,
} from '../processes/components.js';
import type { Process, Term } from '../processes/process.js';
import type { Override } from '../library/own-row.js';
import { sparseLu } from '../solve/sparse-lu.js';
import { packPattern } from '../solve/sparse-rows.js';
import type { OwnNumber } from './own.js';
import { drawNumbers } from './own-numbers.js';
import { scopeTo, type Subject } from './scope.js';

/** A term with its coefficient known and its content beside it. */
export interface ClosedTerm extends Omit<Term, 'coefficient'> {
  readonly coefficient: number;
  readonly content: Content;
}

/** What one unit of a component holds with some numbers: `contentOf`, or that of a model with components of a user's own. */
export type ContentIn = (component: Component, values: Values) => Content;

/**
 * Works out the coefficients that a row leaves to conservation: one linear equation for each
 * quantity that a term closes (never more than a handful). Rows are not exchanged: a term must itself hold some
 * of what it closes.
 * @throws RangeError when the equations do not fix the unknowns.
 */
export function closeRow(
  process: Pick<Process, 'id' | 'stoichiometry'>,
  values: Values,
  content: ContentIn = contentOf,
): readonly ClosedTerm[] {
  const terms = process
    .stoichiometry(values)
    .map((term) => ({ term, content: content(term.component, values) }));
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

/** A row that makes or destroys something. */
export interface Leak {
  readonly process: string;
  readonly quantity: Conserved;
  /** Made (+) or destroyed (-) per unit of the row. */
  readonly amount: number;
}

/** Share of the row's own turnover of a quantity that counts as rounding. */
const ROUNDING = 1e-12;

/** Quantities that a row does not keep: composition x row, against the sum of its absolute parts. */
export function leaksOf(process: string, terms: readonly ClosedTerm[]): readonly Leak[] {
  return conserved.flatMap((quantity) => {
    const parts = terms.map((term) => term.coefficient * term.content[quantity]);
    const amount = parts.reduce((sum, part) => sum + part, 0);
    const turnover = parts.reduce((sum, part) => sum + Math.abs(part), 0);
    return Math.abs(amount) <= ROUNDING * turnover ? [] : [{ process, quantity, amount }];
  });
}

/**
 * Checks that a process keeps every conserved quantity with each of the given sets of values.
 * @throws RangeError saying what the row makes or destroys.
 */
export function checkClosure(
  process: Pick<Process, 'id' | 'unit' | 'stoichiometry'>,
  sets: Iterable<Values>,
  content: ContentIn = contentOf,
): void {
  for (const values of sets) closedRow(process, values, content);
}

/**
 * As `closeRow`, checked.
 * @throws RangeError as `closeRow` does, and saying what the row makes or destroys
 */
export function closedRow(
  process: Pick<Process, 'id' | 'unit' | 'stoichiometry'>,
  values: Values,
  content: ContentIn = contentOf,
): readonly ClosedTerm[] {
  const terms = closeRow(process, values, content);
  const [leak] = leaksOf(process.id, terms);
  if (leak !== undefined) {
    const verb = leak.amount > 0 ? 'makes' : 'destroys';
    throw new RangeError(
      `the row ${leak.process} ${verb} ${Math.abs(leak.amount).toPrecision(4)} of ${leak.quantity} per ${process.unit}; a row must close for ${conserved.join(', ')}`,
    );
  }
  return terms;
}

/** Most sets of given numbers that are remembered. */
const mostChecked = 16;

/**
 * Rows that were found to close, by what decides their draws: how many, and the numbers that the user gave. The draws
 * themselves are always the same, so a row that closed at them closes again.
 */
const checked = new Map<string, Set<string>>();

function closedAt(count: number, overrides: readonly Override[]): Set<string> {
  const name = JSON.stringify([count, overrides]);
  const closed = checked.get(name) ?? new Set();
  checked.delete(name);
  checked.set(name, closed);
  const [oldest] = checked.keys();
  if (checked.size > mostChecked) checked.delete(oldest);
  return closed;
}

/**
 * A check that the row of a process closes at so many random draws of the numbers. What was checked when an earlier
 * system was compiled is not reckoned again: a slider compiles the same rows at every move.
 * @param own what a user's own processes need beside: content of their components, and their numbers; these are checked anew
 * @returns the check; it throws RangeError as `checkClosure` does
 */
export function checkAtDraws(
  count: number,
  overrides: readonly Override[],
  own?: { readonly content: ContentIn; readonly numbers: readonly OwnNumber[] | undefined },
): (process: Process, subject: Subject) => void {
  if (count === 0) return () => undefined;
  const closed = own === undefined ? closedAt(count, overrides) : new Set<string>();
  let draws: readonly Parameters[] | undefined;
  return (process, subject) => {
    const row = `${process.id} ${JSON.stringify(subject)}`;
    if (closed.has(row)) return;
    if (draws === undefined) {
      const random = createRandom(1);
      draws = Array.from({ length: count }, () =>
        drawNumbers(drawParameters(random, overrides), own?.numbers, random),
      );
    }
    checkClosure(
      process,
      draws.map((draw) => scopeTo(draw, subject)),
      own?.content,
    );
    closed.add(row);
  };
}
