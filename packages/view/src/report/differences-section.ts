import { apartness, compareRuns, type Comparison, type Difference, type Run, why } from '@leat/core';
import type { Maker } from '../pictures/index.js';
import {
  boundPhrase,
  dayNames,
  type Display,
  percent,
  plain,
  quantityOf,
  seriesPhrase,
} from '../text/index.js';
import { bar, scrolling, section, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

/** Quantities that `why` can split, of those a comparison lists. */
const splittable: ReadonlySet<string> = new Set([
  'tan',
  'nitrite',
  'nitrate',
  'alkalinity',
  'oxygen',
  'chloride',
  'volume',
  'fish-mass',
  'crop-mass',
]);

/** Most quantities that are explained for one pair of runs. */
const mostExplained = 4;

/** Difference below this share of a quantity's highest is not worth a reason. */
const least = 0.02;

/** The reasons for one difference, on the day on which it is largest. */
interface Explained {
  readonly day: number;
  readonly difference: Difference;
}

/** Day on which two runs differ most in a quantity, of the days that both have. */
function widestDay(a: Run, b: Run, values: (run: Run) => ArrayLike<number>): number | undefined {
  const [first, second] = [values(a), values(b)];
  let found: number | undefined;
  let most = 0;
  a.samples.forEach(({ time }, i) => {
    const j = b.samples.findIndex((sample) => Math.abs(sample.time - time) <= 1e-9);
    const apart = j < 0 ? Number.NaN : Math.abs(second[j] - first[i]);
    if (apart > most) [most, found] = [apart, time];
  });
  return found;
}

/**
 * Why two runs differ: of the quantities that a comparison names, largest difference first, those that are a sum
 * of what processes and flows did, each on the day on which it differs most.
 * @param values values of a series of a run by its name; undefined where a run has none
 */
function explain(
  [from, to]: readonly [Run, Run],
  comparison: Comparison,
  values: (run: Run, name: string) => ArrayLike<number> | undefined,
): readonly Explained[] {
  return [...comparison.quantities]
    .filter((quantity) => splittable.has(quantityOf(quantity.name)) && apartness(quantity) >= least)
    .filter(({ name }, i, all) => all.findIndex((each) => quantityOf(each.name) === quantityOf(name)) === i)
    .slice(0, mostExplained)
    .flatMap(({ name }) => {
      if (values(from, name) === undefined || values(to, name) === undefined) return [];
      const day = widestDay(from, to, (run) => values(run, name) ?? []);
      if (day === undefined) return [];
      const moments = [
        { run: from, day },
        { run: to, day },
      ] as const;
      return [{ day, difference: why(name, ...moments, { around: 'system' }) }];
    });
}

/** A difference that counts, as a share of the highest of a quantity. */
const apart = 0.01;

/** Most reasons shown one by one. */
const mostParts = 8;

/** Reasons below this share of the largest are not shown one by one. */
const leastPart = 2e-3;

const signed = (value: number, { number }: Display): string => `${value > 0 ? '+' : ''}${number(value)}`;

/** One difference as a table with bars to both sides: above 0 raised it, below 0 lowered it. */
function reasons(
  maker: Maker,
  { day: when, difference }: Explained,
  letters: readonly [string, string],
  startDate: string,
): HTMLElement {
  const { display } = maker;
  const words = display.words.evidence.differences;
  const told = (value: number): number =>
    display.value(value, difference.unit, quantityOf(difference.quantity));
  const { quantity, unit, from, to, parts, difference: whole } = difference;
  const large = parts.filter(({ value }) => Math.abs(value) >= leastPart * Math.abs(parts[0].value));
  const few = large.slice(0, mostParts);
  const named = parts.length - few.length === 1 ? parts : few;
  const rest = parts.slice(named.length).reduce((total, { value }) => total + value, 0);
  const rows = [
    ...named.map(({ name, value, did }) => ({ name: did === undefined ? name : `${did} ${name}`, value })),
    ...(parts.length > named.length
      ? [{ name: words.smaller(parts.length - named.length), value: rest }]
      : []),
  ];
  const most = Math.max(...rows.map(({ value }) => Math.abs(value)));
  const line = (name: string, value: number, kind: string): HTMLElement =>
    maker.html(
      'tr',
      kind === '' ? {} : { class: kind },
      maker.html('th', { scope: 'row' }, name),
      maker.html('td', { class: 'number' }, signed(told(value), display)),
      maker.html(
        'td',
        { class: 'bar' },
        kind === ''
          ? bar(maker, { value, colour: value > 0 ? 'var(--limit)' : 'var(--water)' }, most, true)
          : '',
      ),
    );
  const shownUnit = display.unit(unit, quantityOf(quantity));
  const caption = words.reasons(
    seriesPhrase(quantity, display),
    dayNames(startDate, display)(when),
    [display.number(told(from)), letters[0]],
    [display.number(told(to)), letters[1]],
    shownUnit,
  );
  return maker.html(
    'table',
    { class: 'bars' },
    maker.html('caption', {}, caption),
    maker.html(
      'thead',
      {},
      maker.html(
        'tr',
        {},
        maker.html('td', {}),
        maker.html('th', { scope: 'col', class: 'number' }, shownUnit),
        maker.html('td', {}),
      ),
    ),
    maker.html(
      'tbody',
      {},
      line(words.difference, whole, 'total'),
      ...rows.map(({ name, value }) => line(name, value, '')),
    ),
  );
}

function partingText(
  { partings, quantities }: Comparison,
  summaries: readonly RunSummary[],
  display: Display,
): readonly string[] {
  const [{ letter, account }] = summaries;
  const words = display.words.evidence.differences;
  const on = dayNames(account.startDate, display);
  return partings.map((parting, i) => {
    const other = summaries[i + 1].letter;
    const share = `${apart * 100} %`;
    if (parting === null) return words.never(other, letter, share);
    const unit = quantities.find(({ name }) => name === parting.quantity)?.unit ?? '';
    const quantity = quantityOf(parting.quantity);
    const amount = (value: number): number => display.value(value, unit, quantity);
    return words.first(
      other,
      letter,
      on(parting.day),
      seriesPhrase(parting.quantity, display),
      display.number(amount(parting.other)),
      `${display.number(amount(parting.first))} ${display.unit(unit, quantity) || unit}`,
    );
  });
}

function quantitiesTable(
  maker: Maker,
  { quantities }: Comparison,
  summaries: readonly RunSummary[],
): HTMLElement {
  const { display } = maker;
  const words = display.words.evidence.differences;
  const columns = [
    { name: words.quantity },
    { name: words.unit },
    ...summaries.flatMap(({ letter }) => [
      { name: words.end(letter), number: true },
      { name: words.highest(letter), number: true },
    ]),
    { name: words.farthest, number: true },
  ];
  const rows = quantities.map(({ name, unit, runs, end, highest }) => {
    const quantity = quantityOf(name);
    const told = (value: number | undefined): string =>
      display.number(value === undefined ? undefined : display.value(value, unit, quantity));
    return [
      seriesPhrase(name, display),
      display.unit(unit, quantity) || display.words.text.unit(unit),
      ...runs.flatMap((run) => [told(run?.end), told(run?.highest)]),
      Number.isNaN(end) ? '-' : percent(Math.max(Math.abs(end), Math.abs(highest)), display),
    ];
  });
  return scrolling(maker, words.sideBySide, table(maker, words.caption, columns, rows, 'stack'));
}

function limitsTable(
  maker: Maker,
  { limits }: Comparison,
  summaries: readonly RunSummary[],
): readonly HTMLElement[] {
  if (limits.length === 0) return [];
  const { display } = maker;
  const words = display.words.evidence.differences;
  const { limit: limitWord, where, whom: whomWord } = display.words.report.limits;
  const columns = [
    { name: limitWord },
    { name: where },
    { name: whomWord },
    ...summaries.map(({ letter }) => ({ name: letter })),
  ];
  const rows = limits.map((limit) => [
    boundPhrase(limit, display),
    limit.place,
    plain(limit.whom, display),
    ...limit.runs.map((run, i) =>
      run?.passed === true
        ? words.fromDay(
            run.first === undefined
              ? display.words.text.none
              : dayNames(summaries[i].account.startDate, display)(run.first),
            display.number(run.total),
          )
        : run?.judged === true
          ? words.held
          : '-',
    ),
  ]);
  const name = words.limits;
  return [scrolling(maker, name, table(maker, name, columns, rows, 'stack'))];
}

/** How several runs differ, and why. */
export function differencesSection(maker: Maker, summaries: readonly RunSummary[]): HTMLElement {
  const { display } = maker;
  const words = display.words.evidence.differences;
  const accounts = summaries.map(({ account }) => account);
  const comparison = compareRuns(accounts, apart);
  const [first, ...others] = summaries;
  const whys = others.flatMap((other) => {
    const runs = [first.system?.run, other.system?.run] as const;
    const [a, b] = runs;
    if (a === undefined || b === undefined)
      return [maker.html('p', { class: 'note' }, words.saved(first.letter, other.letter))];
    const values = (run: typeof a, name: string): ArrayLike<number> | undefined =>
      (run === a ? first : other).account.series.find((series) => series.name === name)?.values;
    const pair = compareRuns([first.account, other.account], apart);
    const found = explain([a, b], pair, values);
    const title = maker.html(
      'h3',
      {},
      words.why(other.letter, first.letter),
      maker.html('span', { class: 'unit' }, other.account.title),
    );
    if (found.length === 0) return [title, maker.html('p', {}, words.nothing)];
    return [
      title,
      maker.html('p', { class: 'note' }, words.note),
      maker.html(
        'div',
        { class: 'pair' },
        ...found.map((each) => reasons(maker, each, [first.letter, other.letter], first.account.startDate)),
      ),
    ];
  });
  return section(
    maker,
    'differences',
    words.title,
    ...partingText(comparison, summaries, display).map((text) => maker.html('p', {}, text)),
    quantitiesTable(maker, comparison, summaries),
    ...limitsTable(maker, comparison, summaries),
    ...whys,
  );
}
