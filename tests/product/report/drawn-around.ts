import { readFileSync } from 'node:fs';
import { ensembleOf, openScenarioText, type EnsembleResult } from '@leat/core';
import { readText } from '../../../packages/cli/src/files/read.js';
import { shippedPath } from '../../../packages/cli/src/files/shipped.js';

/** An ensemble of a shipped scenario, small: for how it looks, not for what it says. */
export function drawnAround(name: string, days: number, members: number): EnsembleResult {
  const file = shippedPath(name);
  const open = openScenarioText(readFileSync(file, 'utf8'), { file, load: (path) => readText(path), days });
  const questions = {
    measures: ['highest tan@tank-1'],
    conditions: ['highest nitrite@tank-1 averaged 1 d below 1 mg N/L'],
  };
  return ensembleOf(open, { method: 'latin-hypercube', members, seed: 1 }, questions);
}
