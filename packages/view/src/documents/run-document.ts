import {
  type AfterEvent,
  afterEvents,
  allSeries,
  type BasePlan,
  basePlan,
  type BibliographyEntry,
  bibliography,
  type Budget,
  budgetsOf,
  type Costs,
  costsOf,
  type Harvest,
  harvestOf,
  type LimitResult,
  limitsOf,
  type Manifest,
  manifestOf,
  type Run,
  type RunVerdict,
  type Series,
  verdictOf,
} from '@leat/core';
import { cautions, verdictLines } from '../text/index.js';
import { meaningful } from './digits.js';
import { keySeries } from './keys.js';

/** A run and everything that is said of it. */
export interface RunResults {
  readonly run: Run;
  readonly series: readonly Series[];
  readonly budgets: readonly Budget[];
  readonly base: BasePlan;
  readonly verdict: RunVerdict;
  readonly harvest: Harvest;
  /** By the prices of the scenario; absent: it has none. */
  readonly costs?: Costs;
  readonly limits: readonly LimitResult[];
  readonly after: readonly AfterEvent[];
  readonly manifest: Manifest;
  readonly sources: readonly BibliographyEntry[];
}

/**
 * What is said of a run.
 * @param used ids of the numbers that it used; asked last, since limits and verdict use numbers too
 */
export function resultsOf(run: Run, used: () => readonly string[]): RunResults {
  const series = allSeries(run);
  const limits = limitsOf(run, series);
  const costs = costsOf(run);
  return {
    run,
    series,
    verdict: verdictOf(run, limits, series),
    harvest: harvestOf(run),
    ...(costs && { costs }),
    budgets: budgetsOf(run),
    base: basePlan(run),
    limits,
    after: afterEvents(run),
    manifest: manifestOf(run),
    sources: bibliography(used(), run.model.parameters),
  };
}

function byQuantity(budgets: readonly Budget[]): Record<string, Omit<Budget, 'quantity' | 'place'>> {
  return Object.fromEntries(
    budgets.map(({ quantity, in: came, out, stored, residual, throughput, lines, stores }) => [
      quantity,
      { in: came, out, stored, residual, throughput, lines, stores },
    ]),
  );
}

/** Volume (m3, full) and areas (m2) of each vessel, and of each planting its vessel and area. */
function sizesOf({ model: { scenario } }: Run): object {
  const vessels = scenario.vessels.map(
    ({ name, volume, surface, floor, open, covered }) =>
      [name, { volume, surface, floor, open, covered }] as const,
  );
  const plantings = scenario.plantings.map(({ name, vessel, area }) => [name, { vessel, area }] as const);
  return { vessels: Object.fromEntries(vessels), plantings: Object.fromEntries(plantings) };
}

/** What each state held at the start and at the end, and how much nitrogen one unit of it is: the stores of the balance. */
function heldOf({ model: { layout, contents }, samples }: Run): readonly object[] {
  const [first, last] = [samples[0], samples[samples.length - 1]];
  return layout.states.map(({ component, place, vessel }, i) => ({
    ...{ component, place, vessel: layout.vessels[vessel] },
    ...{ start: first.y[i], end: last.y[i], nitrogen: contents[i].nitrogen },
  }));
}

/** The run as a document of the form `leat-run`, to be kept by `savedDocument`: what `leat run --json` prints. */
export function runDocument(results: RunResults): object {
  const { run, series, budgets, base, verdict, harvest, costs, limits, after, manifest, sources } = results;
  const places = [...new Set(budgets.map(({ place }) => place))].filter((place) => place !== 'system');
  const at = (place: string): Budget[] => budgets.filter((budget) => budget.place === place);
  return {
    title: run.model.scenario.title,
    startDate: run.model.scenario.startDate,
    outcome: run.outcome,
    verdict: { lines: verdictLines(verdict, run.model.scenario.startDate), ...verdict },
    time: run.samples.map(({ time }) => time),
    series: Object.fromEntries(
      meaningful(run, series).map(({ name, unit, values }) => [name, { unit, values: Array.from(values) }]),
    ),
    sizes: sizesOf(run),
    held: heldOf(run),
    keys: keySeries(run),
    budget: byQuantity(at('system')),
    vessels: Object.fromEntries(places.map((place) => [place, byQuantity(at(place))])),
    base,
    harvest,
    ...(costs && { costs }),
    limits,
    after,
    events: run.events,
    work: run.work,
    manifest,
    sources,
    cautions,
  };
}
