import { describe, expect, it } from 'vitest';
import { why, type Difference } from '../../../../packages/core/src/result/why.js';
import { doneRun } from '../../../support/run-of.js';
import { teachingSystem } from '../../../support/teaching-system.js';

const days = 12;
const scenario = teachingSystem({ days });
const planted = doneRun(scenario);
const bare = doneRun(teachingSystem({ days, planted: false }));
const wide = doneRun({
  ...scenario,
  vessels: scenario.vessels.map((each) => ({ ...each, surface: 2 * each.surface })),
});

const didOf = (difference: Difference, name: string): string | undefined => {
  const part = difference.parts.find((each) => each.name === name);
  if (part === undefined) throw new Error(`no part ${name}`);
  return part.did;
};

describe('whether a cause did more or less', () => {
  const there = why('nitrate@system', { run: planted, day: days }, { run: bare, day: days });
  const back = why('nitrate@system', { run: bare, day: days }, { run: planted, day: days });

  it.each(['nitrate uptake by crops', 'transpiration', 'top-up with mains'])(
    'says of %s what it did, not which way that moved the quantity',
    (name) => {
      expect([didOf(there, name), didOf(back, name)]).toEqual(['less', 'more']);
    },
  );

  it('is not said of a size, nor of what was there at the start', () => {
    const found = why('aob@biofilter', { run: planted, day: days }, { run: wide, day: days });
    expect(didOf(found, 'surface of biofilter')).toBeUndefined();
    expect(didOf(found, 'state at the start')).toBeUndefined();
  });

  it('is not said of how a place stands against all water', () => {
    const moments = [
      { run: planted, day: days },
      { run: bare, day: days },
    ] as const;
    const found = why('nitrate@sump', ...moments, { around: 'system' });
    expect(didOf(found, 'sump against the mean of all water')).toBeUndefined();
  });
});
