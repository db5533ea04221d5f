import { cautions } from './cautions.js';
import { csvText } from './csv-cell.js';
import type { Swept } from './sweep.js';
import { savedDocument } from './saved-document.js';

/** A sweep as one JSON document; a number that a run does not give is null. */
export function sweepDocument({ title, lists, measures, conditions, points }: Swept): string {
  const document = {
    title,
    vary: lists.map(({ varied, values }) => ({ ...varied, values })),
    of: measures.map(({ text, unit }) => ({ text, unit })),
    keep: conditions.map(({ text, unit }) => ({ text, unit })),
    points: points.map(({ values, measures: numbers, margins, holds, broke }) => ({
      values,
      measures: numbers,
      margins,
      ...(conditions.length === 0 ? {} : { holds }),
      ...(broke === undefined ? {} : { broke }),
    })),
    cautions,
  };
  return savedDocument('leat-sweep', document);
}

/** One row a point: its values, every measure, every margin, whether all conditions hold, and why it broke off. */
export function sweepCsv({ lists, measures, conditions, points }: Swept): string {
  const named = (text: string, unit: string): string => (unit === '' ? text : `${text} [${unit}]`);
  const head = [
    ...lists.map(({ varied }) => named(varied.path, varied.unit)),
    ...measures.map(({ text, unit }) => named(text, unit)),
    ...conditions.map(({ text, unit }) => named(`margin of ${text}`, unit)),
    ...(conditions.length === 0 ? [] : ['all hold']),
    'broke off',
  ];
  const rows = points.map(({ values, measures: numbers, margins, holds, broke = '' }) => [
    ...values,
    ...numbers,
    ...margins,
    ...(conditions.length === 0 ? [] : [holds ? 'yes' : 'no']),
    broke,
  ]);
  return csvText([head, ...rows]);
}
