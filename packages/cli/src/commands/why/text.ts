import type { Difference, DifferencePart } from '@leat/core';
import { cautions, day, decadeOf, percent, short, shown } from '@leat/view/text';
import { columns, wrap, linesText } from '../../terminal/columns.js';
import type { Style } from '../../terminal/style.js';

/** A moment that was asked about. */
export interface NamedMoment {
  readonly file: string;
  readonly title: string;
  /** d. */
  readonly day: number;
}

const width = 100;

/** Most causes in the sentence, and the share of the largest below which a cause is left to the table. */
const most = 6;
const least = 0.02;

/** Writes numbers with one sign and one count of decimals: three digits of the largest. */
function writer(values: readonly number[]): (value: number) => string {
  const largest = Math.max(...values.map(Math.abs));
  const decimals = largest > 0 ? Math.min(12, Math.max(0, 2 - decadeOf(largest))) : 0;
  return (value) => {
    const size = Math.abs(value).toFixed(decimals);
    if (Number(size) === 0) return size;
    return `${value < 0 ? '-' : '+'}${size}`;
  };
}

/** What a cause did. Between two days of one run everything went on, so neither more nor less is said. */
function cause({ name, did }: DifferencePart, oneRun: boolean): string {
  return oneRun || did === undefined ? name : `${did} ${name}`;
}

function sentence({ difference, unit, parts }: Difference, oneRun: boolean): string {
  const write = writer([difference, ...parts.map(({ value }) => value)]);
  const bound = least * Math.abs(parts[0]?.value ?? 0);
  const listed = parts.filter(({ value }) => Math.abs(value) >= bound).slice(0, most);
  const others = parts.slice(listed.length);
  const rest = others.reduce((total, { value }) => total + value, 0);
  const terms = [
    ...listed.map((part) => `${write(part.value)} ${cause(part, oneRun)}`),
    ...(others.length === 0 ? [] : [`${write(rest)} from ${others.length} smaller`]),
  ];
  return `${write(difference)} ${unit} = ${terms.join(' ')}`;
}

function table({ difference, unit, parts }: Difference, oneRun: boolean): readonly string[] {
  const write = writer([difference, ...parts.map(({ value }) => value)]);
  const share = (value: number): string => (difference === 0 ? '' : percent(value / difference));
  const listed = parts.filter(({ value }) => Number(write(value)) !== 0);
  const lines = columns(
    [
      ['', unit, 'of it'],
      ...listed.map((part) => [cause(part, oneRun), write(part.value), share(part.value)]),
      ['difference', write(difference), share(difference)],
    ],
    ['left', 'right', 'right'],
  );
  const left = parts.length - listed.length;
  return left === 0 ? lines : [...lines, `${left} more round to 0: see --json`];
}

/** What differs, in one sentence and in a table; 100 columns wide. */
export function differenceText(
  difference: Difference,
  [from, to]: readonly [NamedMoment, NamedMoment],
  oneRun: boolean,
  style: Style,
): string {
  const { quantity, unit, parts } = difference;
  const runs = oneRun
    ? ([['', from]] as const)
    : ([
        ['A ', from],
        ['B ', to],
      ] as const);
  const value = (amount: number): string => `${shown(amount)} ${unit}`;
  const first = oneRun ? `on day ${day(from.day)}` : 'in A';
  const second = oneRun ? `on day ${day(to.day)}` : 'in B';
  const when = oneRun || from.day !== to.day ? '' : ` on day ${day(to.day)}`;
  const lines = [
    ...runs.map(([name, { file, title }]) => style.strong(short(`${name}${file}  ${title}`, width))),
    '',
    `${quantity}${when}: ${value(difference.from)} ${first}, ${value(difference.to)} ${second}`,
    ...(parts.length === 0
      ? ['no difference, and nothing that made one']
      : [...wrap(sentence(difference, oneRun), width, '  '), '', ...table(difference, oneRun)]),
    '',
    ...cautions.map((line) => style.faint(short(line, width))),
  ];
  return linesText(lines);
}
