import type { CauseOfDeath } from '../../processes/kernels/hazard.js';
import { isRoutine } from '../../result/routine.js';
import { limitsOf } from '../../result/limits.js';
import { seriesOf } from '../../result/series.js';
import type { RunVerdict } from '../../result/verdict.js';
import type { FilterHeld } from '../../result/filter-verdict.js';
import { disturbing } from '../../run/close-look.js';
import type { Run } from '../../run/run.js';

/** Where a system stands when something is to be changed: what is wrong, and what there is to change. Plain data. */
export interface Situation {
  /** d: from when on something may be changed. */
  readonly from: number;
  /** d: end of the run. */
  readonly days: number;
  readonly startDate: string;
  /** What was passed that hurts or troubles fish, such as `oxygen below`. */
  readonly passed: readonly string[];
  readonly causes: readonly CauseOfDeath[];
  /** Whether water was short. */
  readonly short: boolean;
  /** Whether a crop suffered from salt. */
  readonly salt: boolean;
  /** Whether the filter fell behind. */
  readonly behind: boolean;
  /** What held it back. */
  readonly held?: FilterHeld;
  /** Fish of each cohort on day `from`: their `number`. */
  readonly fish: readonly { readonly cohort: string; readonly number: number }[];
  /** What the system evaporates on its thirstiest day, m3/d. */
  readonly thirst: number;
}

/** The whole day on which trouble of any kind began, or on which that was done which led to it; infinite where there is none. */
function beginningOf({ beginning, fish, crops, water }: RunVerdict): number {
  const times = [beginning?.time, beginning?.after?.time, fish?.from, crops?.salt?.first, water.lowFirst];
  return Math.floor(Math.min(...times.filter((time) => time !== undefined), Infinity));
}

/** What befell the system of itself, of all that disturbs it. */
const befell: ReadonlySet<string> = new Set(['pump-trip', 'dry']);

/** The whole day of the last thing done before a day that was no routine; undefined where nothing was. */
function doneBefore(run: Run, day: number): number | undefined {
  const last = run.events
    .filter(({ kind, time }) => disturbing.has(kind) && !befell.has(kind) && Math.floor(time) < day)
    .filter((event) => !isRoutine(run, event))
    .at(-1);
  return last === undefined ? undefined : Math.floor(last.time);
}

/**
 * Where a system stands by its run as it is, on each day from which on a change may be looked for: the day on which trouble
 * began, or on which that was done which led to it; then, where nothing is enough from there on, the day of the
 * last thing done before it that was no routine, and the start.
 * @param from d: the one day that was asked for
 */
export function situationsOf(run: Run, verdict: RunVerdict, from?: number): readonly Situation[] {
  const start = run.samples[0].time;
  const began = beginningOf(verdict);
  const day = Math.max(start, from ?? (Number.isFinite(began) ? began : start));
  const days = from === undefined ? [day, doneBefore(run, day) ?? start, start] : [day];
  const whole = wholeRun(run, verdict);
  return [...new Set(days)].map((each) => ({ ...whole, from: each, fish: fishOn(run, each) }));
}

/** Fish of each cohort on a day, d. */
function fishOn({ samples, model }: Run, day: number): Situation['fish'] {
  const at = samples.filter(({ time }) => time <= day).at(-1) ?? samples[0];
  const { scenario, layout } = model;
  return scenario.fish.map(({ name }, i) => ({ cohort: name, number: at.y[layout.fish[i].number] }));
}

/** What is wrong in a run, whatever the day. */
function wholeRun(run: Run, verdict: RunVerdict): Omit<Situation, 'from' | 'fish'> {
  const { scenario } = run.model;
  const hurting = new Set(['domain', 'lethal', 'harmful', 'uncomfortable']);
  const passed = limitsOf(run).filter((limit) => limit.passed && hurting.has(limit.harm));
  return {
    ...{ days: scenario.days, startDate: scenario.startDate },
    passed: [...new Set(passed.map(({ quantity, direction }) => `${quantity} ${direction}`))],
    causes: [...new Set((verdict.fish?.deaths ?? []).map(({ cause }) => cause))],
    short: verdict.water.state !== 'enough',
    salt: verdict.crops?.salt !== undefined,
    behind: verdict.filter !== undefined && verdict.filter.state !== 'keeps-up',
    ...(verdict.filter?.held !== undefined && { held: verdict.filter.held }),
    thirst: seriesOf(run, 'evapotranspiration@system').values.reduce((most, each) => Math.max(most, each), 0),
  };
}
