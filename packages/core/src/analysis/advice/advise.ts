import { InputError } from '../../base/faults.js';
import { findSize } from '../design/size.js';
import { moreAir, moreMedia, heat, shade } from './built-changes.js';
import { type Change, type ChangeContext, type ChangeName, changeNames, type OpenChange } from './change.js';
import { base, salt, smallerDose } from './dose-changes.js';
import { type FileLines, linesBetween, type PlainFile } from './file-edit.js';
import { earlyHarvest, lessFeed } from './fish-changes.js';
import { fewerFish, staggeredStock } from './stock-changes.js';
import { gentler, sooner } from './milder-changes.js';
import { type AdviceAim, type AdviceOutcome, compareHarm, isReached, type RunHarm } from './run-harm.js';
import { emptyBeds, moreTopUp, waterChange } from './water-changes.js';

const openers: Readonly<Record<ChangeName, OpenChange>> = {
  feed: lessFeed,
  'harvest-fish': earlyHarvest,
  stagger: staggeredStock,
  fewer: fewerFish,
  'leave-empty': emptyBeds,
  'change-water': waterChange,
  'top-up': moreTopUp,
  'smaller-dose': smallerDose,
  air: moreAir,
  media: moreMedia,
  ...{ salt, base, shade, heat, gentler, sooner },
};

/**
 * The changes that may help a system, in the order of `changeNames`.
 * @param names those that were asked for; absent: all that fit what is wrong
 */
export function openChanges(
  context: Omit<ChangeContext, 'asked'>,
  names: readonly ChangeName[] = [],
): readonly Change[] {
  const wanted = names.length === 0 ? changeNames : names;
  return wanted.flatMap((name) => openers[name]({ ...context, asked: names.length > 0 }) ?? []);
}

/** One change of a proposal: what, to what, how much, from when and until when. Plain data. */
export interface ProposedChange extends Pick<Change, 'name' | 'effort' | 'most' | 'unit' | 'at' | 'from'> {
  /** Whole steps of the change, from 1. */
  readonly steps: number;
  /** In `unit`. */
  readonly amount: number;
  /** d; absent: to the end, or for good. */
  readonly until?: number;
}

/** One or two changes together, and what they come to. Plain data. */
export interface Proposal {
  readonly parts: readonly ProposedChange[];
  readonly outcome: AdviceOutcome;
  /** Whether what was wrong is gone. */
  readonly enough: boolean;
  /** Runs that it took. */
  readonly runs: number;
  /** What the file says with it. */
  readonly file: PlainFile;
  readonly lines: FileLines;
}

/** What a search for a change is about. */
export interface AdviceSearch {
  /** What the file says as it is, and what its run comes to. */
  readonly file: PlainFile;
  readonly before: RunHarm;
  readonly aim: AdviceAim;
  /** Runs a changed file. Throws InputError where it makes no system. */
  tryOut(file: PlainFile): AdviceOutcome;
}

interface Step {
  readonly change: Change;
  readonly steps: number;
  readonly until?: number;
}

const partOf = ({ change, steps, until }: Step): ProposedChange => {
  const { name, effort, most, unit, at, from } = change;
  return {
    ...{ name, effort, most, unit, at, steps, amount: change.amount(steps) },
    ...(from !== undefined && { from }),
    ...(until !== undefined && { until }),
  };
};

/** Runs changes, each choice once. */
class Tries {
  runs = 0;
  private readonly known = new Map<string, AdviceOutcome | undefined>();

  constructor(private readonly search: AdviceSearch) {}

  fileOf(parts: readonly Step[]): PlainFile {
    return parts.reduce(
      (file, { change, steps, until }) => (steps === 0 ? file : change.apply(file, steps, until)),
      this.search.file,
    );
  }

  /** What a choice comes to; undefined where it makes no system. */
  outcome(parts: readonly Step[]): AdviceOutcome | undefined {
    const key = parts.map(({ steps, until }) => `${steps} ${until ?? ''}`).join('; ');
    if (!this.known.has(key)) {
      this.runs++;
      this.known.set(key, this.run(parts));
    }
    return this.known.get(key);
  }

  private run(parts: readonly Step[]): AdviceOutcome | undefined {
    try {
      return this.search.tryOut(this.fileOf(parts));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return undefined;
    }
  }

  enough(parts: readonly Step[]): boolean {
    const found = this.outcome(parts);
    return found !== undefined && isReached(found.harm, this.search.aim);
  }

  /** The smallest of whole numbers up to one that is enough at which `at` is enough too. */
  smallest(from: number, to: number, at: (value: number) => readonly Step[]): number {
    if (to - from < 2) return to;
    const judge = (value: number) => {
      const holds = value > from && this.enough(at(value));
      return { value, holds, margins: [holds ? 1 : -1] };
    };
    return findSize({ from, to, near: to, want: 'smallest', within: 0.01, whole: true, judge }).value ?? to;
  }

  proposal(parts: readonly Step[]): Proposal | undefined {
    const outcome = this.outcome(parts);
    if (outcome === undefined) return undefined;
    const file = this.fileOf(parts);
    return {
      ...{ parts: parts.map(partOf), outcome, runs: this.runs, file },
      enough: this.enough(parts),
      lines: linesBetween(this.search.file, file),
    };
  }
}

/** Parts of the most of a change that are tried before its smallest amount is looked for; more where much may be too much. */
const shares = [1, 1 / 2];
const sharesOfExcess = [...shares, 1 / 4, 1 / 8, 1 / 16, 1 / 32];

/**
 * The least of one change that is enough, and until when it is needed; the best of it where none is. Undefined where the
 * change makes no system at all. What lies between the amounts tried is not known: the least is the least that was found.
 */
export function tryChange(change: Change, search: AdviceSearch): Proposal | undefined {
  const tries = new Tries(search);
  const at = (steps: number): readonly Step[] => [{ change, steps }];
  const tried = change.excess === true ? sharesOfExcess : shares;
  const amounts = [...new Set(tried.map((share) => Math.max(1, Math.round(change.most * share))))];
  const fit = amounts.filter((steps) => tries.outcome(at(steps)) !== undefined);
  if (fit.length === 0) return undefined;
  const serves = fit.find((steps) => tries.enough(at(steps)));
  if (serves === undefined) {
    const harm = (steps: number): RunHarm => tries.outcome(at(steps))?.harm ?? search.before;
    const best = [...fit].sort((a, b) => compareHarm(harm(a), harm(b)) || a - b)[0];
    return tries.proposal(at(best));
  }
  const steps = tries.smallest(0, serves, at);
  if (!change.ends || change.from === undefined) return tries.proposal(at(steps));
  const { from } = change;
  const days = Number(search.file['days']);
  const ending = (day: number): readonly Step[] => [{ change, steps, ...(day < days && { until: day }) }];
  return tries.proposal(ending(tries.smallest(Math.ceil(from), Math.ceil(days), ending)));
}

/** Steps of two changes together, in even shares of what each does alone. */
const TOGETHER = 16;

/**
 * Two changes together, each in the same share of so many `steps`: the least share that is enough. Undefined where they
 * make no system. A pair is not asked until when.
 */
export function tryPair(
  pair: readonly { readonly change: Change; readonly steps: number }[],
  search: AdviceSearch,
): Proposal | undefined {
  const tries = new Tries(search);
  const at = (share: number): readonly Step[] =>
    pair.map(({ change, steps }) => ({ change, steps: Math.max(1, Math.ceil((steps * share) / TOGETHER)) }));
  if (!tries.enough(at(TOGETHER))) return tries.proposal(at(TOGETHER));
  return tries.proposal(at(tries.smallest(0, TOGETHER, at)));
}

/** Whether a pair is worth telling: each of its changes is smaller than where that is enough alone. */
function isWorth({ parts }: Proposal, alone: readonly Proposal[]): boolean {
  return parts.every(({ name, steps }) => {
    const single = alone.find((each) => each.parts[0].name === name);
    return single?.enough !== true || steps < single.parts[0].steps;
  });
}

/** Most changes that are tried in pairs, of those that are enough alone and of those that are not. */
const PAIRED = { enough: 3, short: 4 };

/** Two ways of the same: fish that never came cannot be taken out. */
const removes: ReadonlySet<ChangeName> = new Set(['fewer', 'harvest-fish']);

/** The changes worth trying in pairs by what each did alone: the best few that were enough, and that helped but were not. */
export function pairsOf(alone: readonly Proposal[], before: RunHarm): readonly (readonly ProposedChange[])[] {
  const ranked = rankProposals(alone);
  const choose = (list: readonly Proposal[], most: number): readonly (readonly ProposedChange[])[] => {
    const parts = list.slice(0, most).flatMap((each) => each.parts);
    const pairs = parts.flatMap((a, i) => parts.slice(i + 1).map((b) => [a, b]));
    return pairs.filter((pair) => !pair.every(({ name }) => removes.has(name)));
  };
  const enough = ranked.filter((each) => each.enough);
  const helped = ranked.filter((each) => !each.enough && compareHarm(each.outcome.harm, before) < 0);
  return [...choose(enough, PAIRED.enough), ...choose(helped, PAIRED.short)];
}

/** What a change of the most that was tried adds to its effort, in the scale of that. */
const LARGE = 3;

/** How much trouble a proposal is: the effort of each change, and how much of it is asked. A rule of thumb, to rank by. */
const troubleOf = ({ parts }: Proposal): number =>
  parts.reduce((total, { effort, steps, most }) => total + effort + (LARGE * steps) / most, 0);

/** Single changes and the pairs that are worth telling beside them, the best first: those that are enough before those that are not. */
export function adviceOf(alone: readonly Proposal[], pairs: readonly Proposal[]): readonly Proposal[] {
  return rankProposals([...alone, ...pairs.filter((pair) => isWorth(pair, alone))]);
}

/**
 * Proposals, the best first: those that are enough before those that are not; of these the one that leaves least harm;
 * else the one that is least trouble.
 */
function rankProposals(proposals: readonly Proposal[]): readonly Proposal[] {
  return [...proposals].sort((a, b) => {
    if (a.enough !== b.enough) return a.enough ? -1 : 1;
    return (a.enough ? 0 : compareHarm(a.outcome.harm, b.outcome.harm)) || troubleOf(a) - troubleOf(b);
  });
}
