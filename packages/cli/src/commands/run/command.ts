import {
  allSeries,
  bibliography,
  budgetsOf,
  endStateOf,
  fatesOf,
  limitsOf,
  manifestOf,
  worstResidual,
} from '@leat/core';
import type { ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/scenario-texts.js';
import { openScenario } from '../shared/scenario-texts.js';
import { csv } from '../../files/csv.js';
import { jsonDocument } from './document.js';
import { sourceLines } from './text.js';
import { styleFor } from '../../terminal/style.js';
import { summary } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { writeAtomic } from '../../files/write.js';
import { endingOf } from '../shared/ending.js';
import { simulated, type SimulatedOptions } from '../shared/simulated.js';

/** What `leat run` was asked. */
export interface RunOptions extends ScenarioOptions, SimulatedOptions {
  readonly json?: boolean;
  readonly csv?: string;
  readonly save?: string;
  readonly sources?: boolean;
  /** Series to draw in the terminal; true for the usual ones. */
  readonly plot?: true | readonly string[];
}

/**
 * `leat run FILE`: simulates and prints the summary, or one JSON document; writes the files asked for.
 * A run that broke off, or whose balance does not close, is still told in full.
 */
export async function runCommand(file: string, options: RunOptions, streams: Streams): Promise<ExitCode> {
  const reading = openScenario(file, options);
  const run = await simulated(reading, options, streams);
  const series = allSeries(run);
  const budgets = budgetsOf(run);
  const worst = worstResidual(budgets);
  const limits = limitsOf(run);
  const manifest = manifestOf(run);
  const { parameters } = run.model;
  const sources = bibliography([...reading.used, ...parameters.used()], parameters);
  if (options.csv !== undefined) {
    writeAtomic(
      options.csv,
      csv(
        run.samples.map(({ time }) => time),
        series,
      ),
    );
  }
  if (options.save !== undefined) writeAtomic(options.save, `${JSON.stringify(endStateOf(run), null, 2)}\n`);
  if (options.json === true) {
    streams.result(jsonDocument({ run, series, budgets, limits, manifest, sources }));
  } else if (options.quiet !== true) {
    const fates = (quantity: 'nitrogen' | 'water') => {
      const budget = budgets.find((each) => each.place === 'system' && each.quantity === quantity);
      if (budget === undefined) throw new Error(`no budget of ${quantity}`);
      return fatesOf(budget);
    };
    const told = { run, series, nitrogen: fates('nitrogen'), water: fates('water'), worst, limits, manifest };
    streams.result(summary(told, styleFor(process.stdout.isTTY, process.env)));
  }
  if (options.plot !== undefined && options.json !== true) {
    const { terminalCharts } = await import('../plot/text.js');
    streams.result(terminalCharts(run, options.plot));
  }
  if (options.sources === true && options.json !== true)
    streams.result(`\n${sourceLines(sources).join('\n')}\n`);
  const { code, text } = endingOf(run, worst.budget);
  if (text !== '') streams.note(`${text}\n`);
  return code;
}
