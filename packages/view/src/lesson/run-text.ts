import {
  compileModel,
  createParameters,
  type Parameters,
  readScenario,
  type Run,
  simulate,
} from '@leat/core';

/**
 * Reads a system file, compiles it and runs it to its end.
 * @param parameters numbers of the tables; default: those of the file
 * @throws InputError with every fault of the file, Error where the run stops early
 */
export function runText(text: string, parameters?: Parameters): Run {
  const scenario = readScenario(text, { file: 'lesson.yaml' });
  const model = compileModel(scenario, parameters ?? createParameters(scenario.overrides));
  const run = simulate(model);
  if (run.outcome.kind !== 'done')
    throw new Error(`the run stopped on day ${run.outcome.time}: ${run.outcome.kind}`);
  return run;
}
