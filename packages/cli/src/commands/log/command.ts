import { guessLogMap, readLog, readLogMap, sheetOfMap, summaryOfLog, type Scenario } from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { openLog } from '../../files/open-log.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { openScenario } from '../shared/referenced-files.js';
import { textOf } from '../../files/read.js';
import { guessLines } from './text.js';
import { logLines } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { openOutputs } from '../../files/outputs.js';
import { savedDocument } from '../../files/saved-document.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat log` was asked. */
export interface LogOptions extends ScenarioOptions {
  readonly map?: string;
  readonly sheet?: string;
  readonly all?: boolean;
  readonly writeMap?: string;
  readonly force?: boolean;
  readonly system?: string;
  readonly json?: boolean;
}

/** Vessels of a system, fish tanks first. */
function vesselsOf(scenario: Scenario | undefined): readonly string[] {
  const vessels = scenario?.vessels ?? [];
  const tanks = vessels.filter(({ kind }) => kind === 'fish-tank');
  return [...tanks, ...vessels.filter(({ kind }) => kind !== 'fish-tank')].map(({ name }) => name);
}

/**
 * `leat log FILE`: with a map, reads a log and says what is in it, what is odd, and how it fits the system; without,
 * guesses a map for a person to look over.
 */
export async function logCommand(file: string, options: LogOptions, streams: Streams): Promise<ExitCode> {
  const mapText = options.map === undefined ? undefined : textOf(options.map);
  const table = await openLog(
    file,
    options.sheet ?? (mapText === undefined ? undefined : sheetOfMap(mapText)),
  );
  const scenario = options.system === undefined ? undefined : openScenario(options.system, options).scenario;
  if (options.map === undefined || mapText === undefined) {
    const { writeMap } = openOutputs<'writeMap'>(options, { writeMap: 'own' }, options);
    const cohorts = scenario?.fish.map(({ name }) => name) ?? [];
    const guess = guessLogMap(table, {
      vessels: vesselsOf(scenario),
      cohorts,
      ...(options.sheet === undefined ? {} : { sheet: options.sheet }),
    });
    writeMap?.write(guess.text);
    streams.result(
      options.json === true
        ? savedDocument('leat-log-guess', guess)
        : linesText(guessLines(guess, file, options.writeMap)),
    );
    return exit.done;
  }
  const log = readLog(table, readLogMap(mapText, options.map, table));
  const summary = summaryOfLog(log, scenario);
  // JSON has no infinity: a bound that is open is left out.
  const open = (_: string, value: unknown): unknown =>
    typeof value === 'number' && !Number.isFinite(value) ? undefined : value;
  streams.result(
    options.json === true
      ? savedDocument('leat-log', { ...log, summary }, open)
      : linesText(logLines(log, summary, options.all === true)),
  );
  return exit.done;
}
