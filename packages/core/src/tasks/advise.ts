import {
  adviceOf,
  type AdviceSearch,
  openChanges,
  pairsOf,
  type Proposal,
  tryChange,
  tryPair,
} from '../analysis/advice/advise.js';
import type { Change, ChangeName } from '../analysis/advice/change.js';
import type { PlainFile } from '../analysis/advice/file-edit.js';
import { type AdviceAim, adviceOutcome, compareHarm, type RunHarm } from '../analysis/advice/run-harm.js';
import type { Situation } from '../analysis/advice/situation.js';
import { conditionOf } from '../analysis/measures/condition.js';
import { openModel } from '../model/open-model.js';
import { simulate } from '../run/stepping.js';
import { openChanged } from './changed.js';
import { openTexts, type ReferencedFiles } from './texts.js';

/** What all searches for advice share. */
export interface AdviseShared {
  readonly texts: ReferencedFiles;
  readonly situation: Situation;
  readonly before: RunHarm;
  readonly aim: AdviceAim;
  readonly keep: readonly string[];
  /** Changes that were asked for; empty: all that fit. */
  readonly only: readonly ChangeName[];
}

/** One change, or two together with the steps of each. */
export type AdviseInput = readonly {
  readonly name: ChangeName;
  /** How many steps of the change. */
  readonly steps: number;
}[];

/** A search for advice that is opened: the changes there are, and how one is tried. */
interface OpenAdvice {
  readonly changes: readonly Change[];
  readonly search: AdviceSearch;
}

/** Opens a search: reads the file once, and runs what is laid over it. */
function openAdvice({ texts, situation, before, aim, keep, only }: AdviseShared): OpenAdvice {
  const { scenario, resolved } = openTexts(texts).reading;
  const { parameters } = openModel(openTexts(texts).reading, { closureDraws: 0 }).model;
  const file: PlainFile = resolved.plain;
  const changed = openChanged(texts);
  return {
    changes: openChanges({ scenario, parameters, file, situation }, only),
    search: {
      ...{ file, before, aim },
      tryOut(after) {
        const { model } = openModel(openTexts(changed(after)).reading, { closureDraws: 0 });
        return adviceOutcome(
          simulate(model),
          keep.map((text) => conditionOf(text, model, '--keep')),
        );
      },
    },
  };
}

/** The changes that may help, by name. */
export const changesThere = (shared: AdviseShared): readonly ChangeName[] =>
  openAdvice(shared).changes.map(({ name }) => name);

/** Opens a search on a worker: finds the least of one change, or of two together, that is enough; null where they make no system. */
export function openAdviceTrials(shared: AdviseShared): (input: AdviseInput) => Proposal | null {
  const { changes, search } = openAdvice(shared);
  const changeOf = (name: ChangeName): Change => {
    const found = changes.find((change) => change.name === name);
    if (found === undefined) throw new Error(`no change ${name}`);
    return found;
  };
  return (input) => {
    const [first] = input;
    const found =
      input.length === 1
        ? tryChange(changeOf(first.name), search)
        : tryPair(
            input.map(({ name, steps }) => ({ change: changeOf(name), steps })),
            search,
          );
    return found ?? null;
  };
}

/** Who runs a search: on workers, with progress. `shared` is what `openAdviceTrials` is opened with. */
export interface AdviceRunner {
  /** The changes that may help, by name: see `changesThere`. */
  changes(shared: AdviseShared): readonly ChangeName[] | Promise<readonly ChangeName[]>;
  /** Each input tried, `what` by `what`, in order; null where a change makes no system. */
  tried(
    shared: AdviseShared,
    inputs: readonly AdviseInput[],
    what: 'alone' | 'paired',
  ): Promise<readonly (Proposal | null)[]>;
}

/** What a search for advice found. Plain data. */
export interface FoundAdvice {
  /** The best first. */
  readonly proposals: readonly Proposal[];
  /** Runs that it took. */
  readonly runs: number;
  /** Where the system stands on the day from which on they hold. */
  readonly situation: Situation;
  /** d: days from which on nothing was enough, before that day was tried. */
  readonly vain: readonly number[];
}

/**
 * The least changes with which a run goes well: every single one, and the best in pairs; from the first day on which
 * something is enough, of the days there are, or from that on which the best of them leaves least harm.
 * @param situations as `situationsOf` gives them
 */
export async function searchAdvice(
  shared: Omit<AdviseShared, 'situation'>,
  situations: readonly Situation[],
  runner: AdviceRunner,
): Promise<FoundAdvice> {
  const rounds: FoundAdvice[] = [];
  let runs = 0;
  for (const situation of situations) {
    const here: AdviseShared = { ...shared, situation };
    const tried = async (inputs: readonly AdviseInput[], what: 'alone' | 'paired'): Promise<Proposal[]> =>
      (await runner.tried(here, inputs, what)).filter((each) => each !== null);
    const names = await runner.changes(here);
    const alone = await tried(
      names.map((name) => [{ name, steps: 0 }]),
      'alone',
    );
    const paired = await tried(pairsOf(alone, shared.before), 'paired');
    runs += [...alone, ...paired].reduce((total, each) => total + each.runs, 0);
    const vain = rounds.map((each) => each.situation.from);
    rounds.push({ proposals: adviceOf(alone, paired), runs, situation, vain });
    if (rounds[rounds.length - 1].proposals.some(({ enough }) => enough)) break;
  }
  const harmOf = ({ proposals: [best] }: FoundAdvice): RunHarm =>
    (best as Proposal | undefined)?.outcome.harm ?? shared.before;
  const last = rounds[rounds.length - 1];
  const isEnough = last.proposals.some(({ enough }) => enough);
  const best = rounds.reduce((least, each) => (compareHarm(harmOf(each), harmOf(least)) < 0 ? each : least));
  return { ...(isEnough ? last : best), runs };
}
