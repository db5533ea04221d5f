import type { Condition, Handbook, SizeAnswer, SizeReasons } from '@leat/core';
import type { Varied } from '../vary.js';
import { cautions } from './cautions.js';
import { columns, cut, wrap } from './columns.js';
import { percent, shown } from './number.js';
import type { Style } from './style.js';

/** What a search for a size is told of. */
export interface SizeTold {
  readonly title: string;
  readonly varied: Varied;
  readonly want: 'smallest' | 'largest';
  readonly conditions: readonly Condition[];
  readonly answer: SizeAnswer;
  readonly handbook?: Handbook | undefined;
  /** Why the model differs, by the run at one value. */
  readonly reasons?: SizeReasons;
  readonly at?: number;
}

const width = 100;

const bindingWords = ({ conditions, answer }: SizeTold): string =>
  answer.binding.map((i) => conditions[i].text).join('; ');

function verdict(told: SizeTold): readonly string[] {
  const { varied, want, answer } = told;
  const value = answer.value === undefined ? '' : varied.text(answer.value);
  const fails = answer.fails === undefined ? '' : varied.text(answer.fails);
  const where = answer.stretches
    .map(({ from, to }) =>
      from === to ? `at ${varied.text(from)}` : `from ${varied.text(from)} to ${varied.text(to)}`,
    )
    .join(', ');
  switch (answer.kind) {
    case 'found':
      return [`answer: ${value}`, `  ${fails} fails: ${bindingWords(told)}`];
    case 'holds-everywhere':
      return [`every condition holds at every value tried: the ${want} is ${value}, the end of the range`];
    case 'at-the-end':
      return [
        `answer: ${value}, the end of the range: every condition holds there, and fails at ${fails}`,
        `  what fails: ${bindingWords(told)}`,
      ];
    case 'not-monotone':
      return [
        `no one size: the conditions hold, fail and hold again; they hold ${where}`,
        `  the first of them begins at ${value}; ${fails} fails: ${bindingWords(told)}`,
      ];
    case 'holds-nowhere':
      return [
        `no value tried keeps every condition; what fails where it comes nearest: ${bindingWords(told)}`,
      ];
  }
}

function trialTable({ varied, conditions, answer }: SizeTold): readonly string[] {
  const numbers = conditions.map((_, i) => `[${i + 1}]`);
  const margin = (value: number): string =>
    Number.isNaN(value) ? '-' : `${value > 0 ? '+' : ''}${shown(value)}`;
  return [
    ...columns(
      [
        ['tried', 'holds', ...numbers, ''],
        ...answer.trials.map(({ value, holds, margins, broke = '' }) => [
          varied.text(value),
          holds ? 'yes' : 'no',
          ...margins.map(margin),
          cut(broke, 50),
        ]),
      ],
      ['right', 'left', ...numbers.map(() => 'right' as const), 'left'],
    ),
    ...conditions.flatMap(({ text, unit }, i) =>
      wrap(`[${i + 1}] ${text}: margin in ${unit === '1' ? 'shares of the limit' : unit}`, width, '    '),
    ),
  ];
}

const rules: Readonly<Record<Handbook['rule'], string>> = {
  surface: 'TAN of the day of most feed over an areal rate',
  'planted-area': 'feed of the day of most feed over feed per area',
  load: 'what the surface of filters and media beds carries at an areal rate',
};

function handbookLines({ handbook, varied }: SizeTold): readonly string[] {
  if (handbook === undefined) return ['by the handbook: no rule is known here for this quantity'];
  const { values, temperature, feed, tanByProtein, tanByFeed } = handbook;
  const rows = values.map(({ value, rate, rateUnit, conditions, source, page, mark, applies }) => [
    value < 0 ? 'none' : varied.text(Number(value.toPrecision(3))),
    `at ${rate} ${rateUnit}`,
    applies ? '' : 'elsewhere',
    cut(conditions, 38),
    `${source} ${page} [${mark}]`,
  ]);
  return [
    `by the handbook: ${rules[handbook.rule]}; ${shown(temperature)} degC here`,
    ...columns(rows, ['right', 'left', 'left', 'left', 'left']).map((line) => cut(line, width)),
    ...wrap(
      `${shown(feed)} g of feed makes ${shown(tanByProtein)} g TAN by 0.092 x protein, ${shown(tanByFeed)} g by 3 % of feed`,
      width,
      '  ',
    ),
  ];
}

function reasonLines({ reasons, at, varied, handbook }: SizeTold): readonly string[] {
  if (reasons === undefined || at === undefined) return [];
  const { released, went, arealRate, factors, filled } = reasons;
  const rule =
    handbook === undefined ? '' : `, the rule ${shown(handbook.tanByProtein)} on the day of most feed`;
  const lines = [
    `load: the model releases ${shown(released.mean)} g N/d in the mean and ${shown(released.most)} at most${rule}`,
    `where TAN went: ${went.map(({ to, share }) => `${percent(share)} ${to}`).join(', ')}`,
    `areal rate there: ${shown(arealRate.mean)} g N/(m2 d) in the mean, ${shown(arealRate.most)} at most`,
    `what the water leaves of the rate: ${factors
      .map(
        ({ name, value, unit, factor }) =>
          `${name} ${shown(value)}${unit === '' ? '' : ` ${unit}`} x ${factor.toFixed(2)}`,
      )
      .join(', ')}`,
    `biofilm fills ${percent(filled.start)} of that surface at the start, ${percent(filled.end)} at the end`,
  ];
  return [
    `why they differ (the run at ${varied.text(at)})`,
    ...lines.flatMap((line) => wrap(`- ${line}`, width, '  ')),
  ];
}

/** A search for a size on one screen, 100 columns wide. */
export function sizeText(told: SizeTold, style: Style): string {
  const { title, varied, want } = told;
  const lines = [
    style.strong(cut(title, width)),
    ...wrap(
      `${varied.path}: the ${want} from ${varied.text(varied.from)} to ${varied.text(varied.to)} at which every condition holds over the whole run`,
      width,
      '  ',
    ),
    '',
    ...verdict(told).flatMap((line, i) => wrap(i === 0 ? style.strong(line) : line, width, '  ')),
    '',
    ...trialTable(told),
    '',
    ...handbookLines(told),
    '',
    ...reasonLines(told),
    '',
    ...cautions.map((line) => style.faint(cut(line, width))),
  ];
  return `${lines.join('\n')}\n`;
}

/** The same as one JSON document; margins without an answer are null. */
export function sizeDocument({
  title,
  varied,
  want,
  conditions,
  answer,
  handbook,
  reasons,
  at,
}: SizeTold): string {
  const { path, unit, from, to, whole } = varied;
  const document = {
    title,
    vary: { path, unit, from, to, whole },
    want,
    keep: conditions.map(({ text, unit: marginUnit }) => ({ text, unit: marginUnit })),
    ...answer,
    handbook: handbook ?? null,
    ...(reasons === undefined ? {} : { reasons: { at, ...reasons } }),
    cautions,
  };
  return `${JSON.stringify(document)}\n`;
}
