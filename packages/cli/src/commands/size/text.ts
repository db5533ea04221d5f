import type { Handbook } from '@leat/core';
import { type SizeFound, timesFactor, type Varied } from '@leat/core/tasks';
import { askedTold, cautions, type Display, listed, percent, shown, valueText } from '@leat/view/text';
import { savedDocument } from '../../files/saved-document.js';
import { cautionLines } from '../shared/caution-lines.js';
import { columnsOrUnder, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';
import type { SizeDrawn } from './draws.js';

/** What a search for a size found, and how it spreads. */
export interface SizeSummary extends SizeFound {
  /** How the size spreads over draws. */
  readonly drawn?: SizeDrawn;
}

const bindingText = ({ conditions, answer }: SizeSummary): string =>
  answer.binding.map((i) => conditions[i].text).join('; ');

/** What a factor makes of each value that it varies. */
function eachText({ each }: Varied, factor: number | undefined): string {
  if (each === undefined || factor === undefined) return '';
  const made = each.map(
    ({ path, value, unit }) =>
      `${path} ${valueText({ unit }, Number(timesFactor({ value, unit }, factor).toPrecision(3)))}`,
  );
  return ` times what the file says: ${made.join(', ')}`;
}

function verdict(summary: SizeSummary): readonly string[] {
  const { varied, want, answer } = summary;
  const value = answer.value === undefined ? '' : valueText(varied, answer.value);
  const fails = answer.fails === undefined ? '' : valueText(varied, answer.fails);
  const where = answer.stretches
    .map(({ from, to }) =>
      from === to
        ? `at ${valueText(varied, from)}`
        : `from ${valueText(varied, from)} to ${valueText(varied, to)}`,
    )
    .join(', ');
  switch (answer.kind) {
    case 'found':
      return [
        `answer: ${value}${eachText(varied, answer.value)}`,
        `  ${fails} fails: ${bindingText(summary)}`,
        ...(answer.failsAgain === undefined
          ? []
          : [`  further on ${valueText(varied, answer.failsAgain)} fails again: it holds ${where}`]),
      ];
    case 'holds-everywhere':
      return [
        `answer: ${value}, the ${want} that was tried, and every other value does too`,
        `  nothing fails from ${valueText(varied, varied.from)} to ${valueText(varied, varied.to)}: what is sized here does not decide. Look beyond ${value}, or at what does`,
      ];
    case 'at-the-end':
      return [
        `answer: ${value}, the end of the range: every condition holds there, and fails at ${fails}`,
        `  what fails: ${bindingText(summary)}`,
      ];
    case 'not-monotone':
      return [
        `no one size: the conditions hold, fail and hold again; they hold ${where}`,
        `  the first of them begins at ${value}; ${fails} fails: ${bindingText(summary)}`,
      ];
    case 'holds-nowhere':
      return [
        `no value tried keeps every condition; what fails where it comes nearest: ${bindingText(summary)}`,
      ];
  }
}

function trialTable({ varied, conditions, answer }: SizeSummary, display: Display): readonly string[] {
  const told = conditions.map((condition) => askedTold(condition, display));
  const numbers = conditions.map((_, i) => `[${i + 1}]`);
  const margin = (value: number): string =>
    Number.isNaN(value) ? '-' : `${value > 0 ? '+' : ''}${shown(value)}`;
  return [
    ...columnsOrUnder(
      [
        ['tried', 'holds', ...numbers, ''],
        ...answer.trials.map(({ value, holds, margins, broke = '' }) => [
          valueText(varied, value),
          holds ? 'yes' : 'no',
          ...margins.map((each, i) => margin(told[i].difference(each))),
          broke,
        ]),
      ],
      ['right', 'left', ...numbers.map(() => 'right' as const), 'left'],
      2 + numbers.length,
      screenWidth(),
    ),
    ...conditions.flatMap(({ text }, i) =>
      wrap(
        `[${i + 1}] ${text}: margin ${told[i].unit === '' ? 'as a share of the limit' : `in ${told[i].unit}`}`,
        screenWidth(),
        '    ',
      ),
    ),
  ];
}

const rules: Readonly<Record<Handbook['rule'], string>> = {
  surface: 'TAN of the day of most feed over an areal rate',
  'planted-area': 'feed of the day of most feed over feed per area',
  load: 'what the surface of filters and media beds carries at an areal rate',
};

function handbookLines({ handbook, varied }: SizeSummary, display: Display): readonly string[] {
  if (handbook === undefined) return ['by the handbook: no rule is known here for this quantity'];
  const { values, temperature, feed, tanByProtein, tanByFeed } = handbook;
  const rows = values.map(({ value, rate, rateUnit, conditions, source, page, mark, applies }) => [
    value < 0 ? 'none' : valueText(varied, Number(value.toPrecision(3))),
    `at ${rate} ${rateUnit}`,
    applies ? '' : 'elsewhere',
    conditions,
    `${source} ${page} [${mark}]`,
  ]);
  return [
    `by the handbook: ${rules[handbook.rule]}; ${display.amount(temperature, 'degC')} here`,
    ...columnsOrUnder(
      [['', '', '', '', ''], ...rows],
      ['right', 'left', 'left', 'left', 'left'],
      3,
      screenWidth(),
    ).slice(1),
    ...wrap(
      `${display.amount(feed, 'g')} of feed makes ${shown(tanByProtein)} g TAN by 0.092 x protein, ${shown(tanByFeed)} g by 3 % of feed`,
      screenWidth(),
      '  ',
    ),
  ];
}

/** The unit of an areal rate, as results have it. */
const arealUnit = 'g N/(m2 d)';

/** Whether what is sized carries the load, or others do: handbooks size a filter that stands alone. */
function aloneLines({ reasons, sized }: SizeSummary): readonly string[] {
  if (reasons === undefined || sized === undefined) return [];
  const oxidised = reasons.went.flatMap(({ to, share }) => {
    const vessel = /^oxidised in (.*)$/.exec(to)?.[1];
    return vessel === undefined ? [] : [{ vessel, share }];
  });
  const whole = oxidised.reduce((sum, { share }) => sum + share, 0);
  const others = oxidised.filter(({ vessel }) => !sized.includes(vessel) && whole > 0);
  const carried = others.reduce((sum, { share }) => sum + share, 0) / whole;
  if (!(carried > 0.1)) return [];
  const named = listed(others.slice(0, 3).map(({ vessel, share }) => `${vessel} ${percent(share / whole)}`));
  return wrap(
    `${listed(sized)} alone oxidises ${percent(1 - carried)} of the ammonia that is oxidised; other surfaces carry ` +
      `${percent(carried)} (${named}${others.length > 3 ? ' and more' : ''}). The handbook sizes it as if it stood alone`,
    screenWidth(),
    '  ',
  );
}

function reasonLines({ reasons, at, varied, handbook }: SizeSummary, display: Display): readonly string[] {
  if (reasons === undefined || at === undefined) return [];
  const { released, went, arealRate, factors, filled } = reasons;
  const rule =
    handbook === undefined ? '' : `, the rule ${shown(handbook.tanByProtein)} on the day of most feed`;
  const lines = [
    `load: the model releases ${shown(released.mean)} g N/d in the mean and ${shown(released.most)} at most${rule}`,
    `where TAN went: ${went.map(({ to, share }) => `${percent(share)} ${to}`).join(', ')}`,
    `areal rate there: ${display.amount(arealRate.mean, arealUnit)} in the mean, ${display.number(display.value(arealRate.most, arealUnit))} at most`,
    `what the water leaves of the rate: ${factors
      .map(
        ({ name, value, unit, factor }) =>
          `${name} ${display.amount(value, unit, name.toLowerCase())} x ${factor.toFixed(2)}`,
      )
      .join(', ')}`,
    `biofilm fills ${percent(filled.start)} of that surface at the start, ${percent(filled.end)} at the end`,
  ];
  return [
    `why they differ (the run at ${valueText(varied, at)})`,
    ...lines.flatMap((line) => wrap(`- ${line}`, screenWidth(), '  ')),
  ];
}

/** A size of a draw; one beyond the range has no number. */
function drawnSizeText({ varied, want }: SizeSummary, value: number): string {
  if (value === (want === 'smallest' ? varied.from : varied.to))
    return `${want === 'smallest' ? 'at most' : 'at least'} ${valueText(varied, value)}`;
  if (Number.isFinite(value)) return valueText(varied, Number(value.toPrecision(3)));
  return value > 0
    ? `more than ${valueText(varied, varied.to)}`
    : `less than ${valueText(varied, varied.from)}`;
}

function drawnLines(summary: SizeSummary): readonly string[] {
  const { drawn, varied, conditions } = summary;
  if (drawn === undefined) return [];
  const { spread, chosen, seed } = drawn;
  const { members, median, band50, band90 } = spread;
  const size = (value: number): string => drawnSizeText(summary, value);
  const of = (count: number): string => `${count} of ${members} (${percent(count / members)})`;
  const binds = conditions.flatMap(({ text }, i) =>
    spread.binds[i] === 0 ? [] : [`${text} binds in ${of(spread.binds[i])}`],
  );
  const counted = [
    [spread.atEnd, `the end of the range serves, or a value beyond it would`],
    [spread.beyond, 'no value of the range serves'],
    [spread.notMonotone, 'the conditions hold, fail and hold again: the first size is counted'],
    [spread.broke, 'some run broke off, and counts as one that fails'],
  ] as const;
  const lines = [
    `median ${size(median)}; half of the draws from ${size(band50[0])} to ${size(band50[1])}; 90 % from ${size(band90[0])} to ${size(band90[1])}`,
    ...(chosen === undefined || spread.survive === undefined
      ? []
      : [`${valueText(varied, chosen)} keeps every condition in ${of(spread.survive)} of the draws`]),
    ...counted.flatMap(([count, what]) => (count === 0 ? [] : [`in ${of(count)} ${what}`])),
    ...binds,
  ];
  return [
    `over ${members} draws of the uncertain numbers (seed ${seed})`,
    ...lines.flatMap((line) => wrap(`- ${line}`, screenWidth(), '  ')),
    '',
  ];
}

/** A search for a size on one screen, as wide as the screen. */
export function sizeText(summary: SizeSummary, display: Display, style: Style): string {
  const { title, varied, want } = summary;
  const lines = [
    ...wrap(title, screenWidth(), '  ').map((line) => style.strong(line)),
    ...wrap(
      `${varied.path}: the ${want} from ${valueText(varied, varied.from)} to ${valueText(varied, varied.to)} at which every condition holds over the whole run`,
      screenWidth(),
      '  ',
    ),
    ...(varied.each === undefined
      ? []
      : wrap(
          `a factor on what the file says: ${varied.each.map((each) => `${each.path} ${valueText(each, each.value)}`).join(', ')}`,
          screenWidth(),
          '  ',
        )),
    '',
    ...verdict(summary).flatMap((line, i) => wrap(i === 0 ? style.strong(line) : line, screenWidth(), '  ')),
    '',
    ...aloneLines(summary),
    ...trialTable(summary, display),
    '',
    ...drawnLines(summary),
    ...handbookLines(summary, display),
    '',
    ...reasonLines(summary, display),
    ...(summary.reasons === undefined ? [] : ['']),
    ...cautionLines(style),
  ];
  return linesText(lines);
}

/** A search for a size as one JSON document. What has no number (a margin without an answer, a size beyond the range) is null. */
export function sizeDocument(summary: SizeSummary): string {
  const { title, varied, want, conditions, answer, handbook, reasons, at, drawn } = summary;
  const document = {
    title,
    vary: varied,
    want,
    keep: conditions.map(({ text, unit }) => ({ text, unit })),
    ...answer,
    handbook: handbook ?? null,
    ...(reasons === undefined ? {} : { reasons: { at, ...reasons } }),
    ...(drawn === undefined ? {} : { drawn }),
    cautions,
  };
  return savedDocument('leat-size', document);
}
