import { describe, expect, it } from 'vitest';
import { isRoutine } from '../../../../packages/core/src/result/routine.js';
import { readScenario } from '../../../../packages/core/src/scenario/read-scenario.js';
import { edited } from '../../../product/faults/small-system.js';
import { doneRun } from '../../../support/run-of.js';

/** Whether each event of a kind was routine, in a run of the small system with one more action. */
function routineOf(kind: string, action: string): readonly boolean[] {
  const text = edited(['actions:\n', `actions:\n  - { ${action} }\n`]);
  const run = doneRun(readScenario(text, { file: 'small.yaml', days: 30 }));
  return run.events.filter((event) => event.kind === kind).map((event) => isRoutine(run, event));
}

const drain = 'drain-solids: { vessel: tank, share: 50 % }';
const stock = 'stock: { cohort: tilapia, number: 5, mass: 20 g }';

describe('what is done again and again', () => {
  it('is routine by its every, though it is done once in a short run', () => {
    expect(routineOf('drain-solids', `at: 28 d, every: 28 d, ${drain}`)).toEqual([true]);
    expect(routineOf('drain-solids', `at: 28 d, ${drain}`)).toEqual([false]);
  });

  it('is a load where it is fish that come: routine only past four times', () => {
    expect(routineOf('stock', `at: 7 d, every: 7 d, ${stock}`)).toEqual([false, false, false, false]);
    expect(routineOf('stock', `at: 5 d, every: 5 d, ${stock}`)).toEqual(Array(5).fill(true));
  });
});
