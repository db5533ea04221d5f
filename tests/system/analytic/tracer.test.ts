import { describe, expect, it } from 'vitest';
import { type IntegratorName, integrators } from '../../support/integrators.js';
import { relativeDeviation } from '../../support/deviation.js';
import { linearSolution } from '../../support/matrix-exponential.js';
import { courseOf, doneRun } from '../../support/run-of.js';
import {
  float,
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  sourceWater,
  startOf,
  stillWater,
  vessel,
} from '../../support/scenario-builder.js';

const names: readonly IntegratorName[] = ['rosenbrock', 'odex'];
const salty = (chloride: number) => ({ water: stillWater(2, 7.5, { chloride }) });
/** Global error allowed at tolerance 1e-8: fifty local tolerances. */
const bound = 50e-8;
const mains = [sourceWater('mains', { chloride: 30 })];

describe.each(names)('chloride by %s, against exact solutions', (integrator) => {
  it('washes out of one vessel as an exponential (exact solution)', () => {
    const sump = vessel('sump', 2, { exchange: 0.5 });
    const run = doneRun(
      scenarioOf([sump], { waters: mains, topUp: float(2), start: [startOf(sump, salty(100))], days: 12 }),
      { integrator: integrators[integrator], tolerance: 1e-8 },
    );
    const exact = run.samples.map(({ time }) => 30 + 70 * Math.exp((-0.5 * time) / 2));
    expect(relativeDeviation(courseOf(run, 'chloride', 'sump'), exact)).toBeLessThan(bound);
  });

  it('mixes two vessels in a loop with exchange (exact solution, matrix exponential)', () => {
    const tank = vessel('tank', 1.5, { exchange: 0.3 });
    const sump = vessel('sump', 0.8);
    const run = doneRun(
      scenarioOf([tank, sump], {
        waters: mains,
        topUp: float(0.8),
        pumps: [mainPump],
        flows: [pumped('sump', 'tank', 4), gravity('tank', 'sump')],
        start: [startOf(tank, salty(200)), startOf(sump, salty(10))],
      }),
      { integrator: integrators[integrator], tolerance: 1e-8 },
    );
    // tank: in 4 from sump, out 3.7 to sump and 0.3 away; sump: in 3.7 and 0.3 mains, out 4.
    const a = [
      [-4 / 1.5, 4 / 1.5],
      [3.7 / 0.8, -4 / 0.8],
    ];
    const b = [0, (0.3 * 30) / 0.8];
    const exact = run.samples.map(({ time }) => linearSolution(a, b, [200, 10], time));
    expect(
      relativeDeviation(
        courseOf(run, 'chloride', 'tank'),
        exact.map(([c]) => c),
      ),
    ).toBeLessThan(bound);
    expect(
      relativeDeviation(
        courseOf(run, 'chloride', 'sump'),
        exact.map(([, c]) => c),
      ),
    ).toBeLessThan(bound);
  });

  it('goes round a loop with a split and a join (exact solution, matrix exponential)', () => {
    const tank = vessel('tank', 2);
    const bed = vessel('bed', 1, { leak: 0.2 });
    const raft = vessel('raft', 3);
    const sump = vessel('sump', 1);
    const run = doneRun(
      scenarioOf([tank, bed, raft, sump], {
        waters: mains,
        topUp: float(1),
        pumps: [mainPump],
        flows: [
          pumped('sump', 'tank', 6),
          gravity('tank', 'bed', 0.4),
          gravity('tank', 'raft', 0.6),
          gravity('bed', 'sump'),
          gravity('raft', 'sump'),
        ],
        start: [
          startOf(tank, salty(300)),
          startOf(bed, salty(5)),
          startOf(raft, salty(80)),
          startOf(sump, salty(20)),
        ],
      }),
      { integrator: integrators[integrator], tolerance: 1e-8 },
    );
    const a = [
      [-6 / 2, 0, 0, 6 / 2],
      [2.4 / 1, -2.4 / 1, 0, 0],
      [3.6 / 3, 0, -3.6 / 3, 0],
      [0, 2.2 / 1, 3.6 / 1, -6 / 1],
    ];
    const exact = run.samples.map(({ time }) =>
      linearSolution(a, [0, 0, 0, 0.2 * 30], [300, 5, 80, 20], time),
    );
    run.model.layout.vessels.forEach((name, vessel) => {
      expect(
        relativeDeviation(
          courseOf(run, 'chloride', name),
          exact.map((row) => row[vessel]),
        ),
      ).toBeLessThan(bound);
    });
  });

  it('passes down a once-through chain as Bateman (1910) has it (exact solution)', () => {
    // mains > sump > first > last > away, 1.2 m3 a day all the way; the mains hold no chloride.
    const first = vessel('first', 0.6);
    const last = vessel('last', 2.4, { exchange: 1.2 });
    const sump = vessel('sump', 1.5);
    const run = doneRun(
      scenarioOf([first, last, sump], {
        waters: [sourceWater('mains', { chloride: 0 })],
        topUp: float(1.5),
        pumps: [mainPump],
        flows: [pumped('sump', 'first', 1.2), gravity('first', 'last'), gravity('last', 'sump')],
        start: [startOf(first, salty(0)), startOf(last, salty(0)), startOf(sump, salty(100))],
        days: 6,
      }),
      { integrator: integrators[integrator], tolerance: 1e-9 },
    );
    const [k1, k2, k3] = [1.2 / 1.5, 1.2 / 0.6, 1.2 / 2.4];
    const amount = 100 * 1.5;
    const after = run.samples.slice(1);
    const exactFirst = after.map(
      ({ time: t }) => (amount * k1 * (Math.exp(-k1 * t) - Math.exp(-k2 * t))) / (k2 - k1) / 0.6,
    );
    const exactLast = after.map(
      ({ time: t }) =>
        (amount *
          k1 *
          k2 *
          (Math.exp(-k1 * t) / ((k2 - k1) * (k3 - k1)) +
            Math.exp(-k2 * t) / ((k1 - k2) * (k3 - k2)) +
            Math.exp(-k3 * t) / ((k1 - k3) * (k2 - k3)))) /
        2.4,
    );
    expect(relativeDeviation(courseOf(run, 'chloride', 'first').slice(1), exactFirst)).toBeLessThan(1e-6);
    expect(relativeDeviation(courseOf(run, 'chloride', 'last').slice(1), exactLast)).toBeLessThan(1e-6);
  });

  it('concentrates as water goes to air, and keeps every gram (exact: C = C0 V0 / V)', () => {
    const sump = vessel('sump', 1, { open: 4 });
    const run = doneRun(
      scenarioOf([sump], {
        et0: { kind: 'constant', value: 0.02 },
        start: [startOf(sump, salty(50))],
        days: 8,
      }),
      { integrator: integrators[integrator] },
    );
    const lost = 4 * 0.02 * run.model.parameters.value('water.open-coefficient');
    const exact = run.samples.map(({ time }) => 50 / (1 - lost * time));
    expect(relativeDeviation(courseOf(run, 'chloride', 'sump'), exact)).toBeLessThan(1e-12);
  });
});
