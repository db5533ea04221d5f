import type { ScenarioReading } from '../scenario/read-scenario.js';
import type { Override } from '../library/own-row.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Setting } from '../scenario/file/set-value.js';
import type { Free } from './free-parameter.js';
import { valueAt } from './free-parameter.js';
import { withStart } from './start-water.js';

/** A system file that can be read with values put in place of its own. */
export interface FitSystem {
  /** Reads it for a run of so many days, or as many as it says itself. Throws InputError. */
  read(settings: readonly Setting[], days?: number): ScenarioReading;
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

/** A scenario with fitted water at the start. */
export function withFittedStart(scenario: Scenario, values: readonly FittedValue[]): Scenario {
  const starts = values.filter(({ kind }) => kind === 'start');
  return starts.length === 0 ? scenario : withStart(scenario, starts);
}

/**
 * The scenario of a system at values. Reads the file anew only where a value goes into the reading: a path, or a number
 * of the tables that the file's defaults are made of.
 */
export function openScenarios(
  system: FitSystem,
  base: ScenarioReading,
  days: number,
): (values: readonly FittedValue[]) => Scenario {
  const inReading = new Set(base.used);
  return (values) => {
    const settings = settingsOf(values);
    const again = values.some(
      ({ kind, name }) => kind === 'path' || (kind === 'number' && inReading.has(name)),
    );
    if (again) return withFittedStart(system.read(settings, days).scenario, values);
    const numbers = values.filter(({ kind }) => kind === 'number');
    const overrides: Override[] = [
      ...base.scenario.overrides.filter(({ id }) => numbers.every(({ name }) => name !== id)),
      ...numbers.map(({ name, value }) => ({ id: name, value })),
    ];
    return withFittedStart({ ...base.scenario, overrides }, values);
  };
}
