import type { ChangeContext, OpenChange } from './change.js';
import {
  daysText,
  entriesOf,
  isBox,
  type PlainFile,
  tidy,
  timesOf,
  withAction,
  withActions,
} from './file-edit.js';

type Scope = Pick<ChangeContext['situation'], 'from' | 'days' | 'startDate'>;

/** Moments that are the same. */
export const MOMENT = 1e-6;

/** The factor that an action puts on the ration of a cohort; undefined where it puts none. */
export function factorOf(entry: PlainFile, cohort: string): number | undefined {
  const feed = entry['feed'];
  if (!isBox(feed) || feed['cohort'] !== cohort || typeof feed['factor'] !== 'number') return undefined;
  return feed['factor'];
}

/** The factor on the ration of a cohort that a file has in force at a time. */
export function factorAt(file: PlainFile, cohort: string, time: number, startDate: string): number {
  let found = { at: -Infinity, factor: 1 };
  for (const entry of entriesOf(file, 'actions')) {
    const factor = factorOf(entry, cohort);
    const { at, end } = timesOf(entry, startDate);
    if (factor === undefined || !(at <= time + MOMENT)) continue;
    if (at >= found.at) found = { at, factor };
    if (end !== undefined && end <= time + MOMENT && end >= found.at) found = { at: end, factor: 1 };
  }
  return found.factor;
}

/** The file with all feed of a cohort multiplied from one time until another, over what it has by then. */
function withFeed(
  file: PlainFile,
  cohort: string,
  times: number,
  { from, days, startDate }: Scope,
  until: number | undefined,
): PlainFile {
  const last = until ?? days;
  const within = (at: number): boolean => at >= from - MOMENT && at < last - MOMENT;
  const scaled = withActions(file, (entry) => {
    const factor = factorOf(entry, cohort);
    if (factor === undefined || !within(timesOf(entry, startDate).at)) return [entry];
    return [{ ...entry, feed: { ...(entry['feed'] as PlainFile), factor: tidy(factor * times) } }];
  });
  const begins = entriesOf(file, 'actions').some(
    (entry) =>
      factorOf(entry, cohort) !== undefined && Math.abs(timesOf(entry, startDate).at - from) < MOMENT,
  );
  const now = tidy(factorAt(file, cohort, from, startDate) * times);
  const feed = { cohort, factor: now };
  const after = until === undefined ? 1 : factorAt(file, cohort, until, startDate);
  if (until !== undefined && after === 1 && !begins)
    return withAction(scaled, { from: daysText(from), until: daysText(until), feed });
  const begun = begins ? scaled : withAction(scaled, { at: daysText(from), feed });
  if (until === undefined) return begun;
  return withAction(begun, { at: daysText(until), feed: { cohort, factor: tidy(after) } });
}

const keepers = ({ scenario }: ChangeContext): readonly string[] => scenario.fish.map(({ name }) => name);

/** Less feed for all fish, in percent. */
export const lessFeed: OpenChange = (context) => {
  const cohorts = keepers(context);
  const { situation } = context;
  if (cohorts.length === 0) return undefined;
  return {
    ...{ name: 'feed', effort: 1, most: 100, ends: true, from: situation.from, unit: '%', at: cohorts },
    amount: (steps) => steps,
    apply: (file, steps, until) =>
      cohorts.reduce((so, cohort) => withFeed(so, cohort, 1 - steps / 100, situation, until), file),
  };
};

/** Share of the fish that may be taken out, percent. */
const MOST_TAKEN = 90;

/** Fish taken out early, and the feed of a fixed ration with them, in percent of each cohort. */
export const earlyHarvest: OpenChange = ({ scenario, situation }) => {
  const there = situation.fish.filter(({ number }) => number >= 2);
  if (there.length === 0) return undefined;
  const fixed = new Set(scenario.fish.filter(({ ration }) => ration.kind === 'mass').map(({ name }) => name));
  return {
    ...{ name: 'harvest-fish', effort: 2, most: MOST_TAKEN, ends: false, from: situation.from, unit: '%' },
    at: there.map(({ cohort }) => cohort),
    amount: (steps) => steps,
    apply: (file, steps) =>
      there.reduce((so, { cohort, number }) => {
        const taken = Math.round((steps / 100) * number);
        if (taken === 0) return so;
        const less = fixed.has(cohort) ? withFeed(so, cohort, 1 - taken / number, situation, undefined) : so;
        return withAction(less, { at: daysText(situation.from), 'harvest-fish': { cohort, number: taken } });
      }, file),
  };
};
