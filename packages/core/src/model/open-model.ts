import { createParameters } from '../library/parameters.js';
import { checkScenario } from '../scenario/check-scenario.js';
import { wasRead } from '../scenario/read-before.js';
import type { OpenScenario, ScenarioReading } from '../scenario/read-scenario.js';
import { compileChecked, type CompileOptions } from './compile.js';
import type { Model } from './model.js';
import type { Extension } from './own.js';

/** What was read of a system file, with components and processes of a user's own where there are any. */
export interface ExtendedReading extends ScenarioReading {
  readonly extension?: Extension;
}

/** A system file that was read, to be read again, with components and processes of a user's own. */
export interface ExtendedScenario extends OpenScenario {
  readonly reading: ExtendedReading;
}

/** A system file that was read, with components and processes of a user's own in its model and in those of its draws. */
export function extendedBy(open: OpenScenario, extension: Extension): ExtendedScenario {
  return { ...open, reading: { ...open.reading, extension } };
}

/** A model of a system file, with what should be known of how it came about. */
export interface OpenModel {
  readonly model: Model;
  /** What was assumed in the reading, and what is unusual about the numbers given: one line each. */
  readonly notes: readonly string[];
  /** Ids of the numbers used so far, in the reading, the model and its runs, each once. */
  readonly used: () => readonly string[];
}

/**
 * Compiles what was read of a system file, with the numbers that it gives. A scenario that did not come from the reader
 * is checked as `checkScenario` does.
 * @throws InputError with every fault, RangeError where a row does not close (see `compileModel`)
 */
export function openModel(
  reading: Pick<ExtendedReading, 'scenario' | 'notes' | 'used' | 'extension'>,
  options: CompileOptions = {},
): OpenModel {
  if (!wasRead(reading.scenario)) checkScenario(reading.scenario);
  return openChecked(reading, options);
}

/** As `openModel`, of a scenario made of one that was read. Throws as `openModel` does. */
export function openChecked(
  { scenario, notes, used, extension }: Pick<ExtendedReading, 'scenario' | 'notes' | 'used' | 'extension'>,
  options: CompileOptions = {},
): OpenModel {
  const parameters = createParameters(scenario.overrides);
  const model = compileChecked(scenario, parameters, { ...(extension && { extension }), ...options });
  return {
    model,
    notes: [...notes, ...parameters.warnings],
    used: () => [...new Set([...used, ...parameters.used(), ...model.parameters.used()])],
  };
}
