import type { ExtendedReading } from '../model/open-model.js';
import type { Override } from '../library/own-row.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Setting } from '../scenario/file/set-value.js';
import type { Free } from './free-parameter.js';
import { valueAt } from './free-parameter.js';
import { withStart } from './start-water.js';

/** A system file that can be read with values put in place of its own. */
export interface FitSystem {
  /** Names of the files whose actions are of the log: what is known at a date has only those up to it. */
  readonly logged?: ReadonlySet<string>;
  /** Reads it for a run of so many days, or as many as it says itself. Throws InputError. */
  read(settings: readonly Setting[], days?: number): ExtendedReading;
}

/** Numbers in place of those of a file: settings, and what water holds at the start. */
export interface FittedValue {
  readonly name: string;
  readonly kind: Free['kind'];
  readonly unit: string;
  /** In `unit`. */
  readonly value: number;
}

/** Values at standard deviates. */
export function fittedValuesAt(free: readonly Free[], at: ArrayLike<number>): readonly FittedValue[] {
  return free.map(({ name, kind, unit, prior }, i) => ({ name, kind, unit, value: valueAt(prior, at[i]) }));
}

/** Values as `--set` takes them. */
export function settingsOf(values: readonly FittedValue[]): readonly Setting[] {
  return values.flatMap(({ name, kind, unit, value }): Setting[] => {
    if (kind === 'start') return [];
    return kind === 'number'
      ? [{ path: `parameters.${name}`, value: String(value) }]
      : [{ path: name, value: unit === '' ? String(value) : `${value} ${unit}` }];
  });
}

/** A scenario without the actions that its log tells of, or without those after a day. */
export function withoutLogged(scenario: Scenario, { logged }: FitSystem, after = -Infinity): Scenario {
  if (logged === undefined || logged.size === 0) return scenario;
  const isLogged = (where = ''): boolean => logged.has(where.replace(/:\d+(?::\d+)?$/, ''));
  return {
    ...scenario,
    actions: scenario.actions.filter(({ at, where }) => at <= after || !isLogged(where)),
  };
}

/** A scenario with fitted water at the start. */
export function withFittedStart(scenario: Scenario, values: readonly FittedValue[]): Scenario {
  const starts = values.filter(({ kind }) => kind === 'start');
  return starts.length === 0 ? scenario : withStart(scenario, starts);
}

const exchangePath = /^vessels\.(.+)\.exchange$/;

/** A scenario with fitted discharges in place of its own: what reading its file with them would give. */
function withExchange(scenario: Scenario, values: readonly FittedValue[]): Scenario {
  const exchanges = new Map(
    values.flatMap(({ name, kind, unit, value }): [string, number][] => {
      const vessel = kind === 'path' && unit === 'L/d' ? exchangePath.exec(name)?.[1] : undefined;
      return vessel === undefined ? [] : [[vessel, value / 1000]];
    }),
  );
  if (exchanges.size === 0) return scenario;
  return {
    ...scenario,
    vessels: scenario.vessels.map((vessel) => ({
      ...vessel,
      exchange: exchanges.get(vessel.name) ?? vessel.exchange,
    })),
  };
}

/** Readings of a file that are kept: those that derivatives take in turn. */
const readingsKept = 16;

/**
 * The scenario of a system at values. Reads the file anew only where a value that goes into the reading is another than
 * before: a path, or a number of the tables that the file's defaults are made of.
 * @param known last day whose actions the log has told
 */
export function openScenarios(
  system: FitSystem,
  base: ExtendedReading,
  days: number,
  known = Infinity,
): (values: readonly FittedValue[]) => Scenario {
  const inReading = new Set(base.used);
  const isRead = ({ kind, name, unit }: FittedValue): boolean =>
    kind === 'path' ? !(exchangePath.test(name) && unit === 'L/d') : kind === 'number' && inReading.has(name);
  const kept = new Map<string, Scenario>();
  const readWith = (settings: readonly Setting[]): Scenario => {
    if (settings.length === 0) return base.scenario;
    const key = JSON.stringify(settings);
    const found = kept.get(key) ?? system.read(settings, days).scenario;
    kept.delete(key);
    kept.set(key, found);
    for (const oldest of kept.keys()) {
      if (kept.size <= readingsKept) break;
      kept.delete(oldest);
    }
    return found;
  };
  return (values) => {
    const read = readWith(settingsOf(values.filter(isRead)));
    const numbers = values.filter((value) => value.kind === 'number' && !isRead(value));
    const overrides: Override[] = [
      ...read.overrides.filter(({ id }) => numbers.every(({ name }) => name !== id)),
      ...numbers.map(({ name, value }) => ({ id: name, value })),
    ];
    const outside = values.filter((value) => !isRead(value));
    return withFittedStart(
      withoutLogged({ ...withExchange(read, outside), overrides }, system, known),
      values,
    );
  };
}
