import { InputError } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import { openModel } from '../model/open-model.js';
import type { SimulateOptions } from '../run/driver.js';
import type { ResumableRun } from '../run/run-state.js';
import { simulate } from '../run/stepping.js';
import { readScenarioFully } from '../scenario/read-scenario.js';

/** A run of a system file, with what should be known of how it came about. */
export interface TextRun extends ResumableRun {
  /** What was assumed in the reading, and what is unusual about the numbers given: one line each. */
  readonly notes: readonly string[];
  /** Ids of the numbers used so far, each once. */
  readonly used: () => readonly string[];
}

/**
 * Reads a system, compiles it and runs it to its end.
 * @param system the text of a system file; or texts by path, the system first, then the files that it names
 * @throws InputError with every fault; RangeError where a row does not close
 */
export function run(
  system: string | Readonly<Record<string, string>>,
  options: SimulateOptions = {},
): TextRun {
  const files = typeof system === 'string' ? { 'system.yaml': system } : system;
  const paths = Object.keys(files);
  if (paths.length === 0)
    throw new InputError([{ problem: 'no file', expected: 'the text of a system, or texts by path' }]);
  const load = (path: string): string => {
    if (Object.hasOwn(files, path)) return files[path];
    const near = nearest(path, paths);
    throw new Error(`no such file among those given${near === undefined ? '' : `; did you mean ${near}?`}`);
  };
  const [file] = paths;
  const { model, notes, used } = openModel(readScenarioFully(files[file], { file, load }));
  return { ...simulate(model, options), notes, used };
}
