import type { BasePlan, BibliographyEntry, Budget, LimitResult, Manifest, Run, Series } from '@leat/core';
import { cautions } from '@leat/view/text';
import { keySeries } from '../shared/key-quantities.js';
import { savedDocument } from '../../files/saved-document.js';

/** A run and everything that is said of it. */
export interface RunResults {
  readonly run: Run;
  readonly series: readonly Series[];
  readonly budgets: readonly Budget[];
  readonly base: BasePlan;
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
export function jsonDocument({ run, series, budgets, base, limits, manifest, sources }: RunResults): string {
  const places = [...new Set(budgets.map(({ place }) => place))].filter((place) => place !== 'system');
  const at = (place: string): Budget[] => budgets.filter((budget) => budget.place === place);
  const document = {
    title: run.model.scenario.title,
    outcome: run.outcome,
    time: run.samples.map(({ time }) => time),
    series: Object.fromEntries(
      series.map(({ name, unit, values }) => [name, { unit, values: Array.from(values) }]),
    ),
    keys: keySeries(run),
    budget: byQuantity(at('system')),
    vessels: Object.fromEntries(places.map((place) => [place, byQuantity(at(place))])),
    base,
    limits,
    events: run.events,
    work: run.work,
    manifest,
    sources,
    cautions,
  };
  return savedDocument('leat-run', document);
}
