import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readScenarioFully, type FitSystem } from '@leat/core';

const folder = fileURLToPath(new URL('../../packages/cli/scenarios/', import.meta.url));

/** A shipped scenario, or a text beside the shipped ones, that a fit can read again and again. */
export function fitSystem(name: string, text?: string): FitSystem {
  const file = `${folder}${name}.yaml`;
  const load = (path: string): string => readFileSync(path, 'utf8');
  const source = text ?? load(file);
  return {
    read: (set, days) =>
      readScenarioFully(source, { file, load, set, ...(days === undefined ? {} : { days }) }),
  };
}
