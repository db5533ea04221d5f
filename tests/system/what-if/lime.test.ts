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
  it('hold pH over 7.7 in the weeks that are short of base, a fifth of a unit more than weekly doses do, because lime dissolves as acid is made; neither is sour water', () => {
    expect(lowest(shell, 'pH')).toBeGreaterThan(7.7);
    expect(lowest(shell, 'pH')).toBeGreaterThan(lowest(dosed, 'pH') + 0.2);
    expect(lowest(shell, 'alkalinity')).toBeGreaterThan(1.55 * lowest(dosed, 'alkalinity'));
    expect(lowest(none, 'pH')).toBeLessThan(4.2);
  });

  it('dissolve some 700 g in ten weeks and then no more, because saturated water takes no lime', () => {
    const molar = 100.0869;
    expect(dissolved(shell, 0, 70) * molar).toBeGreaterThan(600);
    expect(dissolved(shell, 0, 70) * molar).toBeLessThan(750);
    expect(dissolved(shell, 84, 180)).toBeLessThanOrEqual(0);
    expect(at(shell, 'saturation-index', 21, 'sump')).toBeLessThan(-0.2);
    expect(at(shell, 'saturation-index', 84, 'sump')).toBeGreaterThan(0);
    expect(at(shell, 'saturation-index', 180, 'sump')).toBeGreaterThan(0.3);
  });

  it('end a tenth of a unit higher in pH than ten weeks of doses, because shell gives for as long as water takes it', () => {
    const more = at(shell, 'pH', 180) - at(dosed, 'pH', 180);
    expect(more).toBeGreaterThan(0.08);
    expect(more).toBeLessThan(0.13);
    expect(at(shell, 'alkalinity', 180)).toBeLessThan(1.4 * at(dosed, 'alkalinity', 180));
  });

  it('leave TAN and nitrate as they are with doses', () => {
    expect(at(shell, 'tan', 180)).toBeLessThan(0.5);
    expect(Math.abs(at(shell, 'nitrate', 180) / at(dosed, 'nitrate', 180) - 1)).toBeLessThan(0.01);
  });
});

describe('five kilograms', () => {
  it('give half as much in the short weeks, what weekly doses do, because a quarter of the surface in water that is shorter of lime dissolves slower', () => {
    const gain = (run: Run): number => at(run, 'alkalinity', 35) - at(none, 'alkalinity', 35);
    expect(gain(little) / gain(shell)).toBeGreaterThan(0.4);
    expect(gain(little) / gain(shell)).toBeLessThan(0.6);
    expect(Math.abs(lowest(little, 'pH') - lowest(dosed, 'pH'))).toBeLessThan(0.05);
  });

  it('come within 0.05 in pH of twenty from the fifth month on, because they dissolve for longer, where none turns sour', () => {
    for (const day of [120, 150, 180])
      expect(Math.abs(at(little, 'pH', day) - at(shell, 'pH', day))).toBeLessThan(0.05);
    expect(dissolved(little, 0, 112) / dissolved(shell, 0, 112)).toBeGreaterThan(0.85);
    expect(dissolved(little, 0, 35) / dissolved(shell, 0, 35)).toBeLessThan(0.6);
    expect(at(none, 'pH', 120)).toBeLessThan(4.5);
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
    expect(Math.max(...index)).toBeGreaterThan(0.2);
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
