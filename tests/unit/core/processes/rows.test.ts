import { describe, expect, it } from 'vitest';
import { closeRow } from '../../../../packages/core/src/model/stoichiometry.js';
import { processes } from '../../../../packages/core/src/processes/index.js';
import { givenValues } from '../../../support/given-values.js';

/** Round numbers, most of them those of the tables when this was written: the rows below are reckoned from them by hand. */
const values = givenValues({
  // Hiatt & Grady 2008 Table 2 [S]; cell nitrogen of Henze et al. 2000 [M].
  'aob.yield': 0.18,
  'nob.yield': 0.06,
  'nitrifier.nitrogen': 0.086,
  // From memory [W].
  'solids.nitrogen': 0.03,
  'solids.demand': 1.2,
  'crop.demand': 1.2,
  // Lettuce leaves pH alone at 6 % ammonium (ASHS 2018 [R]): (1 - e) 0.94 = (1 + e) 0.06.
  'crop.cations': 0.88,
  // 6.25 g protein per g N (FAO, AOAC) [M]; the rest invented for the sum.
  'protein.nitrogen': 0.16,
  'feed.protein': 0.32,
  'feed.demand': 1.1,
  'species.body-nitrogen': 0.025,
  'species.body-demand': 0.4,
  'species.feed-conversion': 1.6,
  'species.fasting-loss': 0.003,
  'species.reference-ration': 0.02,
  'species.protein-digestibility': 0.88,
  // A bicarbonate of 100 g/mol with a little nitrate.
  'product.alkalinity': 0.01,
  'product.carbon': 0.01,
  'product.nitrate': 0.002,
  'product.tan': 0,
  'product.chloride': 0,
  'product.calcium': 0,
  'product.calcite': 0,
});

/** Abridged standard atomic weights of IUPAC [M]: N, O2. */
const [N, O2] = [14.007, 31.998];
/** Oxygen demand of nitrogen at its steps, g per g N: 3/2, 1/2 and 2 mol O2 per mol (3.43, 1.14, 4.57: standard [R]). */
const [first, second] = [(1.5 * O2) / N, (0.5 * O2) / N];

type Account = 'air' | 'feed' | 'dead fish' | 'dosing' | 'harvested crop';
type Term = readonly [component: string, coefficient: number, outside?: Account];

/** A gram of organic matter burnt: its nitrogen to TAN (NH4+ with HCO3-), a mol of CO2 per mol of O2 (RQ 1). */
const burnt = (component: string, nitrogen: number, demand: number): readonly Term[] => [
  [component, -1],
  ['tan', nitrogen],
  ['oxygen', -demand],
  ['alkalinity', nitrogen / N],
  ['carbon', demand / O2],
];

// A gram brings what is in it, and no more.
const dosed: readonly Term[] = [
  ['alkalinity', 0.01],
  ['alkalinity', -0.01, 'dosing'],
  ['carbon', 0.01],
  ['carbon', -0.01, 'dosing'],
  ['nitrate', 0.002],
  ['nitrate', -0.002, 'dosing'],
];

// Growth 1/1.6 + 0.003/0.02 = 0.775 g; faeces 0.0512 x 0.12 / 0.03 = 0.2048 g. What is left of 0.0512 g N is
// 0.0512 - 0.775 x 0.025 - 0.2048 x 0.03 = 0.025681, and of 1.1 g of demand 1.1 - 0.775 x 0.4 - 0.2048 x 1.2 = 0.54424.
const feeding: readonly Term[] = [
  ['feed-nitrogen', -0.0512, 'feed'],
  ['feed-demand', -1.1, 'feed'],
  ['fish-mass', 0.775],
  ['solids', 0.2048],
  ['tan', 0.025681],
  ['oxygen', -0.54424],
  ['alkalinity', 0.025681 / N],
  ['carbon', 0.54424 / O2],
];

// 5/4 mol O2 of demand per mol N reduced to N2 (2.86 g per g N: standard [M]): 1.2 / 2.8556 = 0.42023 g N per g.
const denitrified = 1.2 / ((1.25 * O2) / N);

const rows: Readonly<Record<string, readonly Term[]>> = {
  feeding,
  // As solids of the same demand, 1.1 / 1.2 g; nitrogen left 0.0512 - 0.03 x 1.1 / 1.2 = 0.0237.
  'uneaten-feed': [
    ['feed-nitrogen', -0.0512, 'feed'],
    ['feed-demand', -1.1, 'feed'],
    ['solids', 11 / 12],
    ['tan', 0.0237],
    ['alkalinity', 0.0237 / N],
  ],
  upkeep: burnt('fish-mass', 0.025, 0.4),
  mortality: [
    ['fish-mass', -1],
    ['fish-mass', 1, 'dead fish'],
  ],
  'mortality-count': [
    ['fish-number', -1],
    ['fish-number', 1, 'dead fish'],
  ],
  // (3.43 - Y)/Y g O2 per g COD (Hiatt & Grady 2008 [S]); alkalinity -i/14 - 2/(14 Y) eq (Henze et al. 1987 [M]).
  'ammonia-oxidation': [
    ['aob', 1],
    ['nitrite', 1 / 0.18],
    ['tan', -1 / 0.18 - 0.086],
    ['oxygen', -(first - 0.18) / 0.18],
    ['alkalinity', -(0.086 + 2 / 0.18) / N],
    ['carbon', -1 / O2],
  ],
  'ammonia-oxidation-idle': [
    ['tan', -1],
    ['nitrite', 1],
    ['oxygen', -first],
    ['alkalinity', -2 / N],
  ],
  // (1.14 - Y)/Y g O2 per g COD (Hiatt & Grady 2008 [S]), less 3.43 g per g of cell nitrogen, which comes from nitrite here.
  'nitrite-oxidation': [
    ['nob', 1],
    ['nitrite', -1 / 0.06 - 0.086],
    ['nitrate', 1 / 0.06],
    ['oxygen', -(second - 0.06) / 0.06 + 0.086 * first],
    ['alkalinity', 0.086 / N],
    ['carbon', -1 / O2],
  ],
  'nitrite-oxidation-idle': [
    ['nitrite', -1],
    ['nitrate', 1],
    ['oxygen', -second],
  ],
  acclimating: [['acclimation', 1]],
  'aob-decay': burnt('aob', 0.086, 1),
  'nob-decay': burnt('nob', 0.086, 1),
  'solids-mineralisation': burnt('solids', 0.03, 1.2),
  'sludge-mineralisation': burnt('settled', 0.03, 1.2),
  // 1 eq back per mol of nitrate (3.57 g CaCO3 per g N: standard [M]) and per mol of TAN set free.
  denitrification: [
    ['settled', -1],
    ['nitrate', -denitrified],
    ['dinitrogen', denitrified, 'air'],
    ['tan', 0.03],
    ['alkalinity', (denitrified + 0.03) / N],
    ['carbon', 1.2 / O2],
  ],
  settling: [
    ['solids', -1],
    ['settled', 1],
  ],
  capture: [
    ['solids', -1],
    ['settled', 1],
  ],
  'crop-growing': [
    ['crop-mass', 1],
    ['carbon-dioxide-gas', -1.2 / O2, 'air'],
    ['oxygen-gas', 1.2, 'air'],
  ],
  // 0.12 eq back per mol of nitrate, its charge less the 0.88 eq of cations; its oxygen, 2 mol per mol N, goes to air.
  'nitrate-uptake': [
    ['nitrate', -1],
    ['crop-nitrogen', 1],
    ['alkalinity', 0.12 / N],
    ['oxygen-gas', first + second, 'air'],
  ],
  'tan-uptake': [
    ['tan', -1],
    ['crop-nitrogen', 1],
    ['alkalinity', -1.88 / N],
  ],
  'calcium-uptake': [
    ['calcium', -1],
    ['crop-calcium', 1, 'harvested crop'],
  ],
  'oxygen-exchange': [
    ['oxygen', 1],
    ['oxygen-gas', -1, 'air'],
  ],
  'carbon-dioxide-exchange': [
    ['carbon', 1],
    ['carbon-dioxide-gas', -1, 'air'],
  ],
  // NH4+ + HCO3- leave as NH3 and CO2: 1 eq per mol.
  'ammonia-loss': [
    ['tan', -1],
    ['ammonia-gas', 1, 'air'],
    ['alkalinity', -1 / N],
  ],
  // CaCO3 = Ca2+ + CO3 2-: 2 eq per mol.
  'lime-dissolution': [
    ['calcite', -1],
    ['calcium', 1],
    ['carbon', 1],
    ['alkalinity', 2],
  ],
  'lime-scale': [
    ['calcite', 1],
    ['calcium', -1],
    ['carbon', -1],
    ['alkalinity', -2],
  ],
  'dosing-by-ph': dosed,
  'dosing-by-alkalinity': dosed,
};

describe('the row of', () => {
  it('every process is reckoned here', () => {
    expect(Object.keys(rows).sort()).toEqual(processes.map(({ id }) => id).sort());
  });

  it.each(processes.map((process) => [process.id, process] as const))(
    '%s moves what it must, by so much, and nothing else',
    (id, process) => {
      const key = (component: string, outside?: string): string =>
        [component, ...(outside ? [outside] : [])].join(' to ');
      const got = closeRow(process, values).map(
        (term) => [key(term.component, term.outside), term.coefficient] as const,
      );
      const wanted = new Map(
        rows[id].map(([component, coefficient, outside]) => [key(component, outside), coefficient]),
      );
      expect(got.map(([name]) => name).sort()).toEqual([...wanted.keys()].sort());
      for (const [name, coefficient] of got)
        expect(coefficient, name).toBeCloseTo(wanted.get(name) ?? NaN, 9);
    },
  );
});
