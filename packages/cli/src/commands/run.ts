import {
  allSeries,
  bibliography,
  budgetsOf,
  compileModel,
  createParameters,
  endStateOf,
  fatesOf,
  limitsOf,
  manifestOf,
  relativeResidual,
  simulate,
  worstResidual,
  type Budget,
  type Run,
} from '@leat/core';
import { exit, type ExitCode } from '../exit.js';
import { openScenario, type ScenarioOptions } from '../open-scenario.js';
import { noProgress, openProgress } from '../progress.js';
import { csv } from '../render/csv.js';
import { jsonDocument } from '../render/document.js';
import { sourceLines } from '../render/sources.js';
import { styleFor } from '../render/style.js';
import { summary } from '../render/summary.js';
import type { Streams } from '../streams.js';
import { writeAtomic } from '../write-atomic.js';

/** What `leat run` was asked. */
export interface RunOptions extends ScenarioOptions {
  readonly integrator?: 'rosenbrock' | 'odex';
  readonly tolerance?: number;
  readonly json?: boolean;
  readonly csv?: string;
  readonly save?: string;
  readonly sources?: boolean;
  readonly quiet?: boolean;
}

/** Largest residual, as a share of throughput, of a balance that holds. */
const tight = 1e-9;

async function simulated(file: string, options: RunOptions, streams: Streams): Promise<Run> {
  const scenario = openScenario(file, options);
  const parameters = createParameters(scenario.overrides);
  if (options.quiet !== true) for (const warning of parameters.warnings) streams.note(`${warning}\n`);
  const model = compileModel(scenario, parameters);
  const progress = options.quiet === true ? noProgress : await openProgress(scenario.days);
  try {
    return simulate(model, {
      ...(options.integrator === undefined ? {} : { integrator: options.integrator }),
      ...(options.tolerance === undefined ? {} : { tolerance: options.tolerance }),
      onDay: progress.day,
    });
  } finally {
    progress.end();
  }
}

/** Says what is wrong with a run, and what the command leaves with. */
function ending(run: Run, worst: { readonly budget: Budget; readonly share: number }, streams: Streams): ExitCode {
  const { outcome } = run;
  if (outcome.kind !== 'done') {
    const where = outcome.worst === undefined ? '' : ` at ${outcome.worst}`;
    const advice = outcome.advice === undefined ? '' : `: ${outcome.advice}`;
    streams.note(`not finished: ${outcome.kind} on day ${outcome.time}${where}${advice}\n`);
    return exit.notFinished;
  }
  if (!(worst.share <= tight)) {
    const { budget } = worst;
    streams.note(
      `balance broken: ${budget.quantity} of ${budget.place}: residual ${budget.residual.toExponential(3)} is ` +
        `${relativeResidual(budget).toExponential(1)} of its throughput (at most ${tight})\n`,
    );
    return exit.balanceBroken;
  }
  return exit.done;
}

/**
 * `leat run FILE`: simulates and prints the summary, or one JSON document; writes the files asked for.
 * A run that broke off, or whose balance does not close, is still told in full.
 */
export async function runCommand(file: string, options: RunOptions, streams: Streams): Promise<ExitCode> {
  const run = await simulated(file, options, streams);
  const series = allSeries(run);
  const budgets = budgetsOf(run);
  const worst = worstResidual(budgets);
  const limits = limitsOf(run);
  const manifest = manifestOf(run);
  const { parameters } = run.model;
  const sources = bibliography(parameters.used(), parameters);
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
  if (options.sources === true && options.json !== true) streams.result(`\n${sourceLines(sources).join('\n')}\n`);
  return ending(run, worst, streams);
}
