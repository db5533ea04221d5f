/** One state after a jump: `value` at the recorded state, and how it follows the states before. */
interface JumpRow {
  readonly state: number;
  readonly value: number;
  readonly slopes: readonly (readonly [state: number, slope: number])[];
}

/** What postings do to the state: y[state] = value + sum of slope x (y before - `before`). */
export interface Jump {
  readonly before: Float64Array;
  readonly rows: readonly JumpRow[];
}

interface Ends {
  readonly start: Float64Array;
  readonly end: Float64Array;
}

/** By how much a state is moved to find a slope: this share of it, or this much of an empty one. */
const NUDGE = 1e-4;

/**
 * Finds the jump at the start of each segment, undefined where nothing is posted. Slopes are found by
 * running the driver with one state nudged at the end of every segment; postings are linear or nearly
 * so (shares, amounts, means), and an integrator's state is within its error of the recorded one.
 * @param startsAfter the states at the starts of the segments, given those at their ends
 */
export function jumpMaps(
  segments: readonly Ends[],
  startsAfter: (ends: readonly Float64Array[]) => readonly Float64Array[],
): (Jump | undefined)[] {
  const ends = segments.map(({ end }) => end);
  const base = startsAfter(ends);
  segments.forEach(({ start }, i) => {
    if (start.some((value, s) => value !== base[i][s]))
      throw new RangeError('the driver does not repeat itself');
  });
  const jumping = segments.map(({ start }, i) => i > 0 && start.some((value, s) => value !== ends[i - 1][s]));
  const slopes: { i: number; row: number; column: number; slope: number }[] = [];
  ends[0].forEach((_, column) => {
    const nudge = ends.map((end) => NUDGE * (Math.abs(end[column]) || 1));
    const moved = startsAfter(
      ends.map((end, i) => end.map((value, s) => (s === column ? value + nudge[i] : value))),
    );
    jumping.forEach((jumps, i) => {
      if (!jumps) return;
      moved[i].forEach((value, row) => {
        const slope = (value - base[i][row]) / nudge[i - 1];
        if (slope !== 0) slopes.push({ i, row, column, slope });
      });
    });
  });
  return segments.map(({ start }, i) => {
    if (!jumping[i]) return undefined;
    const mine = slopes.filter((slope) => slope.i === i);
    const rows = Array.from(start, (value, state): JumpRow => {
      const own = mine.filter(({ row }) => row === state);
      return { state, value, slopes: own.map(({ column, slope }) => [column, slope] as const) };
    });
    return { before: ends[i - 1], rows: rows.filter((row) => !stays(row, ends[i - 1])) };
  });
}

/** Whether the jump leaves a state alone: the same value, following itself one to one. */
function stays({ state, value, slopes }: JumpRow, before: Float64Array): boolean {
  if (value !== before[state] || slopes.length !== 1) return false;
  const [[column, slope]] = slopes;
  return column === state && Math.abs(slope - 1) < 1e-6;
}

/** Makes a jump: moves a state in place, as the recorded one was moved. */
export function jumped({ before, rows }: Jump, y: Float64Array): void {
  const off = y.map((value, s) => value - before[s]);
  for (const { state, value, slopes } of rows) {
    y[state] = slopes.reduce((sum, [column, slope]) => sum + slope * off[column], value);
  }
}
