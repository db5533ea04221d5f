import { InputError, valueRange, type EndNames, type ScenarioReading, type ValueRange } from '@leat/core';
import { openScenario, type ScenarioOptions } from './open-scenario.js';

/** One quantity of a scenario file that is varied. */
export interface Varied extends ValueRange {
  readonly path: string;
  /** Whether the file takes only whole numbers there. */
  readonly whole: boolean;
  /** A value as it is written in a file. */
  text(value: number): string;
}

/** A value as `path=value`, for `--set`. */
export function settingOf(varied: Varied, value: number): string {
  return `${varied.path}=${varied.text(value)}`;
}

/** Reads the file with one value, faults of that value under the name of the option that gave it. */
function tryAt(file: string, options: ScenarioOptions, path: string, text: string, name: string): void {
  try {
    openScenario(file, { ...options, set: [...options.set, `${path}=${text}`] });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(
      error.faults.map((fault) => (fault.file === '--set' ? { ...fault, file: name } : fault)),
    );
  }
}

const wantsWhole = (error: unknown): boolean =>
  error instanceof InputError &&
  error.faults.some(({ expected }) => expected?.startsWith('a whole number') === true);

/**
 * Reads what is varied and between which ends, and tries the file at both. Throws InputError where the file has
 * no such path, or takes no such value there.
 */
export function openVaried(
  file: string,
  options: ScenarioOptions,
  asked: { readonly path: string; readonly from: string; readonly to: string },
  names: EndNames,
): Varied {
  const range = valueRange(asked.from, asked.to, names);
  if (!('unit' in range)) throw new InputError(range);
  openScenario(file, options);
  const text = (value: number): string => (range.unit === '' ? String(value) : `${value} ${range.unit}`);
  const { path } = asked;
  tryAt(file, options, path, text(range.from), names.from);
  tryAt(file, options, path, text(range.to), names.to);
  let whole = false;
  if (range.unit === '' && Number.isInteger(range.from) && Number.isInteger(range.to)) {
    try {
      tryAt(file, options, path, String((range.from + range.to) / 2 + 0.25), names.from);
    } catch (error) {
      if (!wantsWhole(error)) throw error;
      whole = true;
    }
  }
  return { ...range, path, whole, text };
}

/** The scenario with values at their paths. Throws InputError where it takes no such value. */
export function openAt(
  file: string,
  options: ScenarioOptions,
  settings: readonly { readonly varied: Varied; readonly value: number }[],
): ScenarioReading {
  const set = settings.map(({ varied, value }) => settingOf(varied, value));
  return openScenario(file, { ...options, set: [...options.set, ...set] });
}
