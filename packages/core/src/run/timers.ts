import { INSTANT } from '../base/instant.js';
import type { Timer } from '../scenario/scenario.js';

/** Whether a clock is in its on-phase; no clock is always on. On-phases are half-open [on, off). */
export function within(timer: Timer | undefined, time: number): boolean {
  if (timer === undefined) return true;
  return phase(timer, time) < timer.on;
}

/** The next instant after a time at which a clock switches; Infinity without one. */
export function nextSwitch(timer: Timer | undefined, time: number): number {
  if (timer === undefined) return Infinity;
  const since = phase(timer, time);
  return time + (since < timer.on ? timer.on : timer.on + timer.off) - since;
}

/** Time since the clock last switched on, d; the moment of a switch belongs to what follows it. */
function phase(timer: Timer, time: number): number {
  const period = timer.on + timer.off;
  const turns = (time - timer.offset) / period;
  const since = (turns - Math.floor(turns)) * period;
  if (period - since <= INSTANT) return 0;
  return Math.abs(since - timer.on) <= INSTANT ? timer.on : since;
}
