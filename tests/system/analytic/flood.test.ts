import { describe, expect, it } from 'vitest';
import { carbonDioxideInAir } from '../../../packages/core/src/chemistry/acid-base.js';
import { oxygenSaturation } from '../../../packages/core/src/chemistry/gases.js';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { budgetsOf, worstResidual } from '../../../packages/core/src/result/budget.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import type { Action, Scenario, Vessel } from '../../../packages/core/src/scenario/scenario.js';
import { concentration, courseOf, doneRun, extentOf, lastOf } from '../../support/run-of.js';
import {
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  startOf,
  stillWater,
  vessel,
} from '../../support/scenario-builder.js';

const parameters = createParameters();
const contact = parameters.value('gas.flood-contact');
const saturation = oxygenSaturation(parameters, 20);

/** A bed of a m3 that drains `flooded` m3 d-1, and a litre of sump through which 20 m3 d-1 go round. */
function bedOf(flooded: number | undefined, other: Partial<Scenario> = {}): Scenario {
  const bed = vessel('bed', 1, flooded === undefined ? {} : { flooded });
  const sump = vessel('sump', 1e-3);
  const water = stillWater(2, 6.8, { oxygen: 2 });
  return scenarioOf([bed, sump], {
    start: [bed, sump].map((each) => startOf(each, { water })),
    flows: [pumped('sump', 'bed', 20), gravity('bed', 'sump')],
    pumps: [{ ...mainPump, inlet: 1e-5, restart: 1e-4 }],
    days: 1,
    every: 0.1,
    ...other,
  });
}

const run = doneRun(bedOf(3), { tolerance: 1e-9 });
const moved = (of: Run, row: string): number => extentOf(of, lastOf(of), row);

describe('a bed that floods and drains, in the mean', () => {
  it('nears saturation with oxygen as a mixed vessel does, by water drained, contact and what the air holds (all but exact)', () => {
    const perDay = (3 * contact) / (1 + parameters.value('gas.oxygen-solubility')) / 1.001;
    const course = courseOf(run, 'oxygen', 'bed');
    course.forEach((value, i) => {
      expect(value).toBeCloseTo(saturation - (saturation - 2) * Math.exp(-perDay * 0.1 * i), 2);
    });
  });

  it('of too much carbon dioxide about half as much goes as of wanting oxygen comes (by what air holds of each)', () => {
    const ratio = carbonDioxideInAir(parameters, 20);
    expect(ratio).toBeGreaterThan(1);
    const carbonDioxide = ratio / (1 + ratio);
    const oxygen = 1 / (1 + parameters.value('gas.oxygen-solubility'));
    expect(carbonDioxide / oxygen).toBeGreaterThan(0.5);
    expect(carbonDioxide / oxygen).toBeLessThan(0.6);
    expect(moved(run, 'flood-carbon-dioxide@bed')).toBeLessThan(0);
    const other = doneRun(bedOf(6), { tolerance: 1e-9 });
    expect(moved(other, 'flood-carbon-dioxide@bed')).toBeLessThan(moved(run, 'flood-carbon-dioxide@bed'));
  });

  it('closes every balance, and leaves a bed without it alone', () => {
    expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
    const still = doneRun(bedOf(undefined));
    expect(still.model.instances.some(({ process }) => process.id.startsWith('flood-'))).toBe(false);
    expect(concentration(still, lastOf(still), 'oxygen', 'bed')).toBeCloseTo(2, 6);
  });

  it('stops while the pump stands', () => {
    const stop: Action = { kind: 'pump', pump: 'main', running: false };
    const stopped = doneRun(bedOf(3, { actions: [{ at: 0.5, action: stop }] }), { tolerance: 1e-9 });
    const course = courseOf(stopped, 'oxygen', 'bed');
    expect(course[5]).toBeGreaterThan(course[4] + 0.1);
    expect(course[10]).toBeCloseTo(course[5], 6);
  });
});

/** A bed of a m3 whose siphon passes 30 m3/d down to 0.4 m3, and 10 m3/d come of much water with 2 g/m3 of oxygen; or its mean. */
function siphonBed(drain: Pick<Vessel, 'drain' | 'flooded'>): Run {
  const bed = vessel('bed', 1, drain);
  const sump = vessel('sump', 300);
  const water = stillWater(2, 6.8, { oxygen: 2 });
  return doneRun(
    scenarioOf([bed, sump], {
      start: [bed, sump].map((each) => startOf(each, { water })),
      flows: [pumped('sump', 'bed', 10), gravity('bed', 'sump')],
      pumps: [mainPump],
      days: 4,
    }),
    { tolerance: 1e-8 },
  );
}

describe('a bed that a siphon drains', () => {
  const siphon = siphonBed({ drain: { rate: 30, to: 0.4, by: 'siphon' } });

  it('draws in the air of 44 fillings of 0.6 m3 in 4 d, and the water takes what it wants', () => {
    // Full at the start: drained in 0.03 d, filled in 0.06 d, 11.1 times a day.
    const whole = (44.4 * 0.6 * contact) / (1 + parameters.value('gas.oxygen-solubility'));
    const brought = moved(siphon, 'flood-oxygen@bed');
    expect(brought).toBeLessThan(whole * (saturation - 2));
    // Water that has been refreshed wants less.
    expect(brought).toBeGreaterThan(0.45 * whole * (saturation - 2));
    expect(worstResidual(budgetsOf(siphon)).share).toBeLessThan(1e-9);
  });

  it('is what `flood` says in the mean: drained water is in (rate - in) / rate', () => {
    const mean = siphonBed({ flooded: (10 * (30 - 10)) / 30 });
    const ratio = moved(siphon, 'flood-oxygen@bed') / moved(mean, 'flood-oxygen@bed');
    expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
  });
});

/** A bed of a m3 with a lower outlet at 0.4 m3, over a sump of much water with 2 g/m3 of oxygen; the pump runs `on` of each day. */
function drainingBed(on: number): Run {
  const bed = vessel('bed', 1, { drain: { rate: 4, to: 0.4 } });
  const sump = vessel('sump', 300);
  const water = stillWater(2, 6.8, { oxygen: 2 });
  return doneRun(
    scenarioOf([bed, sump], {
      start: [bed, sump].map((each) => startOf(each, { water })),
      flows: [pumped('sump', 'bed', 10), gravity('bed', 'sump')],
      pumps: [{ ...mainPump, timer: { on, off: 1 - on, offset: 0 } }],
      days: 4,
      every: 0.25,
    }),
    { tolerance: 1e-9 },
  );
}

describe('a bed whose level goes up and down between two marks', () => {
  const draining = drainingBed(0.5);

  it('draws in as much air each time as it drains, and takes from it what its water wants', () => {
    // It is full at the start, and filled again three times, by 0.6 m3 each.
    const each = (0.6 * contact) / (1 + parameters.value('gas.oxygen-solubility'));
    const most = 3 * each * (saturation - 2);
    const brought = moved(draining, 'flood-oxygen@bed');
    expect(brought).toBeLessThan(most);
    // Water that has taken some wants less of what follows.
    expect(brought).toBeGreaterThan(0.6 * most);
    expect(moved(draining, 'flood-carbon-dioxide@bed')).toBeLessThan(0);
    expect(worstResidual(budgetsOf(draining)).share).toBeLessThan(1e-9);
  });

  it('draws in none while it stays full, or empty', () => {
    const course = draining.samples.map((sample) => extentOf(draining, sample, 'flood-oxygen@bed'));
    // Filled from 1 d on for a tenth of a day, drained from 1.5 d on.
    expect(course[4]).toBe(0);
    expect(course[5]).toBeGreaterThan(0);
    expect(course[8]).toBeCloseTo(course[5], 9);
  });
});
