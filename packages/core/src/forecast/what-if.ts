import type { FitProblem } from '../fit/fit-problem.js';
import { settingsOf, withFittedStart, type FitSystem, type FittedValue } from '../fit/fitted-system.js';
import type { Action, Cohort, Scenario } from '../scenario/scenario.js';

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Feed of a cohort as a file has it. */
function feeding({ cohorts, actions }: Scenario, name: string): unknown {
  const cohort = cohorts.find((each: Cohort) => each.name === name);
  const deeds = actions.filter(({ deed }: Action) => deed.kind === 'feed' && deed.cohort === name);
  return [cohort?.ration, cohort?.feed, deeds.map(({ at, deed }) => ({ at, deed }))];
}

/**
 * The scenario of a what-if at fitted values. The log's feed and temperature stand for what lies ahead as well, save
 * where the what-if says something of its own about them.
 */
export function whatIfAt(
  problem: FitProblem,
  system: FitSystem,
  values: readonly FittedValue[],
  today: number,
): Scenario {
  const { scenario: own, forcing, days } = problem;
  const written = withFittedStart(system.read(settingsOf(values), days).scenario, values);
  const forced = forcing.over({ ...written, every: 1 });
  const fedAnew = new Set(
    written.cohorts
      .map(({ name }) => name)
      .filter((name) => !same(feeding(own, name), feeding(written, name))),
  );
  const isFeed = ({ deed }: Action): boolean => deed.kind === 'feed' && fedAnew.has(deed.cohort);
  const rations = written.cohorts
    .filter(({ name }) => fedAnew.has(name))
    .map(({ name, ration }): Action => ({
      at: today,
      deed: { kind: 'feed', cohort: name, ration, factor: 1 },
    }));
  const vessels = forced.vessels.map((vessel, cell) => {
    const before = own.vessels.find(({ name }) => name === vessel.name);
    const { temperature } = written.vessels[cell];
    return same(before?.temperature, temperature) ? vessel : { ...vessel, temperature };
  });
  return {
    ...forced,
    vessels,
    actions: [
      ...forced.actions.filter((action) => !isFeed(action)),
      ...rations,
      ...written.actions.filter((action) => isFeed(action) && action.at >= today),
    ],
  };
}
