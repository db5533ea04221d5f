import { simulate, type Model } from '@leat/core';
import { integrators } from '../../support/integrators.js';

/** Share of the steps of a run that lie in stretches shorter than 1e-3 d. */
export function shortShare(model: Model): number {
  let short = 0;
  const { work } = simulate(model, {
    integrator: (system, tolerance, options) => {
      const inner = integrators.rosenbrock(system, tolerance, options);
      return {
        name: inner.name,
        work: inner.work,
        ...(inner.memory && { memory: inner.memory }),
        restart: () => {
          inner.restart();
        },
        advance: (from, to, y, x, outputs) => {
          const before = inner.work.steps;
          const ending = inner.advance(from, to, y, x, outputs);
          if (to - from < 1e-3) short += inner.work.steps - before;
          return ending;
        },
      };
    },
  });
  return short / work.steps;
}
