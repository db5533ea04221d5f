import { createParameters, parametersAt } from '../library/parameters.js';
import type { TableRow } from '../library/table-row.js';
import { compileModel } from '../model/compile.js';
import type { Run } from '../run/run.js';
import { reusedRoom } from '../run/sample-room.js';
import { simulate } from '../run/simulate.js';
import type { OpenScenario } from '../scenario/read-scenario.js';
import { valuesAt } from './draws/values-at.js';

/** How runs are made. */
export interface RunsOptions {
  /** Relative tolerance of the integration; default as for `simulate`. */
  readonly tolerance?: number;
  /** Whether each run is read out before the next is asked for: its samples then make way for those of the next. */
  readonly reuse?: boolean;
}

/**
 * Runs of one system with numbers of the tables drawn from their ranges. Reading, compiling and running are
 * all done anew with the drawn numbers; only the text is parsed, and closure checked at random draws, once.
 * @param rows what is drawn
 * @returns the run at uniform numbers (0..1), one for each row. It throws InputError where the drawn numbers make no system.
 */
export function openRuns(
  open: OpenScenario,
  rows: readonly TableRow[],
  { reuse = false, ...options }: RunsOptions = {},
): (u: ArrayLike<number>) => Run {
  const given = createParameters(open.reading.scenario.overrides);
  const room = reuse ? reusedRoom() : undefined;
  const simulation = { ...options, ...(room && { room }) };
  return (u) => {
    room?.clear();
    const values = valuesAt(rows, u);
    const scenario = open.again(parametersAt(values, given));
    return simulate(compileModel(scenario, parametersAt(values, given), { closureDraws: 0 }), simulation);
  };
}
