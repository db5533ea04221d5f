import type { SweepPoint } from '@leat/core';
import { askedInSweep, cautions, type Display, shown, type Sweep, valueText } from '@leat/view/text';
import { csvText } from '@leat/view/documents';
import { savedDocument } from '../../files/saved-document.js';
import { cautionLines } from '../shared/caution-lines.js';
import { columns, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';

/** A point that fails a condition, or broke off, is marked. */
const mark = ({ conditions }: Sweep, { holds, broke }: SweepPoint): string =>
  broke !== undefined ? ' ?' : conditions.length > 0 && !holds ? ' !' : '';

function table(swept: Sweep, display: Display): readonly string[] {
  const [{ varied }] = swept.lists;
  const asked = askedInSweep(swept, display);
  return [
    ...columns(
      [
        [varied.path.slice(varied.path.lastIndexOf('.') + 1), ...asked.map((_, i) => `[${i + 1}]`), ''],
        ...swept.points.map((point) => [
          valueText(varied, point.values[0]),
          ...asked.map(({ of }) => shown(of(point))),
          mark(swept, point).trim(),
        ]),
      ],
      ['right', ...asked.map(() => 'right' as const), 'left'],
    ),
    ...asked.flatMap(({ text }, i) => wrap(`[${i + 1}] ${text}`, screenWidth(), '    ')),
  ];
}

/** A grid as wide as the screen: the columns that have no room follow below, each part with the first column again. */
function grid(rows: readonly (readonly string[])[]): readonly string[] {
  const partOf = (from: number, to: number): readonly string[] =>
    columns(
      rows.map(([first, ...others]) => [first, ...others.slice(from, to)]),
      ['right', ...rows[0].slice(1 + from, 1 + to).map(() => 'right' as const)],
    );
  const fits = (lines: readonly string[]): boolean =>
    lines.every((line) => Array.from(line).length <= screenWidth());
  const count = rows[0].length - 1;
  const parts: (readonly string[])[] = [];
  for (let from = 0; from < count;) {
    let to = count;
    while (to > from + 1 && !fits(partOf(from, to))) to -= 1;
    parts.push(partOf(from, to));
    from = to;
  }
  return parts.flatMap((part, i) => (i === 0 ? part : ['', ...part]));
}

/** One grid for each thing asked: down the first quantity, across the second. */
function maps(swept: Sweep, display: Display): readonly string[] {
  const [down, across] = swept.lists;
  return askedInSweep(swept, display).flatMap(({ text, of }) => {
    const rows = down.values.map((value, i) => [
      valueText(down.varied, value),
      ...across.values.map((_, j) => {
        const point = swept.points[i * across.values.length + j];
        return `${shown(of(point))}${mark(swept, point)}`;
      }),
    ]);
    const head = ['', ...across.values.map((value) => valueText(across.varied, value))];
    return [...wrap(text, screenWidth(), '  '), ...grid([head, ...rows]), ''];
  });
}

/** Points whose run gave no answer, by why. */
function broken({ points, lists }: Sweep): readonly string[] {
  const reasons = new Map<string, string[]>();
  for (const { broke, values } of points) {
    if (broke === undefined) continue;
    const at = values.map((value, i) => valueText(lists[i].varied, value)).join(' and ');
    reasons.set(broke, [...(reasons.get(broke) ?? []), at]);
  }
  return [...reasons].flatMap(([reason, at]) =>
    wrap(`? at ${at.join(', ')}: ${reason}`, screenWidth(), '  '),
  );
}

/** A sweep on one screen, as wide as the screen: a table over one quantity, a map over two. */
export function sweepText(swept: Sweep, display: Display, style: Style): string {
  const { title, lists, conditions, points } = swept;
  const ranges = lists.map(
    ({ varied, values }) =>
      `${varied.path}: ${values.length} values from ${valueText(varied, varied.from)} to ${valueText(varied, varied.to)}`,
  );
  const two = lists.length === 2;
  const failing = points.some(({ holds, broke }) => !holds && broke === undefined);
  const lines = [
    ...wrap(title, screenWidth(), '  ').map((line) => style.strong(line)),
    ...ranges.flatMap((line, i) =>
      wrap(two ? `${i === 0 ? 'down' : 'across'}: ${line}` : line, screenWidth(), '  '),
    ),
    '',
    ...(two ? maps(swept, display) : [...table(swept, display), '']),
    ...(conditions.length > 0 && failing ? ['! fails a condition'] : []),
    ...broken(swept),
    ...cautionLines(style),
  ];
  return linesText(lines);
}

/** A sweep as one JSON document; a number that a run does not give is null. */
export function sweepDocument({ title, lists, measures, conditions, points }: Sweep): string {
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
export function sweepCsv({ lists, measures, conditions, points }: Sweep): string {
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
