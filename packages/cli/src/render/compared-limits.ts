import type { ComparedLimit } from '@leat/core';
import { wrap } from './columns.js';
import { day, shown } from './number.js';

/** Most kinds of limits told. */
const most = 8;

/** Limits of one kind that the same runs passed. */
function merged(limits: readonly ComparedLimit[]): readonly (readonly ComparedLimit[])[] {
  const groups = new Map<string, ComparedLimit[]>();
  for (const limit of limits) {
    const [table] = limit.id.split('.');
    const pattern = limit.runs.map((verdict) => (verdict?.passed === true ? 1 : 0)).join('');
    const key = `${table} ${limit.quantity} ${limit.direction} ${pattern}`;
    groups.set(key, [...(groups.get(key) ?? []), limit]);
  }
  return [...groups.values()];
}

function andMore(names: readonly string[]): string {
  const others = new Set(names).size - 1;
  return `${names[0]}${others > 0 ? ` +${others}` : ''}`;
}

function verdictText(name: string, verdict: ComparedLimit['runs'][number]): string {
  if (verdict?.judged !== true) return `${name} not judged`;
  const worst = `worst ${shown(verdict.worst)} d ${day(verdict.worstAt)}`;
  return verdict.passed
    ? `${name} PASSED from d ${day(verdict.first)} for ${shown(verdict.total)} d, ${worst}`
    : `${name} kept, ${worst}`;
}

function lines(group: readonly ComparedLimit[], names: readonly string[]): readonly string[] {
  const [first] = group;
  const unit = first.unit === '1' || first.unit === first.quantity ? '' : ` ${first.unit}`;
  const quantity = first.quantity.replaceAll('-', ' ').replace('un ionised', 'un-ionised');
  const limit = `${quantity} ${first.direction === 'above' ? '>' : '<'} ${shown(first.value)}${unit}`;
  const where = andMore(group.map(({ place }) => place));
  const whom = andMore(group.map((each) => each.whom));
  const verdicts = first.runs.map((verdict, i) => verdictText(names[i], verdict)).join('; ');
  return [
    ...wrap(`  ${limit} at ${where}, for ${whom} [${first.source} ${first.mark}]`, 100, '    '),
    ...wrap(verdicts, 96).map((line) => `    ${line}`),
  ];
}

/** The limits that some runs passed and others kept: each of the runs on it; of several places, the first passed. */
export function comparedLimitLines(
  limits: readonly ComparedLimit[],
  names: readonly string[],
): readonly string[] {
  const groups = merged(limits);
  if (groups.length === 0) return ['limits passed in some and not in all: none'];
  return [
    'limits passed in some and not in all',
    ...groups.slice(0, most).flatMap((group) => lines(group, names)),
    ...(groups.length > most ? [`  ${groups.length - most} more: see --json`] : []),
  ];
}
