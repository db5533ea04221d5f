import {
  type AdviceSearch,
  openChanges,
  type Proposal,
  tryChange,
  tryPair,
} from '../analysis/advice/advise.js';
import type { Change, ChangeName } from '../analysis/advice/change.js';
import type { PlainFile } from '../analysis/advice/file-edit.js';
import { type AdviceAim, adviceOutcome, type RunHarm } from '../analysis/advice/run-harm.js';
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
