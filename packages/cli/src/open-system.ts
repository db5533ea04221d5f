import { readScenarioFully, type FitSystem } from '@leat/core';
import { openBeside } from './open-beside.js';
import { settingsOf, type ScenarioOptions } from './scenario-options.js';
import { textOf } from './text-of.js';

/** A scenario file that a fit can read again and again: each file on the disk is read once. Throws FileError. */
export function openSystem(
  file: string,
  options: Pick<ScenarioOptions, 'set' | 'tables' | 'allowPath'>,
): FitSystem {
  const text = textOf(file);
  const texts = new Map<string, string>();
  const openNext = openBeside([file], options.allowPath);
  const load = (path: string, from: string): string => {
    const known = texts.get(path) ?? openNext(path, from);
    texts.set(path, known);
    return known;
  };
  const given = settingsOf(options);
  return {
    read: (set, days) =>
      readScenarioFully(text, {
        file,
        load,
        set: [...given, ...set],
        ...(options.tables === undefined ? {} : { tables: options.tables }),
        ...(days === undefined ? {} : { days }),
      }),
  };
}
