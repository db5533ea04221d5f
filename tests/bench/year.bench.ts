import { readFileSync } from 'node:fs';
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
import { ratio } from './support/kept.js';
import { meter, once } from './support/meter.js';
import { integrators } from '../support/integrators.js';

const file = new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url);
const text = readFileSync(file, 'utf8');
const read = (days: number) => readScenario(text, { file: 'glasshouse.yaml', days });
const parameters = createParameters();
const year = compileModel(read(365), parameters);
const quarter = compileModel(read(90), parameters);
const day = compileModel(read(1), parameters);

function tell(name: string, run: Run): void {
  const { steps, rejected, evaluations, jacobians, factorisations, solves } = run.work;
  console.log(
    `  ${name}: steps ${steps}, rejected ${rejected}, evaluations ${evaluations}, Jacobians ${jacobians}, factorisations ${factorisations}, solves ${solves}`,
  );
}

describe('the demo year in process', () => {
  it('by both integrators, and what is done around it', () => {
    console.log(`\n${year.layout.states.length} states, ${year.rows.length} rates; ms of processor time`);
    // Cold before anything else has run.
    const cold = once(() => simulate(year));
    const show = (name: string, work: () => unknown, times: number, warm = 1): number => {
      const { least, median } = meter(
        () => {
          work();
        },
        times,
        warm,
      );
      console.log(`  ${name}: median ${median.toFixed(2)}, least ${least.toFixed(2)}`);
      return least;
    };
    console.log(`  one year at 1e-5, cold: ${cold.toFixed(1)}`);
    const reading = show('reading the file', () => read(365), 60, 5);
    const compiling = show(
      'compiling, rows found to close before',
      () => compileModel(year.scenario, parameters),
      60,
      5,
    );
    show('one day at 1e-5', () => simulate(day), 15, 3);
    const fine = show('one year at 1e-6, warm', () => simulate(year, { tolerance: 1e-6 }), 25, 10);
    const usual = show('one year at 1e-5 (default), warm', () => simulate(year), 25, 5);
    const step = show(
      'notebook step: 90 days at 1e-5, compiled anew',
      () => {
        simulate(compileModel(quarter.scenario, parameters));
      },
      15,
      3,
    );
    const random = createRandom(1);
    const member = show(
      'ensemble member: drawn, compiled, one year at 1e-5',
      () => {
        simulate(compileModel(year.scenario, drawParameters(random)));
      },
      15,
      3,
    );
    const odex = once(() => simulate(year, { integrator: integrators.odex, tolerance: 1e-6 }));
    console.log(`  one year at 1e-6 by odex: ${odex.toFixed(0)}`);
    const run = simulate(year);
    const series = show('every series of a year read out', () => allSeries(run), 15, 3);
    const budgets = show('every budget of a year', () => budgetsOf(run), 15, 3);
    tell('work at 1e-5', run);
    tell('work at 1e-6', simulate(year, { tolerance: 1e-6 }));
    expect(run.outcome.kind).toBe('done');

    ratio('year at 1e-6 against odex', fine / odex, 0.02);
    ratio('year at 1e-6 against one at 1e-5', fine / usual);
    ratio('cold year at 1e-5 against the warm one', cold / usual);
    ratio('member against a year', member / usual);
    ratio('notebook step against a year', step / usual);
    ratio('reading against a year', reading / usual);
    ratio('compiling against a year', compiling / usual);
    ratio('series against a year', series / usual);
    ratio('budgets against a year', budgets / usual);
  });
});
