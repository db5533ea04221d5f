import { createParameters } from '@leat/core';
import {
  acidBaseConstants,
  carbonFromPh,
  hydrogenAt,
} from '../../../packages/core/src/chemistry/acid-base.js';
import { calciteAttack } from '../../../packages/core/src/chemistry/calcite.js';
import { davies, openIonicStrength } from '../../../packages/core/src/chemistry/ions.js';
import { limedWater } from '../../support/limed-water.js';
import { about, nearPrinted, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const parameters = createParameters();
const ionicStrength = openIonicStrength(parameters);

/** Coefficients of Davies and constants with them at 25 degC, by ionic strength, mol/L. Worked out by other code. */
const daviesNames = ['g1', 'g2', 'pK1', 'pK2', 'pK of ammonium', 'pKs of calcite'] as const;
const daviesRows: readonly (readonly [ionic: number, row: string])[] = [
  [0.005, '.9269 .7381 6.319 10.230 9.279 8.216'],
  [0.01, '.9018 .6613 6.307 10.194 9.291 8.121'],
  [0.05, '.8209 .4542 6.266 10.072 9.332 7.795'],
  [0.1, '.7809 .3719 6.245 10.007 9.354 7.621'],
];

function daviesValues(ionic: number): readonly number[] {
  const { one, two } = davies(parameters, 25, ionic);
  const k = acidBaseConstants(parameters, 25, ionic);
  const pK = (constant: number, scale: number): number => -Math.log10(constant / scale);
  return [one, two, pK(k.k1, 1000), pK(k.k2, 1000), pK(k.ammonium, 1000), pK(k.calcite, 1e6)];
}

/** Water as an analysis gives it: calcium and alkalinity in mmol/L and meq/L. */
interface Analysed {
  readonly pH: number;
  readonly calcium: number;
  readonly alkalinity: number;
  readonly temperature: number;
  /** Dissolved solids, mg/L, where they are given. */
  readonly solids?: number;
}

/** Ionic strength, mol/L, per mg/L of dissolved solids: Langelier's own, from memory. */
const perSolids = 2.5e-5;

/** Saturation index of an analysed water, with the dissolved solids that it names, or the ions that are known of it. */
function saturationIndex({ pH, calcium, alkalinity, temperature, solids }: Analysed): number {
  const ionic =
    solids === undefined
      ? ionicStrength({ ammonia: 0, nitrite: 0, nitrate: 0, chloride: 0, alkalinity, calcium })
      : perSolids * solids;
  const { k1, k2, calcite } = acidBaseConstants(parameters, temperature, ionic);
  const carbon = carbonFromPh(parameters, alkalinity, pH, 0, temperature, ionic);
  const h = hydrogenAt(pH);
  const carbonate = (carbon * k1 * k2) / (h * h + k1 * h + k1 * k2);
  return Math.log10((calcium * carbonate) / calcite);
}

/** mg/L as calcium carbonate that one mmol/L of calcium is; one meq/L is half of it. */
const perCalcium = parameters.value('molar.calcium-carbonate');

/** Hardness and alkalinity in mg/L as calcium carbonate; the tables of pools are taken to be for 1000 mg/L of dissolved solids. */
const pooled = (
  hardness: number,
  alkalinity: number,
  pH: number,
  temperature: number,
  solids = 1000,
): number =>
  saturationIndex({
    pH,
    temperature,
    solids,
    calcium: hardness / perCalcium,
    alkalinity: (2 * alkalinity) / perCalcium,
  });

/** Tables of pools: hardness, alkalinity (mg/L as CaCO3), pH, degC, printed index. */
const pools: readonly (readonly [
  hardness: number,
  alkalinity: number,
  pH: number,
  temperature: number,
  index: number,
  miss?: string,
])[] = [
  [200, 50, 7, 24.4, -0.9],
  [300, 75, 7.6, 28.9, 0.2],
  [
    400,
    150,
    8,
    28.9,
    1.1,
    'three factors rounded to 0.1 each, for dissolved solids that the table does not say; ours is 0.95, the equation of Langelier gives 0.9',
  ],
  [400, 125, 7.6, 24, 0.4],
];

/** Rate constants: k1 and k2 in cm/s, k3 in mmol/cm2/s. Worked out from the printed coefficients by other code. */
const attacks: readonly (readonly [temperature: number, k1: number, k2: number, k3: number])[] = [
  [15, 0.0454, 1.93e-5, 1.1e-7],
  [20, 0.0482, 2.59e-5, 1.15e-7],
  [25, 0.0511, 3.45e-5, 1.19e-7],
];

/** What clean calcite gives to water without any at 25 degC, pH 7, with 10 mg/L of carbon dioxide, meq m-2 d-1. */
function cleanFlux(): number {
  const { hydrogen, carbonDioxide, water } = calciteAttack(parameters, 25);
  const molar = parameters.value('molar.carbon') + parameters.value('molar.oxygen-gas');
  return 2000 * (hydrogen * hydrogenAt(7) + carbonDioxide * (10 / molar) + water);
}

const example3 = { source: 'phreeqc-3', where: 'output of example 3, part A', mark: 'R' } as const;
const plummer = { source: 'plummer-wigley-1978', where: 'rate constants', mark: 'C' } as const;

/** Pure water with calcite under carbon dioxide of a hundredth of an atmosphere, as published and by the model. */
const limed: readonly (readonly [
  key: 'pH' | 'calcium' | 'alkalinity' | 'carbon',
  what: string,
  unit: string,
])[] = [
  ['pH', 'pH', '1'],
  ['calcium', 'calcium', 'mmol/L'],
  ['alkalinity', 'alkalinity', 'meq/L'],
  ['carbon', 'inorganic carbon', 'mmol/L'],
];
const limedPublished = { pH: 7.297, calcium: 1.646, alkalinity: 3.291, carbon: 3.622 } as const;

/** Activities of ions, saturation and dissolution of lime. */
export const lime: Topic = {
  title: 'Ions and lime',
  kind: 'formula',
  note: 'Ion pairs are left out by the model: 3 % of the calcium of the saturated water here. Seawater is left out: too strong for the equation of Davies.',
  checks: [
    ...daviesRows.flatMap(([ionic, row]) =>
      row.split(' ').map((text, i): PublishedCheck => ({
        id: `davies-${daviesNames[i].replaceAll(' ', '-').toLowerCase()}-${ionic}`,
        source: 'davies-1962',
        where: 'equation',
        mark: 'C',
        what: `${i < 2 ? `activity coefficient of ions of ${i === 0 ? 'one charge' : 'two charges'}` : daviesNames[i]}, ionic strength ${ionic} mol/L, 25 degC`,
        unit: '1',
        ...nearPrinted(text),
        compute: () => daviesValues(ionic)[i],
      })),
    ),
    ...(
      [
        ['bicarbonate', 'one', -0.032],
        ['carbonate', 'two', -0.126],
        ['calcium', 'two', -0.126],
      ] as const
    ).map(([ion, charge, published]): PublishedCheck => ({
      id: `activity-${ion}`,
      ...example3,
      what: `log10 of the activity coefficient of ${ion}, ionic strength 0.00483 mol/L, 25 degC`,
      unit: '1',
      ...about(published, 0.005, 'of the logarithm'),
      compute: () => Math.log10(davies(parameters, 25, 0.004826)[charge]),
    })),
    {
      id: 'ionic-strength-of-limed-water',
      ...example3,
      what: 'ionic strength of water with 1.646 mmol/L of calcium and 3.291 meq/L',
      unit: 'mol/L',
      ...within(3, 0.004826),
      compute: () =>
        ionicStrength({ ammonia: 0, nitrite: 0, nitrate: 0, chloride: 0, alkalinity: 3.291, calcium: 1.646 }),
    },
    {
      id: 'calcite-solubility',
      source: 'plummer-busenberg-1982',
      where: 'abstract: 8.480 at 25 degC',
      mark: 'R',
      what: 'pKs of calcite, 25 degC',
      unit: '1',
      ...nearPrinted('8.480'),
      compute: () => -Math.log10(acidBaseConstants(parameters, 25).calcite / 1e6),
    },
    {
      id: 'saturation-of-limed-water',
      ...example3,
      what: 'saturation index of water with 1.646 mmol/L of calcium, 3.291 meq/L, pH 7.297, 25 degC',
      unit: '1',
      ...about(0, 0.03, 'of the index'),
      compute: () => saturationIndex({ pH: 7.297, calcium: 1.646, alkalinity: 3.291, temperature: 25 }),
    },
    {
      id: 'saturation-of-soft-water',
      source: 'phreeqc-3',
      where: 'test of its library: pH 7, 1 mmol/kg each of calcium, sodium and carbon',
      mark: 'R',
      what: 'saturation index of water with 1 mmol/L of calcium, 0.828 meq/L, pH 7, 25 degC',
      unit: '1',
      ...about(-1.07, 0.03, 'of the index'),
      compute: () => saturationIndex({ pH: 7, calcium: 1, alkalinity: 0.828, temperature: 25 }),
    },
    ...limed.map(([key, what, unit]): PublishedCheck => ({
      id: `limed-water-${key.toLowerCase()}`,
      ...example3,
      what: `${what} of pure water with calcite under 0.01 atm of carbon dioxide, 25 degC, run by the model`,
      unit,
      ...(key === 'pH' ? about(limedPublished.pH, 0.03, 'of pH') : within(5, limedPublished[key])),
      compute: () => limedWater({ temperature: 25, air: 0.01 })[key],
    })),
    {
      id: 'langelier-index',
      source: 'langelier-index',
      where: 'worked example: pHs = 9.3 + A + B - C - D, with 320 mg/L of dissolved solids',
      mark: 'M',
      what: 'saturation index, pH 7.5, hardness 150 and alkalinity 34 mg/L as CaCO3, 25 degC',
      unit: '1',
      ...about(-0.7, 0.2, 'of the index'),
      compute: () => pooled(150, 34, 7.5, 25, 320),
    },
    ...pools.map(([hardness, alkalinity, pH, temperature, index, miss]): PublishedCheck => ({
      id: `pool-index-${hardness}-${alkalinity}-${pH}`,
      source: 'pool-index',
      where: 'table of factors, printed to 0.1; dissolved solids of 1000 mg/L assumed',
      mark: 'R',
      what: `saturation index, hardness ${hardness} and alkalinity ${alkalinity} mg/L as CaCO3, pH ${pH}, ${temperature} degC`,
      unit: '1',
      ...about(index, 0.15, 'of the index'),
      compute: () => pooled(hardness, alkalinity, pH, temperature),
      ...(miss === undefined ? {} : { miss }),
    })),
    ...attacks.flatMap(([temperature, ...published]) =>
      (['hydrogen', 'carbonDioxide', 'water'] as const).map((by, i): PublishedCheck => ({
        id: `calcite-k${i + 1}-${temperature}`,
        ...plummer,
        what: `k${i + 1} of the dissolution of calcite, ${temperature} degC`,
        unit: i === 2 ? 'mmol/(cm2 s)' : 'cm/s',
        ...within(0.5, published[i]),
        compute: () => calciteAttack(parameters, temperature)[by] / (i === 2 ? 864_000 : 864),
      })),
    ),
    {
      id: 'calcite-flux',
      ...plummer,
      where: 'law, far from saturation',
      what: 'alkalinity from clean calcite, 25 degC, pH 7, 10 mg/L of carbon dioxide',
      unit: 'meq/(m2 d)',
      ...within(1, 228),
      compute: cleanFlux,
    },
  ],
};
