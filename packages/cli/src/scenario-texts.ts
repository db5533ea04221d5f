import { openScenarioText, type OpenScenario } from '@leat/core';
import { settingsOf, textOf, type ScenarioOptions } from './open-scenario.js';
import { readText } from './read-text.js';

/** A scenario as texts: what was read from disk once, so that every worker sees the same. Plain data. */
export interface ScenarioTexts {
  readonly file: string;
  readonly text: string;
  /** What it includes, by path. */
  readonly beside: Readonly<Record<string, string>>;
  readonly options: ScenarioOptions;
}

function open({ file, text, options }: ScenarioTexts, load: (path: string) => string): OpenScenario {
  return openScenarioText(text, {
    file,
    load,
    set: settingsOf(options),
    ...(options.tables === undefined ? {} : { tables: options.tables }),
    ...(options.days === undefined ? {} : { days: options.days }),
    ...(options.every === undefined ? {} : { every: options.every }),
  });
}

/** Opens a scenario from its texts alone. */
export function openTexts(texts: ScenarioTexts): OpenScenario {
  return open(texts, (path) => {
    const text = texts.beside[path];
    if (text === undefined) throw new Error(`${path}: was not read`);
    return text;
  });
}

/**
 * Reads a scenario file and what it includes. Throws FileError where the file cannot be read and InputError
 * with every fault in it.
 */
export function readTexts(file: string, { set, tables, days, every }: ScenarioOptions): ScenarioTexts {
  const beside: Record<string, string> = {};
  const options = {
    set,
    ...(tables === undefined ? {} : { tables }),
    ...(days === undefined ? {} : { days }),
    ...(every === undefined ? {} : { every }),
  };
  const texts = { file, text: textOf(file), beside, options };
  open(texts, (path) => (beside[path] = readText(path)));
  return texts;
}
