import { deathsOf, seriesOf } from '@leat/core';
import type { Run } from '../../../packages/core/src/run/run.js';
import { drawnRuns, usualRuns } from './draw-runs.js';
import type { Runs, SystemCase, SystemQuantity } from './system-case.js';

/**
 * What a band says of a quantity. A `hit` overlaps what was published, from the 5th to the 95th percentile, is no wider
 * than a factor 4, and is of a system that works. Else the first that holds: `miss` (no overlap), `vague` (too wide),
 * `failing` (the system fails in more than a twentieth of the draws).
 */
export type Verdict = 'hit' | 'miss' | 'vague' | 'failing';

/** What the draws say of one quantity. */
export interface Band {
  readonly quantity: SystemQuantity;
  readonly low: number;
  readonly median: number;
  readonly high: number;
  readonly verdict: Verdict;
}

/** What the draws say of a system. */
export interface SystemBands {
  readonly bands: readonly Band[];
  readonly draws: number;
  /**
   * Draws in which a working system fails: TAN over 10 or nitrite over 5 mg N/L in the mean where fish are, or more than half of
   * a group of fish dead.
   */
  readonly failing: number;
  /** Of these, draws whose run broke off: they give no values to the bands. */
  readonly brokenOff: number;
  /** Whether there are fish in it: without, nothing can fail. */
  readonly fish: boolean;
}

/** Rounding of what is taken in as it was published. */
const rounding = 1e-9;

/** Widest band that says something: highest over lowest, or as a share of the published middle. */
const widest = { factor: 4, span: 0.75 };

/** TAN and nitrite, mg N/L, beyond which a system with fish does not work. */
const worst = { tan: 10, nitrite: 5 } as const;

/** Share of a group of fish whose death is the end of a system: water that killed them is clean again afterwards. */
const mostDead = 0.5;

/** Share of the draws of a working system that may fail. */
const mostFailing = 0.05;

/** Share of a run that is left out where no window is said. */
const settling = 0.2;

function isVague({ span, published }: SystemQuantity, low: number, high: number): boolean {
  if (span === 'difference') return high - low > (widest.span * (published.low + published.high)) / 2;
  return low <= 0 || high / low > widest.factor;
}

/** Percentile of sorted values: a member of them. */
const percentile = (sorted: readonly number[], share: number): number =>
  sorted[Math.round((sorted.length - 1) * share)] ?? Number.NaN;

/** A draw that has no value of a quantity, as the mass at harvest where no fish is left, gives none to its band. */
function bandOf(quantity: SystemQuantity, values: readonly number[], fails: boolean): Band {
  const sorted = values.filter(Number.isFinite).sort((a, b) => a - b);
  const [low, median, high] = [0.05, 0.5, 0.95].map((share) => percentile(sorted, share));
  const slack = rounding * Math.abs(median);
  const overlaps = quantity.published.low <= high + slack && quantity.published.high >= low - slack;
  const verdict = !overlaps ? 'miss' : isVague(quantity, low, high) ? 'vague' : fails ? 'failing' : 'hit';
  return { quantity, low, median, high, verdict };
}

/** Vessels in which fish live at some time. */
function fishVessels(run: Run): readonly string[] {
  return [...new Set(run.model.scenario.fish.map(({ vessel }) => vessel))];
}

/** Whether more than half of a group of fish died in a run. */
const diesOut = (run: Run): boolean =>
  deathsOf(run).some(({ number, stocked }) => !(number <= mostDead * stocked));

/**
 * Whether a run fails: a mean of TAN or nitrite in its window beyond what fish bear for long, where they are, or fish that
 * died of it.
 */
function failsIn(run: Run, window: number | undefined): boolean {
  if (diesOut(run)) return true;
  const { days } = run.model.scenario;
  const from = days - (window ?? days * (1 - settling));
  return fishVessels(run).some((vessel) =>
    (['tan', 'nitrite'] as const).some((component) => {
      const { values } = seriesOf(run, `${component}@${vessel}`);
      const late = values.filter((_, index) => run.samples[index].time >= from - rounding);
      const mean = late.reduce((sum, value) => sum + value, 0) / late.length;
      return !(mean <= worst[component]);
    }),
  );
}

/** The quantities of a system by one draw, in their order; none where a run broke off. */
export function drawnValues(system: SystemCase, draw: number): readonly number[] | undefined {
  const runs = drawnRuns(system, draw);
  if (Object.values(runs).some(({ outcome }) => outcome.kind !== 'done')) return undefined;
  return system.quantities.map(({ value }) => value(runs));
}

/** What its texts say of a quantity. */
export function listedVerdict({ fails }: SystemCase, { miss, vague }: SystemQuantity): Verdict {
  const rest = fails === undefined ? 'hit' : 'failing';
  return miss !== undefined ? 'miss' : vague !== undefined ? 'vague' : rest;
}

/** Bands as the texts of a system list them, without their numbers: no draw is made. */
export function listedBands(system: SystemCase): SystemBands {
  const none = { low: Number.NaN, median: Number.NaN, high: Number.NaN };
  return {
    bands: system.quantities.map((quantity) => ({
      quantity,
      ...none,
      verdict: listedVerdict(system, quantity),
    })),
    ...{ draws: system.draws, failing: Number.NaN, brokenOff: 0 },
    fish: Object.values(usualRuns(system)).some((run) => fishVessels(run).length > 0),
  };
}

const known = new Map<SystemCase, SystemBands>();

/** Bands of all quantities of a system, by its draws; worked out once. */
export function bandsOf(system: SystemCase): SystemBands {
  const found = known.get(system);
  if (found !== undefined) return found;
  const { draws, quantities, window } = system;
  const values: (readonly number[])[] = [];
  let [failing, brokenOff, fish] = [0, 0, false];
  for (let draw = 1; draw <= draws; draw++) {
    const runs: Runs = drawnRuns(system, draw);
    const all = Object.values(runs);
    fish ||= all.some((run) => fishVessels(run).length > 0);
    if (all.some(({ outcome }) => outcome.kind !== 'done')) brokenOff++;
    else {
      const told = quantities.map(({ value }) => value(runs));
      if (all.some((run) => failsIn(run, window))) failing++;
      else if (!told.every(Number.isFinite))
        throw new Error(`draw ${draw} of ${system.name} works, and a quantity has no value`);
      values.push(told);
    }
  }
  failing += brokenOff;
  const fails = failing > mostFailing * draws;
  const bands = quantities.map((quantity, index) =>
    bandOf(
      quantity,
      values.map((each) => each[index]),
      fails,
    ),
  );
  const answer = { bands, draws, failing, brokenOff, fish };
  known.set(system, answer);
  return answer;
}

/** Whether a system fails in more draws than a working one may. */
export function isFailing({ failing, draws }: SystemBands): boolean {
  return failing > mostFailing * draws;
}
