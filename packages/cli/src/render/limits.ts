import type { LimitResult } from '@leat/core';
import { columns, cut, wrap } from './columns.js';
import { day, shown } from './number.js';

/** Most lines of limits in a summary. */
const most = 8;

/** How far beyond, as a share of the limit (of one unit where the limit is 0). */
const distance = ({ worst = 0, value }: LimitResult): number =>
  Math.abs(worst - value) / (value === 0 ? 1 : Math.abs(value));

/** Limits of one kind passed by several at several places, the worst first. */
function merged(passed: readonly LimitResult[]): readonly (readonly LimitResult[])[] {
  const groups = new Map<string, LimitResult[]>();
  for (const limit of passed) {
    const [table] = limit.id.split('.');
    const key = `${table} ${limit.quantity} ${limit.direction}`;
    groups.set(key, [...(groups.get(key) ?? []), limit]);
  }
  return [...groups.values()].map((group) => group.sort((a, b) => distance(b) - distance(a)));
}

/** The first of several names, and how many more. */
function andMore(names: readonly string[]): string {
  const others = new Set(names).size - 1;
  return `${cut(names[0], 15)}${others > 0 ? ` +${others}` : ''}`;
}

const sourceOf = ({ source, mark }: LimitResult): string => `${source} ${mark}`;

function row(group: readonly LimitResult[], sources: readonly string[]): readonly string[] {
  const [worst] = group;
  const first = Math.min(...group.map((limit) => limit.first ?? Infinity));
  const longest = Math.max(...group.map(({ total }) => total));
  const unit = worst.unit === '1' || worst.unit === worst.quantity ? '' : ` ${worst.unit}`;
  return [
    worst.quantity.replaceAll('-', ' ').replace('un ionised', 'un-ionised'),
    `${worst.direction === 'above' ? '>' : '<'} ${shown(worst.value)}${unit}`,
    `${shown(worst.worst)} d ${day(worst.worstAt)}`,
    andMore(group.map(({ place }) => place)),
    `d ${day(first)}`,
    `${shown(longest)} d`,
    andMore(group.map(({ whom }) => whom)),
    `[${sources.indexOf(sourceOf(worst)) + 1}]`,
  ];
}

/** The limits that a run passed: what, how far, where, when first, how long, for whom, by which source. */
export function limitLines(limits: readonly LimitResult[], every: number): readonly string[] {
  const groups = merged(limits.filter(({ passed }) => passed));
  const unjudged = limits.filter(({ judged }) => !judged).length;
  const head = ['limits passed', 'limit', 'worst', 'where', 'first', 'for', 'for whom', ''];
  const told = groups.slice(0, most);
  const sources = [...new Set(told.map(([worst]) => sourceOf(worst)))];
  const table =
    groups.length === 0
      ? ['limits passed: none of those that could be judged']
      : columns(
          [head, ...told.map((group) => row(group, sources))],
          new Array<'left'>(head.length).fill('left'),
        );
  const left = groups.length > most ? [`${groups.length - most} more: see --json`] : [];
  const short = unjudged > 0 ? [`${unjudged} not judged: run shorter than their mean, or nobody there`] : [];
  const blind = limits.some(({ judged, resolved }) => judged && !resolved)
    ? [`means over less than the output step (${shown(every)} d) cannot be resolved`]
    : [];
  const notes = [...left, ...short, ...blind].join('; ');
  const legend = sources.map((source, index) => `[${index + 1}] ${source}`).join('  ');
  return [...table, ...wrap(legend, 100), ...(notes === '' ? [] : [notes])];
}
