import { describe, expect, it } from 'vitest';
import {
  budgetOf,
  compileModel,
  createParameters,
  endStateOf,
  InputError,
  openRun,
  processes,
  processTable,
  seriesNames,
  seriesOf,
  simulate,
  steadyState,
  why,
  extension,
  type Additions,
  type OwnComponent,
  type OwnProcess,
  type Scenario,
} from '@leat/core';
import {
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../../support/scenario-builder.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';
import { integrators } from '../../../support/integrators.js';

const filter = vessel('filter', 1, { surface: 10, floor: 1 });
const jar = (other: Partial<Scenario> = {}): Scenario =>
  scenarioOf([filter], { start: [startOf(filter, { water: stillWater(2, 7, { ammonia: 10 }) })], ...other });

/** Something dissolved that decays, and what is left of it on the floor. */
const dye: OwnComponent = {
  id: 'dye',
  unit: 'g',
  place: 'water',
  start: 5,
  content: () => ({ nitrogen: 0.1 }),
};
const stain: OwnComponent = { id: 'stain', unit: 'g', place: 'floor', content: () => ({ nitrogen: 0.1 }) };
const fading: OwnProcess = {
  id: 'fading',
  title: 'dye that fades',
  place: 'floor',
  unit: 'g',
  basis: 'volume',
  reads: ['dye'],
  stoichiometry: () => [
    { component: 'dye', coefficient: -1 },
    { component: 'stain', coefficient: 1 },
  ],
  coefficients: (values) => [values.value('dye.fading')],
  rate: (v, at, k) => k[0] * v[at[0]],
  partials: (_v, _at, k, d) => {
    d[0] = k[0];
  },
};
const number = {
  id: 'dye.fading',
  value: 0.2,
  low: 0.1,
  high: 0.3,
  unit: '1/d',
  source: 'made up',
  mark: 'P',
} as const;
const dyed: Additions = { components: [dye, stain], processes: [fading], numbers: [number] };

const modelOf = (scenario: Scenario, additions: Additions = dyed) =>
  compileModel(scenario, createParameters(), { extension: extension(additions) });

function faultsOf(additions: Additions, scenario = jar()): readonly string[] {
  try {
    modelOf(scenario, additions);
  } catch (error) {
    if (error instanceof InputError) return error.faults.map(({ key, problem }) => `${key}: ${problem}`);
    throw error;
  }
  return [];
}

describe('a component and a process of a user', () => {
  it('run, with series, budget, parts of why, a row of the table and a place in saved states', () => {
    const model = modelOf(jar());
    const run = simulate(model, { tolerance: 1e-8 });
    const faded = seriesOf(run, 'dye@filter');
    expect([faded.unit, faded.at(5) / 5]).toEqual(['g/m3', expect.closeTo(Math.exp(-1), 6)]);
    expect(seriesOf(run, 'stain@filter').at(5)).toBeCloseTo(5 * (1 - Math.exp(-1)), 5);
    const budget = budgetOf(run, 'nitrogen', 'system');
    expect(Math.abs(budget.residual / budget.throughput)).toBeLessThan(1e-12);
    expect(budget.stores.find(({ component }) => (component as string) === 'stain')?.amount).toBeCloseTo(
      0.4323,
      3,
    );
    const difference = why('stain@filter', { run, day: 0 }, { run, day: 5 });
    expect(difference.parts.map(({ name }) => name)).toEqual(['dye that fades']);
    expect(why('dye@system', { run, day: 0 }, { run, day: 5 }).difference).toBeLessThan(-3);
    expect(processTable(model).find(({ process }) => process === 'fading')?.rows).toHaveLength(1);
    expect(
      endStateOf(run).states.filter(
        ({ place, component }) => place === 'filter' && /dye|stain/.test(component),
      ),
    ).toMatchObject([{ unit: 'g' }, { unit: 'g' }]);
    expect(model.parameters.used()).toContain('dye.fading');
  });

  it('go on from a saved state, which is refused where they are not given again', () => {
    const run = openRun(modelOf(jar()));
    run.advance(4);
    const saved = run.state();
    const rest = simulate(modelOf(jar({ saved })));
    const whole = simulate(modelOf(jar()));
    expect(rest.samples.at(-1)?.y).toEqual(whole.samples.at(-1)?.y);
    expect(() => compileModel(jar({ saved }), createParameters())).toThrow(
      /saved.states: unknown component; got dye/,
    );
  });

  it('go with the water, through pumps, changes of level and changed water, and keep the balance', () => {
    const tank = vessel('tank', 2, { exchange: 0.3 });
    const sump = vessel('sump', 1, { floor: 2, open: 1 });
    const loop = scenarioOf([tank, sump], {
      et0: { kind: 'constant', value: 0.02 },
      pumps: [mainPump],
      flows: [pumped('sump', 'tank', 4), gravity('tank', 'sump')],
      actions: [{ at: 2, action: { kind: 'change-water', vessel: 'tank', share: 0.5, water: 'mains' } }],
    });
    const own = { ...dyed, components: [{ ...dye, start: { tank: 5 } }, stain] };
    const loose = simulate(modelOf(loop, own), { tolerance: 1e-9 });
    const other = simulate(modelOf(loop, own), { tolerance: 1e-9, integrator: integrators.odex });
    expect([loose.outcome.kind, other.outcome.kind]).toEqual(['done', 'done']);
    for (const name of ['dye@tank', 'dye@sump', 'stain@sump'])
      expect(seriesOf(loose, name).at(5)).toBeCloseTo(seriesOf(other, name).at(5), 6);
    const names = why('dye@sump', { run: loose, day: 1 }, { run: loose, day: 4 }).parts.map(
      ({ name }) => name,
    );
    expect(names).toContain('carried in from tank');
    for (const at of ['system', 0, 1] as const) {
      const budget = budgetOf(loose, 'nitrogen', at);
      expect(Math.abs(budget.residual / budget.throughput)).toBeLessThan(1e-12);
    }
  });

  it('come to rest with the rest of the system', () => {
    const tank = vessel('tank', 2, { exchange: 0.3, floor: 1 });
    const scenario = scenarioOf([tank], {
      topUp: { level: 2, rate: 10, sources: [{ kind: 'mains', water: 'mains', dailyCap: Infinity }] },
    });
    const answer = steadyState(modelOf(scenario, { ...dyed, components: [dye, stain] }), { hold: [] });
    expect(answer.held.map(({ component }) => component)).toContain('stain');
  });

  it('stand beside everything of ours: nothing else changes', () => {
    const aired = { ...filter, open: 1, aeration: 100 };
    const scenario = scenarioOf([aired], {
      fish: [tilapia('fish', 'filter', { number: 5 })],
      // Without calcium the saturation index is no number.
      start: [startOf(aired, { water: stillWater(2, 7.5, { calcium: 0.8 }) })],
    });
    const tight = { tolerance: 1e-9 };
    const plain = simulate(compileModel(scenario, createParameters()), tight);
    const beside = simulate(modelOf(scenario, { components: [{ ...stain, content: () => ({}) }] }), tight);
    for (const name of seriesNames(plain))
      seriesOf(plain, name).values.forEach((value, i) => {
        expect([name, Number.isFinite(value)]).toEqual([name, true]);
        // One more state counts in the norm of the error, so steps differ within the tolerance.
        expect(Math.abs(seriesOf(beside, name).values[i] - value)).toBeLessThan(
          1e-5 * Math.abs(value) + 1e-9,
        );
      });
  });
});

describe('what is refused of a user', () => {
  it('names of ours, twice, or of nothing', () => {
    const off: Additions = {
      components: [
        { ...dye, id: 'tan' },
        { ...dye, id: 'Dye' },
        stain,
        { ...stain, place: ['fliter'], unit: '', start: -1, scale: 0 },
      ],
      processes: [
        { ...fading, id: 'feeding', reads: ['nitrat'] },
        { ...fading, stoichiometry: () => [{ component: 'oxygen-gas', coefficient: 1 }], reads: ['stain'] },
      ],
    };
    expect(faultsOf(off)).toEqual([
      'components[0].id: a name of ours',
      'components[1].id: not a name',
      'components[3].id: a name given twice',
      'components.stain.unit: missing',
      'components.stain.place: unknown vessel',
      'components.stain.start: out of range',
      'components.stain.scale: out of range',
      'processes[0].id: a name of ours',
      'processes.feeding.reads[0]: unknown variable',
      'processes.feeding.stoichiometry.dye: unknown component',
      'processes.fading.stoichiometry.oxygen-gas: must name an account outside',
    ]);
  });

  it('every word that stands in the name of a series of ours', () => {
    const model = compileModel(shippedScenario('glasshouse', 2), createParameters());
    const words = new Set(seriesNames(simulate(model)).map((name) => name.split('@')[0].toLowerCase()));
    const taken = [...words].map((id) => ({ ...stain, id })).filter(({ id }) => id !== 'ph');
    expect(faultsOf({ components: taken })).toEqual(
      taken.map((_, i) => `components[${i}].id: a name of ours`),
    );
  });

  it('numbers without a source, out of their range, or with a name of ours', () => {
    const numbers = [
      { ...number, id: 'aob.yield' },
      { ...number, id: 'fading' },
      { ...number, id: 'dye.a', source: ' ', unit: '' },
      { ...number, id: 'dye.b', value: 1 },
      { ...number, id: 'dye.c', mark: 'X' as 'R' },
    ];
    expect(faultsOf({ numbers })).toEqual([
      'numbers.aob.yield: numbers of aob are ours',
      'numbers.fading: not an id',
      'numbers.dye.a.unit: missing',
      'numbers.dye.a.source: missing',
      'numbers.dye.b: range does not hold its value',
      'numbers.dye.c.mark: unknown mark',
    ]);
  });

  it('content that is none, and a number that is not there', () => {
    const components = [{ ...dye, content: () => ({ nitrogn: 1 }) as object }, stain];
    expect(faultsOf({ ...dyed, components })).toEqual(['components.dye.content: unknown conserved quantity']);
    expect(faultsOf({ ...dyed, numbers: [] })[0]).toMatch(/^processes.fading: no number "dye.fading"/);
  });

  it('partials that are not those of the rate, by name', () => {
    const wrong: OwnProcess = { ...fading, partials: (_v, _at, _k, d) => d.fill(0.1) };
    expect(faultsOf({ ...dyed, processes: [wrong] })[0]).toMatch(
      /^processes.fading.partials: not those of the rate: by dye is 0.100000, differences give 0.2/,
    );
  });

  it('a rate that goes on where what it uses up is gone, and one that is no number', () => {
    const idle: OwnProcess = {
      ...fading,
      reads: ['dye'],
      rate: () => 1,
      partials: (_v, _at, _k, d) => d.fill(0),
    };
    expect(faultsOf({ ...dyed, processes: [idle] })).toEqual([
      'processes.fading.rate: goes on where there is no dye, which it uses up',
    ]);
    const ill: OwnProcess = { ...fading, rate: () => Number.NaN };
    expect(faultsOf({ ...dyed, processes: [ill] })).toEqual(['processes.fading.rate: not a finite number']);
  });

  it('a row that makes nitrogen, by its name', () => {
    const components = [dye, { ...stain, content: () => ({ nitrogen: 0.2 }) }];
    expect(() => modelOf(jar(), { ...dyed, components })).toThrow(
      'the row fading makes 0.1000 of nitrogen per g; a row must close for nitrogen',
    );
  });

  it('a row that closes at the given numbers but at no draw', () => {
    const leaky: OwnProcess = {
      ...fading,
      stoichiometry: (values) => [
        { component: 'dye', coefficient: -1 },
        { component: 'stain', coefficient: values.value('dye.fading') / 0.2 },
      ],
    };
    expect(() => modelOf(jar(), { ...dyed, processes: [leaky] })).toThrow(
      /the row fading (?:makes|destroys)/,
    );
  });

  it('a change of our lists', () => {
    expect(Object.isFrozen(processes)).toBe(true);
    expect(processes.every((process) => Object.isFrozen(process))).toBe(true);
  });
});
