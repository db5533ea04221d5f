import {
  type BibliographyEntry,
  type Budget,
  type Fates,
  fatesOf,
  type LimitResult,
  marks,
  type RunEvent,
  type Share,
  worstFirst,
  worstResidual,
} from '@leat/core';
import {
  afterLines,
  andMore,
  boundSign,
  costLines,
  day,
  harvestLines,
  percent,
  plain,
  shown,
  verdictLines,
} from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { beside, columns, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';
import { baseLines } from '../shared/base-lines.js';
import { keyQuantities } from '../shared/key-quantities.js';
import type { RunResults } from './document.js';

const rows = (shares: readonly Share[], unit: string): readonly (readonly string[])[] =>
  shares.map(({ name, amount, share }) => [`  ${name}`, `${shown(amount)} ${unit}`, percent(share)]);

/** Shares of a whole in amounts and percent, under a heading with the whole. */
function block(title: string, shares: readonly Share[], unit: string): readonly string[] {
  const amount = shares.reduce((total, each) => total + each.amount, 0);
  const share = shares.reduce((total, each) => total + each.share, 0);
  return columns(
    [[title, `${shown(amount)} ${unit}`, percent(share)], ...rows(shares, unit)],
    ['left', 'right', 'right'],
  );
}

/** The bibliography of a run: what it used, from where, and how that came here. */
export function sourceLines(entries: readonly BibliographyEntry[]): readonly string[] {
  return [
    'Sources of the numbers that were used',
    ...entries.flatMap(({ key, citation, mark, given, ids }) => [
      ...wrap(
        `[${mark}: ${marks[mark]}] ${key === citation ? '' : `${key}: `}${citation}` +
          (given === undefined ? '' : ` (given in ${given})`),
        98,
        '  ',
      ),
      ...wrap(`  ${ids.join(' ')}`, 98, '  '),
    ]),
  ];
}

/** Most lines of limits in a summary. */
const most = 8;

/** How far beyond, as a share of the limit (of one unit where the limit is 0). */
const distance = ({ worst = 0, value }: LimitResult): number =>
  Math.abs(worst - value) / (value === 0 ? 1 : Math.abs(value));

/** Limits of one kind passed by several at several places, by harm, then the longest. */
function merged(passed: readonly LimitResult[]): readonly (readonly LimitResult[])[] {
  const groups = new Map<string, LimitResult[]>();
  for (const limit of passed) {
    const [table] = limit.id.split('.');
    const key = `${table} ${limit.harm} ${limit.quantity} ${limit.direction}`;
    groups.set(key, [...(groups.get(key) ?? []), limit]);
  }
  return [...groups.values()]
    .map((group) => group.sort((a, b) => distance(b) - distance(a)))
    .sort((a, b) => worstFirst(longest(a), longest(b)));
}

/** Of a group of limits the one passed longest. */
const longest = (group: readonly LimitResult[]): LimitResult =>
  group.reduce((most, limit) => (limit.total > most.total ? limit : most));

/** Most letters of a name in the table of limits where whole names do not fit the screen. */
const nameLetters = 15;

const sourceOf = ({ source, mark }: LimitResult): string => `${source} ${mark}`;

/** Columns of the table of limits, and those that it may do without on a narrow screen, in that order. */
const limitHead = ['limits passed', 'limit', 'worst', 'where', 'first', 'for', 'for whom', ''];
const spare = [[], ['for whom'], ['for whom', 'first']] as const;

/** The table of limits with the columns that fit the screen: whole names if they can stand. */
function fitting(rowsOf: (letters: number) => readonly (readonly string[])[]): readonly string[] {
  const tables = spare.flatMap((without) =>
    [Infinity, nameLetters].map((letters) => {
      const kept = limitHead.flatMap((name, i) => ((without as readonly string[]).includes(name) ? [] : [i]));
      return columns(
        [limitHead, ...rowsOf(letters)].map((cells) => kept.map((i) => cells[i])),
        kept.map(() => 'left' as const),
      );
    }),
  );
  const fits = (lines: readonly string[]): boolean =>
    lines.every((line) => Array.from(line).length <= screenWidth());
  return tables.find(fits) ?? tables[tables.length - 1];
}

function row(group: readonly LimitResult[], sources: readonly string[], letters: number): readonly string[] {
  const [worst] = group;
  const first = Math.min(...group.map((limit) => limit.first ?? Infinity));
  const longest = Math.max(...group.map(({ total }) => total));
  return [
    plain(worst.quantity),
    boundSign(worst),
    `${shown(worst.worst)} d ${day(worst.worstAt)}`,
    andMore(
      group.map(({ place }) => place),
      letters,
    ),
    `d ${day(first)}`,
    `${shown(longest)} d`,
    andMore(
      group.map(({ whom }) => plain(whom)),
      letters,
    ),
    `[${sources.indexOf(sourceOf(worst)) + 1}]`,
  ];
}

/** The limits that a run passed: what, how far, where, when first, how long, for whom, by which source. */
export function limitLines(limits: readonly LimitResult[], every: number): readonly string[] {
  const groups = merged(limits.filter(({ passed }) => passed));
  const unjudged = limits.filter(({ judged }) => !judged).length;
  const listed = groups.slice(0, most);
  const sources = [...new Set(listed.map(([worst]) => sourceOf(worst)))];
  const table =
    groups.length === 0
      ? ['limits passed: none of those that could be judged']
      : fitting((letters) => listed.map((group) => row(group, sources, letters)));
  const left = groups.length > most ? [`${groups.length - most} more: see --json`] : [];
  const short = unjudged > 0 ? [`${unjudged} not judged: run shorter than their mean, or nobody there`] : [];
  const blind = limits.some(({ judged, resolved }) => judged && !resolved)
    ? [`means over less than the output step (${shown(every)} d) are resolved for a day after events alone`]
    : [];
  const notes = [...left, ...short, ...blind].join('; ');
  const legend = sources.map((source, index) => `[${index + 1}] ${source}`).join('  ');
  return [...table, ...wrap(legend, screenWidth()), ...wrap(notes, screenWidth(), '  ')];
}

function head({ run, manifest }: RunResults): readonly string[] {
  const { scenario } = run.model;
  const volume = scenario.vessels.reduce((total, vessel) => total + vessel.volume, 0);
  const fish = scenario.fish.reduce((total, { number }) => total + number, 0);
  const area = scenario.plantings.reduce((total, planting) => total + planting.area, 0);
  const parts = [
    scenario.saved === undefined
      ? `${scenario.days} d from ${scenario.startDate}`
      : `day ${shown(scenario.saved.time)} to ${scenario.days}, from ${scenario.startDate}`,
    `${scenario.vessels.length} vessels, ${shown(volume)} m3`,
    `${fish} fish`,
    `${shown(area)} m2 planted`,
    `scenario ${manifest.scenario.slice(0, 8)}`,
  ];
  return [scenario.title, parts.join(' · ')];
}

function eventLine(events: readonly RunEvent[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { kind } of events) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  if (counts.size === 0) return [];
  return [`events: ${[...counts].map(([kind, count]) => `${count} ${kind}`).join(', ')}`];
}

/** Most actions named that did less than was asked for. */
const mostShort = 4;

/** The actions that did less than was asked for, one by one. */
function shortLines(events: readonly RunEvent[]): readonly string[] {
  const all = events.filter(({ short: less }) => less);
  if (all.length === 0) return [];
  const listed = all
    .slice(0, mostShort)
    .map(({ time, kind, place, text }) => `! d ${day(time)}, ${kind} of ${place}: ${text}`);
  const left = all.length - listed.length;
  return [...listed, ...(left > 0 ? [`! ${left} more did less than was asked for: see --json`] : [])];
}

function workLine({ run, budgets }: RunResults): readonly string[] {
  const { work, integrator, tolerance } = run;
  const { budget, share } = worstResidual(budgets);
  return [
    `work: ${integrator} at ${tolerance.toExponential()}, ${work.steps} steps (${work.rejected} rejected), ` +
      `${work.evaluations} evaluations, ${work.jacobians} Jacobians`,
    `balance: worst is ${budget.quantity} of ${budget.place}, ${share.toExponential(1)} of throughput`,
  ];
}

/** Where something came from and went to in the whole system. */
function systemFates(budgets: readonly Budget[], quantity: 'nitrogen' | 'water'): Fates {
  const budget = budgets.find((each) => each.place === 'system' && each.quantity === quantity);
  if (budget === undefined) throw new Error(`no budget of ${quantity}`);
  return fatesOf(budget);
}

/** Two blocks side by side where the screen is wide enough, else one under the other. */
function besideOrUnder(left: readonly string[], right: readonly string[]): readonly string[] {
  const at = Math.floor(screenWidth() / 2);
  const widest = (lines: readonly string[]): number =>
    Math.max(...lines.map((line) => Array.from(line).length));
  const fits = widest(left) < at && at + widest(right) <= screenWidth();
  return fits ? beside(left, right, at) : [...left, '', ...right];
}

/** Lines each wrapped under its own start, and an empty one behind them; nothing of nothing. */
function paragraph(lines: readonly string[]): readonly string[] {
  if (lines.length === 0) return [];
  const wrapped = lines.flatMap((line) => {
    const indent = /^ */.exec(line)?.[0] ?? '';
    return wrap(line.trim(), screenWidth() - indent.length, '  ').map((each) => indent + each);
  });
  return [...wrapped, ''];
}

/** The summary of a run, one screen: as wide as the screen and about fifty lines. */
export function summary(results: RunResults, style: Style, detail = false): string {
  const { run, series, budgets, limits, verdict, harvest, after } = results;
  const [nitrogen, water] = [systemFates(budgets, 'nitrogen'), systemFates(budgets, 'water')];
  const [title, what] = head(results);
  const { outcome } = run;
  const ended =
    outcome.kind === 'done'
      ? []
      : [style.warn(`BROKEN OFF on day ${shown(outcome.time)}: ${outcome.kind}. What follows ends there.`)];
  const lines = [
    ...wrap(title, screenWidth(), '  ').map((line) => style.strong(line)),
    ...wrap(what, screenWidth(), '  '),
    ...ended,
    '',
    ...verdictLines(verdict, run.model.scenario.startDate).flatMap((line, i) =>
      wrap(line, screenWidth(), '  ').map((each) => (i === 0 ? style.strong(each) : each)),
    ),
    '',
    ...paragraph([
      ...harvestLines(harvest),
      ...(results.costs === undefined ? [] : costLines(results.costs)),
    ]),
    ...paragraph(afterLines(after, run.model.scenario.startDate)),
    ...keyQuantities(run, series, screenWidth()),
    '',
    ...limitLines(limits, run.model.scenario.every),
    '',
    ...besideOrUnder(
      [
        ...block('nitrogen came from', nitrogen.from, 'g'),
        '',
        ...block('water came from', water.from, 'm3'),
        ...block('water went to', water.to, 'm3'),
      ],
      block('nitrogen went to', nitrogen.to, 'g'),
    ),
    '',
    ...[
      ...baseLines(results.base),
      ...eventLine(run.events),
      ...shortLines(run.events),
      ...(detail ? workLine(results) : []),
    ].flatMap((line) => wrap(line, screenWidth(), '  ')),
    ...cautionLines(style),
  ];
  return linesText(lines);
}
