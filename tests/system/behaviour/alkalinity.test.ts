import { describe, expect, it } from 'vitest';
import { waterChemistry } from '../../../packages/core/src/model/water-chemistry.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { dayFrom } from '../../support/first-day.js';
import { courseOf, doneRun, extentOf } from '../../support/run-of.js';
import { teachingSystem } from '../../support/teaching-system.js';

const days = 120;
const undosed = doneRun(teachingSystem({ days, planted: false, dosed: false }));
const dosed = doneRun(teachingSystem({ days, planted: false }));
const planted = doneRun(teachingSystem({ days, dosed: false }));

const acidity = (run: Run): number[] =>
  run.samples.map((sample) => waterChemistry(run.model.parameters, sample, 0).pH);
const last = <T>(list: readonly T[]): T => list[list.length - 1];

/** Ammonia oxidised (g N) per feed given (g) between two days. */
function oxidised(run: Run, from: number, to: number): number {
  const amount = (day: number, process: string): number =>
    run.model.rows
      .filter((row) => row.process === process)
      .map((row) => {
        const made = row.entries.find(({ component }) => component === 'nitrite')?.coefficient ?? 1;
        return made * extentOf(run, run.samples[day], row.id);
      })
      .reduce((sum, value) => sum + value, 0);
  const gain = (process: string): number => amount(to, process) - amount(from, process);
  return (
    (gain('ammonia-oxidation') + gain('ammonia-oxidation-idle')) / (gain('feeding') + gain('uneaten-feed'))
  );
}

// Nitrification takes 2 eq a mole; crops give 0.12 eq back with a mole of nitrate and take 1.88 with one of ammonium.
describe('beds left unplanted without dosing', () => {
  it('lose alkalinity and pH', () => {
    expect(last(courseOf(undosed, 'alkalinity', 'tank-1'))).toBeLessThan(0.3);
    expect(last(acidity(undosed))).toBeLessThan(acidity(undosed)[7] - 0.5);
  });

  it('nitrify less of their feed in the end, and TAN climbs', () => {
    expect(oxidised(undosed, days - 10, days)).toBeLessThan(oxidised(undosed, 20, 30));
    expect(last(courseOf(undosed, 'tan', 'tank-1'))).toBeGreaterThan(
      5 * courseOf(undosed, 'tan', 'tank-1')[20],
    );
  });

  it('fall below half of their alkalinity before nitrate shows any difference', () => {
    const nitrate = [undosed, dosed].map((run) => courseOf(run, 'nitrate', 'tank-1'));
    const alkalinity = courseOf(undosed, 'alkalinity', 'tank-1');
    const low = dayFrom(alkalinity, (value) => value < alkalinity[0] / 2);
    expect(low).toBeLessThan(days);
    expect(Math.abs(nitrate[0][low] / nitrate[1][low] - 1)).toBeLessThan(0.05);
  });
});

describe('the same beds with dosing', () => {
  it('keep alkalinity and pH, and nitrate rises instead of TAN', () => {
    expect(last(courseOf(dosed, 'alkalinity', 'tank-1'))).toBeGreaterThan(1);
    expect(last(acidity(dosed))).toBeGreaterThan(last(acidity(undosed)) + 0.5);
    expect(last(courseOf(dosed, 'nitrate', 'tank-1'))).toBeGreaterThan(
      last(courseOf(undosed, 'nitrate', 'tank-1')),
    );
    expect(last(courseOf(dosed, 'tan', 'tank-1'))).toBeLessThan(1);
  });
});

describe('the same beds planted, without dosing', () => {
  it('hold more alkalinity and less nitrate than unplanted', () => {
    expect(courseOf(planted, 'alkalinity', 'tank-1')[60]).toBeGreaterThan(
      courseOf(undosed, 'alkalinity', 'tank-1')[60],
    );
    expect(courseOf(planted, 'nitrate', 'tank-1')[60]).toBeLessThan(
      courseOf(undosed, 'nitrate', 'tank-1')[60],
    );
  });
});
