import type { Budget, Fates, LimitResult, Manifest, Run, RunEvent, Series } from '@leat/core';
import { cautions } from './cautions.js';
import { beside, cut } from './columns.js';
import { cameLines, wentLines } from './fates.js';
import { keyQuantities } from './key-quantities.js';
import { limitLines } from './limits.js';
import { shown } from './number.js';
import type { Style } from './style.js';

/** All that a summary tells of a run. */
export interface Told {
  readonly run: Run;
  readonly series: readonly Series[];
  readonly nitrogen: Fates;
  readonly water: Fates;
  readonly worst: { readonly budget: Budget; readonly share: number };
  readonly limits: readonly LimitResult[];
  readonly manifest: Manifest;
}

const width = 100;

function head({ run, manifest }: Told): readonly string[] {
  const { scenario } = run.model;
  const volume = scenario.vessels.reduce((total, vessel) => total + vessel.volume, 0);
  const fish = scenario.cohorts.reduce((total, { number }) => total + number, 0);
  const area = scenario.plantings.reduce((total, planting) => total + planting.area, 0);
  const parts = [
    `${scenario.days} d from ${scenario.startDate}`,
    `${scenario.vessels.length} vessels, ${shown(volume)} m3`,
    `${fish} fish`,
    `${shown(area)} m2 planted`,
    `scenario ${manifest.scenario.slice(0, 8)}`,
  ];
  return [scenario.title, parts.join(' · ')];
}

function eventLine(events: readonly RunEvent[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { kind } of events) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  if (counts.size === 0) return [];
  return [`events: ${[...counts].map(([kind, count]) => `${count} ${kind}`).join(', ')}`];
}

function workLine({ run, worst }: Told): readonly string[] {
  const { work, integrator, tolerance } = run;
  const { budget, share } = worst;
  return [
    `work: ${integrator} at ${tolerance.toExponential()}, ${work.steps} steps (${work.rejected} rejected), ` +
      `${work.evaluations} evaluations, ${work.jacobians} Jacobians`,
    `balance: worst is ${budget.quantity} of ${budget.place}, ${share.toExponential(1)} of throughput`,
  ];
}

/** The summary of a run, one screen: 100 columns and about fifty lines. */
export function summary(told: Told, style: Style): string {
  const { run, series, nitrogen, water, limits } = told;
  const [title, what] = head(told);
  const { outcome } = run;
  const ended =
    outcome.kind === 'done'
      ? []
      : [style.warn(`BROKEN OFF on day ${shown(outcome.time)}: ${outcome.kind}. What follows ends there.`)];
  const lines = [
    style.strong(cut(title, width)),
    cut(what, width),
    ...ended,
    '',
    ...keyQuantities(run, series).map((line) => cut(line, width)),
    '',
    ...limitLines(limits, run.model.scenario.every).map((line) => cut(line, width)),
    '',
    ...beside(
      [
        ...cameLines('nitrogen came from', nitrogen, 'g'),
        '',
        ...cameLines('water came from', water, 'm3'),
        ...wentLines('water went to', water, 'm3'),
      ],
      wentLines('nitrogen went to', nitrogen, 'g'),
      width / 2,
    ),
    '',
    ...[...eventLine(run.events), ...workLine(told)].map((line) => cut(line, width)),
    ...cautions.map((line) => style.faint(cut(line, width))),
  ];
  return `${lines.join('\n')}\n`;
}
