import { describe, expect, it } from 'vitest';
import { compileModel } from '../../../../packages/core/src/model/compile.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { readScenario } from '../../../../packages/core/src/scenario/read-scenario.js';
import { simulate } from '../../../../packages/core/src/run/stepping.js';
import { allSeries } from '../../../../packages/core/src/result/series.js';
import { budgetsOf, relativeResidual } from '../../../../packages/core/src/result/budget.js';
import { edited } from '../../faults/corpus/slip.js';
import { smallSystem } from '../../../support/small-text.js';

/** What should make no difference, or a difference that is known: a run of it is held against the run as it was. */
const actions = `actions:
  - { at: 1 d, dose: { into: sump, product: sodium-bicarbonate, mass: 30 g } }
  - { at: 2 d, change-water: { vessel: tank, share: 10 %, water: mains } }
  - { at: 2 d, clean: { vessel: filter, biofilm: 20 %, solids: 50 % } }
  - { at: 3 d, harvest-fish: { cohort: tilapia, share: 20 % } }
`;
/** Walls are written, since those that a usual outline gives grow with the root of the area, not with it. */
const base =
  edited(smallSystem, [
    ['days: 40', 'days: 5'],
    ['fish-tank, volume: 2 m3, area: 2 m2,', 'fish-tank, volume: 2 m3, area: 2 m2, walls: 6 m2,'],
    ['raft-bed, volume: 1 m3, area: 4 m2 ', 'raft-bed, volume: 1 m3, area: 4 m2, walls: 2 m2 '],
    ['sump, volume: 0.6 m3, area: 0.8 m2 ', 'sump, volume: 0.6 m3, area: 0.8 m2, walls: 3 m2 '],
  ]) + actions;

type Courses = ReadonlyMap<string, readonly number[]>;

/** Every series of a text's run, at a tolerance that lets steps differ without it showing; its budgets must close. */
function courses(text: string): Courses {
  const scenario = readScenario(text, { file: 'system.yaml' });
  const run = simulate(compileModel(scenario, createParameters(scenario.overrides)), { tolerance: 1e-8 });
  expect(run.outcome.kind).toBe('done');
  for (const budget of budgetsOf(run)) expect(relativeResidual(budget), budget.quantity).toBeLessThan(1e-9);
  return new Map(allSeries(run).map(({ name, values }) => [name, Array.from(values)]));
}

/** The name of the series that differs most, of its highest value, with by how much; series by their names in the first. */
function farthest(
  one: Courses,
  other: Courses,
  as: (name: string) => string = (name) => name,
  times: (name: string) => number = () => 1,
): readonly [string, number] {
  let worst: [string, number] = ['', 0];
  for (const [name, values] of one) {
    const theirs = other.get(as(name));
    if (theirs === undefined) throw new Error(`no series ${as(name)}`);
    expect(theirs.length, name).toBe(values.length);
    const top = Math.max(1e-6, ...values.filter(Number.isFinite).map(Math.abs));
    values.forEach((value, i) => {
      expect(Number.isNaN(theirs[i]), `${name} at ${i}`).toBe(Number.isNaN(value));
      const off =
        Number.isNaN(value) || theirs[i] === value ? 0 : Math.abs(theirs[i] / times(name) - value) / top;
      if (off > worst[1]) worst = [name, off];
    });
  }
  return worst;
}

const plain = courses(base);
/** Of the highest value of a series, for runs whose steps may differ. */
const alike = 1e-5;

const same: readonly (readonly [name: string, text: string])[] = [
  [
    'cubic metres in litres',
    edited(base, [
      ['volume: 2 m3', 'volume: 2000 L'],
      ['level: 0.55 m3', 'level: 550 L'],
    ]),
  ],
  [
    'litres in cubic metres',
    edited(base, [['inlet: 100 L, restart: 200 L', 'inlet: 0.1 m3, restart: 0.2 m3']]),
  ],
  [
    'hours in days and minutes',
    edited(base, [
      ['rate: 2 m3/h', 'rate: 48 m3/d'],
      ['aeration: 60 1/d', 'aeration: 2.5 1/h'],
      ['age: 14 d', 'age: 2 week'],
    ]),
  ],
  ['degrees of the other kind', edited(base, [['26 degC', '78.8 degF']])],
  ['kelvin', edited(base, [['26 degC', '299.15 K']])],
  [
    'grams in kilograms and shares in g/kg',
    edited(base, [
      ['mass: 120 g', 'mass: 0.12 kg'],
      ['ration: 1.5 %/d', 'ration: 15 g/kg/d'],
      ['mass: 30 g', 'mass: 0.03 kg'],
    ]),
  ],
  [
    'mg N in ug N and in molecules',
    edited(base, [
      ['ammonia: 0.5 mg N/L', 'ammonia: 500 ug N/L'],
      ['nitrate: 20 mg N/L', `nitrate: ${(20 * 62.004) / 14.007} mg/L as NO3`],
    ]),
  ],
  [
    'equivalents in carbonate',
    edited(base, [['alkalinity: 2 meq/L', `alkalinity: ${2 * 50.043} mg/L as CaCO3`]]),
  ],
  ['rain in metres', edited(base, [['et0: 4 mm/d', 'et0: 0.004 m/d']])],
  ['areas in square centimetres', edited(base, [['surface: 60 m2', 'surface: 600000 cm2']])],
  [
    'numbers with an exponent',
    edited(base, [
      ['volume: 2 m3', 'volume: 2e0 m3'],
      ['surface: 60 m2', 'surface: 6.0e+1 m2'],
      ['number: 60', 'number: 60.0'],
    ]),
  ],
  [
    'actions in another order',
    edited(base, [[actions, `actions:\n${actions.split('\n').slice(1, 5).reverse().join('\n')}\n`]]),
  ],
  [
    'flows in another order',
    edited(base, [
      [
        '  - { from: tank, to: filter }\n  - { from: filter, to: bed }\n',
        '  - { from: filter, to: bed }\n  - { from: tank, to: filter }\n',
      ],
    ]),
  ],
  [
    'vessels in another order',
    edited(base, [
      ['  bed: { kind: raft-bed, volume: 1 m3, area: 4 m2, walls: 2 m2 }\n', ''],
      ['vessels:\n', 'vessels:\n  bed: { kind: raft-bed, volume: 1 m3, area: 4 m2, walls: 2 m2 }\n'],
    ]),
  ],
  [
    'sections in another order',
    edited(base, [
      ['reservoir: sump\n', ''],
      [actions, `${actions}reservoir: sump\n`],
    ]),
  ],
  ['other words for it', edited(base, [['Small system (invented)', 'Something else altogether']])],
  [
    'a source of water that nobody draws from',
    edited(base, [
      [
        'waters:\n',
        'waters:\n  sea: { nitrate: 0 mg N/L, alkalinity: 2.3 meq/L, pH: 8.1, chloride: 19000 mg/L }\n',
      ],
    ]),
  ],
  [
    'a group of no fish',
    edited(base, [
      [
        'fish:\n',
        'fish:\n  none: { in: tank, species: nile-tilapia, number: 0, mass: 120 g, ration: 0 g/d, feed: grower-32 }\n',
      ],
    ]),
  ],
  [
    'a dose of nothing to speak of',
    edited(base, [
      [
        'actions:\n',
        'actions:\n  - { at: 1 d, dose: { into: tank, product: sodium-bicarbonate, mass: 1e-9 g } }\n',
      ],
    ]),
  ],
  [
    'a dose in two halves',
    edited(base, [
      [
        'mass: 30 g } }\n',
        'mass: 15 g } }\n  - { at: 1 d, dose: { into: sump, product: sodium-bicarbonate, mass: 15 g } }\n',
      ],
    ]),
  ],
  ['a start a week later, actions at days', edited(base, [['2025-03-01', '2025-03-08']])],
  ['a start on a leap day', edited(base, [['2025-03-01', '2024-02-29']])],
  ['a start on the night the clocks change', edited(base, [['2025-03-01', '2025-03-29']])],
  [
    'actions at dates in place of days',
    edited(base, [
      ['at: 1 d', 'at: 2025-03-02'],
      ['at: 3 d', 'at: 2025-03-04'],
    ]),
  ],
  [
    'a flow in two pipes',
    edited(base, [
      [
        'pump: main, rate: 2 m3/h }',
        'pump: main, rate: 1 m3/h }\n  - { from: sump, to: tank, pump: main, rate: 1 m3/h }',
      ],
    ]),
  ],
  [
    'two groups of half the fish',
    edited(base, [
      [
        'fish:\n',
        'fish:\n  other: { in: tank, species: nile-tilapia, number: 30, mass: 120 g, ration: 1.5 %/d, feed: grower-32 }\n',
      ],
      ['number: 60, mass', 'number: 30, mass'],
      [
        'cohort: tilapia, share: 20 % } }',
        'cohort: tilapia, share: 20 % } }\n  - { at: 3 d, harvest-fish: { cohort: other, share: 20 % } }',
      ],
    ]),
  ],
];

/** Series of what a change renames, splits or adds: of these the rest must still be alike. */
const ofWater = (all: Courses): Courses =>
  new Map(
    [...all].filter(([name]) =>
      /^(?:tan|nitrite|nitrate|oxygen|alkalinity|pH|chloride|carbon|volume)@(?:tank|filter|bed|sump)$/.test(
        name,
      ),
    ),
  );

describe('what makes no difference', () => {
  it('has something to compare', () => {
    expect(ofWater(plain).size).toBeGreaterThan(24);
    expect(same.length).toBeGreaterThan(20);
  });

  it.each(same)('is %s', (_, text) => {
    const [name, off] = farthest(ofWater(plain), courses(text));
    expect(off, name).toBeLessThan(alike);
  });

  it('is another name of a vessel', () => {
    const renamed = base.replaceAll(/\btank\b/g, 'constructor').replaceAll('fish-constructor', 'fish-tank');
    const [name, off] = farthest(ofWater(plain), courses(renamed), (each) =>
      each.replace('@tank', '@constructor'),
    );
    expect(off, name).toBeLessThan(alike);
  });
});

describe('what makes a difference that is known', () => {
  it('is everything twice: amounts are double, concentrations as they were', () => {
    const twice = base.replaceAll(
      /(\b(?:volume|area|walls|surface|inlet|restart|rate|level|number|mass): )(\d[\d.]*)( (?:m3|m2|L|m3\/h|m3\/d|g))?/g,
      (whole, key: string, number: string, unit = '') =>
        key === 'mass: ' && number === '120' ? whole : `${key}${Number(number) * 2}${unit}`,
    );
    expect(twice).toContain('number: 120, mass: 120 g');
    const [name, off] = farthest(ofWater(plain), courses(twice), undefined, (each) =>
      each.startsWith('volume') ? 2 : 1,
    );
    expect(off, name).toBeLessThan(alike);
  });

  it('is a tank split in two: each half has the water of the whole', () => {
    const split = edited(base, [
      [
        '  tank: { kind: fish-tank, volume: 2 m3, area: 2 m2, walls: 6 m2, aeration: 60 1/d }\n',
        '  tank: { kind: fish-tank, volume: 1 m3, area: 1 m2, walls: 3 m2, aeration: 60 1/d }\n  twin: { kind: fish-tank, volume: 1 m3, area: 1 m2, walls: 3 m2, aeration: 60 1/d }\n',
      ],
      [
        '  - { from: sump, to: tank, pump: main, rate: 2 m3/h }\n  - { from: tank, to: filter }\n',
        '  - { from: sump, to: tank, pump: main, rate: 1 m3/h }\n  - { from: sump, to: twin, pump: main, rate: 1 m3/h }\n  - { from: tank, to: filter }\n  - { from: twin, to: filter }\n',
      ],
      ['number: 60, mass', 'number: 30, mass'],
      [
        'fish:\n',
        'fish:\n  other: { in: twin, species: nile-tilapia, number: 30, mass: 120 g, ration: 1.5 %/d, feed: grower-32 }\n',
      ],
      [
        'vessel: tank, share: 10 %, water: mains } }\n',
        'vessel: tank, share: 10 %, water: mains } }\n  - { at: 2 d, change-water: { vessel: twin, share: 10 %, water: mains } }\n',
      ],
      [
        'cohort: tilapia, share: 20 % } }\n',
        'cohort: tilapia, share: 20 % } }\n  - { at: 3 d, harvest-fish: { cohort: other, share: 20 % } }\n',
      ],
    ]);
    const halves = courses(split);
    const [name, off] = farthest(ofWater(plain), halves, undefined, (each) =>
      each === 'volume@tank' ? 0.5 : 1,
    );
    expect(off, name).toBeLessThan(alike);
    expect(
      farthest(new Map([...ofWater(halves)].filter(([each]) => each.endsWith('@tank'))), halves, (each) =>
        each.replace('@tank', '@twin'),
      )[1],
    ).toBeLessThan(alike);
  });

  it.each([
    ['half a dose', edited(base, [['mass: 30 g } }', 'mass: 15 g } }']])],
    ['a dose a day later', edited(base, [['at: 1 d, dose', 'at: 2 d, dose']])],
    ['ten more fish', edited(base, [['number: 60', 'number: 70']])],
    ['a degree more', edited(base, [['26 degC', '27 degC']])],
    ['a tenth more of filter', edited(base, [['surface: 60', 'surface: 66']])],
  ])('is %s, which this comparison sees', (_, text) => {
    expect(farthest(ofWater(plain), courses(text))[1]).toBeGreaterThan(10 * alike);
  });
});
