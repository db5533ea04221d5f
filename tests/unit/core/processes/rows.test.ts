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
  'heterotroph.nitrogen': 0.086,
  // Henze et al. 1987 [M].
  'heterotroph.yield': 0.67,
  // From memory [W].
  'solids.nitrogen': 0.03,
  'solids.demand': 1.2,
  'solids.refractory-share': 0.4,
  'solids.refractory-nitrogen': 0.02,
  'solids.refractory-demand': 1.1,
  'solids.refractory-feed': 0.1,
  'solids.refractory-cells': 0.08,
  'solids.yield': 0.6,
  'crop.demand': 1.2,
  // Lettuce leaves pH alone at 6 % ammonium (ASHS 2018 [R]): (1 - e) 0.94 = (1 + e) 0.06.
  'crop.cations': 0.88,
  'crop.fruit-nitrogen': 0.025,
  // 6.25 g protein per g N (FAO, AOAC) [M]; the rest invented for the sum.
  'protein.nitrogen': 0.16,
  'feed.protein': 0.32,
  'feed.demand': 1.1,
  'species.body-nitrogen': 0.025,
  'species.energy-retention': 0.5,
  'species.energy-digestibility': 0.8,
  'species.protein-digestibility': 0.88,
  'protein.demand': 1.42,
  'fish.faecal-dissolved': 0.25,
  'fish.ammonia-share': 0.71,
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

// A gram brings what is in it, and no more.
const dosed: readonly Term[] = [
  ['alkalinity', 0.01],
  ['alkalinity', -0.01, 'dosing'],
  ['carbon', 0.01],
  ['carbon', -0.01, 'dosing'],
  ['nitrate', 0.002],
  ['nitrate', -0.002, 'dosing'],
];

// Not digested: 0.0512 x 0.12 = 0.006144 g N, 1.1 x 0.2 = 0.22 g COD, of which 0.055 dissolved. A gram of particles holds
// 0.6 x 1.2 + 0.4 x 1.1 = 1.16 g COD and 0.6 x 0.03 + 0.4 x 0.02 = 0.026 g N: 0.165 / 1.16 = 0.142241 g by demand (by nitrogen
// 0.236). Of the 0.88 g digested half is kept.
const feeding: readonly Term[] = [
  ['feed-nitrogen', -0.006144, 'feed'],
  ['feed-demand', -1.1, 'feed'],
  ['solids', (0.6 * 0.165) / 1.16],
  ['refractory', (0.4 * 0.165) / 1.16],
  ['dissolved', 0.055],
  ['organic-nitrogen', 0.006144 - (0.026 * 0.165) / 1.16],
  ['fish-fat', 0.44],
  ['oxygen', -0.44],
  ['carbon', 0.44 / O2],
];

// Lean body: 0.025 / 0.16 x 1.42 = 0.221875 g COD per g.
const lean = 0.221875;

// 5/4 mol O2 of demand per mol N reduced to N2 (2.86 g per g N: standard [M]): 0.4 x 1.2 / 2.8556 = 0.16809 g N per g.
const denitrified = (0.4 * 1.2) / ((1.25 * O2) / N);

/** A gram of what breaks down, and of what hardly does, gone into solution. */
const solved: readonly Term[] = [
  ['dissolved', 1.2],
  ['organic-nitrogen', 0.03],
];
const solvedSlowly: readonly Term[] = [
  ['dissolved', 1.1],
  ['organic-nitrogen', 0.02],
];
/** A gram of cells: 0.92 of its demand as what breaks down, 0.08 as what hardly does; the rest of 0.086 g N is organic. */
const lysed: readonly Term[] = [
  ['solids', 0.92 / 1.2],
  ['refractory', 0.08 / 1.1],
  ['organic-nitrogen', 0.086 - 0.023 - 0.0016 / 1.1],
];
/** 0.6 g COD of cells on a gram of dissolved matter: half a gram of solids, with 0.015 g N. */
const grownCells = 0.6 / 1.2;

const rows: Readonly<Record<string, readonly Term[]>> = {
  feeding,
  'uneaten-feed': [
    ['feed-nitrogen', -0.0512, 'feed'],
    ['feed-demand', -1.1, 'feed'],
    // A tenth hardly breaks down: 1.19 g COD and 0.029 g N a gram.
    ['solids', (0.9 * 1.1) / 1.19],
    ['refractory', (0.1 * 1.1) / 1.19],
    ['dissolved', 0],
    ['organic-nitrogen', 0.0512 - (0.029 * 1.1) / 1.19],
  ],
  growing: [
    ['feed-nitrogen', -0.025, 'feed'],
    ['fish-fat', -lean],
    ['fish-mass', 1],
  ],
  excretion: [
    ['feed-nitrogen', -1, 'feed'],
    ['tan', 0.71],
    ['organic-nitrogen', 0.29],
    ['alkalinity', 0.71 / N],
  ],
  'upkeep-fat': [
    ['fish-fat', -1],
    ['oxygen', -1],
    ['carbon', 1 / O2],
  ],
  upkeep: [
    ['fish-mass', -1 / lean],
    ['tan', 0.025 / lean],
    ['oxygen', -1],
    ['alkalinity', 0.025 / lean / N],
    ['carbon', 1 / O2],
  ],
  mortality: [
    ['fish-mass', -1],
    ['fish-mass', 1, 'dead fish'],
  ],
  'mortality-fat': [
    ['fish-fat', -1],
    ['fish-fat', 1, 'dead fish'],
  ],
  'mortality-left': [
    ['fish-mass', -1],
    ['fish-dead', 1],
  ],
  'mortality-left-fat': [
    ['fish-fat', -1],
    ['fish-dead-fat', 1],
  ],
  rot: [
    ['fish-dead', -1],
    ['dissolved', lean],
    ['organic-nitrogen', 0.025],
  ],
  'rot-fat': [
    ['fish-dead-fat', -1],
    ['dissolved', 1],
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
  wakening: [['awake', 1]],
  // (1 - Y)/Y g O2 per g COD (Henze et al. 1987 [M]).
  'heterotroph-growth': [
    ['heterotrophs', 1],
    ['dissolved', -1 / 0.67],
    ['tan', -0.086],
    ['oxygen', -0.33 / 0.67],
    ['alkalinity', -0.086 / N],
    ['carbon', 0.33 / 0.67 / O2],
  ],
  // A gram of demand is 1/1.2 g dry with 0.03/1.2 = 0.025 g N; 0.086 - 0.025 = 0.061 g are left over.
  'heterotroph-loss': [
    ['heterotrophs', -1],
    ['solids', 1 / 1.2],
    ['tan', 0.061],
    ['alkalinity', 0.061 / N],
  ],
  'aob-decay': [['aob', -1], ...lysed],
  'nob-decay': [['nob', -1], ...lysed],
  'solids-hydrolysis': [['solids', -1], ...solved],
  'refractory-hydrolysis': [['refractory', -1], ...solvedSlowly],
  'refractory-sludge-hydrolysis': [['settled-refractory', -1], ...solvedSlowly],
  // Four tenths of a gram are burnt, six stay as cells.
  'sludge-mineralisation': [
    ['settled', -0.4],
    ['tan', 0.012],
    ['oxygen', -0.48],
    ['alkalinity', 0.012 / N],
    ['carbon', 0.48 / O2],
  ],
  'sludge-fermentation': [['settled', -1], ...solved],
  'dissolved-oxidation': [
    ['dissolved', -1],
    ['solids', grownCells],
    ['tan', -0.015],
    ['oxygen', -0.4],
    ['alkalinity', -0.015 / N],
    ['carbon', 0.4 / O2],
  ],
  'dissolved-denitrification': [
    ['dissolved', -1],
    ['solids', grownCells],
    ['nitrate', -denitrified / 1.2],
    ['dinitrogen', denitrified / 1.2, 'air'],
    ['tan', -0.015],
    ['alkalinity', (denitrified / 1.2 - 0.015) / N],
    ['carbon', 0.4 / O2],
  ],
  ammonification: [
    ['organic-nitrogen', -1],
    ['tan', 1],
    ['alkalinity', 1 / N],
  ],
  // 1 eq back per mol of nitrate (3.57 g CaCO3 per g N: standard [M]) and per mol of TAN set free.
  denitrification: [
    ['settled', -0.4],
    ['nitrate', -denitrified],
    ['dinitrogen', denitrified, 'air'],
    ['tan', 0.012],
    ['alkalinity', (denitrified + 0.012) / N],
    ['carbon', 0.48 / O2],
  ],
  settling: [
    ['solids', -1],
    ['settled', 1],
  ],
  capture: [
    ['solids', -1],
    ['settled', 1],
  ],
  'settling-refractory': [
    ['refractory', -1],
    ['settled-refractory', 1],
  ],
  'capture-refractory': [
    ['refractory', -1],
    ['settled-refractory', 1],
  ],
  'crop-growing': [
    ['crop-mass', 1],
    ['carbon-dioxide-gas', -1.2 / O2, 'air'],
    ['oxygen-gas', 1.2, 'air'],
  ],
  // Its nitrogen and the cations with it come out of the plant; its carbon and oxygen are those of the plant.
  'fruit-growing': [
    ['fruit-mass', 1],
    ['crop-nitrogen', -0.025],
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
  'flood-oxygen': [
    ['oxygen', 1],
    ['oxygen-gas', -1, 'air'],
  ],
  'flood-carbon-dioxide': [
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
