import { createParameters, parametersAt } from '../library/parameters.js';
import { compileChecked } from '../model/compile.js';
import type { Extension } from '../model/own.js';
import type { ResumableRun } from '../run/run-state.js';
import type { Scenario } from '../scenario/scenario.js';

/** A run as plain data: what `postMessage` and `structuredClone` can carry. */
export interface PlainRun extends Omit<ResumableRun, 'model'> {
  readonly schema: 'leat-plain-run';
  readonly scenario: Scenario;
  /** Numbers that are others than the scenario makes them, such as drawn ones: id and value, in the unit of the row. */
  readonly numbers: readonly (readonly [id: string, value: number])[];
  /** Ids of the numbers that were read. */
  readonly used: readonly string[];
  /** Vessels that may hold lime: of a draw they are those of the file as it stands. */
  readonly limed: readonly string[];
  /** Whether components or processes of a user's own were in it. */
  readonly extended: boolean;
}

/** A run without its model, which holds functions; `openPlainRun` makes it a run again, on the other side. */
export function plainRun(run: ResumableRun): PlainRun {
  const {
    model,
    outcome,
    samples,
    between,
    postings,
    events,
    doses,
    ages,
    work,
    integrator,
    tolerance,
    state,
  } = run;
  const own = createParameters(model.scenario.overrides);
  const numbers = Array.from(model.parameters.ids()).flatMap((id) => {
    const { value } = model.parameters.number(id);
    return own.has(id) && own.number(id).value !== value ? [[id, value] as const] : [];
  });
  return {
    ...{ schema: 'leat-plain-run', scenario: model.scenario, numbers, used: model.parameters.used() },
    ...(between && { between }),
    ...{ outcome, samples, postings, events, doses, ages, work, integrator, tolerance, state },
    limed: model.layout.vessels.filter((_, vessel) => model.layout.calcite[vessel] >= 0),
    extended: model.extension !== undefined,
  };
}

/**
 * The run that plain data were made of. Its scenario was checked when it ran, and is not checked again.
 * @param extension components and processes of the user's own, where there were any: functions are not carried
 * @throws RangeError where there were such and none are given
 */
export function openPlainRun(plain: PlainRun, extension?: Extension): ResumableRun {
  if (plain.extended && extension === undefined)
    throw new RangeError('this run had components or processes of its own: give the extension again');
  const { scenario, numbers, used, limed } = plain;
  const { outcome, samples, between, postings, events, doses, ages, work, integrator, tolerance, state } =
    plain;
  const parameters = parametersAt(new Map(numbers), createParameters(scenario.overrides));
  const model = compileChecked(scenario, parameters, {
    ...{ closureDraws: 0, limed: new Set(limed) },
    ...(extension && { extension }),
  });
  for (const id of used) model.parameters.value(id);
  return {
    ...{ model, outcome, samples, postings, events, doses, ages, work, integrator, tolerance, state },
    ...(between && { between }),
  };
}
