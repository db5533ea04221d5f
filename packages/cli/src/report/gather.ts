import { bibliography, budgetsOf, manifestOf } from '@leat/core';
import { accountOf } from '../account-of.js';
import { simulated } from '../commands/simulated.js';
import type { ScenarioOptions } from '../scenario-options.js';
import { openScenario } from '../scenario-texts.js';
import { textOf } from '../text-of.js';
import { savedRun } from '../saved-run.js';
import type { Streams } from '../streams.js';
import type { ToldRun } from './told-run.js';
import { toldSystem } from './told-system.js';

function changesOf({ set, tables, days, every, fit }: ScenarioOptions): string[] {
  return [
    ...set,
    ...(tables ?? []).map((each) => `tables=${each}`),
    ...(fit === undefined ? [] : [`fit=${fit}`]),
    ...(days === undefined ? [] : [`days=${days}`]),
    ...(every === undefined ? [] : [`every=${every}`]),
  ];
}

/**
 * What a report tells of a file: the run that it holds (a document of `leat run --json`), or the run of the
 * scenario that it is. Throws as `openScenario` and `savedRun` do.
 */
export async function gather(
  file: string,
  letter: string,
  options: ScenarioOptions,
  streams: Streams,
): Promise<ToldRun> {
  const text = textOf(file);
  const saved = savedRun(file, text);
  const changes = changesOf(options);
  if (saved !== undefined) {
    if (changes.length > 0)
      streams.note(`${file}: a saved run: --set, --tables, --fit, --days and --every do not change it\n`);
    return { letter, file, ...saved };
  }
  const reading = openScenario(file, options);
  const run = await simulated(reading, {}, streams);
  const { parameters } = run.model;
  const account = accountOf(run);
  return {
    letter,
    file,
    account,
    budgets: budgetsOf(run),
    events: run.events,
    manifest: manifestOf(run),
    system: toldSystem(text, reading, run, changes),
    sources: bibliography([...reading.used, ...parameters.used()], parameters),
  };
}
