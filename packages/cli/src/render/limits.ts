import type { LimitResult } from '@leat/core';
import { columns } from './columns.js';
import { day, shown } from './number.js';

/** Most lines of limits in a summary. */
const most = 9;

const distance = ({ worst = 0, value }: LimitResult): number => Math.abs(worst - value) / Math.max(1e-12, Math.abs(value));

/** Limits of one kind passed at several places, the worst place first. */
function merged(passed: readonly LimitResult[]): readonly (readonly LimitResult[])[] {
  const groups = new Map<string, LimitResult[]>();
  for (const limit of passed) {
    const key = `${limit.id} ${limit.quantity} ${limit.whom}`;
    groups.set(key, [...(groups.get(key) ?? []), limit]);
  }
  return [...groups.values()].map((group) => group.sort((a, b) => distance(b) - distance(a)));
}

function row(group: readonly LimitResult[]): readonly string[] {
  const [worst, ...others] = group;
  const first = Math.min(...group.map((limit) => limit.first ?? Infinity));
  const longest = Math.max(...group.map(({ total }) => total));
  return [
    worst.quantity.replaceAll('-', ' '),
    `${worst.direction === 'above' ? '>' : '<'} ${shown(worst.value)} ${worst.unit}`,
    `${shown(worst.worst)} d ${day(worst.worstAt)}`,
    `${worst.place}${others.length > 0 ? ` +${others.length}` : ''}`,
    `d ${day(first)}`,
    `${shown(longest)} d`,
    worst.whom,
    `${worst.source} [${worst.mark}]`,
  ];
}

/** The limits that a run passed: what, how far, where, when first, how long, for whom, by which source. */
export function limitLines(limits: readonly LimitResult[], every: number): readonly string[] {
  const groups = merged(limits.filter(({ passed }) => passed));
  const unjudged = limits.filter(({ judged }) => !judged).length;
  const head = ['', 'limit', 'worst', 'where', 'first', 'for', 'for whom', 'source'];
  const table =
    groups.length === 0
      ? ['none of those that could be judged']
      : columns([head, ...groups.slice(0, most).map(row)], new Array<'left'>(head.length).fill('left'));
  const left = groups.length > most ? [`and ${groups.length - most} more: see --json`] : [];
  const blind = limits.some(({ judged, resolved }) => judged && !resolved)
    ? [`means over less than the output step of ${shown(every)} d are not resolved`]
    : [];
  const short = unjudged > 0 ? [`${unjudged} not judged (run shorter than their mean, or nobody there)`] : [];
  const notes = [...left, ...short, ...blind].join('; ');
  return [...table, ...(notes === '' ? [] : [notes])];
}
