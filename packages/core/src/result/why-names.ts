import type { Account } from '../model/component.js';
import type { Model } from '../model/model.js';
import type { Stream } from '../model/streams.js';

/** What an action did through an account, in plain words. */
export const postingNames: Readonly<Record<Account, string>> = {
  feed: 'feed given',
  'source water': 'water filled in',
  air: 'air',
  sludge: 'sludge taken out',
  discharge: 'water let out',
  'stocked fish': 'fish stocked',
  'harvested fish': 'fish harvested',
  'dead fish': 'fish lost',
  seedlings: 'planting',
  'harvested crop': 'harvest of crops',
  dosing: 'dosing',
  treatment: 'killed by treatment',
};

/** What a stream does to the vessels it enters (into) or leaves, in plain words. */
export function streamName(model: Model, stream: Stream, into: boolean): string {
  const { cells } = model.layout;
  if (stream.from >= 0 && stream.to >= 0) {
    return into ? `carried in from ${cells[stream.from]}` : `carried out to ${cells[stream.to]}`;
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
