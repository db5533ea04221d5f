import { openHazards, rowsOfDeaths, type Hazard } from '../model/hazards.js';
import type { Account } from '../processes/components.js';
import type { CauseOfDeath } from '../processes/kernels/hazard.js';
import type { Run, Sample } from '../run/run.js';

/** Deaths of one cohort in one day. */
export interface DeathsOfDay {
  /** Day of the run, from 0. */
  readonly day: number;
  /** Fish that died in it. */
  readonly number: number;
  /** What most of them died of. */
  readonly cause: CauseOfDeath;
}

/** Deaths of one cohort over a run. */
export interface CohortDeaths {
  readonly cohort: string;
  readonly species: string;
  /** Fish that were there at the start, were stocked or were graded in since. */
  readonly stocked: number;
  /** Fish that died. */
  readonly number: number;
  /** Fish alive at the end. */
  readonly alive: number;
  /** Deaths by cause, the most first: `number` fish of each. */
  readonly causes: readonly { readonly cause: CauseOfDeath; readonly number: number }[];
  /** Days in which fish died, in order. */
  readonly days: readonly DeathsOfDay[];
  /** When the last fish died, d, to the output step: fewer than half a fish is left; absent where some live or were taken out. */
  readonly wipedOut?: number;
}

/** Accounts through which fish come to a cohort. */
const arrivals: readonly Account[] = ['stocked fish', 'graded fish'];

/** Fewer than half a fish: none is left. */
const NONE = 0.5;

/** Deaths of a cohort between two samples by cause: in proportion to the hazards at both. */
type Between = (row: number, a: Sample, b: Sample) => ReadonlyMap<CauseOfDeath, number>;

/** Opens the deaths between samples that follow one another: the hazards at each are worked out once. */
function openBetween({ model }: Run, cohort: number): Between {
  const hazardsIn = openHazards(model, cohort);
  let last: { readonly sample: Sample; readonly hazards: readonly Hazard[] } | undefined;
  const at = (sample: Sample): readonly Hazard[] => {
    if (last?.sample !== sample) last = { sample, hazards: hazardsIn(sample) };
    return last.hazards;
  };
  return (row, a, b) => {
    const died = b.x[row] - a.x[row];
    const hazards = [...at(a), ...at(b)];
    const whole = hazards.reduce((total, { perDay }) => total + perDay, 0);
    const found = new Map<CauseOfDeath, number>();
    for (const { cause, perDay } of hazards)
      found.set(cause, (found.get(cause) ?? 0) + (whole > 0 ? (died * perDay) / whole : 0));
    return found;
  };
}

const most = (deaths: ReadonlyMap<CauseOfDeath, number>): CauseOfDeath =>
  [...deaths].reduce<readonly [CauseOfDeath, number]>(
    (best, each) => (each[1] > best[1] ? each : best),
    ['other', 0],
  )[0];

function add(to: Map<CauseOfDeath, number>, more: ReadonlyMap<CauseOfDeath, number>): void {
  for (const [cause, number] of more) to.set(cause, (to.get(cause) ?? 0) + number);
}

function ofCohort(run: Run, cohort: number, row: number): CohortDeaths {
  const { model, samples, postings } = run;
  const { name, species } = model.scenario.fish[cohort];
  const { number: state } = model.layout.fish[cohort];
  const causes = new Map<CauseOfDeath, number>();
  const days = new Map<number, Map<CauseOfDeath, number>>();
  let wipedOut: number | undefined;
  const between = openBetween(run, cohort);
  for (let i = 1; i < samples.length; i++) {
    const [a, b] = [samples[i - 1], samples[i]];
    const died = b.x[row] - a.x[row];
    if (!(died > 0)) continue;
    const split = between(row, a, b);
    add(causes, split);
    const day = Math.floor((a.time + b.time) / 2);
    const ofDay = days.get(day) ?? new Map<CauseOfDeath, number>();
    add(ofDay, split);
    days.set(day, ofDay);
    if (a.y[state] >= NONE && b.y[state] < NONE && died >= (a.y[state] - b.y[state]) / 2) wipedOut = b.time;
    else if (b.y[state] >= NONE) wipedOut = undefined;
  }
  const last = samples[samples.length - 1];
  const came = postings
    .slice(0, last.posted)
    .filter(({ account, state: at, amount }) => at === state && amount > 0 && arrivals.includes(account))
    .reduce((total, { amount }) => total + amount, 0);
  return {
    cohort: name,
    species,
    stocked:
      (model.scenario.saved === undefined ? model.scenario.fish[cohort].number : samples[0].y[state]) + came,
    number: last.x[row] - samples[0].x[row],
    alive: last.y[state],
    causes: [...causes].map(([cause, number]) => ({ cause, number })).sort((a, b) => b.number - a.number),
    days: [...days].map(([day, split]) => ({
      day,
      number: [...split.values()].reduce((total, each) => total + each, 0),
      cause: most(split),
    })),
    ...(wipedOut !== undefined && { wipedOut }),
  };
}

/**
 * What died in a run, cohort by cohort in their order: how many, when, and of what. Numbers are of the integrated deaths;
 * causes are shared by the hazards at the outputs, so that an output step of an hour tells a short fright better than one of
 * a day. Fish that actions took out are not counted.
 */
export function deathsOf(run: Run): readonly CohortDeaths[] {
  const rows = rowsOfDeaths(run.model);
  return run.model.scenario.fish.map((_, cohort) => ofCohort(run, cohort, rows[cohort]));
}

/** How much of a cohort died, of what is no natural death. */
export interface ShareDead {
  /** What a fish that was there throughout had as a chance to die. */
  readonly share: number;
  /** d: when that passed a half, to the output step; absent: it did not. */
  readonly halfBy?: number;
}

/**
 * Of each cohort the share that died, natural deaths apart. Each output step counts against the fish that were there in it,
 * so that fish that were sold before or came after do not thin a kill.
 */
export function sharesDead(run: Run): readonly ShareDead[] {
  const rows = rowsOfDeaths(run.model);
  return run.model.layout.fish.map(({ number: state }, cohort) => {
    let left = 1;
    let halfBy: number | undefined;
    const between = openBetween(run, cohort);
    for (let i = 1; i < run.samples.length; i++) {
      const [a, b] = [run.samples[i - 1], run.samples[i]];
      const died = b.x[rows[cohort]] - a.x[rows[cohort]];
      if (!(died > 0)) continue;
      const unnatural = died - (between(rows[cohort], a, b).get('other') ?? 0);
      // Fish may have come since the last output, or have been taken out.
      left *= 1 - Math.max(0, unnatural) / Math.max(a.y[state], b.y[state] + died);
      if (left <= 0.5) halfBy ??= b.time;
    }
    return { share: 1 - left, ...(halfBy !== undefined && { halfBy }) };
  });
}
