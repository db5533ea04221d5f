import { log10, pow } from '../../base/elementary.js';
import type { Trial } from './trial.js';

/** Values of a scan. */
const COUNT = 9;
/** From this ratio of the ends on, values are spread by equal ratios. */
const WIDE = 10;

/**
 * Values that show the whole of a range, its ends among them: by equal steps, or by equal ratios where the range is
 * wide; whole numbers, each once, where only they make sense.
 */
function scanValues(from: number, to: number, whole = false): readonly number[] {
  const geometric = from > 0 && to / from >= WIDE;
  const values = Array.from({ length: COUNT }, (_, i) => {
    if (i === 0) return from;
    if (i === COUNT - 1) return to;
    const share = i / (COUNT - 1);
    const value = geometric ? from * pow(to / from, share) : from + (to - from) * share;
    return whole ? Math.round(value) : value;
  });
  return [...new Set(values)];
}

/**
 * The margin that decides: that of the condition nearest to failing, each in its own measure over the bracket, so
 * that margins of different units can be held against each other. NaN where there is no answer.
 */
function deciding(trial: Trial, other: Trial): number {
  return trial.margins.reduce((worst, margin, i) => {
    const scale = Math.abs(margin) + Math.abs(other.margins[i]);
    const share = scale === 0 ? 0 : margin / scale;
    return Number.isNaN(share) || share < worst ? share : worst;
  }, Infinity);
}

/**
 * The next value to try between one that fails and one that holds: where the straight line between their margins
 * crosses zero, no nearer to an end than half the final width; or the middle, where the line is not to be trusted.
 * @param width at which the search ends
 */
function closer(fails: Trial, holds: Trial, width: number): number {
  const below = deciding(fails, holds);
  const above = deciding(holds, fails);
  const middle = (fails.value + holds.value) / 2;
  if (!(below < 0 && above > 0)) return middle;
  const line = (fails.value * above - holds.value * below) / (above - below);
  const least = Math.min(fails.value, holds.value) + width / 2;
  const most = Math.max(fails.value, holds.value) - width / 2;
  return least < most ? Math.min(most, Math.max(least, line)) : middle;
}

/** A search for the smallest or largest value of one quantity at which every condition holds. */
export interface SizeSearch {
  /** Lower end of the range that is searched, in the unit of what is varied. */
  readonly from: number;
  /** Upper end. */
  readonly to: number;
  readonly want: 'smallest' | 'largest';
  /** The answer is this close to a value that fails, as a share of it. */
  readonly within: number;
  /** Whether only whole numbers make sense. */
  readonly whole?: boolean;
  /** A value near which the answer is looked for first: no scan, and so nothing learnt of what lies far off. */
  readonly near?: number;
  /** Runs the value. */
  judge(value: number): Trial;
}

/** Values `from` one that is tried `to` another between which every trial holds. */
export interface SizeRange {
  readonly from: number;
  readonly to: number;
}

/**
 * What a search came to. `found`: fails before and holds from there on, to the other end or to where it fails again.
 * `at-the-end`: holds at the wanted end and fails further on. `not-monotone`: holds, fails and holds again; the value
 * is the first of them, refined.
 */
export interface SizeAnswer {
  readonly kind: 'found' | 'holds-everywhere' | 'at-the-end' | 'not-monotone' | 'holds-nowhere';
  /** The size, in the unit of what is varied; absent where none holds. */
  readonly value?: number;
  /** The nearest value tried that fails, on the side of the wanted end. */
  readonly fails?: number;
  /** The first value tried beyond the answer that fails. */
  readonly failsAgain?: number;
  /** Places of the conditions that fail there: what binds. */
  readonly binding: readonly number[];
  /** Where it holds, by the values tried; under the key that saved answers have. */
  readonly stretches: readonly SizeRange[];
  /** Every value tried, ascending. */
  readonly trials: readonly Trial[];
}

/** Ranges of neighbouring trials that hold. */
function rangesOf(trials: readonly Trial[]): readonly SizeRange[] {
  const ranges: SizeRange[] = [];
  trials.forEach(({ value, holds }, i) => {
    if (!holds) return;
    const last = ranges[ranges.length - 1];
    if (i > 0 && trials[i - 1].holds) ranges[ranges.length - 1] = { ...last, to: value };
    else ranges.push({ from: value, to: value });
  });
  return ranges;
}

/** Conditions that fail at a trial; all of them where there is no answer at all. */
function failing({ margins, holds }: Trial): readonly number[] {
  if (holds) return [];
  return margins.flatMap((margin, i) => (margin > 0 ? [] : [i]));
}

/** Trials outwards from a value by growing steps, until one holds and one fails or the ends are reached. */
function walk(search: SizeSearch, near: number, run: (value: number) => Trial): void {
  const { from, to, want } = search;
  const first = run(near);
  // From one that holds towards the wanted end, from one that fails away from it.
  const down = first.holds === (want === 'smallest');
  for (let step = 1.25; ; step *= step) {
    const next = down ? near - (near - from) * (1 - 1 / step) : near + (to - near) * (1 - 1 / step);
    const end = down ? from : to;
    const value = step > 40 ? end : next;
    if (run(value).holds !== first.holds || value === end) return;
  }
}

/**
 * Finds the smallest (or largest) value at which every condition holds: a scan of the whole range that shows
 * where conditions hold, then a bracketed search between a value that fails and one that holds, to `within`.
 * Between two neighbouring values of the scan nothing is known but what the search tries.
 * @throws RangeError where from is not below to, or within is not between 0 and 1
 */
export function findSize(search: SizeSearch): SizeAnswer {
  const { from, to, want, within, whole = false } = search;
  if (!(from < to)) throw new RangeError(`from ${from} is not below to ${to}`);
  if (!(within > 0 && within < 1))
    throw new RangeError(`within is ${within}; expected a share between 0 and 1`);
  const digits = Math.max(4, Math.ceil(-log10(within)) + 2);
  const tidy = (value: number): number => {
    if (value <= from) return from;
    if (value >= to) return to;
    return whole ? Math.round(value) : Number(value.toPrecision(digits));
  };
  const tried = new Map<number, Trial>();
  const run = (value: number): Trial => {
    const exact = tidy(value);
    const known = tried.get(exact) ?? search.judge(exact);
    tried.set(exact, known);
    return known;
  };
  const ascending = (): Trial[] => [...tried.values()].sort((a, b) => a.value - b.value);
  if (search.near === undefined) for (const value of scanValues(from, to, whole)) run(value);
  else walk(search, search.near, run);

  /** From the wanted end on. */
  const inOrder = want === 'smallest' ? ascending() : ascending().reverse();
  const parts = rangesOf(inOrder).length;
  const first = inOrder.findIndex(({ holds }) => holds);
  const answer = (kind: SizeAnswer['kind'], value?: number, fails?: Trial): SizeAnswer => {
    const trials = ascending();
    const last = inOrder.find(({ holds }, i) => i > first && !holds);
    return {
      kind,
      ...(value === undefined ? {} : { value }),
      ...(fails === undefined ? {} : { fails: fails.value }),
      ...(kind === 'found' && last !== undefined ? { failsAgain: last.value } : {}),
      binding: fails === undefined ? [] : failing(fails),
      stretches: rangesOf(trials),
      trials,
    };
  };
  if (first < 0) {
    const best = inOrder.reduce((a, b) => (least(b) > least(a) ? b : a));
    return { ...answer('holds-nowhere'), binding: failing(best) };
  }
  if (inOrder.every(({ holds }) => holds)) return answer('holds-everywhere', inOrder[0].value);
  if (first === 0) {
    const further = inOrder.find(({ holds }) => !holds);
    return answer(parts === 1 ? 'at-the-end' : 'not-monotone', inOrder[0].value, further);
  }
  let fails = inOrder[first - 1];
  let holds = inOrder[first];
  const gap = (): number => Math.abs(holds.value - fails.value);
  let slow = false;
  while (gap() > (whole ? 1 : within * Math.abs(holds.value))) {
    const before = gap();
    const middle = (fails.value + holds.value) / 2;
    const next = run(slow ? middle : closer(fails, holds, within * Math.abs(holds.value)));
    // Rounded onto an end of the bracket: it cannot be narrowed further.
    if (next.value === fails.value || next.value === holds.value) {
      if (slow) break;
    } else if (next.holds) holds = next;
    else fails = next;
    // A step that does not halve the bracket is followed by one that does.
    slow = gap() > before / 2;
  }
  return answer(parts === 1 ? 'found' : 'not-monotone', holds.value, fails);
}

/** The worst margin of a trial; -Infinity where it has no answer. */
function least({ margins }: Trial): number {
  return margins.some(Number.isNaN) ? -Infinity : Math.min(...margins);
}
