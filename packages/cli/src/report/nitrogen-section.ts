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
} from '@leat/view/pictures';
import { day, listed, percent, shown } from '@leat/view/text';
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
      maker.html('td', { class: 'number' }, `${shown(amount)} ${unit}`),
      maker.html('td', { class: 'number' }, percent(share)),
      maker.html('td', { class: 'bar' }, mark),
    );
  const head = ['', unit, 'share', ''].map((name, i) =>
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
      row('in all', total(shares, 'amount'), total(shares, 'share'), '', 'total'),
      ...shares.map(({ name, amount, share }) =>
        row(name, amount, share, bar(maker, { value: amount, colour: colour(name) }, most, false), ''),
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
  const name = ({ name: text }: { name: string }): string => text;
  const steps = [...paths.links]
    .sort((a, b) => b.amount - a.amount)
    .map(
      ({ from, to, amount }) => [name(paths.places[from]), name(paths.places[to]), shown(amount)] as const,
    );
  const description = `Grams of nitrogen over the run: ${steps.map(([from, to, amount]) => `${from} to ${to} ${amount}`).join('; ')}.`;
  const telling = { title: 'Where nitrogen came from, what it became and where it went', description };
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
  const round =
    paths.circled > 0
      ? ` ${shown(paths.circled)} g that only went round (ammonia into biofilm and solids and back) are left out of the widths.`
      : '';
  return figure(
    maker,
    [finished(maker, wide, telling), finished(maker, narrow, telling)],
    [...title, `Widths are grams of nitrogen over the whole run.${round}`],
    'flow',
    folded(
      maker,
      'Every step in grams',
      table(
        maker,
        'Nitrogen over the run, g',
        [{ name: 'from' }, { name: 'to' }, { name: 'g N', number: true }],
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
  const last = time.length - 1;
  const ends = parts.map(({ name, amounts }) => `${name} ${shown(amounts[last])} g`);
  const svg = finished(maker, fatesArea(maker, nitrogen, scale, areaFrame, pageColours), {
    title: 'Where nitrogen had gone by each day, g',
    description: `By day ${day(time[last])}: ${listed(ends)}.`,
  });
  const picked = [0, 0.25, 0.5, 0.75, 1].map((share) => Math.round(share * last));
  const rows = parts.map(({ name, amounts }) => [name, ...picked.map((i) => shown(amounts[i]))]);
  const columns = [{ name: 'g N by day' }, ...picked.map((i) => ({ name: day(time[i]), number: true }))];
  return figure(
    maker,
    [svg],
    [...title, 'Added up from the start, g N; what stays in the system is counted where it is.'],
    '',
    folded(maker, 'Values', table(maker, 'Where nitrogen had gone, g', columns, rows)),
  );
}

/** Whether any nitrogen moved in a run; in one that broke off on its first day none did. */
const moves = ({ paths }: SystemSummary): boolean => paths.links.some(({ amount }) => amount > 0);

/** The nitrogen of each run: as flows, over time, and as a balance that closes. */
export function nitrogenSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
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
    if (run.system === undefined)
      return note(run, 'A saved document holds no course of nitrogen to draw; its balance is below.');
    return moves(run.system)
      ? flowFigure(maker, run.system, perGram, title(run))
      : note(run, 'No nitrogen moved: there is no flow to draw.');
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
      maker.html('h3', {}, ...(runs.length > 1 ? title(run) : ['The balance'])),
      fatesTable(maker, 'Nitrogen came from', from, 'g', most, colourOf),
      fatesTable(maker, 'Nitrogen went to', to, 'g', most, colourOf),
      maker.html(
        'p',
        { class: 'note' },
        `What is not accounted for: ${residual.toExponential(1)} g${total > 0 ? `, ${percent(Math.abs(residual) / total)} of what came` : ''}.`,
      ),
    );
  });
  return section(
    maker,
    'nitrogen',
    'Where the nitrogen went',
    ...flows,
    ...(runs.length > 1
      ? [
          maker.html('div', { class: 'runs three' }, ...areas),
          maker.html('div', { class: 'runs balances' }, ...balances),
        ]
      : [maker.html('div', { class: 'pair' }, ...areas, ...balances)]),
  );
}
