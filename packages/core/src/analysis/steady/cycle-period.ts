import { InputError } from '../../errors.js';
import type { Scenario } from '../../scenario/scenario.js';

/** The longest cycle that is looked for, d. */
const LONGEST = 28;

const whole = (turns: number): boolean => Math.abs(turns - Math.round(turns)) < 1e-9 * Math.max(1, turns);

/**
 * The fewest whole days after which every pump timer, ration of the day and ration of the week begins anew.
 * @throws InputError where timers need more than four weeks
 */
export function cyclePeriod(scenario: Scenario): number {
  const timers = scenario.pumps.flatMap(({ timer }) => (timer === undefined ? [] : [timer]));
  const weekly = (scenario.topUp?.sources ?? []).some(
    (source) => source.kind === 'mains' && Number.isFinite(source.weeklyCap ?? Infinity),
  );
  for (let days = weekly ? 7 : 1; days <= LONGEST; days += weekly ? 7 : 1) {
    if (timers.every(({ on, off }) => whole(days / (on + off)))) return days;
  }
  throw new InputError([
    {
      problem: 'pump timers do not come round together, so no day repeats itself',
      got: timers.map(({ on, off }) => `a clock of ${on + off} d`).join(', '),
      expected: `clocks whose turns fill a day, or at most ${LONGEST} days`,
    },
  ]);
}
