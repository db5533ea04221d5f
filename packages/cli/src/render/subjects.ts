import type { TableName, TableRow } from '@leat/core';
import { columns } from './columns.js';

/** One column of a list of subjects: its heading, and the properties it is made of, `low-high` where there are two. */
type Column = readonly [heading: string, ...properties: string[]];

/** What a list of subjects shows of each; tables without an entry are listed number by number. */
const shownOf: Partial<Record<TableName, readonly Column[]>> = {
  fish: [
    ['feeds degC', 'temperature-low', 'temperature-high'],
    ['best degC', 'temperature-optimum-low', 'temperature-optimum-high'],
    ['FCR', 'feed-conversion'],
    ['TGC x1000', 'thermal-growth'],
    ['body N', 'body-nitrogen'],
    ['NH3-N max', 'limit-ammonia'],
    ['NO2-N max', 'limit-nitrite'],
    ['O2 min', 'limit-oxygen'],
  ],
  crops: [
    ['days', 'days'],
    ['per m2', 'density'],
    ['dry share', 'dry-matter'],
    ['N at 1 t/ha', 'nitrogen-a'],
    ['N g/m2/d', 'nitrogen-uptake'],
    ['Kc', 'kc-full'],
    ['pH', 'ph-low', 'ph-high'],
    ['Cl max', 'chloride-high'],
    ['ECe dS/m', 'salt-threshold'],
  ],
  media: [
    ['surface m2/m3', 'surface'],
    ['porosity', 'porosity'],
  ],
  feeds: [
    ['protein', 'protein'],
    ['g COD/g', 'demand'],
  ],
  dosing: [
    ['alkalinity eq/g', 'alkalinity'],
    ['carbon mol/g', 'carbon'],
    ['chloride g/g', 'chloride'],
    ['N g/g', 'tan'],
  ],
  waters: [
    ['TAN', 'tan'],
    ['NO2-N', 'nitrite'],
    ['NO3-N', 'nitrate'],
    ['alkalinity eq/m3', 'alkalinity'],
    ['pH', 'ph'],
    ['O2', 'oxygen'],
    ['Cl', 'chloride'],
  ],
};

/** A table of subjects, one line each; undefined for a table that has none. Concentrations are mg/L. */
export function subjectLines(table: TableName, rows: readonly TableRow[]): readonly string[] | undefined {
  const shown = shownOf[table];
  if (shown === undefined) return undefined;
  const values = new Map(rows.map(({ id, value }) => [id, value]));
  const subjects = [...new Set(rows.map(({ id }) => id.split('.').slice(0, 2).join('.')))];
  const body = subjects.map((subject) => [
    subject.slice(subject.indexOf('.') + 1),
    ...shown.map(([, ...properties]) =>
      properties.map((property) => String(values.get(`${subject}.${property}`) ?? '-')).join('-'),
    ),
  ]);
  return columns(
    [[table, ...shown.map(([heading]) => heading)], ...body],
    ['left', ...shown.map(() => 'right' as const)],
  );
}
