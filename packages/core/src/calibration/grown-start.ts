import { InputError } from '../base/faults.js';
import type { WaterLog } from '../log/water-log.js';
import type { ExtendedReading } from '../model/open-model.js';
import type { Scenario, StartVessel } from '../scenario/scenario.js';
import type { Setting } from '../scenario/file/set-value.js';
import type { FitSystem } from './fitted-system.js';
import { type FirstRation, firstRations } from './with-log.js';

/** A system whose cycled films have grown on the feed of its log, and what is told of that. */
export interface GrownSystem {
  readonly system: FitSystem;
  /** What its films have grown on in place of the file's rations; none where those stand. */
  readonly grownOn: readonly FirstRation[];
  readonly notes: readonly string[];
}

/** A scenario with the films of another reading of its file. */
export function withFilms(scenario: Scenario, { start }: Scenario): Scenario {
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

/** Settings by which a file grows its films on rations. */
export const rationSettings = (rations: readonly FirstRation[]): readonly Setting[] =>
  rations.map(({ cohort, gramsPerDay }) => ({
    path: `fish.${cohort}.ration`,
    value: `${gramsPerDay} g/d`,
  }));

const filmsOf = ({ start }: Scenario): number => start.reduce((sum, { aob, nob }) => sum + aob + nob, 0);

/** What is told of grown films; undefined where the file's own ration would have grown the same. */
export function grownNote(grown: Scenario, own: Scenario): string | undefined {
  const share = filmsOf(grown) / filmsOf(own);
  return Math.abs(share - 1) > 1e-9
    ? `cycled films have grown on the log's first feed: ${Number(share.toPrecision(2))} times what the file's ration grows`
    : undefined;
}

/** What is told where films cannot be grown on the feed of a log. */
export const notGrownNote = ({ faults: [{ problem }] }: InputError): string =>
  `cycled films stand as the file has them: they cannot be grown on the log's feed (${problem})`;

/**
 * A system as its log has fed it: films that its file calls cycled hold what the first feed of the log grows, and not what the
 * ration of the file would. All else, and every other film, stays as the file says.
 * @param given what the films of a fit have grown on; absent: what the log tells up to a date
 */
export function grownOnLog(
  system: FitSystem,
  log: WaterLog,
  until: string,
  given?: readonly FirstRation[],
): GrownSystem {
  const { scenario } = system.read([]);
  const rations = given ?? firstRations(log, scenario, until);
  if (rations.length === 0 || scenario.saved !== undefined) return { system, grownOn: [], notes: [] };
  const fed = rationSettings(rations);
  const readFed = (settings: readonly Setting[], days?: number): ExtendedReading => {
    const own = system.read(settings, days);
    const { scenario: grown } = system.read([...fed, ...settings], days);
    return { ...own, scenario: withFilms(own.scenario, grown) };
  };
  let note: string | undefined;
  try {
    note = grownNote(readFed([]).scenario, scenario);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { system, grownOn: [], notes: [notGrownNote(error)] };
  }
  return note === undefined
    ? { system, grownOn: [], notes: [] }
    : { system: { ...system, read: readFed }, grownOn: rations, notes: [note] };
}
