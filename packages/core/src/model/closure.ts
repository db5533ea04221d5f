import type { Process } from '../processes/process.js';
import { conserved, type Conserved, type Values } from './composition.js';
import { closeRow, type ClosedTerm } from './stoichiometry.js';

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
): void {
  for (const values of sets) {
    const [leak] = leaksOf(process.id, closeRow(process, values));
    if (leak !== undefined) {
      const verb = leak.amount > 0 ? 'makes' : 'destroys';
      throw new RangeError(
        `the row ${leak.process} ${verb} ${Math.abs(leak.amount).toPrecision(4)} of ${leak.quantity} per ${process.unit}; a row must close for ${conserved.join(', ')}`,
      );
    }
  }
}
