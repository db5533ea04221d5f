import { groupParts, type Difference } from '@leat/core';
import {
  differencePhrase,
  differenceTold,
  type Display,
  meaningWords,
  short,
  shownDifference,
  signedParts,
  type ToldMoment,
} from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { columns, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';
import type { ByChange } from './by-change.js';

/** A moment that was asked about. */
export interface NamedMoment extends ToldMoment {
  readonly file: string;
  readonly title: string;
}

function headLines(
  moments: readonly [NamedMoment, NamedMoment],
  oneRun: boolean,
  style: Style,
): readonly string[] {
  const [from, to] = moments;
  const runs = oneRun
    ? ([['', from]] as const)
    : ([
        ['A ', from],
        ['B ', to],
      ] as const);
  return runs.map(([name, { file, title }]) => style.faint(short(`${name}${file}  ${title}`, screenWidth())));
}

/** In which units and how it is shown. */
export interface Look {
  readonly display: Display;
  readonly style: Style;
}

/** How a difference is written. */
export interface DifferenceWords {
  readonly oneRun: boolean;
  /** Every process by itself, nothing netted. */
  readonly detail: boolean;
  /** Whether the files stand under the answer. */
  readonly head: boolean;
}

/** What differs, the answer first, and through what: in one sentence and in a table; as wide as the screen. */
export function differenceText(
  difference: Difference,
  moments: readonly [NamedMoment, NamedMoment],
  { oneRun, detail, head }: DifferenceWords,
  { display, style }: Look,
): string {
  const groups = detail ? difference.parts : groupParts(difference.parts);
  const told = differenceTold(difference, groups, moments, { oneRun, after: !head }, display);
  const { why } = display.words;
  const table = columns(
    [
      ['', told.unit, why.ofAll],
      ...told.rows.map(({ name, value, share }) => [name, value, share]),
      [why.difference, told.total, ''],
    ],
    ['left', 'right', 'right'],
  );
  const lines = [
    ...wrap(told.answer, screenWidth(), '  ').map((line) => style.strong(line)),
    ...(head ? headLines(moments, oneRun, style) : []),
    ...(told.rows.length === 0 ? [] : ['', ...table]),
    ...(told.netted > 0
      ? [
          'opposite terms are netted and parts of one thing are one: --detail shows all ' +
            String(difference.parts.length),
        ]
      : []),
    '',
    ...cautionLines(style),
  ];
  return linesText(lines);
}

/** What differs by what was changed between two files, the answer first. */
export function changesText(
  quantity: string,
  told: Readonly<Record<'from' | 'to', { readonly value: number; readonly unit: string }>>,
  { parts: changed, runs, grouped }: ByChange,
  moments: readonly [NamedMoment, NamedMoment],
  { display, style }: Look,
): string {
  const inUnits = shownDifference(
    quantity,
    told.to.unit,
    { from: told.from.value, to: told.to.value },
    display,
  );
  const { unit, change } = inUnits;
  const names = meaningWords(
    changed.map((part) => part.change),
    display,
  );
  const { parts, signed, half } = signedParts(
    changed.map(({ value }) => change(value)),
    inUnits.to - inUnits.from,
    display,
  );
  const lines = [
    ...wrap(`${differencePhrase(quantity, inUnits, moments, false, display)}:`, screenWidth(), '  ').map(
      (line) => style.strong(line),
    ),
    ...changed.flatMap(({ alone, value }, i) => {
      const mixed = Math.abs(change(alone) - change(value)) >= half;
      const note = mixed && changed.length > 1 ? ` (alone ${signed(change(alone))})` : '';
      return wrap(`${parts[i]} ${unit}: ${names[i]}${note}`, screenWidth() - 2, '    ').map(
        (line) => `  ${line}`,
      );
    }),
    ...headLines(moments, false, style),
    ...wrap(
      `${runs} runs, one for each set of ${changed.length} changes; what they do together is shared evenly` +
        (grouped.length === 0 ? '' : `. Taken together: ${grouped.join('; ')}`),
      screenWidth(),
      '  ',
    ),
  ];
  return linesText(lines);
}
