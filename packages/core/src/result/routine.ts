import type { Run, RunEvent } from '../run/run.js';

/** Kinds that are routine where they come again and again alike, and begin nothing. */
const routine = new Set(['stock', 'feed', 'dose', 'drain-solids', 'change-water', 'cart-water']);

/** Times that the like is done in a run beyond which it is routine. */
const SELDOM = 4;

/** Kinds whose text says what came out: two are alike whatever it was. */
const whatever = new Set(['drain-solids']);

/** Whether the like of an event was done so often in a run that it is routine. */
export const isRoutine = (run: Run, { kind, place, text }: RunEvent): boolean =>
  routine.has(kind) &&
  run.events.filter(
    (each) => each.kind === kind && each.place === place && (whatever.has(kind) || each.text === text),
  ).length > SELDOM;
