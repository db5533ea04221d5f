import { seriesOf } from '@leat/core';
import { describe, expect, it } from 'vitest';
import type { Scenario, Vessel } from '../../../packages/core/src/scenario/scenario.js';
import {
  constant,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../support/scenario-builder.js';
import { doneRun } from '../../support/run-of.js';

/** pH and dissolved CO2, mg/L, after two days of fish in water that is aired by a device. */
function after(
  air: Partial<Vessel>,
  other: Partial<Scenario> = {},
): { pH: number; carbonDioxide: number; oxygen: number } {
  const tank = vessel('tank', 2, { aeration: 100, ...air });
  const run = doneRun(
    scenarioOf([tank], {
      ...{
        start: [startOf(tank, { water: stillWater(2, 7.5) })],
        fish: [tilapia('fish', 'tank')],
        days: 2,
      },
      ...other,
    }),
  );
  const last = (name: string): number => seriesOf(run, `${name}@tank`).values[2];
  return { pH: last('pH'), carbonDioxide: last('carbon-dioxide'), oxygen: last('oxygen') };
}

describe('air over and in the water of fish', () => {
  it('the more of its oxygen a device gives up, the more carbon dioxide stays, at nearly the same oxygen', () => {
    const [cascade, coarse, fine] = [0, 0.02, 0.07].map((airShare) => after({ airShare }));
    // What is breathed out must leave: the excess over air (0.72 mg/L) is in inverse proportion to the transfer, by
    // (1 - e^-n)/n with n of 0.520 and 1.822 at 20 degC [C].
    const excess = ({ carbonDioxide }: { carbonDioxide: number }): number => carbonDioxide - 0.7243;
    expect(excess(coarse) / excess(cascade) / 1.283).toBeCloseTo(1, 1);
    expect(excess(fine) / excess(cascade) / 2.173).toBeCloseTo(1, 1);
    expect(fine.pH).toBeLessThan(coarse.pH - 0.1);
    // Fish feel their water, so that they do not breathe quite alike.
    expect(Math.abs(fine.oxygen / cascade.oxygen - 1)).toBeLessThan(1e-3);
  });

  it('a closed house with 1200 ppm leaves about 1.3 mg/L more in the water than open air', () => {
    const house = after({}, { carbonDioxide: constant(0.0012) });
    // Henry at 20 degC: 0.0392 mol/L/atm x 780e-6 atm x 44 g/mol.
    expect(house.carbonDioxide - after({}).carbonDioxide).toBeCloseTo(1.345, 1);
  });

  it('at 1500 m water holds a sixth less oxygen', () => {
    const high = after({}, { altitude: 1500 });
    const sea = after({});
    // 9.09 and 7.57 at saturation, as much used up in both.
    expect(sea.oxygen - high.oxygen).toBeCloseTo(9.09 - 7.58, 1);
  });
});
