import { INSTANT } from '../base/instant.js';
import type { RunEvent } from './run.js';

/** Kinds of events that disturb a system, whatever they were meant for. */
export const disturbing: ReadonlySet<string> = new Set([
  ...['pump', 'aeration', 'control', 'stock', 'lose-fish', 'medicate', 'clean', 'change-water', 'cart-water'],
  ...['top-up', 'source-water', 'dose', 'feed', 'leave-empty', 'drain-solids', 'pump-trip', 'dry'],
]);

/** Of events that are alike (kind and place) the first so many are looked at closely: what comes on is routine. */
const ALIKE = 4;

/** Stretches after an event, d, and how far apart samples are taken in each: an hour's mean can be judged for a day. */
const stretches: readonly { readonly until: number; readonly apart: number }[] = [
  { until: 3 / 24, apart: 0.25 / 24 },
  { until: 12 / 24, apart: 0.5 / 24 },
  { until: 1, apart: 1 / 24 },
  { until: 3, apart: 3 / 24 },
];

/** d after an event over which a run is looked at closely. */
export const CLOSE = 3;

/** Where a run is looked at closely. */
export interface CloseLook {
  /** d: the last event that is looked at (-Infinity: none). */
  since: number;
  /** How many of each kind and place there were. */
  readonly seen: Map<string, number>;
}

/** Nothing looked at yet. */
export const openLook = (): CloseLook => ({ since: -Infinity, seen: new Map<string, number>() });

/** Takes in something that happened. Returns whether it is looked at closely. */
export function lookAt(look: CloseLook, { kind, place, time }: RunEvent): boolean {
  const key = `${kind} ${place}`;
  const before = look.seen.get(key) ?? 0;
  if (!disturbing.has(kind) || before >= ALIKE) return false;
  look.seen.set(key, before + 1);
  look.since = time;
  return true;
}

/** Times after a time and before another at which the run is looked at closely, d. */
export function closeTimes({ since }: CloseLook, from: number, to: number): readonly number[] {
  const times: number[] = [];
  if (from >= since + CLOSE) return times;
  let begun = 0;
  for (const { until, apart } of stretches) {
    const steps = Math.round((until - begun) / apart);
    for (let i = 1; i <= steps; i++) {
      const time = since + begun + i * apart;
      if (time > from + INSTANT && time < to - INSTANT) times.push(time);
    }
    begun = until;
  }
  return times;
}
