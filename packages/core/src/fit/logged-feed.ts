import { mean } from 'd3-array';
import type { WaterLog } from '../log/water-log.js';
import type { Action, Scenario } from '../scenario/scenario.js';
import { dayOf } from './observations.js';

/** What was fed on days for which nothing is written: as on the last day with feed, the mean of those days, or nothing. */
export type UnloggedFeed = 'last' | 'mean' | 'none';

/** Feed of a log as deeds, and what was assumed. */
export interface LoggedFeed {
  /** One deed a cohort on each day on which its ration changes. */
  readonly actions: readonly Action[];
  /** Cohorts that the log feeds: what the file says of their rations does not count from `from` on. */
  readonly cohorts: ReadonlySet<string>;
  /** Day of the first feed. */
  readonly from: number;
  readonly notes: readonly string[];
}

/** Share of each cohort in feed that is written down for all, by their rations at the start. */
function sharesOf({ cohorts }: Scenario): ReadonlyMap<string, number> {
  const weights = cohorts.map(({ name, ration, number, mass }): [string, number] => [
    name,
    ration.kind === 'mass'
      ? ration.gramsPerDay
      : number * mass * (ration.kind === 'share' ? ration.perDay : ration.rows[0].perDay),
  ]);
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0);
  return new Map(weights.map(([name, weight]) => [name, total > 0 ? weight / total : 1 / weights.length]));
}

/** Grams by cohort and day, as written. */
function written(log: WaterLog, scenario: Scenario, until: string): Map<string, Map<number, number>> {
  const shares = sharesOf(scenario);
  const fed = new Map<string, Map<number, number>>();
  const give = (cohort: string, day: number, grams: number): void => {
    const days = fed.get(cohort) ?? new Map<number, number>();
    days.set(day, (days.get(day) ?? 0) + grams);
    fed.set(cohort, days);
  };
  for (const { cohort, date, grams } of log.feed) {
    const day = dayOf(scenario, date);
    if (date > until || day < 0 || day >= scenario.days) continue;
    if (cohort === 'all') for (const [name, share] of shares) give(name, day, grams * share);
    else if (shares.has(cohort)) give(cohort, day, grams);
  }
  return fed;
}

/**
 * The feed of a log, from its first day with feed on. After the last date of the log the mean of its last 14 days
 * goes on. Undefined where the log has no feed for this system.
 */
export function loggedFeed(
  log: WaterLog,
  scenario: Scenario,
  until: string,
  unlogged: UnloggedFeed,
): LoggedFeed | undefined {
  const fed = written(log, scenario, until);
  if (fed.size === 0) return undefined;
  const end = Math.min(dayOf(scenario, until < log.to ? until : log.to), Math.ceil(scenario.days) - 1);
  const actions: Action[] = [];
  let assumed = 0;
  let from = Infinity;
  for (const [cohort, days] of fed) {
    const first = Math.min(...days.keys());
    from = Math.min(from, first);
    const given = [...days.values()].filter((grams) => grams > 0);
    const usual = mean(given) ?? 0;
    const course: number[] = [];
    let last = 0;
    for (let day = first; day <= end; day++) {
      const today = days.get(day);
      if (today !== undefined && today > 0) last = today;
      if (today === undefined) assumed += 1;
      course.push(today ?? (unlogged === 'last' ? last : unlogged === 'mean' ? usual : 0));
    }
    if (end + 1 < scenario.days) course.push(mean(course.slice(-14)) ?? 0);
    course.forEach((grams, i) => {
      if (i > 0 && grams === course[i - 1]) return;
      const ration = { kind: 'mass', gramsPerDay: grams } as const;
      actions.push({ at: first + i, deed: { kind: 'feed', cohort, ration, factor: 1 } });
    });
  }
  const words = {
    last: 'as on the last day with feed before',
    mean: 'the mean of the days with feed',
    none: 'nothing',
  };
  const notes =
    assumed === 0 ? [] : [`feed on ${assumed} days for which none is written: taken as ${words[unlogged]}`];
  return { actions, cohorts: new Set(fed.keys()), from, notes };
}
