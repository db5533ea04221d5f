import { InputError } from '../base/faults.js';
import type { WaterLog } from '../log/water-log.js';
import type { ExtendedReading } from '../model/open-model.js';
import type { Scenario, StartVessel } from '../scenario/scenario.js';
import type { Setting } from '../scenario/file/set-value.js';
import type { FitSystem } from './fitted-system.js';
import { firstRations } from './with-log.js';

/** A system whose cycled films have grown on the feed of its log, and what is told of that. */
export interface GrownSystem {
  readonly system: FitSystem;
  readonly notes: readonly string[];
}

/** A scenario with the films of another reading of its file. */
function withFilms(scenario: Scenario, { start }: Scenario): Scenario {
  const films = new Map(start.map((each): [string, StartVessel] => [each.vessel, each]));
  return {
    ...scenario,
    start: scenario.start.map((each) => {
      const film = films.get(each.vessel);
      if (film === undefined) return each;
      const { aob, nob, heterotrophs } = film;
      return { ...each, aob, nob, ...(heterotrophs !== undefined && { heterotrophs }) };
    }),
  };
}

const filmsOf = ({ start }: Scenario): number => start.reduce((sum, { aob, nob }) => sum + aob + nob, 0);

/**
 * A system as its log has fed it: films that its file calls cycled hold what the first feed of the log grows, and not what the
 * ration of the file would. All else, and every other film, stays as the file says.
 */
export function grownOnLog(system: FitSystem, log: WaterLog, until: string): GrownSystem {
  const { scenario } = system.read([]);
  const rations = firstRations(log, scenario, until);
  if (rations.size === 0 || scenario.saved !== undefined) return { system, notes: [] };
  const fed = [...rations].map(([name, grams]): Setting => ({
    path: `fish.${name}.ration`,
    value: `${grams} g/d`,
  }));
  const readFed = (settings: readonly Setting[], days?: number): ExtendedReading => {
    const own = system.read(settings, days);
    const { scenario: grown } = system.read([...fed, ...settings], days);
    return { ...own, scenario: withFilms(own.scenario, grown) };
  };
  let share: number;
  try {
    share = filmsOf(readFed([]).scenario) / filmsOf(scenario);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const [{ problem }] = error.faults;
    return {
      system,
      notes: [`cycled films stand as the file has them: they cannot be grown on the log's feed (${problem})`],
    };
  }
  if (!(Math.abs(share - 1) > 1e-9)) return { system, notes: [] };
  return {
    system: { ...system, read: readFed },
    notes: [
      `cycled films have grown on the log's first feed: ${Number(share.toPrecision(2))} times what the file's ration grows`,
    ],
  };
}
