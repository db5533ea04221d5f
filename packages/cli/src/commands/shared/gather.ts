import { basename } from 'node:path';
import type { ScenarioReading } from '@leat/core';
import { type RunSummary, summarize } from '@leat/view/report';
import { day, type Display, plainDisplay } from '@leat/view/text';
import type { SavedEnsemble } from '../../files/saved-ensemble.js';
import { FileError, textOf } from '../../files/read.js';
import { savedRun } from '../../files/saved-run.js';
import { linesText } from '../../terminal/columns.js';
import type { Streams } from '../../terminal/streams.js';
import { openScenario, type ScenarioOptions } from './referenced-files.js';
import { simulated } from './simulated.js';

function changesOf({ set, tables, days, every, fit, extend }: ScenarioOptions): string[] {
  return [
    ...set,
    ...(tables ?? []).map((each) => `tables=${each}`),
    ...(fit === undefined ? [] : [`fit=${fit}`]),
    ...(extend === undefined ? [] : [`extend=${basename(extend.file)}`]),
    ...(days === undefined ? [] : [`days=${days}`]),
    ...(every === undefined ? [] : [`every=${every}`]),
  ];
}

/** A file that was read and is to be told of. */
export interface Gathering {
  /** How the file itself wants to be told. */
  readonly wants?: NonNullable<ScenarioReading['display']>;
  summary(display: Display): Promise<RunSummary>;
}

/**
 * Reads a file of which a report is to tell: the run that it holds (a document of `leat run --json`), or the
 * scenario that it is. Throws as `openScenario` and `savedRun` do.
 * @returns how the file wants to be told, and what simulates the scenario, where it is one, and gives what is told
 */
export function openGathering(
  file: string,
  letter: string,
  options: ScenarioOptions,
  streams: Streams,
): Gathering {
  const text = textOf(file);
  const saved = savedRun(file, text);
  const changes = changesOf(options);
  if (saved !== undefined) {
    if (changes.length > 0)
      streams.note(
        linesText([
          `${file}: a saved run: --set, --tables, --fit, --extend, --days and --every do not change it`,
        ]),
      );
    return { summary: () => Promise.resolve({ letter, file, ...saved }) };
  }
  const reading = openScenario(file, options);
  const summary = async (display: Display): Promise<RunSummary> => {
    const { run, notes, used } = await simulated(reading, {}, streams);
    return summarize(letter, file, run, { text, notes, used, changes }, display);
  };
  return { ...(reading.display !== undefined && { wants: reading.display }), summary };
}

/** What a report tells of one file: see `openGathering`. */
export const gather = (...asked: Parameters<typeof openGathering>): Promise<RunSummary> =>
  openGathering(...asked).summary(plainDisplay);

const lengthOf = (times: readonly number[]): string => `${day(times[times.length - 1])} days`;

function otherSystem({ file, title, result }: SavedEnsemble, summaries: readonly RunSummary[]): string {
  const runs = summaries.map(
    ({ file: name, account }) => `${name} ("${account.title}", ${lengthOf(account.time)})`,
  );
  return (
    `${file}: an ensemble of another system: "${title}", ${lengthOf(result.times)}; got with ${runs.join(', ')}; ` +
    'expected one of the same file with the same --set, --tables, --days and --every'
  );
}

/**
 * Runs with the ensembles that were made of them: by the hash of the scenario, in whatever order they came.
 * Throws FileError with every ensemble that is of none of the runs, or of one that has bands already.
 */
export function withBands(
  summaries: readonly RunSummary[],
  kept: readonly SavedEnsemble[],
): readonly RunSummary[] {
  const faults = kept.flatMap((ensemble, i) => {
    if (!summaries.some(({ manifest }) => manifest.scenario === ensemble.scenario))
      return [otherSystem(ensemble, summaries)];
    const before = kept.slice(0, i).find(({ scenario }) => scenario === ensemble.scenario);
    return before === undefined
      ? []
      : [`${ensemble.file}: of the same system as ${before.file}; give one of them`];
  });
  if (faults.length > 0) throw new FileError(faults);
  return summaries.map((run) => {
    const found = kept.find(({ scenario }) => scenario === run.manifest.scenario);
    return found === undefined ? run : { ...run, ensemble: found.result };
  });
}
