import { describe, expect, it } from 'vitest';
import { checkAtDraws } from '../../../../packages/core/src/model/stoichiometry.js';
import { processes } from '../../../../packages/core/src/processes/index.js';
import type { Process } from '../../../../packages/core/src/processes/process.js';

const [some] = processes.filter(({ id }) => id === 'sludge-mineralisation');

/** A row that loses a quarter of its nitrogen. */
const lossy = [
  { component: 'tan', coefficient: -1 },
  { component: 'nitrite', coefficient: 0.75 },
  { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
  { component: 'alkalinity', coefficient: { closes: 'charge' } },
] as const;

/** The process with its row counted, and broken from a certain time on. */
function counted(id: string, broken: () => boolean) {
  let looked = 0;
  const process: Process = {
    ...some,
    id,
    stoichiometry: (values) => {
      looked++;
      return broken() ? lossy : some.stoichiometry(values);
    },
  };
  return { process, looked: () => looked };
}

describe('rows at random draws', () => {
  it('are checked at each draw once, however often they are compiled', () => {
    const { process, looked } = counted('once', () => false);
    checkAtDraws(20, [])(process, {});
    expect(looked()).toBe(20);
    checkAtDraws(20, [])(process, {});
    expect(looked()).toBe(20);
  });

  it('are checked anew at other draws, for another subject and with other numbers given', () => {
    const { process, looked } = counted('anew', () => false);
    checkAtDraws(3, [])(process, {});
    checkAtDraws(5, [])(process, {});
    checkAtDraws(3, [])(process, { species: 'nile-tilapia' });
    expect(looked()).toBe(11);
    checkAtDraws(3, [{ id: 'solids.yield', value: 0.2 }])(process, {});
    expect(looked()).toBe(14);
  });

  it('are not taken for closed when they did not close', () => {
    let broken = true;
    const { process } = counted('broken', () => broken);
    const check = checkAtDraws(4, []);
    expect(() => check(process, {})).toThrow(RangeError);
    expect(() => check(process, {})).toThrow(/must close/);
    broken = false;
    expect(() => check(process, {})).not.toThrow();
  });

  it('are not checked where none are asked for', () => {
    const { process, looked } = counted('none', () => true);
    checkAtDraws(0, [])(process, {});
    expect(looked()).toBe(0);
  });
});
