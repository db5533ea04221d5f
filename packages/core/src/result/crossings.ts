import type { Model } from '../model/model.js';
import type { Stream } from '../model/streams.js';
import { type Component, type Conserved, contentOf } from '../processes/components.js';
import type { Posting, Run } from '../run/run.js';

/** What concerns one vessel, by index: so that the budgets of all vessels take one pass and not one each. */
interface Concerns {
  readonly rows: readonly number[];
  readonly streams: readonly number[];
  readonly states: readonly number[];
}

const ofModels = new WeakMap<Model, readonly Concerns[]>();
const ofRuns = new WeakMap<Run, ReadonlyMap<string, readonly Posting[]>>();

/** Rows that move a state of a vessel, streams that begin or end there, and its states, each ascending. */
export function concernsOf(model: Model, vessel: number): Concerns {
  const found = ofModels.get(model) ?? concerns(model);
  ofModels.set(model, found);
  return found[vessel];
}

/** Postings between the first and the last sample that moved something of a vessel, in their order. */
function postingsOf(run: Run, vessel: string): readonly Posting[] {
  const found = ofRuns.get(run) ?? groupPostings(run);
  ofRuns.set(run, found);
  return found.get(vessel) ?? [];
}

function concerns({ layout, rows, streams }: Model): readonly Concerns[] {
  const all = layout.vessels.map(() => ({
    rows: new Set<number>(),
    streams: new Set<number>(),
    states: [] as number[],
  }));
  rows.forEach((row, index) => {
    for (const { state } of row.entries) if (state >= 0) all[layout.states[state].vessel].rows.add(index);
  });
  streams.forEach(({ from, to }, index) => {
    for (const vessel of [from, to]) if (vessel >= 0) all[vessel].streams.add(index);
  });
  layout.states.forEach(({ vessel }, state) => all[vessel].states.push(state));
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

/** Where a budget is drawn up: around one vessel (by index) or around the whole system. */
export type Boundary = number | 'system';

/** Something that crossed a boundary during a run. */
export interface Crossing {
  /** On the far side: a vessel, or an account outside. */
  readonly beyond: string;
  readonly component: Component;
  /** Process, kind of stream, or `action`. */
  readonly by: string;
  /** Of the conserved quantity; above 0 is into the boundary. */
  readonly amount: number;
}

const within = (boundary: Boundary, vessel: number): boolean =>
  boundary === 'system' ? vessel >= 0 : vessel === boundary;

/** Crossings by the rows of the model: what a row takes from beyond the boundary has come in. */
function byRows(run: Run, quantity: Conserved, boundary: Boundary): Crossing[] {
  const { rows, layout } = run.model;
  const first = run.samples[0];
  const last = run.samples[run.samples.length - 1];
  const vesselOf = (state: number): number => (state < 0 ? -1 : layout.states[state].vessel);
  const concerned = boundary === 'system' ? [...rows.keys()] : concernsOf(run.model, boundary).rows;
  return concerned.flatMap((index) => {
    const row = rows[index];
    const extent = last.x[index] - first.x[index];
    if (extent === 0 || !row.entries.some((entry) => within(boundary, vesselOf(entry.state)))) return [];
    return row.entries
      .filter((entry) => !within(boundary, vesselOf(entry.state)) && entry.content[quantity] !== 0)
      .map((entry) => ({
        beyond: entry.place,
        component: entry.component,
        by: row.process,
        amount: -entry.coefficient * extent * entry.content[quantity],
      }));
  });
}

/** Content of one unit of what a posting moved. */
export function contentPosted(
  model: Model,
  state: number,
  component: Component,
  quantity: Conserved,
): number {
  const content = state >= 0 ? model.contents[state] : contentOf(component, model.parameters);
  return content[quantity];
}

/** Whether a posting crosses the edge of the system: fish that are graded stay in it. */
export const leavesOrComes = ({ account }: Posting): boolean =>
  account !== 'graded fish' && account !== 'transplants';

/** Crossings by what jumped: stocking, harvests, doses, drained solids, changed water. */
function byPostings(run: Run, quantity: Conserved, boundary: Boundary): Crossing[] {
  const { model, samples, postings } = run;
  const concerned =
    boundary === 'system'
      ? postings.slice(samples[0].posted, samples[samples.length - 1].posted).filter(leavesOrComes)
      : postingsOf(run, model.layout.vessels[boundary]);
  return concerned
    .map((posting) => ({
      beyond: posting.account,
      component: posting.component,
      by: 'action',
      amount:
        posting.amount === 0
          ? 0
          : posting.amount * contentPosted(model, posting.state, posting.component, quantity),
    }))
    .filter((crossing) => crossing.amount !== 0);
}

/** Water that came in (+) or left (-) through one end of a stream. */
function ends(model: Model, stream: Stream, boundary: Boundary): { sign: number; beyond: string }[] {
  const name = (vessel: number): string =>
    vessel < 0 ? (stream.account ?? 'discharge') : model.layout.vessels[vessel];
  const from = within(boundary, stream.from);
  const to = within(boundary, stream.to);
  if (from === to) return [];
  return [to ? { sign: 1, beyond: name(stream.from) } : { sign: -1, beyond: name(stream.to) }];
}

/** Crossings of water itself: it is carried by streams and has no row. */
function byStreams(run: Run, boundary: Boundary): Crossing[] {
  const { model, samples } = run;
  const last = samples[samples.length - 1];
  const concerned = boundary === 'system' ? [...model.streams.keys()] : concernsOf(model, boundary).streams;
  return concerned.flatMap((index) => {
    const stream = model.streams[index];
    const amount = last.carried[index] - samples[0].carried[index];
    return ends(model, stream, boundary).map((end) => ({
      beyond: end.beyond,
      component: 'water' as const,
      by: stream.kind,
      amount: end.sign * amount,
    }));
  });
}

/**
 * All that crossed a boundary between the first and the last sample of a run.
 * @param quantity nitrogen g N, oxygen-demand g O2, charge eq, chloride g, carbon mol, water m3
 * @param boundary the whole system, or the index of a vessel
 */
export function crossings(run: Run, quantity: Conserved, boundary: Boundary): readonly Crossing[] {
  const moved = quantity === 'water' ? byStreams(run, boundary) : byRows(run, quantity, boundary);
  return [...moved, ...byPostings(run, quantity, boundary)];
}
