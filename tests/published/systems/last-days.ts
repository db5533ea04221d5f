import { budgetOf } from '@leat/core';
import type { Component } from '../../../packages/core/src/processes/components.js';
import type { Run } from '../../../packages/core/src/run/run.js';

/** The last days of a run, as a run of its own. Throws RangeError where no output lies at their start. */
export function lastDays(run: Run, days: number): Run {
  const start = run.model.scenario.days - days;
  const first = run.samples.findIndex(({ time }) => Math.abs(time - start) < 1e-9);
  if (first < 0) throw new RangeError(`no output at ${start} d`);
  return { ...run, samples: run.samples.slice(first) };
}

/** Length of a run, d, from its first sample to its last. */
export function lengthOf(run: Run): number {
  return run.samples[run.samples.length - 1].time - run.samples[0].time;
}

/** Nitrogen that crossed between the system and an account outside, g N: above 0 came in. */
export function nitrogenWith(run: Run, account: string, components?: readonly Component[]): number {
  return budgetOf(run, 'nitrogen', 'system')
    .lines.filter(
      ({ beyond, component }) =>
        beyond === account && (components === undefined || components.includes(component)),
    )
    .reduce((sum, { amount }) => sum + amount, 0);
}

/** What an account took (-) or gave (+) of a component in postings, in its own unit. */
export function postedWith(run: Run, account: string, component: Component): number {
  const { postings, samples } = run;
  return postings
    .slice(samples[0].posted, samples[samples.length - 1].posted)
    .filter((posting) => posting.account === account && posting.component === component)
    .reduce((sum, { amount }) => sum + amount, 0);
}

/** Mean flow of water through a vessel by its outlets to other vessels, m3 d-1. */
export function flowThrough(run: Run, vessel: string): number {
  const { model, samples } = run;
  const index = model.layout.vessels.indexOf(vessel);
  const last = samples[samples.length - 1];
  const carried = model.streams.reduce(
    (sum, { from, to }, stream) =>
      from === index && to >= 0 ? sum + last.carried[stream] - samples[0].carried[stream] : sum,
    0,
  );
  return carried / lengthOf(run);
}
