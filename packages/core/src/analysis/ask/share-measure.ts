import type { Fault } from '../../errors.js';
import { conserved } from '../../model/composition.js';
import { budgetOf } from '../../result/budget.js';
import { fateNames } from '../../result/fate-names.js';
import { fatesOf } from '../../result/fates.js';
import { nearest } from '../../suggest.js';
import type { MeasureReading } from './reading.js';

const hyphened = (name: string): string => name.replaceAll(' ', '-');
const fates = fateNames.map(hyphened);

function unknown(problem: string, got: string | undefined, known: readonly string[]): Fault {
  const near = nearest(got ?? '', known);
  return { got: got ?? 'nothing', problem, expected: known.join(', '), ...(near && { nearest: near }) };
}

/** `share nitrogen sludge`: of all that came of a conserved quantity, the share that went to one fate; 0 where none did. */
export function shareMeasure([quantityWord, fateWord]: readonly string[]): MeasureReading {
  const quantity = conserved.find((name) => name === quantityWord);
  const fate = fates.find((name) => name === fateWord);
  const faults: Fault[] = [];
  if (quantity === undefined) faults.push(unknown('no such conserved quantity', quantityWord, conserved));
  if (fate === undefined) faults.push(unknown('no such fate', fateWord, fates));
  if (quantity === undefined || fate === undefined) return faults;
  return {
    unit: '1',
    dimension: 'share',
    of: (run) => {
      const { to } = fatesOf(budgetOf(run, quantity, 'system'));
      return to.find(({ name }) => hyphened(name) === fate)?.share ?? 0;
    },
  };
}
