import { describe, expect, it } from 'vitest';
import { seriesOf } from '../../../packages/core/src/result/series.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import type { Scenario } from '../../../packages/core/src/scenario/scenario.js';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario } from '../../support/shipped-scenario.js';

/** The what-if with so much shell, g; none where that is 0. */
function withShell(mass: number): Scenario {
  const shipped = shippedScenario('limestone');
  const vessels = shipped.vessels.map(({ lime, ...vessel }) =>
    lime === undefined || mass === 0 ? vessel : { ...vessel, lime: { ...lime, mass } },
  );
  return { ...shipped, vessels };
}

const dosed = doneRun(shippedScenario('glasshouse'));
const shell = doneRun(shippedScenario('limestone'));
const little = doneRun(withShell(5000));
const none = doneRun(withShell(0));
const at = (run: Run, quantity: string, day: number, vessel = 'tank-1'): number =>
  seriesOf(run, `${quantity}@${vessel}`).at(day);

const lowest = (run: Run, quantity: string): number =>
  Math.min(...[...seriesOf(run, `${quantity}@tank-1`).values].slice(14));
/** Lime that has dissolved from a day to another, mol. */
const dissolved = (run: Run, from: number, to: number): number =>
  at(run, 'calcite', from, 'sump') - at(run, 'calcite', to, 'sump');

describe('twenty kilograms of shell in the sump in place of potassium bicarbonate', () => {
  it('hold pH over 7.7 in the weeks that are short of base, more than weekly doses do, because lime dissolves as acid is made', () => {
    expect(lowest(shell, 'pH')).toBeGreaterThan(7.7);
    expect(lowest(shell, 'pH')).toBeGreaterThan(lowest(dosed, 'pH') + 0.055);
    expect(lowest(shell, 'alkalinity')).toBeGreaterThan(1.13 * lowest(dosed, 'alkalinity'));
  });

  it('dissolve near a third of a kilogram in six weeks and then no more, because settled solids give base back and saturated water takes no lime', () => {
    const molar = 100.0869;
    expect(dissolved(shell, 0, 45) * molar).toBeGreaterThan(250);
    expect(dissolved(shell, 0, 45) * molar).toBeLessThan(380);
    expect(dissolved(shell, 45, 180)).toBeLessThanOrEqual(0);
    expect(at(shell, 'saturation-index', 21, 'sump')).toBeLessThan(0);
    expect(at(shell, 'saturation-index', 90, 'sump')).toBeGreaterThan(0.5);
  });

  it('end lower in pH and alkalinity than weekly doses, which go on when none is wanted', () => {
    expect(at(dosed, 'pH', 180) - at(shell, 'pH', 180)).toBeGreaterThan(0.1);
    expect(at(shell, 'alkalinity', 180)).toBeLessThan(0.8 * at(dosed, 'alkalinity', 180));
  });

  it('leave TAN and nitrate as they are with doses', () => {
    expect(at(shell, 'tan', 180)).toBeLessThan(0.5);
    expect(at(shell, 'nitrate', 180) / at(dosed, 'nitrate', 180)).toBeCloseTo(1, 2);
  });
});

describe('five kilograms', () => {
  it('are hardly better than none in the short weeks, because a quarter of the surface dissolves slower than acid is made', () => {
    const gain = (run: Run): number => lowest(run, 'alkalinity') - lowest(none, 'alkalinity');
    expect(gain(little)).toBeGreaterThan(0.1);
    expect(gain(little)).toBeLessThan(0.5 * gain(shell));
    expect(lowest(little, 'pH')).toBeGreaterThan(7.5);
  });

  it('are as good as twenty or none from the third month on, because by then no base is wanted', () => {
    for (const run of [little, none]) {
      expect(Math.abs(at(run, 'pH', 120) - at(shell, 'pH', 120))).toBeLessThan(0.01);
      expect(at(run, 'alkalinity', 120) / at(shell, 'alkalinity', 120)).toBeCloseTo(1, 2);
    }
  });
});

describe('weekly doses of potassium bicarbonate in the same water', () => {
  it('end in scale on the media beds in the third month, because pH climbs with calcium in the water, and scale slows the climb', () => {
    expect(at(dosed, 'saturation-index', 180, 'media-bed-1')).toBeGreaterThan(0.6);
    expect(at(dosed, 'calcite', 60, 'media-bed-1')).toBe(0);
    expect(at(dosed, 'calcite', 90, 'media-bed-1')).toBeGreaterThan(0.1);
    const off = shippedScenario('glasshouse');
    const soft = doneRun({
      ...off,
      overrides: [{ id: 'lime.scale-rate', value: 1e-12, low: 1e-12, high: 1e-12 }],
    });
    expect(at(soft, 'pH', 180)).toBeGreaterThan(at(dosed, 'pH', 180));
    expect(at(soft, 'calcium', 180)).toBeGreaterThan(1.3 * at(dosed, 'calcium', 180));
  });
});
