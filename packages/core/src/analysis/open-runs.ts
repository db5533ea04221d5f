import { createParameters, parametersAt } from '../library/parameters.js';
import type { TableRow } from '../library/table-row.js';
import { compileModel } from '../model/compile.js';
import type { Run } from '../run/run.js';
import { simulate } from '../run/simulate.js';
import type { OpenScenario } from '../scenario/read-scenario.js';
import { valuesAt } from './draws/values-at.js';

/**
 * Runs of one system with numbers of the tables drawn from their ranges. Reading, compiling and running are
 * all done anew with the drawn numbers; only the text is parsed, and closure checked at random draws, once.
 * @param rows what is drawn
 * @returns the run at uniform numbers (0..1), one for each row. It throws InputError where the drawn numbers make no system.
 */
export function openRuns(
  open: OpenScenario,
  rows: readonly TableRow[],
  options: { readonly tolerance?: number } = {},
): (u: ArrayLike<number>) => Run {
  const given = createParameters(open.reading.scenario.overrides);
  return (u) => {
    const values = valuesAt(rows, u);
    const scenario = open.again(parametersAt(values, given));
    return simulate(compileModel(scenario, parametersAt(values, given), { closureDraws: 0 }), options);
  };
}
