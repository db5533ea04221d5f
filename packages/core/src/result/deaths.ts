import type { Run } from '../run/run.js';

/** How many fish of a cohort died by themselves in a run. What is taken out dead by an action is not counted. */
export interface CohortDeaths {
  readonly cohort: string;
  readonly vessel: string;
  readonly number: number;
  /** Share of a fish's chances to have died by the end, over the longest time without a restocking. */
  readonly share: number;
  /** d: the first output time by which half had died; absent: less than half. */
  readonly halfBy?: number;
}

/** Deaths of one cohort at each output time since the start, from the rows that take fish from it. */
function died({ model, samples }: Run, state: number): readonly number[] {
  const rows = model.rows.flatMap(({ entries }, row) =>
    entries
      .filter((entry) => entry.state === state && entry.coefficient < 0)
      .map((e) => [row, -e.coefficient]),
  );
  return samples.map(({ x }) => rows.reduce((total, [row, per]) => total + per * x[row], 0));
}

/** Deaths of every cohort of a run. */
export function deathsOf(run: Run): readonly CohortDeaths[] {
  const { layout, scenario } = run.model;
  return scenario.cohorts.map(({ name, vessel }, index) => {
    const { number: state } = layout.fish[index];
    const deaths = died(run, state);
    let alive = 1;
    let share = 0;
    let halfBy: number | undefined;
    for (let i = 1; i < run.samples.length; i++) {
      const there = run.samples[i].y[state];
      const before = run.samples[i - 1].y[state];
      const step = deaths[i] - deaths[i - 1];
      // Newcomers begin anew; of those there and those who died in the step, so many lived.
      if (there > before) alive = 1;
      if (step > 0) alive *= Math.max(0, there) / (Math.max(0, there) + step);
      share = Math.max(share, 1 - alive);
      if (alive < 0.5) halfBy ??= run.samples[i].time;
    }
    const number = deaths[deaths.length - 1] - deaths[0];
    return { cohort: name, vessel, number, share, ...(halfBy !== undefined && { halfBy }) };
  });
}
