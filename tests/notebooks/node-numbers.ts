import {
  budgetOf,
  compileModel,
  createParameters,
  fatesOf,
  readScenario,
  seriesOf,
  simulate,
  type Run,
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
  const known: Readonly<Record<string, number>> = {
    first: values[0],
    last: values.at(-1) ?? Number.NaN,
    highest,
    lowest: values.reduce((least, value) => (value < least ? value : least), Infinity),
    'day-of-highest': run.samples[values.indexOf(highest)].time,
  };
  if (!(statistic in known)) throw new RangeError(`no statistic ${statistic}`);
  return known[statistic];
}

/** g N that went one way in a run, and its share of all. */
export function nitrogenInNode(run: Run, name: string): { readonly amount: number; readonly share: number } {
  const found = fatesOf(budgetOf(run, 'nitrogen', 'system')).to.find((each) => each.name === name);
  return { amount: found?.amount ?? 0, share: found?.share ?? 0 };
}
