import type { Model } from '../model/model.js';
import type { Run, Posting } from '../run/run.js';

/** What concerns one vessel, by index: so that the budgets of all vessels take one pass and not one each. */
interface Concerns {
  readonly rows: readonly number[];
  readonly streams: readonly number[];
  readonly states: readonly number[];
}

const ofModels = new WeakMap<Model, readonly Concerns[]>();
const ofRuns = new WeakMap<Run, ReadonlyMap<string, readonly Posting[]>>();

/** Rows that move a state of a vessel, streams that begin or end there, and its states, each ascending. */
export function concernsOf(model: Model, cell: number): Concerns {
  const found = ofModels.get(model) ?? concerns(model);
  ofModels.set(model, found);
  return found[cell];
}

/** Postings between the first and the last sample that moved something of a vessel, in their order. */
export function postingsOf(run: Run, vessel: string): readonly Posting[] {
  const found = ofRuns.get(run) ?? groupPostings(run);
  ofRuns.set(run, found);
  return found.get(vessel) ?? [];
}

function concerns({ layout, rows, streams }: Model): readonly Concerns[] {
  const all = layout.cells.map(() => ({
    rows: new Set<number>(),
    streams: new Set<number>(),
    states: [] as number[],
  }));
  rows.forEach((row, index) => {
    for (const { state } of row.entries) if (state >= 0) all[layout.states[state].cell].rows.add(index);
  });
  streams.forEach(({ from, to }, index) => {
    for (const cell of [from, to]) if (cell >= 0) all[cell].streams.add(index);
  });
  layout.states.forEach(({ cell }, state) => all[cell].states.push(state));
  return all.map((each) => ({ rows: [...each.rows], streams: [...each.streams], states: each.states }));
}

function groupPostings({ samples, postings }: Run): ReadonlyMap<string, readonly Posting[]> {
  const groups = new Map<string, Posting[]>();
  for (const posting of postings.slice(samples[0].posted, samples[samples.length - 1].posted)) {
    const group = groups.get(posting.vessel);
    if (group === undefined) groups.set(posting.vessel, [posting]);
    else group.push(posting);
  }
  return groups;
}
