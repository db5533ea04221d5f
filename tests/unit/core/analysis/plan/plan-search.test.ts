import {
  adviceOutcome,
  openModel,
  openScenarioText,
  overlayOf,
  overlayText,
  planAim,
  planQuantity,
  planTrial,
  planValue,
  searchPlan,
  simulate,
  withRation,
  type PlanFound,
  type PlanRange,
  type PlanTrial,
} from '@leat/core';
import { compareTrials } from '../../../../../packages/core/src/analysis/plan/plan-search.js';
import { describe, expect, it } from 'vitest';
import { smallSystem } from '../../../../support/small-text.js';

/** Finds the best of what a function says of each choice, and counts the choices. */
function best(
  ranges: readonly PlanRange[],
  judge: (at: readonly number[]) => PlanTrial,
): PlanFound<PlanTrial> {
  const search = searchPlan(ranges);
  let step = search.next();
  while (step.done !== true) step = search.next(step.value.map(judge));
  return step.value;
}

/** Every choice there is, the best first. */
function enumerated(
  ranges: readonly PlanRange[],
  judge: (at: readonly number[]) => PlanTrial,
): readonly PlanTrial[] {
  const all = ranges.reduce<readonly (readonly number[])[]>(
    (points, { steps }) =>
      points.flatMap((point) => Array.from({ length: steps + 1 }, (_, step) => [...point, step])),
    [[]],
  );
  return all.map(judge).sort(compareTrials);
}

const range = (steps: number): PlanRange => ({ from: 0, to: steps, steps });

describe('the search of a plan', () => {
  const cases: readonly (readonly [
    string,
    readonly PlanRange[],
    (at: readonly number[]) => Omit<PlanTrial, 'at'>,
  ])[] = [
    [
      'one quantity with a bound',
      [range(50)],
      ([a]) => ({ holds: a <= 37, aim: a, beside: 0, harm: [Math.max(0, a - 37)] }),
    ],
    [
      'two that share a ration',
      [range(32), range(40)],
      ([a, b]) => ({
        holds: 3 * a + 2 * b <= 120,
        aim: 5 * a + 2 * b,
        beside: b,
        harm: [3 * a + 2 * b - 120],
      }),
    ],
    [
      'two with a hill within',
      [range(32), range(32)],
      ([a, b]) => ({
        holds: true,
        aim: -((a - 11) ** 2) - (b - 23) ** 2 - (a - 11) * (b - 23),
        beside: 0,
        harm: [0],
      }),
    ],
    [
      'three, of which few choices hold',
      [range(8), range(8), range(8)],
      ([a, b, c]) => ({
        holds: a + b + c >= 20 && a <= 7,
        aim: -a - 2 * b - 4 * c,
        beside: 0,
        harm: [24 - a - b - c],
      }),
    ],
    [
      'two that never hold: the one that comes nearest',
      [range(16), range(16)],
      ([a, b]) => ({ holds: false, aim: a, beside: 0, harm: [2, Math.abs(a - 5) + Math.abs(b - 9)] }),
    ],
  ];

  it.each(cases)('finds what enumeration finds, with fewer runs: %s', (_name, ranges, judge) => {
    const trial = (at: readonly number[]): PlanTrial => ({ at, ...judge(at) });
    const all = enumerated(ranges, trial);
    const found = best(ranges, trial);
    expect(found.best.at).toEqual(all[0].at);
    expect(found.trials.length).toBeLessThan(all.length);
  });

  it('finds on a small system what enumeration finds: most fish on a ration of water, and beds', () => {
    const options = { file: 'small.yaml', days: 8 };
    const { reading } = openScenarioText(smallSystem, options);
    const written = reading.resolved.plain;
    const file = withRation(written, '26 L/d');
    const { scenario } = reading;
    const quantities = [
      { ...planQuantity('fish=30:150', scenario, file), steps: 6 },
      { ...planQuantity('beds=1 m2:4 m2', scenario, file), steps: 6 },
    ];
    const load = (): string => smallSystem;
    const known = new Map<string, PlanTrial>();
    const judge = (at: readonly number[]): PlanTrial => {
      const key = at.join();
      const planned = quantities.reduce((so, each, i) => each.apply(so, planValue(each, at[i])), file);
      const text = `include: small.yaml\n${overlayText(overlayOf(written, planned))}`;
      const run = simulate(openModel(openScenarioText(text, { file: 'planned.yaml', load }).reading).model);
      const trial = known.get(key) ?? planTrial(at, run, adviceOutcome(run), planAim('most fish', run.model));
      known.set(key, trial);
      return trial;
    };
    const found = best(quantities, judge);
    const all = enumerated(quantities, judge);
    expect(found.best).toEqual(all[0]);
    // Some choices hold and some do not, so that the best lies where they part.
    expect(all[0].holds).toBe(true);
    expect(all[all.length - 1].holds).toBe(false);
  });

  it('takes one to four quantities', () => {
    expect(() => searchPlan([]).next()).toThrow(RangeError);
    expect(() => searchPlan(Array.from({ length: 5 }, () => range(4))).next()).toThrow('5 quantities');
  });

  it('gives whole numbers where only those make sense, and both ends as they are', () => {
    const fish = { from: 9, to: 180, steps: 64, whole: true };
    expect([0, 1, 64].map((step) => planValue(fish, step))).toEqual([9, 12, 180]);
    expect(planValue({ from: 0.1, to: 0.4, steps: 3 }, 1)).toBe(0.2);
  });
});
