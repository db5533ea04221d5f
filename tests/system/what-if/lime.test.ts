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

describe('twenty kilograms of shell in the sump in place of potassium bicarbonate', () => {
  it('hold pH between 7.1 and 7.4 from the second week on, because lime dissolves as acid is made', () => {
    const late = [...seriesOf(shell, 'pH@tank-1').values].slice(14);
    expect(Math.min(...late)).toBeGreaterThan(7.1);
    expect(Math.max(...late)).toBeLessThan(7.45);
  });

  it('hold less alkalinity than weekly doses do, and less and less of that, because saturated water takes no more lime', () => {
    expect(at(shell, 'alkalinity', 60)).toBeLessThan(0.7 * at(dosed, 'alkalinity', 60));
    expect(at(shell, 'alkalinity', 180)).toBeLessThan(0.25 * at(dosed, 'alkalinity', 180));
    expect(Math.max(...[...seriesOf(shell, 'saturation-index@sump').values].slice(14))).toBeLessThan(0);
  });

  it('bring calcium to five times what it was, all of it out of the shell and the mains', () => {
    expect(at(shell, 'calcium', 180) / at(shell, 'calcium', 0)).toBeGreaterThan(4.5);
    expect(at(shell, 'calcium', 180)).toBeGreaterThan(2.5 * at(dosed, 'calcium', 180));
    const gone = at(shell, 'calcite', 0, 'sump') - at(shell, 'calcite', 180, 'sump');
    const volume = seriesOf(shell, 'volume@system').at(180);
    expect((gone / volume) * 1.2).toBeGreaterThan(at(shell, 'calcium', 180) - at(dosed, 'calcium', 180));
  });

  it('leave TAN and nitrate as they are with doses', () => {
    expect(at(shell, 'tan', 180)).toBeLessThan(0.5);
    expect(at(shell, 'nitrate', 180) / at(dosed, 'nitrate', 180)).toBeCloseTo(1, 2);
  });
});

describe('five kilograms', () => {
  it('are too little surface: pH falls under 6 and TAN climbs five times as high as with twenty', () => {
    expect(at(little, 'pH', 60)).toBeLessThan(6);
    expect(at(little, 'pH', 60)).toBeGreaterThan(at(none, 'pH', 60) + 0.5);
    const peak = (run: Run): number => Math.max(...seriesOf(run, 'tan@tank-1').values);
    expect(peak(little)).toBeGreaterThan(5 * peak(shell));
    expect(peak(none)).toBeGreaterThan(10 * peak(little));
  });
});

describe('weekly doses of potassium bicarbonate in the same water', () => {
  it('end in scale on the media beds, because pH and calcium climb together, and scale slows the climb', () => {
    expect(at(dosed, 'saturation-index', 180, 'media-bed-1')).toBeGreaterThan(0.6);
    expect(at(dosed, 'calcite', 180, 'media-bed-1')).toBeGreaterThan(0.1);
    expect(at(dosed, 'calcite', 90, 'media-bed-1')).toBe(0);
    const off = shippedScenario('glasshouse');
    const soft = doneRun({
      ...off,
      overrides: [{ id: 'lime.scale-rate', value: 1e-12, low: 1e-12, high: 1e-12 }],
    });
    expect(at(soft, 'pH', 180)).toBeGreaterThan(at(dosed, 'pH', 180));
  });
});
