/**
 * One quantity that is planned, `from` one end `to` the other, on so many even `steps`: what lies between two of them is not looked at.
 */
export interface PlanRange {
  readonly from: number;
  readonly to: number;
  readonly steps: number;
  /** Whether only whole numbers make sense. */
  readonly whole?: boolean;
}

/** What one choice of all quantities came to. Plain data. */
export interface PlanTrial {
  /** Step of each quantity, from 0. */
  readonly at: readonly number[];
  /** Whether every condition holds. */
  readonly holds: boolean;
  /** What is to be as large as can be. */
  readonly aim: number;
  /** What decides between choices whose aims are alike: the larger the better. */
  readonly beside: number;
  /** How far a choice that does not hold is from holding, the smaller the better: kinds of harm, the worst first. */
  readonly harm: readonly number[];
}

/** What a search came to. */
export interface PlanFound<Trial extends PlanTrial> {
  /** The best of all that were tried: one that holds, where there is one. */
  readonly best: Trial;
  readonly trials: readonly Trial[];
}

/** The value of a quantity at one `step` of its steps, to six digits or, where only those make sense, a whole number. */
export function planValue({ from, to, steps, whole = false }: PlanRange, step: number): number {
  if (step === 0) return from;
  if (step === steps) return to;
  const value = from + ((to - from) * step) / steps;
  return whole ? Math.round(value) : Number(value.toPrecision(6));
}

/** Share below which two aims are alike. */
const ALIKE = 1e-3;

const apart = (a: number, b: number): boolean => Math.abs(a - b) > ALIKE * Math.max(Math.abs(a), Math.abs(b));

/** Order of two trials, the better first: what holds, then the aim, then what stands beside it; else the least harm. */
export function compareTrials(a: PlanTrial, b: PlanTrial): number {
  if (a.holds !== b.holds) return a.holds ? -1 : 1;
  if (a.holds) {
    if (apart(a.aim, b.aim)) return b.aim - a.aim;
    if (apart(a.beside, b.beside)) return b.beside - a.beside;
  } else {
    const kind = a.harm.findIndex((each, i) => apart(each, b.harm[i]));
    if (kind >= 0) return a.harm[kind] - b.harm[kind];
  }
  // What asks for less first, so that the order is the same whatever was tried first.
  const step = a.at.findIndex((each, i) => each !== b.at[i]);
  return step < 0 ? 0 : a.at[step] - b.at[step];
}

/** Points of the first grid along each quantity, by how many quantities there are. */
const coarse = [0, 9, 5, 4, 3];

/** Every choice of one from each list. */
const product = (lists: readonly (readonly number[])[]): readonly (readonly number[])[] =>
  lists.reduce<readonly (readonly number[])[]>(
    (points, list) => points.flatMap((point) => list.map((each) => [...point, each])),
    [[]],
  );

/** Most starts from which the best is looked for. */
const STARTS = 2;

/**
 * Looks for the best choice of up to four quantities: a grid over all of them, then from the best two points of it the
 * neighbours on every side, at half the spacing of the grid and then ever nearer, until no neighbour one step away is better.
 * It gives the points to be tried, and takes what each came to. What it finds is better than all its neighbours; that
 * nothing better lies elsewhere is not proven.
 * @throws RangeError for no quantity or more than four
 */
export function* searchPlan<Trial extends PlanTrial>(
  ranges: readonly PlanRange[],
): Generator<readonly (readonly number[])[], PlanFound<Trial>, readonly Trial[]> {
  const points = coarse.at(ranges.length) ?? 0;
  if (points === 0) throw new RangeError(`${ranges.length} quantities; expected 1 to ${coarse.length - 1}`);
  const tried = new Map<string, Trial>();
  const known = (at: readonly number[]): Trial | undefined => tried.get(at.join(' '));
  /** Tries those that were not. */
  function* tryAll(
    list: readonly (readonly number[])[],
  ): Generator<readonly (readonly number[])[], void, readonly Trial[]> {
    const fresh = list.filter(
      (at, i) => known(at) === undefined && list.findIndex((each) => each.join() === at.join()) === i,
    );
    if (fresh.length === 0) return;
    for (const trial of yield fresh) tried.set(trial.at.join(' '), trial);
  }
  const spread = ranges.map(({ steps }) => {
    const count = Math.min(points, steps + 1);
    return [...new Set(Array.from({ length: count }, (_, i) => Math.round((i * steps) / (count - 1))))];
  });
  yield* tryAll(product(spread));
  const starts = [...tried.values()].sort(compareTrials).slice(0, STARTS);
  for (const start of starts) {
    let here = start;
    let reach = ranges.map(({ steps }) => Math.max(1, Math.floor(steps / (points - 1) / 2)));
    for (;;) {
      const around = product(
        here.at.map((step, i) => [
          ...new Set([-reach[i], 0, reach[i]].map((by) => Math.min(ranges[i].steps, Math.max(0, step + by)))),
        ]),
      );
      yield* tryAll(around);
      const best = around.flatMap((at) => known(at) ?? []).sort(compareTrials)[0];
      if (compareTrials(best, here) < 0) here = best;
      else if (reach.every((by) => by === 1)) break;
      else reach = reach.map((by) => Math.max(1, Math.floor(by / 2)));
    }
  }
  const trials = [...tried.values()].sort(compareTrials);
  return { best: trials[0], trials };
}
