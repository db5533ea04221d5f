import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import { simulate } from '../../../packages/core/src/run/stepping.js';
import { readScenario } from '../../../packages/core/src/scenario/read-scenario.js';
import { full } from '../../support/length.js';
import { shippedText } from '../../support/shipped-scenario.js';
import { largestDeviation } from './deviation.js';
import { evaluateHere, randomPoints } from './random-points.js';
import { recordYear, type Recording } from './record-year.js';
import { missingTools } from './tools.js';
import { openWorkshop, type PeerRun, type Workshop } from './workshop.js';

// The demo year by general-purpose tools that nobody here wrote: SUNDIALS and SciPy, on a derivative
// translated from the source. They are asked for where continuous integration has installed them.
const missing = missingTools();
const required = process.env['LEAT_PEERS'] === 'required';
const why = missing === undefined ? '' : ` (${missing})`;

const AGREED = 1e-6;
/** The short form is a third of the year: every kind of jump and of forcing is in it. */
const DAYS = full ? 365 : 120;

test.runIf(required)('the reference tools are installed', () => {
  expect(missing).toBeUndefined();
});

describe.skipIf(missing !== undefined)(`the demo year by reference tools${why}`, () => {
  const model = compileModel(
    readScenario(shippedText('glasshouse'), { file: 'glasshouse.yaml', days: DAYS }),
    createParameters(),
  );
  let recording: Recording;
  let workshop: Workshop;
  let leat: Float64Array;

  beforeAll(() => {
    recording = recordYear(model, 1e-10);
    workshop = openWorkshop(recording);
    const { samples } = simulate(model, { tolerance: 1e-9 });
    leat = Float64Array.from(samples.slice(1).flatMap(({ y }) => [...y]));
  });

  afterAll(() => {
    workshop.close();
  });

  const expectAgreement = (run: PeerRun): void => {
    expect(run.days).toHaveLength(DAYS * model.layout.states.length);
    const { share, state, day } = largestDeviation(leat, run.days, model.layout.states.length, AGREED);
    const { component, place } = model.layout.states[state];
    expect(share, `${component}@${place} on day ${day} differs by so many times ${AGREED}`).toBeLessThan(1);
  };

  test('the year has what makes it hard: jumps, and forcing that changes within a day', () => {
    expect(recording.segments.length).toBeGreaterThan(DAYS);
    expect(recording.segments.filter(({ jump }) => jump !== undefined).length).toBeGreaterThan(DAYS / 10);
  });

  // The same to rounding: the library may sum in another order and seek the pH by other steps.
  test.each(['c', 'numpy'] as const)(
    'the translated derivative and Jacobian are the source (%s)',
    (right) => {
      const points = randomPoints(recording, 20);
      const there = workshop.evaluate(right, Float64Array.from(points.flat()));
      const here = evaluateHere(recording, points).flat();
      expect(there).toHaveLength(here.length);
      const worst = here.reduce((most, { value, turnover }, i) => {
        const off = there[i] === value ? 0 : Math.abs(there[i] - value) / turnover;
        return Number.isFinite(off) ? Math.max(most, off) : Infinity;
      }, 0);
      expect(worst).toBeLessThan(1e-11);
    },
  );

  test.each(['cvode-klu', 'cvode-dense', 'arkode-klu'])(
    'SUNDIALS agrees to 1e-6 at every day of the year: %s',
    (method) => {
      const tolerance = method === 'arkode-klu' ? 1e-8 : 1e-9;
      expectAgreement(workshop.sundials({ method, forcing: 'restart', tolerance, repeats: 1 }));
    },
  );

  // The same method on the same right side takes the same steps, but where rounding turns one that was just at the bar. The
  // course is then the same to far less than the tolerance, within which each may be off (measured: 6e-6 of it).
  test('the method itself, translated into C, takes our steps and goes our course', () => {
    const tolerance = 1e-7;
    const own = simulate(model, { tolerance });
    const there = workshop.rodas({ tolerance, repeats: 1 });
    for (const count of [
      'steps',
      'rejected',
      'passed',
      'evaluations',
      'jacobians',
      'factorisations',
    ] as const)
      expect(Math.abs(there.work[count] - own.work[count]), count).toBeLessThanOrEqual(
        0.01 * own.work[count],
      );
    expect(recording.segments.filter(({ jump }) => jump !== undefined)).toHaveLength(recording.restarts);
    const states = model.layout.states.length;
    const days = Float64Array.from(own.samples.slice(1).flatMap(({ y }) => [...y]));
    expect(there.days).toHaveLength(days.length);
    expect(largestDeviation(days, there.days, states, tolerance).share).toBeLessThan(0.01);
    const { x } = own.samples[own.samples.length - 1];
    expect(there.extents).toHaveLength(model.rows.length);
    expect(largestDeviation(x, there.extents, x.length, tolerance).share).toBeLessThan(0.01);
    const loose = workshop.rodas({ tolerance: 100 * tolerance, repeats: 1 });
    expect(largestDeviation(days, loose.days, states, tolerance).share).toBeGreaterThan(1);
  });

  test.each(['lsoda', 'radau'])('SciPy agrees to 1e-6 at every day of the year: %s', (method) => {
    const tolerance = method === 'radau' ? 1e-7 : 1e-9;
    expectAgreement(workshop.scipy({ method, forcing: 'restart', tolerance, repeats: 1, right: 'c' }));
  });

  test('a loose run is found to differ', () => {
    const run = workshop.sundials({ method: 'cvode-klu', forcing: 'restart', tolerance: 1e-4, repeats: 1 });
    expect(largestDeviation(leat, run.days, model.layout.states.length, AGREED).share).toBeGreaterThan(1);
  });
});
