import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  allSeries,
  budgetsOf,
  compileModel,
  createParameters,
  createRandom,
  drawParameters,
  readScenario,
  simulate,
  type Run,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { checking, figure, ratio } from './support/kept.js';
import { compared, meter, once } from './support/meter.js';
import { integrators } from '../support/integrators.js';
import { medianOf } from './support/median.js';
import { wholeProcess } from './support/whole-process.js';

const file = new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url);
const text = readFileSync(file, 'utf8');
const read = (days: number) => readScenario(text, { file: 'glasshouse.yaml', days });
const parameters = createParameters();
const year = compileModel(read(365), parameters);
const quarter = compileModel(read(90), parameters);
const month = compileModel(read(30), parameters);
/** Runs after which V8 has compiled what it will. */
const WARM = checking ? 15 : 40;
const ROUNDS = checking ? 5 : 15;

function tell(name: string, run: Run): void {
  const { steps, rejected, passed, evaluations, jacobians, factorisations, solves } = run.work;
  console.log(
    `  ${name}: steps ${steps}, rejected ${rejected}, passed ${passed}, evaluations ${evaluations}, Jacobians ${jacobians}, factorisations ${factorisations}, solves ${solves}`,
  );
}

const simulated = (tolerance?: number) => () =>
  once(() => void simulate(year, tolerance === undefined ? {} : { tolerance }));

describe('the demo year in process', () => {
  it('against itself, by other tolerances, drawn, and by the other integrator', () => {
    console.log(`\n${year.layout.states.length} states, ${year.rows.length} rates; ms of processor time`);
    for (let i = 0; i < WARM; i++) simulate(year);
    const fine = compared(simulated(1e-6), simulated(), ROUNDS);
    console.log(`  a year, warm: at 1e-6 ${fine.first.toFixed(0)}, at 1e-5 ${fine.second.toFixed(0)}`);
    const random = createRandom(1);
    const member = compared(
      () => once(() => void simulate(compileModel(year.scenario, drawParameters(random)))),
      simulated(),
      ROUNDS + 4,
    );
    // Not what is taken for the other ratios: odex takes seconds for a month.
    const odex = once(() => void simulate(month, { integrator: integrators.odex, tolerance: 1e-6 }));
    const alike = meter(() => void simulate(month, { tolerance: 1e-6 }), ROUNDS);
    const run = simulate(year);
    tell('work at 1e-5', run);
    tell('work at 1e-6', simulate(year, { tolerance: 1e-6 }));
    expect(run.outcome.kind).toBe('done');
    ratio('year at 1e-6 against one at 1e-5', fine.ratio);
    ratio('a system drawn, compiled and run against a warm year', member.ratio, 0.35);
    ratio('month at 1e-6 against odex', alike.median / odex, 0.02);
  });

  it('cold against warm', () => {
    const script = fileURLToPath(new URL('./cold-year.mjs', import.meta.url));
    const pairs = Array.from({ length: checking ? 1 : 3 }, () =>
      wholeProcess([script]).said.trim().split(' ').map(Number),
    );
    for (const [cold, warm] of pairs) console.log(`  first year ${cold.toFixed(0)}, warm ${warm.toFixed(0)}`);
    ratio('first cold year against a warm one', medianOf(pairs.map(([cold, warm]) => cold / warm)), 1.5);
  });

  // Parts of Leat against another part: a machine slows them unlike, so that nothing is kept of it.
  it.skipIf(checking)('and what is done around it', () => {
    const show = (name: string, work: () => unknown, times: number): number => {
      const { least, median } = meter(() => void work(), times, 5);
      console.log(`  ${name}: median ${median.toFixed(2)}, least ${least.toFixed(2)}`);
      return median;
    };
    const usual = show('one year at 1e-5 (default), warm', () => simulate(year), 15);
    const run = simulate(year);
    const parts = {
      reading: show('reading the file', () => read(365), 60),
      compiling: show(
        'compiling, rows found to close before',
        () => compileModel(year.scenario, parameters),
        60,
      ),
      'notebook step': show(
        '90 days, compiled anew',
        () => simulate(compileModel(quarter.scenario, parameters)),
        15,
      ),
      series: show('every series of a year read out', () => allSeries(run), 15),
      budgets: show('every budget of a year', () => budgetsOf(run), 15),
    };
    for (const [name, time] of Object.entries(parts)) figure(`${name} against a year`, time / usual);
  });
});
