import { fatesOf, type Share } from '@leat/core';
import {
  fateColour,
  fatesArea,
  type FatesScale,
  finished,
  type Maker,
  nitrogenFlow,
  outerPaths,
  pageColours,
  perGramFor,
} from '../pictures/index.js';
import { dayNames, fatePhrase, listed, percent } from '../text/index.js';
import { dayAndDate } from './dated.js';
import { daysOf } from './course-figures.js';
import { bar, figure, folded, runTitle, section, table } from './elements.js';
import type { RunSummary, SystemSummary } from './run-summary.js';

const total = (shares: readonly Share[], key: 'amount' | 'share'): number =>
  shares.reduce((sum, each) => sum + each[key], 0);

/**
 * Parts of a balance as a table with a bar in every row.
 * @param most the amount that fills a bar: the same for all tables that are compared
 */
export function fatesTable(
  maker: Maker,
  caption: string,
  shares: readonly Share[],
  unit: string,
  most: number,
  colour: (name: string) => string,
): HTMLElement {
  const { display } = maker;
  const words = display.words.report;
  const row = (
    name: string,
    amount: number,
    share: number,
    mark: Element | string,
    kind: string,
  ): HTMLElement =>
    maker.html(
      'tr',
      kind === '' ? {} : { class: kind },
      maker.html('th', { scope: 'row' }, name),
      maker.html('td', { class: 'number' }, display.amount(amount, unit)),
      maker.html('td', { class: 'number' }, percent(share, display)),
      maker.html('td', { class: 'bar' }, mark),
    );
  const head = ['', display.unit(unit), words.share, ''].map((name, i) =>
    i === 0 || i === 3 ? maker.html('td', {}) : maker.html('th', { scope: 'col', class: 'number' }, name),
  );
  return maker.html(
    'table',
    { class: 'bars' },
    maker.html('caption', {}, caption),
    maker.html('thead', {}, maker.html('tr', {}, ...head)),
    maker.html(
      'tbody',
      {},
      row(words.inAll, total(shares, 'amount'), total(shares, 'share'), '', 'total'),
      ...shares.map(({ name, amount, share }) =>
        row(
          fatePhrase(name, display),
          amount,
          share,
          bar(maker, { value: amount, colour: colour(name) }, most, false),
          '',
        ),
      ),
    ),
  );
}

/** Height of the nitrogen that came, in the largest of the pictures, px. */
const flowHeight = 330;

const areaFrame = { width: 372, height: 270, left: 54, right: 140, top: 12, bottom: 24, letters: 12 };

const colourOf = (name: string): string => pageColours[fateColour(name)];

function flowFigure(
  maker: Maker,
  system: SystemSummary,
  perGram: number,
  title: readonly Node[],
): HTMLElement {
  const { paths } = system;
  const { display } = maker;
  const words = display.words.report.nitrogen;
  const shown = (mass: number): string => display.number(display.value(mass, 'g'));
  const name = ({ name: text }: { name: string }): string => fatePhrase(text, display);
  const steps = [...paths.links]
    .sort((a, b) => b.amount - a.amount)
    .map(
      ({ from, to, amount }) => [name(paths.places[from]), name(paths.places[to]), shown(amount)] as const,
    );
  const description = words.described(
    steps.map(([from, to, amount]) => words.step(from, to, amount)).join('; '),
  );
  const telling = { title: words.picture, description };
  const wide = nitrogenFlow(
    maker,
    paths,
    { width: 960, perGram, side: 188, letters: 13, gap: 20 },
    pageColours,
  );
  const narrow = nitrogenFlow(
    maker,
    outerPaths(paths),
    { width: 352, perGram, side: 114, letters: 11.5, gap: 30 },
    pageColours,
  );
  wide.setAttribute('class', 'wide');
  narrow.setAttribute('class', 'narrow');
  const round = paths.circled > 0 ? words.round(display.amount(paths.circled, 'g')) : '';
  return figure(
    maker,
    [finished(maker, wide, telling), finished(maker, narrow, telling)],
    [...title, words.widths(round)],
    'flow',
    folded(
      maker,
      words.everyStep,
      table(
        maker,
        words.overRun,
        [{ name: words.from }, { name: words.to }, { name: display.unit('g N'), number: true }],
        steps,
      ),
    ),
  );
}

function areaFigure(
  maker: Maker,
  { nitrogen }: SystemSummary,
  scale: FatesScale,
  title: readonly Node[],
): HTMLElement {
  const { time, parts } = nitrogen;
  const { display } = maker;
  const words = display.words.report.nitrogen;
  const shown = display.number;
  const on = dayNames(scale.startDate, display);
  const last = time.length - 1;
  const ends = parts.map(({ name, amounts }) => `${fatePhrase(name, display)} ${shown(amounts[last])} g`);
  const svg = finished(maker, fatesArea(maker, nitrogen, scale, areaFrame, pageColours), {
    title: words.areaPicture,
    description: words.byDay(on(time[last]), listed(ends, display)),
  });
  const picked = [0, 0.25, 0.5, 0.75, 1].map((share) => Math.round(share * last));
  const rows = parts.map(({ name, amounts }) => [
    fatePhrase(name, display),
    ...picked.map((i) => shown(amounts[i])),
  ]);
  const columns = [
    { name: words.columnDay },
    ...picked.map((i) => ({ name: dayAndDate(time[i], scale.startDate, display), number: true })),
  ];
  return figure(
    maker,
    [svg],
    [...title, words.added],
    '',
    folded(maker, display.words.report.values, table(maker, words.areaTable, columns, rows)),
  );
}

/** Whether any nitrogen moved in a run; in one that broke off on its first day none did. */
const moves = ({ paths }: SystemSummary): boolean => paths.links.some(({ amount }) => amount > 0);

/** The nitrogen of each run: as flows, over time, and as a balance that closes. */
export function nitrogenSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const { display } = maker;
  const words = display.words.report.nitrogen;
  const systems = runs.flatMap(({ system }) => (system === undefined ? [] : [system]));
  const perGram = perGramFor(
    systems.map(({ paths }) => paths),
    flowHeight,
  );
  const fates = runs.map(({ account }) => fatesOf(account.nitrogen));
  const most = Math.max(...fates.flatMap(({ from, to }) => [...from, ...to].map(({ amount }) => amount)));
  const order = [...new Set(systems.flatMap(({ nitrogen }) => nitrogen.parts.map(({ name }) => name)))];
  const scale: Omit<FatesScale, 'startDate'> = {
    most: 1.04 * Math.max(...fates.map(({ total }) => total)),
    days: daysOf(runs),
    order,
  };
  const title = ({ letter, account }: RunSummary): Node[] =>
    runs.length > 1 ? [runTitle(maker, letter, `${account.title}. `)] : [];
  const note = (run: RunSummary, text: string): HTMLElement =>
    maker.html('p', { class: 'note' }, ...title(run), text);
  const flows = runs.map((run) => {
    if (run.system === undefined) return note(run, words.savedNone);
    return moves(run.system) ? flowFigure(maker, run.system, perGram, title(run)) : note(run, words.noFlow);
  });
  const areas = runs.flatMap((run) =>
    run.system === undefined || !moves(run.system)
      ? []
      : [areaFigure(maker, run.system, { ...scale, startDate: run.account.startDate }, title(run))],
  );
  const balances = runs.map((run, i) => {
    const { from, to, residual, total } = fates[i];
    return maker.html(
      'div',
      {},
      maker.html('h3', {}, ...(runs.length > 1 ? title(run) : [words.balance])),
      fatesTable(maker, words.cameFrom, from, 'g', most, colourOf),
      fatesTable(maker, words.wentTo, to, 'g', most, colourOf),
      maker.html(
        'p',
        { class: 'note' },
        words.residual(
          display.digits(residual.toExponential(1)),
          total > 0 ? words.ofWhatCame(percent(Math.abs(residual) / total, display)) : '',
        ),
      ),
    );
  });
  return section(
    maker,
    'nitrogen',
    words.title,
    ...flows,
    ...(runs.length > 1
      ? [
          maker.html('div', { class: 'runs three' }, ...areas),
          maker.html('div', { class: 'runs balances' }, ...balances),
        ]
      : [maker.html('div', { class: 'pair' }, ...areas, ...balances)]),
  );
}
