import {
  compileModel,
  createParameters,
  csvTable,
  fit,
  guessLogMap,
  readLog,
  readLogMap,
  readScenario,
  readScenarioFully,
  seriesOf,
  simulate,
  type Fit,
  type Run,
  type WaterLog,
} from '@leat/core';

/** Runs a file as a lesson showed it. */
export function ranInNode(text: string): Run {
  const scenario = readScenario(text, { file: 'shown.yaml' });
  return simulate(compileModel(scenario, createParameters(scenario.overrides)));
}

/** A number of a run by the words that a lesson puts beside it; written anew here, not taken from the lessons. */
export function numberInNode(run: Run, statistic: string, series: string): number {
  const values = [...seriesOf(run, series).values];
  const highest = values.reduce((most, value) => (value > most ? value : most), -Infinity);
  const lowest = values.reduce((least, value) => (value < least ? value : least), Infinity);
  const known: Readonly<Record<string, number>> = {
    first: values[0],
    last: values.at(-1) ?? Number.NaN,
    highest,
    lowest,
    'day-of-highest': run.samples[values.indexOf(highest)].time,
    'day-of-lowest': run.samples[values.indexOf(lowest)].time,
  };
  if (!(statistic in known)) throw new RangeError(`no statistic ${statistic}`);
  return known[statistic];
}

/** A log as text, read by a map guessed from its header. */
export function logInNode(csv: string): WaterLog {
  const table = csvTable(csv, 'shown.csv');
  const { text } = guessLogMap(table, { vessels: ['tank', 'filter', 'bed', 'sump'], cohorts: ['tilapia'] });
  return readLog(table, readLogMap(text, 'map.yaml', table));
}

/** A file fitted to a log, the search begun at the middle and at one further start. */
export function fitInNode(text: string, log: WaterLog, free: readonly string[]): Fit {
  const read = (set: Parameters<typeof readScenarioFully>[1]['set'], days?: number) =>
    readScenarioFully(text, { file: 'shown.yaml', set: set ?? [], ...(days !== undefined && { days }) });
  return fit({ system: { read }, log, free, furtherStarts: 1 });
}
