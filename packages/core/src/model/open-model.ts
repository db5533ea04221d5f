import { createParameters } from '../library/parameters.js';
import type { ScenarioReading } from '../scenario/read-scenario.js';
import { compileModel, type CompileOptions } from './compile.js';
import type { Model } from './model.js';

/** A model of a system file, with what should be known of how it came about. */
export interface OpenModel {
  readonly model: Model;
  /** What was assumed in the reading, and what is unusual about the numbers given: one line each. */
  readonly notes: readonly string[];
  /** Ids of the numbers used so far, in the reading, the model and its runs, each once. */
  readonly used: () => readonly string[];
}

/**
 * Compiles what was read of a system file, with the numbers that it gives.
 * @throws InputError with every fault, RangeError where a row does not close (see `compileModel`)
 */
export function openModel(
  { scenario, notes, used }: Pick<ScenarioReading, 'scenario' | 'notes' | 'used'>,
  options: CompileOptions = {},
): OpenModel {
  const parameters = createParameters(scenario.overrides);
  return {
    model: compileModel(scenario, parameters, options),
    notes: [...notes, ...parameters.warnings],
    used: () => [...new Set([...used, ...parameters.used()])],
  };
}
