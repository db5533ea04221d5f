import { geometricMean, type Cell, type Judged, type Trusted } from './judge.js';

const mean = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;
const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

function cellLines(name: string, judged: readonly Judged[]): readonly string[] {
  const cells = judged.flatMap((each) => each.cells);
  const row = (what: string, own: readonly Cell[]): string =>
    line([
      name,
      what,
      String(own.length),
      geometricMean(own.map(({ ratio }) => ratio)).toFixed(2),
      geometricMean(own.map(({ model }) => model)).toFixed(2),
      `${own.filter(({ ratio }) => ratio < 1).length}`,
      `${(100 * mean(own.map(({ in90 }) => in90))).toFixed(0)} %`,
    ]);
  const horizons = [7, 14, 28].map((days) =>
    row(
      `${days} d`,
      cells.filter(({ horizon }) => horizon === days),
    ),
  );
  const kinds = [...new Set(cells.map(({ reads }) => reads))].sort();
  return [
    row('all', cells),
    ...horizons,
    ...kinds.map((kind) =>
      row(
        kind,
        cells.filter(({ reads }) => reads === kind),
      ),
    ),
  ];
}

/** Doublings off the truth above which a fit harms who trusts it, and below which it serves: a step of a card, and half. */
const harm = { above: 1, below: 0.5 } as const;

/** Errors of the model over that of the better guess above which it foretells badly, and below which well. */
const foretells = { above: 1.5, below: 1.1 } as const;

/** How many of some are refused, by how bad they are: above, between and below bounds. */
function refusedLine<T>(
  name: string,
  what: string,
  all: readonly T[],
  [badness, bounds, refused]: readonly [
    (each: T) => number,
    { readonly above: number; readonly below: number },
    (each: T) => boolean,
  ],
): string {
  const count = (own: readonly T[]): string => `${own.filter(refused).length} of ${own.length}`;
  return line([
    name,
    what,
    count(all.filter((each) => badness(each) > bounds.above)),
    count(all.filter((each) => badness(each) <= bounds.above && badness(each) >= bounds.below)),
    count(all.filter((each) => badness(each) < bounds.below)),
  ]);
}

function verdictLines(name: string, judged: readonly Judged[]): readonly string[] {
  const courses = judged.flatMap((each) => each.courses);
  const trust = [(each: Trusted) => each.off, harm, (each: Trusted) => each.trusted !== true] as const;
  const nitrogen = courses.filter(({ reads }) => reads !== 'pH');
  const failed = (each: Judged): boolean => each.verdict === 'failed';
  const worst = (each: Judged): number =>
    Math.max(...each.courses.filter(({ reads }) => reads !== 'pH').map(({ off }) => off));
  return [
    refusedLine(name, 'ammonia, nitrite, nitrate', nitrogen, trust),
    refusedLine(
      name,
      'pH',
      courses.filter(({ reads }) => reads === 'pH'),
      trust,
    ),
    refusedLine(name, 'fits, by their worst of the three', judged, [worst, harm, failed]),
    refusedLine(name, 'fits, by what they foretold', judged, [({ model }) => model, foretells, failed]),
  ];
}

/** How far off the truth a fit is with a quantity, in doublings; `!` where it says not to trust it. */
function offOf({ courses }: Judged, quantity: string): string {
  const own = courses.find(({ reads }) => reads === quantity);
  return own === undefined ? '-' : `${own.off.toFixed(2)}${own.trusted === true ? '' : ' !'}`;
}

const quantities = ['ammonia', 'nitrite', 'nitrate', 'pH'];

/** What came of the unkind twins, in tables under a heading: odd seeds, by which rules were made, apart from even ones. */
function tablesOf(judged: readonly Judged[]): string {
  const parts = [
    ['odd', judged.filter(({ seed }) => seed % 2 === 1)],
    ['even', judged.filter(({ seed }) => seed % 2 === 0)],
    ['all', judged],
  ] as const;
  const shown = parts.filter(([, own]) => own.length > 0);
  return [
    tables,
    '',
    'Error over that of the better of two simple guesses (geometric mean of the cells; the better one is chosen after the fact),',
    'of the forecast and of the model alone; cells in which the forecast is best; coverage of the 90 % band of what a kit shows.',
    '',
    line(['seeds', 'cells of', 'count', 'forecast', 'model', 'won', 'in 90 %']),
    line(['---', '---', '---', '---', '---', '---', '---']),
    ...shown.flatMap(([name, own]) => cellLines(name, own)),
    '',
    'Refused by the verdict. A fit went wrong with a quantity where it is off what truly stood in the tank by more than a factor of',
    '2 (pH: 0.3), in the median over the log or over its last 28 days; it did well where by less than the root of 2 (0.15). Beside',
    'it, by what it foretold in the past: error of the model over that of the better guess above 1.5, below 1.1.',
    '',
    line(['seeds', 'of', 'went wrong', 'between', 'did well']),
    line(['---', '---', '---', '---', '---']),
    ...shown.flatMap(([name, own]) => verdictLines(name, own)),
    '',
    'Each twin: its forecasts of all cells; how far off the truth its fit is, in doublings (`!` where the fit says not to trust it).',
    '',
    line(['seed', 'readings', 'cells', 'forecast', 'model', 'verdict', ...quantities, 'faults']),
    line(['---', '---', '---', '---', '---', '---', ...quantities.map(() => '---'), '---']),
    ...judged.map((each) =>
      line([
        String(each.seed),
        String(each.readings),
        String(each.cells.length),
        geometricMean(each.cells.map(({ ratio }) => ratio)).toFixed(2),
        geometricMean(each.cells.map(({ model }) => model)).toFixed(2),
        each.verdict,
        ...quantities.map((quantity) => offOf(each, quantity)),
        each.faults.join(', ') || '-',
      ]),
    ),
    '',
  ].join('\n');
}

/** The heading of the tables: what stands above it is written by hand and kept. */
const tables = '## Tables';

/** A page with its tables made anew. */
export const withTables = (page: string, judged: readonly Judged[]): string =>
  `${page.slice(0, page.indexOf(`\n${tables}`) + 1)}${tablesOf(judged)}`;
