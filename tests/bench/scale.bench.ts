import { allSeries, budgetsOf, compileModel, createParameters, readScenario, simulate } from '@leat/core';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ratio } from './support/kept.js';
import { exponent, once } from './support/meter.js';
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

describe('growth with size', () => {
  it.each([
    ['chain', chain],
    ['mesh', mesh],
  ] as const)('of a %s of vessels', (name, system) => {
    console.log('');
    // Once through, so that what is compared is the work and not the compiling of code.
    for (let i = 0; i < 3; i++)
      simulate(compileModel(readScenario(system(64), { file: name, days: DAYS }), parameters));
    const measured = SIZES.map((cells) => parts(`${name} of ${cells}`, system(cells), DAYS));
    ratio(
      `exponent of the time of a run by the vessels of a ${name}`,
      exponent(
        SIZES,
        measured.map(({ simulating }) => simulating),
      ),
      1.15,
    );
    ratio(
      `exponent of the time from file to budgets by the vessels of a ${name}`,
      exponent(
        SIZES,
        measured.map(({ all }) => all),
      ),
      1.15,
    );
  });

  it('of a farm of 12 tanks and 40 beds, and of ten years', () => {
    console.log('');
    parts('farm of 12 tanks and 40 beds, 90 days', farm(12, 40), 90);
    const text = readFileSync(
      new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url),
      'utf8',
    );
    const one = parts('demo, one year', text, 365);
    const ten = parts('demo, ten years', text, 3650);
    ratio('ten years against ten times one', ten.simulating / (10 * one.simulating), 1.15);
  });
});
