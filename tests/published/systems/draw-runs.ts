import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compileModel, createParameters, readScenario, readScenarioFully, type Parameters } from '@leat/core';
import type { Setting } from '../../../packages/core/src/scenario/file/set-value.js';
import { openSampling } from '../../../packages/core/src/analysis/uncertainty/sampling.js';
import { drawnValues } from '../../../packages/core/src/analysis/uncertainty/open-runs.js';
import { parametersAt } from '../../../packages/core/src/library/parameters.js';
import { rowOf, rowsOf } from '../../../packages/core/src/library/rows-in-use.js';
import { simulate } from '../../../packages/core/src/run/stepping.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import type { Runs, SystemCase } from './system-case.js';

/** Looser than the default of 1e-5: no figure of the table moves in its third digit by it, and it halves the time. */
const tolerance = 1e-3;

function textOf(file: string): { text: string; file: string } {
  const path = fileURLToPath(new URL(`${file}.yaml`, import.meta.url));
  return { text: readFileSync(path, 'utf8'), file: `${file}.yaml` };
}

function finished(run: Run, what: string): Run {
  if (run.outcome.kind === 'done') return run;
  throw new Error(`${what} ended with ${JSON.stringify(run.outcome)}`);
}

/** One run of a system with the numbers of the tables as they are. */
export function usualRun(name: string, settings: readonly Setting[], accuracy = tolerance): Run {
  const { text, file } = textOf(name);
  const scenario = readScenario(text, { file, set: settings });
  const model = compileModel(scenario, createParameters(scenario.overrides));
  return finished(simulate(model, { tolerance: accuracy }), name);
}

const known = new Map<string, Runs>();

/** The runs of a system with the numbers of the tables as they are, and what is changed; made once. */
export function usualRuns(system: SystemCase, changes: readonly Setting[] = []): Runs {
  const key = JSON.stringify([system.name, changes]);
  const found = known.get(key);
  if (found !== undefined) return found;
  const runs = Object.fromEntries(
    Object.entries(system.runs).map(([name, set]) => [name, usualRun(system.file, [...set, ...changes])]),
  );
  known.set(key, runs);
  return runs;
}

/** Numbers that the reading of the file uses (surfaces of media and walls ...), set to those of a draw. */
function drawnSettings(used: readonly string[], parameters: Parameters): Setting[] {
  return used
    .filter((id) => rowOf(parameters, id).distribution !== 'fixed')
    .map((id) => ({ path: `parameters.${id}`, value: String(parameters.number(id).value) }));
}

const usedIn = new Map<string, readonly string[]>();

/** Ids of the numbers that reading a file uses. */
function usedBy(name: string): readonly string[] {
  const { text, file } = textOf(name);
  const used = usedIn.get(name) ?? readScenarioFully(text, { file }).used;
  usedIn.set(name, used);
  return used;
}

/** Numbers of the tables, drawn as those of an ensemble are: a Latin hypercube with the correlations of the tables. */
function openDraws(members: number): (member: number) => Parameters {
  const tables = createParameters();
  const rows = [...rowsOf(tables)].filter(({ distribution }) => distribution !== 'fixed');
  const ids = rows.map(({ id }) => id);
  const sample = openSampling({ method: 'latin-hypercube', members, seed: 1 }, ids);
  return (member) => parametersAt(drawnValues(rows, sample(member)), tables);
}

const drawsOf = new Map<number, (member: number) => Parameters>();

/** Numbers of one draw of so many; the draws are opened once. */
function drawnNumbers(draw: number, draws: number): Parameters {
  const open = drawsOf.get(draws) ?? openDraws(draws);
  drawsOf.set(draws, open);
  return open(draw - 1);
}

/** What a system had to assume, of one draw, evenly in the ranges of its sources; numbers of the tables are drawn as without it. */
function drawnAssumptions({ assumed = [], draws }: SystemCase, draw: number): readonly Setting[] {
  const sample = openSampling(
    { method: 'latin-hypercube', members: draws, seed: 1 },
    assumed.map(({ path }) => path),
  )(draw - 1);
  return assumed.map(({ path, low, high, unit }, i) => ({
    path,
    value: `${low + sample[i] * (high - low)} ${unit}`,
  }));
}

/** The runs of a system with drawn numbers, of draw 1, 2, ...: each draw holds in all its runs. They may have broken off. */
export function drawnRuns(system: SystemCase, draw: number): Runs {
  const { text, file } = textOf(system.file);
  const parameters = drawnNumbers(draw, system.draws);
  const drawn = [...drawnSettings(usedBy(system.file), parameters), ...drawnAssumptions(system, draw)];
  return Object.fromEntries(
    Object.entries(system.runs).map(([name, set]) => {
      const scenario = readScenario(text, { file, set: [...set, ...drawn] });
      return [name, simulate(compileModel(scenario, parameters), { tolerance })];
    }),
  );
}
