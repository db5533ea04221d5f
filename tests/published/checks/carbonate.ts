import { createParameters } from '@leat/core';
import {
  acidBaseConstants,
  carbonDioxideInAir,
  carbonDioxideSaturation,
  carbonFromPh,
  hydrogenAt,
} from '../../../packages/core/src/chemistry/acid-base.js';
import { airedWater } from '../../support/aired-water.js';
import { between, nearPrinted, printed, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const parameters = createParameters();

const pK: Readonly<Record<'pK1' | 'pK2' | 'pKH' | 'pKw', (temperature: number) => number>> = {
  pK1: (t) => -Math.log10(acidBaseConstants(parameters, t).k1 / 1000),
  pK2: (t) => -Math.log10(acidBaseConstants(parameters, t).k2 / 1000),
  pKH: (t) =>
    -Math.log10(carbonDioxideSaturation(parameters, t) / 1000 / parameters.value('gas.carbon-dioxide-air')),
  pKw: (t) => -Math.log10(acidBaseConstants(parameters, t).water / 1e6),
};
const constants = ['pK1', 'pK2', 'pKH', 'pKw'] as const;

/** Worked out from the coefficients by other code. */
const computed: readonly (readonly [temperature: number, row: string])[] = [
  [0, '6.5786 10.6286 1.1084 14.9421'],
  [5, '6.5163 10.5544 1.1921 14.7322'],
  [10, '6.4633 10.4879 1.2694 14.5338'],
  [15, '6.4188 10.4284 1.3408 14.3461'],
  [20, '6.3819 10.3756 1.4069 14.1682'],
  [25, '6.3519 10.3289 1.4679 13.9995'],
  [30, '6.3281 10.2879 1.5244 13.8395'],
  [35, '6.3102 10.2523 1.5766 13.6875'],
];

/** Of textbooks; tolerance: one unit of the last place. */
const textbook: readonly (readonly [name: (typeof constants)[number], temperature: number, text: string])[] =
  [
    ['pK1', 5, '6.517'],
    ['pK2', 5, '10.56'],
    ['pK1', 15, '6.419'],
    ['pK2', 15, '10.43'],
    ['pKH', 15, '1.34'],
    ['pK1', 25, '6.352'],
    ['pK2', 25, '10.329'],
    ['pKH', 25, '1.468'],
    ['pKw', 25, '14.00'],
  ];

/**
 * pH of water in equilibrium with air of 420 uatm, solved from the constants of Plummer & Busenberg by bisection in
 * other code; alkalinity in meq/L.
 */
const equilibrated: readonly (readonly [alkalinity: number, temperature: number, text: string])[] = [
  [0.1, 10, '7.109'],
  [0.1, 25, '7.196'],
  [0.5, 10, '7.806'],
  [0.5, 25, '7.892'],
  [1, 10, '8.106'],
  [1, 25, '8.190'],
  [2, 10, '8.403'],
  [2, 25, '8.485'],
  [5, 10, '8.791'],
  [5, 25, '8.866'],
];

/** Published pH of water without alkalinity under air, at 25 degC; its CO2 in uatm. */
const pure: readonly (readonly [id: string, source: string, air: number, text: string])[] = [
  ['pure-water-390', 'aqion-open-system', 390, '5.61'],
  ['pure-water-350', 'jcu-lecture', 350, '5.64'],
];

/** CO2 over alkalinity, mg/L over mg/L as CaCO3, by pH at 5, 10 ... 35 degC (two misprints of the reprint left out). */
const factors: readonly (readonly [pH: number, row: string])[] = [
  [6, '2.915 2.539 2.315 2.112 1.970 1.882 1.839'],
  [6.8, '.462 .402 .367 .335 .313 .298 .291'],
  [7, '.291 .254 .232 .211 .197 .188 .184'],
];

const molarCarbonDioxide = parameters.value('molar.carbon') + parameters.value('molar.oxygen-gas');

/** Dissolved CO2, mg/L, of water of an alkalinity (mg/L as CaCO3) and a pH. */
function carbonDioxideOf(alkalinity: number, pH: number, temperature: number): number {
  const equivalents = alkalinity / (parameters.value('molar.calcium-carbonate') / 2);
  const { k1, k2 } = acidBaseConstants(parameters, temperature);
  const h = hydrogenAt(pH);
  const carbon = carbonFromPh(parameters, equivalents, pH, 0, temperature);
  return (molarCarbonDioxide * carbon * h * h) / (h * h + k1 * h + k1 * k2);
}

/** Percent of CO2 that air takes from water which it leaves at rest with it, by volumes of air a volume of water. */
function removedAtRest(gasToLiquid: number): number {
  const held = gasToLiquid * carbonDioxideInAir(parameters, 20);
  return (100 * held) / (1 + held);
}

const plummer = { source: 'plummer-busenberg-1982', where: 'equations', mark: 'C' } as const;

/** The carbonate system. */
export const carbonate: Topic = {
  title: 'Carbonate system',
  kind: 'formula',
  note: 'Ionic strength 0 throughout, in the model and in what is published here.',
  checks: [
    ...computed.flatMap(([temperature, row]) =>
      row.split(' ').map((text, i): PublishedCheck => ({
        id: `${constants[i]}-computed-${temperature}`,
        ...plummer,
        what: `${constants[i]}, ${temperature} degC`,
        unit: '1',
        ...printed(text),
        compute: () => pK[constants[i]](temperature),
      })),
    ),
    ...textbook.map(([name, temperature, text]): PublishedCheck => ({
      id: `${name}-textbook-${temperature}`,
      source: 'stumm-morgan',
      where: 'table of constants',
      mark: 'M',
      what: `${name}, ${temperature} degC`,
      unit: '1',
      ...nearPrinted(text),
      compute: () => pK[name](temperature),
    })),
    ...pure.map(([id, source, air, text]): PublishedCheck => ({
      id,
      source,
      where: 'worked value',
      mark: 'R',
      what: `pH of pure water under air with ${air} uatm of CO2, 25 degC, aired by the model`,
      unit: '1',
      ...nearPrinted(text),
      compute: () => airedWater({ alkalinity: 0, temperature: 25, air: air * 1e-6 }).pH,
    })),
    ...equilibrated.map(([alkalinity, temperature, text]): PublishedCheck => ({
      id: `aired-ph-${alkalinity}-${temperature}`,
      ...plummer,
      what: `pH under air of 420 uatm, alkalinity ${alkalinity} meq/L, ${temperature} degC, aired by the model`,
      unit: '1',
      ...nearPrinted(text),
      compute: () => airedWater({ alkalinity, temperature }).pH,
    })),
    ...factors.flatMap(([pH, row]) =>
      row.split(' ').map((text, step): PublishedCheck => ({
        id: `carbon-dioxide-factor-${pH}-${5 + 5 * step}`,
        source: 'tucker-1984',
        where: 'table of factors',
        mark: 'R',
        what: `CO2 over alkalinity (mg/L over mg/L as CaCO3), pH ${pH}, ${5 + 5 * step} degC`,
        unit: '1',
        ...within(3, Number(text)),
        compute: () => carbonDioxideOf(100, pH, 5 + 5 * step) / 100,
      })),
    ),
    {
      id: 'carbon-dioxide-example',
      source: 'tucker-1984',
      where: 'worked example',
      mark: 'R',
      what: 'CO2 of water of 50 mg/L as CaCO3, pH 6.8, 25 degC',
      unit: 'mg/L',
      ...within(3, 15.65),
      compute: () => carbonDioxideOf(50, 6.8, 25),
    },
    ...(
      [
        [5, 80, 88],
        [8, 86, 92],
      ] as const
    ).map(([gasToLiquid, low, high]): PublishedCheck => ({
      id: `carbon-dioxide-stripped-${gasToLiquid}`,
      source: 'hu-2011',
      where: 'abstract',
      mark: 'R',
      what: `CO2 that a packed column takes out with ${gasToLiquid} volumes of air to one of water; here one contact at rest, 20 degC`,
      unit: '%',
      ...between(low, high),
      compute: () => removedAtRest(gasToLiquid),
    })),
    {
      id: 'carbon-dioxide-saturation',
      ...plummer,
      what: 'dissolved CO2 under air of 420 uatm, 25 degC, aired by the model',
      unit: 'mg/L',
      ...printed('0.63'),
      compute: () => airedWater({ alkalinity: 1, temperature: 25 }).carbonDioxide * molarCarbonDioxide,
    },
  ],
};
