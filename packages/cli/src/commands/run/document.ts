import type {
  BasePlan,
  BibliographyEntry,
  Budget,
  Harvest,
  LimitResult,
  Manifest,
  Run,
  RunVerdict,
  Series,
} from '@leat/core';
import { cautions, verdictLines } from '@leat/view/text';
import { keySeries } from '../shared/key-quantities.js';
import { savedDocument } from '../../files/saved-document.js';

/** A run and everything that is said of it. */
export interface RunResults {
  readonly run: Run;
  readonly series: readonly Series[];
  readonly budgets: readonly Budget[];
  readonly base: BasePlan;
  readonly verdict: RunVerdict;
  readonly harvest: Harvest;
  readonly limits: readonly LimitResult[];
  readonly manifest: Manifest;
  readonly sources: readonly BibliographyEntry[];
}

function byQuantity(budgets: readonly Budget[]): Record<string, Omit<Budget, 'quantity' | 'place'>> {
  return Object.fromEntries(
    budgets.map(({ quantity, in: came, out, stored, residual, throughput, lines, stores }) => [
      quantity,
      { in: came, out, stored, residual, throughput, lines, stores },
    ]),
  );
}

/** The run as one JSON document. Numbers that JSON lacks (no fish, so no mean mass) are null. */
export function jsonDocument(results: RunResults): string {
  const { run, series, budgets, base, verdict, harvest, limits, manifest, sources } = results;
  const places = [...new Set(budgets.map(({ place }) => place))].filter((place) => place !== 'system');
  const at = (place: string): Budget[] => budgets.filter((budget) => budget.place === place);
  const document = {
    title: run.model.scenario.title,
    startDate: run.model.scenario.startDate,
    outcome: run.outcome,
    verdict: { lines: verdictLines(verdict, run.model.scenario.startDate), ...verdict },
    time: run.samples.map(({ time }) => time),
    series: Object.fromEntries(
      series.map(({ name, unit, values }) => [name, { unit, values: Array.from(values) }]),
    ),
    keys: keySeries(run),
    budget: byQuantity(at('system')),
    vessels: Object.fromEntries(places.map((place) => [place, byQuantity(at(place))])),
    base,
    harvest,
    limits,
    events: run.events,
    work: run.work,
    manifest,
    sources,
    cautions,
  };
  return savedDocument('leat-run', document);
}
