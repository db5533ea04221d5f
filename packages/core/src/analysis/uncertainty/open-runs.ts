import { keyOf, uniformAt } from '../../base/hashes.js';
import { quantile } from '../../library/distributions.js';
import { createParameters, parametersAt } from '../../library/parameters.js';
import type { RangedRow } from '../../library/table-row.js';
import { compileChecked } from '../../model/compile.js';
import { limedVessels } from '../../model/layout.js';
import { simulate } from '../../run/stepping.js';
import type { Run } from '../../run/run.js';
import { reusedBuffer } from '../../run/sample-buffer.js';
import type { ExtendedScenario } from '../../model/open-model.js';
import type { Extension } from '../../model/own.js';
import { withNumbers } from '../../model/own-numbers.js';

/** Most tries at a legal draw. */
const mostTries = 1000;

/** Whether a value makes sense for a row: finite, and above 0 where its low end is. */
const legal = (row: RangedRow, value: number): boolean =>
  Number.isFinite(value) && (row.low <= 0 || value > 0);

function valueOf(row: RangedRow, u: number): number {
  let value = quantile(row, u);
  // The far tail of a normal distribution may fall below 0: another draw then, fixed by the first.
  const key = keyOf(Math.floor(u * 2 ** 53), row.id);
  for (let tries = 0; !legal(row, value) && tries < mostTries; tries++)
    value = quantile(row, uniformAt(key, tries));
  if (!legal(row, value)) throw new RangeError(`no legal draw of ${row.id} in ${mostTries} tries`);
  return value;
}

/** The values of rows at uniform numbers (0..1), one for each, by id. Throws RangeError where a row has no legal value. */
export function drawnValues(rows: readonly RangedRow[], u: ArrayLike<number>): ReadonlyMap<string, number> {
  return new Map(rows.map((row, i) => [row.id, valueOf(row, u[i])]));
}

/** How runs are made. */
export interface RunsOptions {
  /** Relative tolerance of the integration; default as for `simulate`. */
  readonly tolerance?: number;
  /** Whether each run is read out before the next is asked for: its samples then make way for those of the next. */
  readonly reuse?: boolean;
  /** Called at each day boundary of each run with the number of the `day`, from 0. */
  readonly onDay?: (day: number) => void;
}

/** An extension that was checked, with values of its own numbers as they were drawn. */
function drawnExtension(extension: Extension, values: ReadonlyMap<string, number>): Extension {
  const own = extension.numbers.flatMap(({ id }) => {
    const value = values.get(id);
    return value === undefined ? [] : [[id, value] as const];
  });
  const check: Extension['check'] = (_, given) =>
    parametersAt(new Map(own), withNumbers(given, extension.numbers));
  return { ...extension, check };
}

/**
 * Runs of one system with numbers of the tables drawn from their ranges. Reading, compiling and running are
 * all done anew with the drawn numbers; only the text is parsed, and closure checked at random draws, once. Components and
 * processes of a user's own go with each, their numbers drawn as ours are.
 * @param rows what is drawn
 * @returns the run at uniform numbers (0..1), one for each row. It throws InputError where the drawn numbers make no system.
 */
export function openRuns(
  open: ExtendedScenario,
  rows: readonly RangedRow[],
  { reuse = false, ...options }: RunsOptions = {},
): (u: ArrayLike<number>) => Run {
  const { extension } = open.reading;
  const given = createParameters(open.reading.scenario.overrides);
  const buffer = reuse ? reusedBuffer() : undefined;
  const simulation = { ...options, ...(buffer && { buffer }) };
  const limed = limedVessels(open.reading.scenario, given);
  return (u) => {
    buffer?.clear();
    const values = drawnValues(rows, u);
    const ours = new Map([...values].filter(([id]) => given.has(id)));
    const scenario = open.again(parametersAt(ours, given));
    const options = {
      ...{ closureDraws: 0, limed },
      ...(extension && { extension: drawnExtension(extension, values) }),
    };
    return simulate(compileChecked(scenario, parametersAt(ours, given), options), simulation);
  };
}
