/** One part of n of the members of an ensemble. */
export interface Shard {
  /** 1 to `of`. */
  readonly part: number;
  readonly of: number;
}

/** Whether a member (from 0) is of a shard: every n-th, so that each shard sees all of the range. */
export function inShard(member: number, { part, of }: Shard): boolean {
  return member % of === part - 1;
}
