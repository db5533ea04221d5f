import type { WaterLog } from '../log/water-log.js';
import type { Scenario } from '../scenario/scenario.js';
import { loggedFeed, type UnloggedFeed } from './logged-feed.js';
import { loggedTemperature } from './logged-temperature.js';

/** Lays what a log tells of feed and temperature over a scenario. */
export interface LogForcing {
  readonly over: (scenario: Scenario) => Scenario;
  /** What was assumed, one line each. */
  readonly notes: readonly string[];
}

/**
 * What a log tells of feed and temperature, up to a date, to be laid over a scenario or over the same with other
 * numbers. Rations that the file's own actions set for a cohort the log feeds do not count from the log's first feed on.
 */
export function logForcing(
  log: WaterLog,
  scenario: Scenario,
  until: string,
  unlogged: UnloggedFeed,
): LogForcing {
  const feed = loggedFeed(log, scenario, until, unlogged);
  const temperature = loggedTemperature(log, scenario, until);
  const warm = new Map(temperature?.map((each, cell) => [scenario.vessels[cell].name, each]));
  const overruled = ({ at, deed }: Scenario['actions'][number]): boolean =>
    feed !== undefined &&
    deed.kind === 'feed' &&
    feed.cohorts.has(deed.cohort) &&
    at >= feed.from &&
    (deed.ration !== undefined || deed.factor !== undefined);
  const dropped = scenario.actions.filter(overruled).length;
  return {
    over: (given) => ({
      ...given,
      vessels: given.vessels.map((vessel) => {
        const logged = warm.get(vessel.name);
        return logged === undefined ? vessel : { ...vessel, temperature: logged };
      }),
      actions: [...given.actions.filter((action) => !overruled(action)), ...(feed?.actions ?? [])],
    }),
    notes: [
      ...(feed === undefined ? ['no feed is written down: the rations of the file stand'] : feed.notes),
      ...(dropped === 0
        ? []
        : [`${dropped} actions of the file that set a ration: the log's feed stands instead`]),
      ...(temperature === undefined ? ['no temperature is written down: that of the file stands'] : []),
    ],
  };
}
