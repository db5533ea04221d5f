import { sum } from '../base/sum.js';
import { ownInWater } from '../model/layout.js';
import type { Model } from '../model/model.js';
import type { Stream } from '../model/streams.js';
import { type Account, waterComponents } from '../processes/components.js';
import type { Run, Sample } from '../run/run.js';
import type { Store } from './why-quantities.js';

/** What an action did through an account, in plain words. */
const postingNames: Readonly<Record<Account, string>> = {
  feed: 'feed given',
  'source water': 'water filled in',
  air: 'air',
  sludge: 'sludge taken out',
  discharge: 'water let out',
  'stocked fish': 'fish stocked',
  'graded fish': 'fish graded',
  'harvested fish': 'fish harvested',
  'dead fish': 'fish lost',
  seedlings: 'planting',
  transplants: 'setting out',
  'harvested crop': 'harvest of crops',
  dosing: 'dosing',
  treatment: 'killed by treatment',
};

/** What a stream does to the vessels it enters (into) or leaves, in plain words. */
function streamName(model: Model, stream: Stream, into: boolean): string {
  const { vessels } = model.layout;
  if (stream.from >= 0 && stream.to >= 0) {
    return into ? `carried in from ${vessels[stream.from]}` : `carried out to ${vessels[stream.to]}`;
  }
  switch (stream.kind) {
    case 'top-up':
      return `top-up with ${stream.water ?? 'water'}`;
    case 'exchange':
      return 'water exchange';
    default:
      return stream.kind;
  }
}

/** How much of a store each cause has brought (+) or taken (-). */
export type History = ReadonlyMap<string, number>;

/** What is there before anything happened. */
export const START = 'state at the start';

type Item = readonly [cause: string, amount: number];

/** Name of what each row does to the states it changes, by row and whether it adds to the store. */
function rowNames(model: Model): (row: number, into: boolean) => string {
  const titles = new Map(model.instances.map(({ row, process }) => [row, process.title]));
  const rowsFrom = (first: number, count: number, stream: Stream) =>
    first < 0 ? [] : Array.from({ length: count }, (_, c) => [first + c, stream] as const);
  const own = ownInWater(model.layout).length;
  const streams = new Map(
    model.streams.flatMap((stream, s) => [
      ...rowsFrom(model.streamRow[s], waterComponents.length, stream),
      ...rowsFrom(model.ownStreamRow[s], own, stream),
    ]),
  );
  return (row, into) => {
    const stream = streams.get(row);
    return stream === undefined ? (titles.get(row) ?? model.rows[row].id) : streamName(model, stream, into);
  };
}

function stateHistory(run: Run, sample: Sample, states: ReadonlySet<number>): Item[] {
  const { model, postings, samples } = run;
  const nameOf = rowNames(model);
  const rows = model.rows.flatMap((row, index): Item[] => {
    const coefficient = sum(row.entries.map((entry) => (states.has(entry.state) ? entry.coefficient : 0)));
    if (coefficient === 0 || sample.x[index] === 0) return [];
    return [[nameOf(index, coefficient > 0), coefficient * sample.x[index]]];
  });
  const posted = postings.map(({ state, account, amount }): Item => [
    postingNames[account],
    states.has(state) ? amount : 0,
  ]);
  const atStart = sum(Array.from(states, (state) => samples[0].y[state]));
  const postedThen = posted.slice(0, samples[0].posted).map(([, amount]) => -amount);
  return [[START, sum([atStart, ...postedThen])], ...rows, ...posted.slice(0, sample.posted)];
}

function waterHistory(run: Run, sample: Sample, vessels: readonly number[]): Item[] {
  const { model, postings, samples } = run;
  const inside = new Set(vessels.map((vessel) => model.layout.vessels[vessel]));
  const streams = model.streams.flatMap((stream, s): Item[] => {
    const into = vessels.includes(stream.to);
    if (into === vessels.includes(stream.from)) return [];
    return [[streamName(model, stream, into), into ? sample.carried[s] : -sample.carried[s]]];
  });
  const posted = postings.map(({ component, vessel, account, amount }): Item => [
    postingNames[account],
    component === 'water' && inside.has(vessel) ? amount : 0,
  ]);
  const atStart = vessels.map((vessel) => samples[0].volume[vessel]);
  const postedThen = posted.slice(0, samples[0].posted).map(([, amount]) => -amount);
  return [[START, sum([...atStart, ...postedThen])], ...streams, ...posted.slice(0, sample.posted)];
}

/**
 * All that brought a store to where it stands at a sample, from the integrated extents of rows and streams
 * and from the postings; amounts of one cause are added. Their sum is `heldBy`, to rounding.
 */
export function historyOf(run: Run, sample: Sample, store: Store): History {
  if (store.kind === 'size') return new Map([[store.name, store.value]]);
  const items =
    store.kind === 'states'
      ? stateHistory(run, sample, new Set(store.states))
      : waterHistory(run, sample, store.vessels);
  const groups = new Map<string, number[]>();
  for (const [cause, amount] of items) {
    const group = groups.get(cause);
    if (group === undefined) groups.set(cause, [amount]);
    else group.push(amount);
  }
  return new Map([...groups].map(([cause, amounts]) => [cause, sum(amounts)]));
}

/** What a store holds at a sample. */
export function heldBy(sample: Sample, store: Store): number {
  if (store.kind === 'size') return store.value;
  if (store.kind === 'states') return sum(store.states.map((state) => sample.y[state]));
  return sum(store.vessels.map((vessel) => sample.volume[vessel]));
}
