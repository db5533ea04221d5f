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
const rationSettings = (rations: readonly FirstRation[]): readonly Setting[] =>
  rations.map(({ cohort, gramsPerDay }) => ({
    path: `fish.${cohort}.ration`,
    value: `${gramsPerDay} g/d`,
  }));

const filmsOf = ({ start }: Scenario): number => start.reduce((sum, { aob, nob }) => sum + aob + nob, 0);

/** What is told of grown films; undefined where the file's own ration would have grown the same. */
function grownNote(grown: Scenario, own: Scenario): string | undefined {
  const share = filmsOf(grown) / filmsOf(own);
  return Math.abs(share - 1) > 1e-9
    ? `cycled films have grown on the log's first feed: ${Number(share.toPrecision(2))} times what the file's ration grows`
    : undefined;
}

/** A reading of a file whose films have grown on rations of a log. */
export interface Fed<T> {
  /** What was read, with the rations in place of the file's. */
  readonly fed?: T;
  /** The settings by which the rations were laid over it. */
  readonly settings: readonly Setting[];
  /** What is told: of grown films, or why they cannot be grown. */
  readonly note?: string;
}

/**
 * Reads a file again with the rations of a log, for the films that these grow. `fed` is there where they grow other films
 * than those that the file's own rations do; a state that goes on from a saved one has its films already.
 * @param readFed reads the file with more settings; its InputError is told, and the films stand
 * @param scenarioOf of what was read
 */
export function fedBy<T>(
  own: Scenario,
  rations: readonly FirstRation[],
  readFed: (settings: readonly Setting[]) => T,
  scenarioOf: (read: T) => Scenario,
): Fed<T> {
  const settings = rationSettings(rations);
  if (rations.length === 0 || own.saved !== undefined) return { settings };
  try {
    const fed = readFed(settings);
    const note = grownNote(withFilms(own, scenarioOf(fed)), own);
    return note === undefined ? { settings } : { fed, settings, note };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const [{ problem }] = error.faults;
    const note = `cycled films stand as the file has them: they cannot be grown on the log's feed (${problem})`;
    return { settings, note };
  }
}

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
  const { fed, settings, note } = fedBy(
    scenario,
    rations,
    (more) => system.read(more).scenario,
    (read) => read,
  );
  const notes = note === undefined ? [] : [note];
  if (fed === undefined) return { system, grownOn: [], notes };
  const read = (more: readonly Setting[], days?: number): ExtendedReading => {
    const own = system.read(more, days);
    const { scenario: grown } = system.read([...settings, ...more], days);
    return { ...own, scenario: withFilms(own.scenario, grown) };
  };
  return { system: { ...system, read }, grownOn: rations, notes };
}
