import { geometricMean, type Cell, type Judged } from './judge.js';

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

/** Errors of the model over that of the better guess above which a fit went wrong, and below which it did not. */
const wrong = { above: 1.5, below: 1.1 } as const;

function verdictLine(name: string, judged: readonly Judged[]): string {
  const refused = (own: readonly Judged[]): string =>
    `${own.filter(({ faults }) => faults.length > 0).length} of ${own.length}`;
  return line([
    name,
    refused(judged.filter(({ model }) => model > wrong.above)),
    refused(judged.filter(({ model }) => model <= wrong.above && model >= wrong.below)),
    refused(judged.filter(({ model }) => model < wrong.below)),
  ]);
}

/** What came of the unkind twins, as a page: those by which forecasts were made apart from those seen at the end alone. */
export function reportOf(judged: readonly Judged[]): string {
  const parts = [
    ['odd', judged.filter(({ seed }) => seed % 2 === 1)],
    ['even', judged.filter(({ seed }) => seed % 2 === 0)],
  ] as const;
  const shown = parts.filter(([, own]) => own.length > 0);
  return [
    '# Unkind twins',
    '',
    `\`npm run twins:unkind\`: ${judged.length} invented logs, by a simulator that is not Leat's: other kinetics, unlogged water changes and`,
    'discharge, a second instrument half-way, slow errors of a tester, steps of cards, wrong volumes and weights of feed, missing',
    'weeks, two keepers. Forecasts were made with odd seeds in view; even ones were seen at the end, after which one rule was changed:',
    'rehearsed forecasts count by their number.',
    '',
    'Error over that of the better of two simple guesses (geometric mean of the cells; the better one is chosen after the fact),',
    'of the forecast and of the model alone; cells in which the forecast is best; coverage of the 90 % band of what a kit shows.',
    '',
    line(['seeds', 'cells of', 'count', 'forecast', 'model', 'won', 'in 90 %']),
    line(['---', '---', '---', '---', '---', '---', '---']),
    ...shown.flatMap(([name, own]) => cellLines(name, own)),
    '',
    `Fits refused by their verdict, by the model's own error over that of the better guess in ammonia, nitrite and nitrate: above`,
    `${wrong.above} it went wrong, below ${wrong.below} it did not.`,
    '',
    line(['seeds', 'went wrong', 'between', 'did not']),
    line(['---', '---', '---', '---']),
    ...shown.map(([name, own]) => verdictLine(name, own)),
    '',
    line(['seed', 'readings', 'forecast', 'model', 'faults']),
    line(['---', '---', '---', '---', '---']),
    ...judged.map(({ seed, readings, cells, model, faults }) =>
      line([
        String(seed),
        String(readings),
        geometricMean(cells.map(({ ratio }) => ratio)).toFixed(2),
        model.toFixed(2),
        faults.join(', ') || '-',
      ]),
    ),
    '',
  ].join('\n');
}
