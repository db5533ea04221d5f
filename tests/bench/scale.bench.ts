import { allSeries, budgetsOf, compileModel, createParameters, readScenario, simulate } from '@leat/core';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checking, figure, ratio } from './support/kept.js';
import { compared, exponent, once } from './support/meter.js';
import { chain, farm, mesh } from './support/systems.js';

const SIZES = [8, 64, 512, 4096];
const DAYS = 3;
const parameters = createParameters();

/** Runs a file and tells what each part took. */
function parts(name: string, text: string, days: number): { simulating: number; all: number } {
  const times: [string, number][] = [];
  const take = <T>(word: string, work: () => T): T => {
    let made: { readonly value: T } | undefined;
    const time = once(() => {
      made = { value: work() };
    });
    times.push([word, time]);
    if (made === undefined) throw new Error(`${word} made nothing`);
    return made.value;
  };
  const scenario = take('read', () => readScenario(text, { file: name, days }));
  const model = take('compile', () => compileModel(scenario, parameters));
  const run = take('simulate', () => simulate(model));
  take('budgets', () => budgetsOf(run));
  take('series', () => allSeries(run));
  expect(run.outcome.kind).toBe('done');
  const heap = process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers;
  console.log(
    `  ${name}: ${model.layout.states.length} states, ${run.work.steps} steps; ms ${times.map(([word, ms]) => `${word} ${ms.toFixed(0)}`).join(', ')}; ${(heap / 1e6).toFixed(0)} MB held`,
  );
  const simulating = times.find(([word]) => word === 'simulate')?.[1] ?? Number.NaN;
  return { simulating, all: times.reduce((sum, [, ms]) => sum + ms, 0) };
}

/** Exponent of the time of a run by the vessels, of one size and a larger one by turns. */
function slope(system: (cells: number) => string, small: number, large: number, rounds: number): number {
  const modelOf = (cells: number) =>
    compileModel(readScenario(system(cells), { file: 'scale', days: DAYS }), parameters);
  const [few, many] = [modelOf(small), modelOf(large)];
  // Code is written out for a shape after some twenty runs: with few, both sizes go by loops.
  for (let i = 0; i < (rounds > 1 ? 4 : 1); i++) for (const model of [few, many]) simulate(model);
  const { ratio: found } = compared(
    () => once(() => void simulate(many)),
    () => once(() => void simulate(few)),
    rounds,
  );
  return Math.log(found) / Math.log(large / small);
}

describe('growth with size', () => {
  it.each([
    ['chain', chain],
    ['mesh', mesh],
  ] as const)('of a %s of vessels, one size against another', (name, system) => {
    console.log('');
    for (let i = 0; i < 10; i++)
      simulate(compileModel(readScenario(system(48), { file: name, days: DAYS }), parameters));
    const found = slope(system, 64, 128, 7);
    expect(found).toBeLessThan(10);
    ratio(`slope of time in the vessels of a ${name}, 64 to 128`, found, 1.2);
    // Takes too long for a check.
    if (!checking)
      figure(`slope of time in the vessels of a ${name}, 512 to 4096`, slope(system, 512, 4096, 1), '', 1.2);
  });

  it.skipIf(checking).each([
    ['chain', chain],
    ['mesh', mesh],
  ] as const)('of a %s of vessels, and its parts', (name, system) => {
    console.log('');
    // Once through, so that what is compared is the work and not the compiling of code.
    for (let i = 0; i < 3; i++)
      simulate(compileModel(readScenario(system(64), { file: name, days: DAYS }), parameters));
    const measured = SIZES.map((cells) => parts(`${name} of ${cells}`, system(cells), DAYS));
    figure(
      `exponent of the time of a run by the vessels of a ${name}`,
      exponent(
        SIZES,
        measured.map(({ simulating }) => simulating),
      ),
      '',
      1.15,
    );
    figure(
      `exponent of the time from file to budgets by the vessels of a ${name}`,
      exponent(
        SIZES,
        measured.map(({ all }) => all),
      ),
      '',
      1.15,
    );
  });

  it.skipIf(checking)('of a farm of 12 tanks and 40 beds, and of ten years', () => {
    console.log('');
    parts('farm of 12 tanks and 40 beds, 90 days', farm(12, 40), 90);
    const text = readFileSync(
      new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url),
      'utf8',
    );
    const one = parts('demo, one year', text, 365);
    const ten = parts('demo, ten years', text, 3650);
    figure('ten years against ten times one', ten.simulating / (10 * one.simulating), '', 1.15);
  });
});
