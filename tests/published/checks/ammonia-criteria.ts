import { createParameters } from '@leat/core';
import { acuteCriterion, chronicCriterion } from '../../../packages/core/src/result/limits-for-release.js';
import { printed } from '../tolerance.js';
import type { PublishedCheck, Topic } from '../published-check.js';
import { judgedCourse } from '../../support/ammonia-course.js';

const parameters = createParameters();
type Kind = 'acute-trout' | 'acute' | 'chronic';

const names: Readonly<Record<Kind, string>> = {
  'acute-trout': 'acute criterion, Oncorhynchus present',
  acute: 'acute criterion, Oncorhynchus absent',
  chronic: 'chronic criterion, mussels present',
};

function criterion(kind: Kind, pH: number, temperature: number): number {
  return kind === 'chronic'
    ? chronicCriterion(parameters, pH, temperature)
    : acuteCriterion(parameters, pH, temperature, kind === 'acute-trout');
}

/** Two significant figures at pH 6.5, 7.0, 7.5, 8.0, 8.5 and 9.0. */
interface Column {
  readonly kind: Kind;
  readonly temperature: number;
  readonly row: string;
}

const levels = [6.5, 7, 7.5, 8, 8.5, 9];

function columnChecks(
  columns: readonly Column[],
  from: Pick<PublishedCheck, 'source' | 'where' | 'mark'>,
): readonly PublishedCheck[] {
  return columns.flatMap(({ kind, temperature, row }) => {
    return row.split(' ').map((text, i): PublishedCheck => {
      const pH = levels[i];
      return {
        id: `${from.source}-${kind}-${pH.toFixed(1)}-${temperature}`,
        ...from,
        what: `${names[kind]}, pH ${pH.toFixed(1)}, ${temperature} degC`,
        unit: 'mg N/L',
        ...printed(text),
        compute: () => criterion(kind, pH, temperature),
      };
    });
  });
}

/** As quoted from the tables of a state that took the criteria over. */
const quoted: readonly Column[] = [
  { kind: 'acute-trout', temperature: 10, row: '33 24 13 5.6 2.1 0.88' },
  { kind: 'acute-trout', temperature: 20, row: '23 17 9.2 3.9 1.5 0.62' },
  { kind: 'acute-trout', temperature: 30, row: '9.9 7.3 4.0 1.7 0.65 0.27' },
  { kind: 'acute', temperature: 10, row: '51 38 21 8.8 3.3 1.4' },
  { kind: 'acute', temperature: 20, row: '23 17 9.2 3.9 1.5 0.62' },
  { kind: 'acute', temperature: 30, row: '9.9 7.3 4.0 1.7 0.65 0.27' },
  { kind: 'chronic', temperature: 5, row: '4.9 4.4 3.2 1.8 0.80 0.36' },
  { kind: 'chronic', temperature: 20, row: '2.1 1.9 1.4 0.78 0.35 0.16' },
  { kind: 'chronic', temperature: 30, row: '1.1 0.99 0.73 0.41 0.18 0.081' },
];

/** From the formulas, by other code. */
const computed: readonly Column[] = [
  { kind: 'acute-trout', temperature: 15, row: '33 24 13 5.6 2.1 0.88' },
  { kind: 'acute-trout', temperature: 25, row: '15 11 6.1 2.6 0.98 0.41' },
  { kind: 'acute', temperature: 15, row: '34 25 14 5.9 2.3 0.93' },
  { kind: 'acute', temperature: 25, row: '15 11 6.1 2.6 0.98 0.41' },
  { kind: 'chronic', temperature: 7, row: '4.9 4.4 3.2 1.8 0.80 0.36' },
  { kind: 'chronic', temperature: 10, row: '4.1 3.6 2.7 1.5 0.66 0.30' },
  { kind: 'chronic', temperature: 15, row: '2.9 2.6 1.9 1.1 0.48 0.21' },
  { kind: 'chronic', temperature: 25, row: '1.5 1.4 1.0 0.56 0.25 0.11' },
];

const epa = { source: 'epa-2013', mark: 'R' } as const;
const month = { days: 31, every: 1, of: 'chronic' } as const;

/** The criteria for ammonia in water let out. */
export const ammoniaCriteria: Topic = {
  title: 'Ammonia criteria of US EPA 2013',
  kind: 'formula',
  note:
    'Total ammonia as N; EPA prints two figures. The rules of averaging are also held against made courses of ammonia ' +
    'in `epa-averaging.test.ts`.',
  checks: [
    {
      id: 'epa-acute-anchor',
      ...epa,
      where: 'as quoted by EPA: pH 7, 20 degC',
      what: names.acute,
      unit: 'mg N/L',
      ...printed('17'),
      compute: () => criterion('acute', 7, 20),
    },
    {
      id: 'epa-chronic-anchor',
      ...epa,
      where: 'as quoted by EPA: pH 7, 20 degC',
      what: names.chronic,
      unit: 'mg N/L',
      ...printed('1.9'),
      compute: () => criterion('chronic', 7, 20),
    },
    {
      id: 'epa-acute-averaging',
      ...epa,
      where: 'duration of the acute criterion',
      what: 'time of the mean that is compared',
      unit: 'h',
      ...printed('1'),
      compute: () => 24 * judgedCourse(() => 1, month)['ammonia-acute-ratio'].averaging,
    },
    {
      id: 'epa-chronic-averaging',
      ...epa,
      where: 'duration of the chronic criterion',
      what: 'time of the mean that is compared',
      unit: 'd',
      ...printed('30'),
      compute: () => judgedCourse(() => 1, month)['ammonia-chronic-ratio'].averaging,
    },
    {
      id: 'epa-peak-averaging',
      ...epa,
      where: 'highest 4-day mean within the 30 days',
      what: 'time of the mean that is compared',
      unit: 'd',
      ...printed('4'),
      compute: () => judgedCourse(() => 1, month)['ammonia-4-day-ratio'].averaging,
    },
    {
      id: 'epa-peak-factor',
      ...epa,
      where: 'highest 4-day mean within the 30 days',
      what: 'over the chronic criterion',
      unit: '1',
      ...printed('2.5'),
      compute: () => judgedCourse(() => 1, month)['ammonia-4-day-ratio'].value,
    },
    ...columnChecks(quoted, { source: 'oregon-table-30', where: 'tables 30(a)-(c)', mark: 'S' }),
    ...columnChecks(computed, { source: 'epa-2013', where: 'formulas', mark: 'C' }),
  ],
};
