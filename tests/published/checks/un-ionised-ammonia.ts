import { ammoniumPk } from '../../../packages/core/src/chemistry/acid-base.js';
import { waterOf } from '../../support/water-of.js';
import { nearPrinted, printed, within } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';
import { createParameters, parseQuantity } from '@leat/core';

const parameters = createParameters();

/** Share of TAN that is un-ionised, by the model's whole chemistry of water. */
const share = (pH: number, temperature: number): number => waterOf({ pH, temperature, tan: 1 }).ammonia;

/** Columns and rows as reprinted; the column of 32 degC lies outside the original table and is left out. */
const columns = [6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30];
const emerson: readonly (readonly [pH: number, row: string])[] = [
  [7.0, '.0013 .0016 .0018 .0022 .0025 .0029 .0034 .0039 .0046 .0052 .0060 .0069 .0080'],
  [7.2, '.0021 .0025 .0029 .0034 .0040 .0046 .0054 .0062 .0072 .0083 .0096 .0110 .0126'],
  [7.4, '.0034 .0040 .0046 .0054 .0063 .0073 .0085 .0096 .0114 .0131 .0150 .0173 .0198'],
  [7.6, '.0053 .0063 .0073 .0086 .0100 .0116 .0134 .0155 .0179 .0206 .0236 .0271 .0310'],
  [7.8, '.0084 .0099 .0116 .0135 .0157 .0182 .0211 .0244 .0281 .0322 .0370 .0423 .0482'],
  [8.0, '.0133 .0156 .0182 .0212 .0247 .0286 .0330 .0381 .0438 .0502 .0574 .0654 .0743'],
  [8.2, '.0210 .0245 .0286 .0332 .0385 .0445 .0514 .0590 .0676 .0772 .0880 .0998 .1129'],
  [8.4, '.0328 .0383 .0445 .0517 .0597 .0688 .0790 .0904 .1031 .1171 .1326 .1495 .1678'],
];

const misprints: Readonly<Record<string, string>> = {
  'emerson-7.4-20':
    'a misprint: between .0085 at 18 and .0114 at 22 degC the row wants .0098, and so does the equation',
};

const emersonChecks: readonly PublishedCheck[] = emerson.flatMap(([pH, row]) =>
  row.split(' ').map((text, column): PublishedCheck => {
    const id = `emerson-${pH.toFixed(1)}-${columns[column]}`;
    return {
      id,
      source: 'ifas-fa16',
      where: 'table after Emerson et al.',
      mark: 'R',
      what: `un-ionised share of TAN, pH ${pH.toFixed(1)}, ${columns[column]} degC`,
      unit: '1',
      ...nearPrinted(text),
      compute: () => share(pH, columns[column]),
      ...(id in misprints ? { miss: misprints[id] } : {}),
    };
  }),
);

/** Another fit of the constants, printed in percent at 10, 15, 20 and 25 degC. */
const trussell: readonly (readonly [pH: number, row: string])[] = [
  [7.0, '0.19 0.27 0.40 0.55'],
  [7.2, '0.29 0.43 0.63 0.88'],
  [7.4, '0.47 0.68 0.99 1.38'],
  [7.6, '0.74 1.07 1.56 2.17'],
  [7.8, '1.16 1.69 2.45 3.39'],
  [8.0, '1.83 2.65 3.83 5.28'],
  [8.2, '2.86 4.14 5.94 8.11'],
  [8.4, '4.46 6.41 9.09 12.27'],
];
const trussellChecks = trussell.flatMap(([pH, row]) =>
  row.split(' ').map((text, column): PublishedCheck => ({
    id: `trussell-${pH.toFixed(1)}-${10 + 5 * column}`,
    source: 'trussell-1972',
    where: 'table, fresh water',
    mark: 'R',
    what: `un-ionised share of TAN, pH ${pH.toFixed(1)}, ${10 + 5 * column} degC`,
    unit: '%',
    ...within(3, Number(text)),
    compute: () => 100 * share(pH, 10 + 5 * column),
  })),
);

/** Worked with a speciation program, umol/L of NH3 of 30 umol/L in all, 15 degC. */
const speciated: readonly (readonly [pH: number, text: string])[] = [
  [8.5, '2.38'],
  [8.6, '2.94'],
  [8.7, '3.60'],
  [8.8, '4.40'],
  [8.9, '5.34'],
  [9.0, '6.43'],
];
const speciatedChecks = speciated.map(([pH, text]): PublishedCheck => ({
  id: `free-ammonia-${pH.toFixed(1)}`,
  source: 'aqion-ammonia',
  where: 'result for 15 degC',
  mark: 'R',
  what: `NH3 of 30 umol/L of total ammonia, pH ${pH.toFixed(1)}, 15 degC`,
  unit: 'umol/L',
  ...within(2, Number(text)),
  compute: () => 30 * share(pH, 15),
}));

/** pKa from the constants, by other code. */
const constants: readonly (readonly [temperature: number, text: string])[] = [
  [5, '9.9047'],
  [10, '9.7314'],
  [15, '9.5641'],
  [20, '9.4025'],
  [25, '9.2464'],
  [30, '9.0954'],
];
const constantChecks = constants.map(([temperature, text]): PublishedCheck => ({
  id: `ammonium-pk-${temperature}`,
  source: 'emerson-1975',
  where: 'equation',
  mark: 'C',
  what: `pKa of ammonium, ${temperature} degC`,
  unit: '1',
  ...printed(text),
  compute: () => ammoniumPk(parameters, temperature),
}));

/** Un-ionised ammonia. */
export const unIonisedAmmonia: Topic = {
  title: 'Un-ionised ammonia',
  kind: 'formula',
  note:
    'The reprinted table has a column of 32 degC, which is left out: Emerson et al. give 0-30 degC, and that column ' +
    '(such as .0877 at pH 8.0, where the equation gives .0842) does not follow their equation.',
  checks: [
    ...emersonChecks,
    {
      id: 'ammonia-worked-example',
      source: 'ifas-fa16',
      where: 'worked example',
      mark: 'R',
      what: 'un-ionised ammonia of TAN 1.0 mg/L at 24 degC (75 degF) and pH 8.0',
      unit: 'mg N/L',
      ...nearPrinted('.0502'),
      compute: () => share(8, 24),
    },
    ...trussellChecks,
    ...speciatedChecks,
    ...constantChecks,
    {
      id: 'canadian-guideline-as-n',
      source: 'canada-ammonia',
      where: 'guideline for fresh water',
      mark: 'S',
      what: 'un-ionised ammonia of 0.019 mg/L counted as N, by the units of a scenario',
      unit: 'mg N/L',
      ...printed('.0156'),
      compute: (): number => {
        const read = parseQuantity('0.019 mg/L as NH3', 'ammonia');
        return 'value' in read ? read.value : Number.NaN;
      },
    },
  ],
};
