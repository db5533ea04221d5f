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
  it('hold pH over 7.6 in the weeks that are short of base, a quarter of a unit more than weekly doses do, because lime dissolves as acid is made', () => {
    expect(lowest(shell, 'pH')).toBeGreaterThan(7.6);
    expect(lowest(shell, 'pH')).toBeGreaterThan(lowest(dosed, 'pH') + 0.25);
    expect(lowest(shell, 'alkalinity')).toBeGreaterThan(1.7 * lowest(dosed, 'alkalinity'));
    expect(lowest(none, 'pH')).toBeLessThan(6.8);
  });

  it('dissolve some 600 g in six weeks and then no more, because saturated water takes no lime', () => {
    const molar = 100.0869;
    expect(dissolved(shell, 0, 45) * molar).toBeGreaterThan(500);
    expect(dissolved(shell, 0, 45) * molar).toBeLessThan(650);
    expect(dissolved(shell, 45, 180)).toBeLessThanOrEqual(0);
    expect(at(shell, 'saturation-index', 21, 'sump')).toBeLessThan(-0.2);
    expect(at(shell, 'saturation-index', 45, 'sump')).toBeGreaterThan(0);
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
  it('give half as much in the short weeks, what weekly doses do, because a quarter of the surface in water that is shorter of lime dissolves slower', () => {
    const gain = (run: Run): number => lowest(run, 'alkalinity') - lowest(none, 'alkalinity');
    expect(gain(little) / gain(shell)).toBeGreaterThan(0.4);
    expect(gain(little) / gain(shell)).toBeLessThan(0.6);
    expect(Math.abs(lowest(little, 'pH') - lowest(dosed, 'pH'))).toBeLessThan(0.05);
  });

  it('are as good as twenty from the fifth month on, and none from the sixth, because by then no base is wanted', () => {
    for (const [run, day] of [
      [little, 120],
      [none, 165],
    ] as const) {
      expect(Math.abs(at(run, 'pH', day) - at(shell, 'pH', day))).toBeLessThan(0.01);
      expect(at(run, 'alkalinity', day) / at(shell, 'alkalinity', day)).toBeCloseTo(1, 1);
    }
    expect(at(shell, 'pH', 120) - at(none, 'pH', 120)).toBeGreaterThan(0.1);
  });
});

/** The glasshouse with its doses so many times as large, and scale that falls as usual or hardly at all. */
function withDoses(times: number, scale = true): Run {
  const off = shippedScenario('glasshouse');
  return doneRun({
    ...off,
    actions: off.actions.map((each) =>
      each.action.kind === 'dose'
        ? { ...each, action: { ...each.action, mass: times * each.action.mass } }
        : each,
    ),
    overrides: scale ? [] : [{ id: 'lime.scale-rate', value: 1e-12, low: 1e-12, high: 1e-12 }],
  });
}

describe('weekly doses of potassium bicarbonate in the same water', () => {
  it('end short of scale on the media beds, because calcium is taken past saturation but not to the onset of it', () => {
    const index = seriesOf(dosed, 'saturation-index@media-bed-1').values;
    expect(Math.max(...index)).toBeGreaterThan(0.5);
    expect(Math.max(...index)).toBeLessThan(Math.log10(dosed.model.parameters.value('lime.scale-onset')));
    expect(at(dosed, 'calcite', 180, 'media-bed-1')).toBe(0);
  });

  it('end in scale where they are four times as large, because pH climbs with calcium in the water, and scale slows the climb', () => {
    const [hard, soft] = [withDoses(4), withDoses(4, false)];
    expect(at(hard, 'calcite', 30, 'media-bed-1')).toBe(0);
    expect(at(hard, 'calcite', 180, 'media-bed-1')).toBeGreaterThan(0.1);
    expect(at(soft, 'pH', 180)).toBeGreaterThan(at(hard, 'pH', 180));
    expect(at(soft, 'calcium', 180)).toBeGreaterThan(1.05 * at(hard, 'calcium', 180));
  });
});
