import { createParameters, hargreaves, penmanMonteith, type ReferenceDay } from '@leat/core';
import { cropCoefficient } from '../../support/crop-coefficient.js';
import { between, nearPrinted, printed } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';

const values = createParameters();

/** Example 18: Uccle (Brussels), 50 deg 48 min N, 100 m, 6 July; inputs [M], height of wind and wind [R]. */
const uccle = penmanMonteith(
  values,
  { latitude: 50.8, elevation: 100, windHeight: 10 },
  {
    dayOfYear: 187,
    high: 21.5,
    low: 12.3,
    humidityHigh: 0.84,
    humidityLow: 0.63,
    wind: 10 / 3.6,
    sunshine: 9.25,
  },
);

/** Example 20: Lyon, 45 deg 43 min N, 200 m, July, temperatures only; inputs [M]. */
const lyonSite = { latitude: 45 + 43 / 60, elevation: 200 };
const lyonDay = { dayOfYear: 196, high: 26.6, low: 14.8 };
const lyon = penmanMonteith(values, lyonSite, lyonDay);

/** What is worked out on the way: unit, digits by other code, digits as printed in the paper. */
const uccleLines: readonly (readonly [
  name: keyof ReferenceDay,
  unit: string,
  computed: string,
  printed: string,
])[] = [
  ['pressure', 'kPa', '100.12', '100.1'],
  ['psychrometric', 'kPa/degC', '0.06658', '0.0666'],
  ['slope', 'kPa/degC', '0.12211', '0.122'],
  ['actual', 'kPa', '1.4086', '1.409'],
  ['wind', 'm/s', '2.0776', '2.078'],
  ['extraterrestrial', 'MJ/m2/d', '41.09', '41.09'],
  ['daylight', 'h', '16.10', '16.1'],
  ['radiation', 'MJ/m2/d', '22.07', '22.07'],
  ['clearSky', 'MJ/m2/d', '30.90', '30.90'],
  ['netShort', 'MJ/m2/d', '17.00', '17.00'],
  ['netLong', 'MJ/m2/d', '3.712', '3.71'],
  ['net', 'MJ/m2/d', '13.28', '13.28'],
  ['et0', 'mm/d', '3.880', '3.88'],
];

const lyonLines: readonly (readonly [name: keyof ReferenceDay, unit: string, printed: string])[] = [
  ['extraterrestrial', 'MJ/m2/d', '40.55'],
  ['actual', 'kPa', '1.68'],
  ['radiation', 'MJ/m2/d', '22.29'],
  ['wind', 'm/s', '2.0'],
  ['et0', 'mm/d', '4.56'],
];

const numberOf = (day: ReferenceDay, name: keyof ReferenceDay): number => {
  const value = day[name];
  if (typeof value !== 'number') throw new TypeError(`${name} is no number`);
  return value;
};

const paper = { source: 'fao-56', where: 'Example 18', mark: 'M' } as const;
const second = { source: 'fao-56', where: 'Example 20', mark: 'M' } as const;

/** Crop coefficients, Table 12. */
const table: readonly (readonly [crop: string, start: string, full: string, end: string])[] = [
  ['lettuce-butterhead', '0.70', '1.00', '0.95'],
  ['lettuce-crisphead', '0.70', '1.00', '0.95'],
  ['spinach', '0.70', '1.00', '0.95'],
  ['cucumber', '0.60', '1.00', '0.75'],
  ['pepper', '0.60', '1.05', '0.90'],
  ['eggplant', '0.60', '1.05', '0.90'],
  ['mint', '0.60', '1.15', '1.10'],
];

const coefficients = table.flatMap(([crop, ...stages]) =>
  (['start', 'full', 'end'] as const).map((stage, i): PublishedCheck => ({
    id: `crop-coefficient-${crop}-${stage}`,
    source: 'fao-56',
    where: 'Table 12',
    mark: 'M',
    what: `crop coefficient of ${crop} in a run: ${stage}`,
    unit: '1',
    ...printed(stages[i]),
    compute: () => cropCoefficient(crop, stage),
  })),
);

/** Reference evapotranspiration and crop coefficients. */
export const evapotranspiration: Topic = {
  title: 'Evapotranspiration',
  kind: 'formula',
  checks: [
    ...uccleLines.flatMap(([name, unit, computed, paperText]): readonly PublishedCheck[] => [
      {
        id: `uccle-${name}`,
        ...paper,
        mark: name === 'pressure' ? 'R' : 'M',
        what: `Uccle: ${name}`,
        unit,
        ...printed(paperText),
        compute: () => numberOf(uccle, name),
      },
      {
        id: `uccle-${name}-computed`,
        ...paper,
        mark: 'C',
        what: `Uccle: ${name}`,
        unit,
        ...printed(computed),
        compute: () => numberOf(uccle, name),
      },
    ]),
    {
      id: 'uccle-saturation',
      ...paper,
      what: 'Uccle: saturation (the paper cuts 1.9975)',
      unit: 'kPa',
      ...nearPrinted('1.997'),
      compute: () => uccle.saturation,
    },
    {
      id: 'uccle-radiation-read',
      ...paper,
      mark: 'R',
      what: 'Uccle: radiation, as read',
      unit: 'MJ/m2/d',
      ...nearPrinted('22.06'),
      miss: 'read in a copy; the paper is remembered to have 22.07, to which this rounds',
      compute: () => uccle.radiation,
    },
    {
      id: 'uccle-et0-read',
      ...paper,
      mark: 'R',
      what: 'Uccle: et0, as read',
      unit: 'mm/d',
      ...printed('3.9'),
      compute: () => uccle.et0,
    },
    ...lyonLines.map(([name, unit, text]): PublishedCheck => ({
      id: `lyon-${name}`,
      ...second,
      what: `Lyon, temperatures only: ${name}`,
      unit,
      ...printed(text),
      compute: () => numberOf(lyon, name),
    })),
    {
      id: 'lyon-hargreaves',
      ...second,
      what: 'Lyon: et0 by Hargreaves',
      unit: 'mm/d',
      ...printed('5.0'),
      compute: () => hargreaves(values, lyonSite, lyonDay),
    },
    {
      id: 'lyon-hargreaves-computed',
      ...second,
      mark: 'C',
      what: 'Lyon: et0 by Hargreaves',
      unit: 'mm/d',
      ...printed('5.03'),
      compute: () => hargreaves(values, lyonSite, lyonDay),
    },
    ...coefficients,
    ...(
      [
        ['start', 0.6, 0.6],
        ['full', 1.15, 1.15],
        ['end', 0.7, 0.9],
      ] as const
    ).map(([stage, low, high]): PublishedCheck => ({
      id: `crop-coefficient-tomato-${stage}`,
      source: 'fao-56',
      where: 'Table 12',
      mark: 'M',
      what: `crop coefficient of tomato in a run: ${stage}`,
      unit: '1',
      ...between(low, high),
      compute: () => cropCoefficient('tomato', stage),
    })),
  ],
};
