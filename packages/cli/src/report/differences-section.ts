import { apartness, compareRuns, type Comparison, type Difference, type Run, why } from '@leat/core';
import type { Maker } from '@leat/view/pictures';
import { boundPhrase, day, percent, plain, quantityOf, seriesPhrase, shown } from '@leat/view/text';
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

const signed = (value: number): string => `${value > 0 ? '+' : ''}${shown(value)}`;

/** One difference as a table with bars to both sides: above 0 raised it, below 0 lowered it. */
function reasons(
  maker: Maker,
  { day: when, difference }: Explained,
  letters: readonly [string, string],
): HTMLElement {
  const { quantity, unit, from, to, parts, difference: whole } = difference;
  const large = parts.filter(({ value }) => Math.abs(value) >= leastPart * Math.abs(parts[0].value));
  const few = large.slice(0, mostParts);
  const named = parts.length - few.length === 1 ? parts : few;
  const rest = parts.slice(named.length).reduce((total, { value }) => total + value, 0);
  const rows = [
    ...named.map(({ name, value, did }) => ({ name: did === undefined ? name : `${did} ${name}`, value })),
    ...(parts.length > named.length
      ? [{ name: `${parts.length - named.length} smaller ones`, value: rest }]
      : []),
  ];
  const most = Math.max(...rows.map(({ value }) => Math.abs(value)));
  const line = (name: string, value: number, kind: string): HTMLElement =>
    maker.html(
      'tr',
      kind === '' ? {} : { class: kind },
      maker.html('th', { scope: 'row' }, name),
      maker.html('td', { class: 'number' }, signed(value)),
      maker.html(
        'td',
        { class: 'bar' },
        kind === ''
          ? bar(maker, { value, colour: value > 0 ? 'var(--limit)' : 'var(--water)' }, most, true)
          : '',
      ),
    );
  const caption =
    `${seriesPhrase(quantity)}, day ${day(when)}: ${shown(from)} in ${letters[0]}, ${shown(to)} in ${letters[1]} ` +
    `(${unit}). What made the difference:`;
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
        maker.html('th', { scope: 'col', class: 'number' }, unit),
        maker.html('td', {}),
      ),
    ),
    maker.html(
      'tbody',
      {},
      line('difference', whole, 'total'),
      ...rows.map(({ name, value }) => line(name, value, '')),
    ),
  );
}

function partingText(
  { partings, quantities }: Comparison,
  summaries: readonly RunSummary[],
): readonly string[] {
  const [{ letter }] = summaries;
  return partings.map((parting, i) => {
    const other = summaries[i + 1].letter;
    const share = `${apart * 100} %`;
    if (parting === null)
      return `${other} never differs from ${letter} by more than ${share} of the highest of a quantity.`;
    const unit = quantities.find(({ name }) => name === parting.quantity)?.unit ?? '';
    return (
      `${other} first differs from ${letter} on day ${day(parting.day)}: ${seriesPhrase(parting.quantity)} is ` +
      `${shown(parting.other)} against ${shown(parting.first)} ${unit}.`
    );
  });
}

function quantitiesTable(
  maker: Maker,
  { quantities }: Comparison,
  summaries: readonly RunSummary[],
): HTMLElement {
  const columns = [
    { name: 'quantity' },
    { name: 'unit' },
    ...summaries.flatMap(({ letter }) => [
      { name: `${letter} end`, number: true },
      { name: `${letter} highest`, number: true },
    ]),
    { name: 'farthest apart', number: true },
  ];
  const rows = quantities.map(({ name, unit, runs, end, highest }) => [
    seriesPhrase(name),
    unit,
    ...runs.flatMap((run) => [shown(run?.end), shown(run?.highest)]),
    Number.isNaN(end) ? '-' : percent(Math.max(Math.abs(end), Math.abs(highest))),
  ]);
  return scrolling(
    maker,
    'Key quantities side by side',
    table(
      maker,
      'Largest differences first, in percent of the largest size in any run',
      columns,
      rows,
      'stack',
    ),
  );
}

function limitsTable(
  maker: Maker,
  { limits }: Comparison,
  summaries: readonly RunSummary[],
): readonly HTMLElement[] {
  if (limits.length === 0) return [];
  const columns = [
    { name: 'limit' },
    { name: 'where' },
    { name: 'for whom' },
    ...summaries.map(({ letter }) => ({ name: letter })),
  ];
  const rows = limits.map((limit) => [
    boundPhrase(limit),
    limit.place,
    plain(limit.whom),
    ...limit.runs.map((run) =>
      run?.passed === true
        ? `from day ${day(run.first)}, ${shown(run.total)} d`
        : run?.judged === true
          ? 'held'
          : '-',
    ),
  ]);
  const name = 'Limits passed in some runs and not in all';
  return [scrolling(maker, name, table(maker, name, columns, rows, 'stack'))];
}

/** How several runs differ, and why. */
export function differencesSection(maker: Maker, summaries: readonly RunSummary[]): HTMLElement {
  const accounts = summaries.map(({ account }) => account);
  const comparison = compareRuns(accounts, apart);
  const [first, ...others] = summaries;
  const whys = others.flatMap((other) => {
    const runs = [first.system?.run, other.system?.run] as const;
    const [a, b] = runs;
    if (a === undefined || b === undefined)
      return [
        maker.html(
          'p',
          { class: 'note' },
          `${first.letter} and ${other.letter}: a saved document cannot be asked why; make the report from the scenario files.`,
        ),
      ];
    const values = (run: typeof a, name: string): ArrayLike<number> | undefined =>
      (run === a ? first : other).account.series.find((series) => series.name === name)?.values;
    const pair = compareRuns([first.account, other.account], apart);
    const found = explain([a, b], pair, values);
    const title = maker.html(
      'h3',
      {},
      `Why ${other.letter} differs from ${first.letter} `,
      maker.html('span', { class: 'unit' }, other.account.title),
    );
    if (found.length === 0) return [title, maker.html('p', {}, 'Nothing differs enough to ask why.')];
    return [
      title,
      maker.html(
        'p',
        { class: 'note' },
        'Each on the day on which it differs most. To the right: raised it; to the left: lowered it. The parts add up to the difference.',
      ),
      maker.html(
        'div',
        { class: 'pair' },
        ...found.map((each) => reasons(maker, each, [first.letter, other.letter])),
      ),
    ];
  });
  return section(
    maker,
    'differences',
    'How the runs differ, and why',
    ...partingText(comparison, summaries).map((text) => maker.html('p', {}, text)),
    quantitiesTable(maker, comparison, summaries),
    ...limitsTable(maker, comparison, summaries),
    ...whys,
  );
}
