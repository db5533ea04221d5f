import { readFileSync } from 'node:fs';
import { compileModel, createParameters, readScenario, simulate, type Run } from '@leat/core';
import { bench, describe } from 'vitest';

const file = new URL('../../packages/cli/scenarios/glasshouse.yaml', import.meta.url);
const text = readFileSync(file, 'utf8');
const scenario = readScenario(text, { file: 'glasshouse.yaml', days: 365 });
const parameters = createParameters();
const model = compileModel(scenario, parameters);

function report(name: string, run: Run): void {
  const { steps, rejected, evaluations, jacobians, factorisations, solves } = run.work;
  console.log(
    `${name}: ${model.layout.states.length} states, ${model.rows.length} rates, ${run.outcome.kind}; steps ${steps}, rejected ${rejected}, evaluations ${evaluations}, Jacobians ${jacobians}, factorisations ${factorisations}, solves ${solves}`,
  );
}

report('one year of the demo, rosenbrock at 1e-5 (default)', simulate(model));
report('one year of the demo, rosenbrock at 1e-6', simulate(model, { tolerance: 1e-6 }));
report('one year of the demo, odex at 1e-6', simulate(model, { integrator: 'odex', tolerance: 1e-6 }));

describe('one year of the demo system, in process', () => {
  bench(
    'rosenbrock at 1e-5 (default), warm',
    () => {
      simulate(model);
    },
    { warmupIterations: 5, iterations: 20, time: 0 },
  );
  bench(
    'rosenbrock at 1e-6, warm',
    () => {
      simulate(model, { tolerance: 1e-6 });
    },
    { warmupIterations: 5, iterations: 20, time: 0 },
  );
  bench(
    'odex at 1e-6, warm',
    () => {
      simulate(model, { integrator: 'odex', tolerance: 1e-6 });
    },
    { warmupIterations: 0, iterations: 2, time: 0 },
  );
});

describe('before the first step', () => {
  bench('reading the file', () => {
    readScenario(text, { file: 'glasshouse.yaml' });
  });
  bench('compiling, with the closure check', () => {
    compileModel(scenario, parameters);
  });
});
