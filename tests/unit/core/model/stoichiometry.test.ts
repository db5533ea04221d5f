import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { checkClosure, leaksOf } from '../../../../packages/core/src/model/stoichiometry.js';
import type { Component } from '../../../../packages/core/src/processes/components.js';
import { closeRow } from '../../../../packages/core/src/model/stoichiometry.js';
import { scopeTo } from '../../../../packages/core/src/model/scope.js';
import { processes } from '../../../../packages/core/src/processes/index.js';
import type { Process } from '../../../../packages/core/src/processes/process.js';

const parameters = createParameters();
const values = scopeTo(parameters, {
  species: 'nile-tilapia',
  crop: 'lettuce-butterhead',
  feed: { name: 'grower-32', protein: 0.32 },
});
/** g CaCO3 in an equivalent of alkalinity. */
const perEquivalent = parameters.value('molar.calcium-carbonate') / 2;

/** Coefficient of a component in a row, per unit of another that the row uses up. */
function ratio(id: string, component: Component, per: Component): number {
  const process = processes.find((each) => each.id === id);
  if (process === undefined) throw new RangeError(`no process ${id}`);
  const terms = closeRow(process, values);
  const of = (name: Component): number =>
    terms.find((term) => term.component === name)?.coefficient ?? Number.NaN;
  return of(component) / -of(per);
}

describe('ratios that closure must give', () => {
  it('oxygen of nitrification: 3.43 + 1.14 = 4.57 g per g N (standard [R])', () => {
    const first = -ratio('ammonia-oxidation-idle', 'oxygen', 'tan');
    const second = -ratio('nitrite-oxidation-idle', 'oxygen', 'nitrite');
    expect(first).toBeCloseTo(3.43, 2);
    expect(second).toBeCloseTo(1.14, 2);
    expect(first + second).toBeCloseTo(4.57, 2);
  });

  it('alkalinity of nitrification: 7.14 g CaCO3 per g N, all of it in the first step (standard [S])', () => {
    expect(-ratio('ammonia-oxidation-idle', 'alkalinity', 'tan') * perEquivalent).toBeCloseTo(7.14, 1);
    expect(-ratio('ammonia-oxidation-idle', 'alkalinity', 'tan') * 14.007).toBeCloseTo(2, 10);
  });

  it('with growth of cells: 3.22 and 1.11 g oxygen, 7.07 g CaCO3 per g N within 2 % (US EPA manual [R], [S])', () => {
    expect(-ratio('ammonia-oxidation', 'oxygen', 'tan') / 3.22).toBeCloseTo(1, 1);
    expect(-ratio('nitrite-oxidation', 'oxygen', 'nitrite') / 1.11).toBeCloseTo(1, 1);
    expect(
      Math.abs((-ratio('ammonia-oxidation', 'alkalinity', 'tan') * perEquivalent) / 7.07 - 1),
    ).toBeLessThan(0.02);
  });

  it('denitrification: 2.86 g oxygen demand and 3.57 g CaCO3 back per g N (standard [M])', () => {
    const settled = parameters.value('solids.demand');
    expect(-ratio('denitrification', 'settled', 'nitrate') * -settled).toBeCloseTo(-2.86, 2);
    // The nitrogen of the solids gives 1 eq a mole beside it.
    const own = ratio('denitrification', 'tan', 'nitrate');
    const alkalinity = ratio('denitrification', 'alkalinity', 'nitrate') - own / 14.007;
    expect(alkalinity * perEquivalent).toBeCloseTo(3.57, 2);
  });

  it('uptake by crops: 1 eq per mole of nitrate less 0.88 of cations, 1.88 taken per mole of ammonium (ASHS 2018 [R], [C])', () => {
    expect(ratio('nitrate-uptake', 'alkalinity', 'nitrate') * 14.007).toBeCloseTo(0.12, 10);
    expect(ratio('tan-uptake', 'alkalinity', 'tan') * 14.007).toBeCloseTo(-1.88, 10);
  });

  it('respiration: 1.375 g carbon dioxide per g oxygen at a quotient of 1 (molar masses)', () => {
    const dioxide = parameters.value('molar.carbon') + parameters.value('molar.oxygen-gas');
    expect((ratio('upkeep', 'carbon', 'oxygen') * dioxide) / 1.375).toBeCloseTo(1, 3);
  });
});

describe('a row that does not close', () => {
  const refused = (coefficient: number, component: Component = 'nitrite') => ({
    id: 'broken',
    unit: 'g N',
    stoichiometry: () => [
      { component: 'tan' as const, coefficient: -1 },
      { component, coefficient },
      { component: 'oxygen' as const, coefficient: { closes: 'oxygen-demand' as const } },
      { component: 'alkalinity' as const, coefficient: { closes: 'charge' as const } },
    ],
  });

  it('is refused by a message that says what it makes or destroys, and how much', () => {
    expect(() => {
      checkClosure(refused(1.1), [values]);
    }).toThrow(
      /^the row broken makes 0\.1000 of nitrogen per g N; a row must close for nitrogen, oxygen-demand, charge/,
    );
    expect(() => {
      checkClosure(refused(0.75), [values]);
    }).toThrow(/^the row broken destroys 0\.2500 of nitrogen per g N/);
    expect(() => {
      checkClosure(refused(1), [values]);
    }).not.toThrow();
  });

  it('is found to lose each quantity that it loses', () => {
    const chlorine = {
      id: 'broken',
      stoichiometry: () => [
        { component: 'chloride' as const, coefficient: 1 },
        { component: 'carbon' as const, coefficient: -2 },
      ],
    };
    const leaks = leaksOf('broken', closeRow(chlorine, values));
    expect(leaks.map(({ quantity }) => quantity)).toEqual(['charge', 'chloride', 'carbon']);
    expect(leaks.map(({ amount }) => amount)).toEqual([1 / parameters.value('molar.chlorine'), 1, -2]);
  });

  it('that leaves more open than it closes is refused by name', () => {
    const open = {
      id: 'vague',
      stoichiometry: () => [
        { component: 'oxygen' as const, coefficient: { closes: 'nitrogen' as const } },
        { component: 'tan' as const, coefficient: 1 },
      ],
    };
    expect(() => closeRow(open, values)).toThrow('vague: nitrogen do not fix the coefficients left open');
  });

  it('is refused where a term holds nothing of what it closes, even if another could be solved for', () => {
    const crossed: Pick<Process, 'id' | 'stoichiometry'> = {
      id: 'crossed',
      stoichiometry: () => [
        { component: 'tan', coefficient: -1 },
        { component: 'oxygen', coefficient: { closes: 'charge' } },
        { component: 'alkalinity', coefficient: { closes: 'oxygen-demand' } },
      ],
    };
    expect(() => closeRow(crossed, values)).toThrow(
      'crossed: charge, oxygen-demand do not fix the coefficients left open',
    );
  });
});
