import { INSTANT } from '../base/instant.js';
import type { Run, RunEvent } from '../run/run.js';

/** Kinds that are routine where they come again and again alike, and begin nothing. */
const routine = new Set(['stock', 'feed', 'dose', 'drain-solids', 'change-water', 'cart-water']);

/** Times that the like is done in a run beyond which it is routine, whoever does it: a rule, a log, a list of single days. */
const SELDOM = 4;

/** Kinds whose text says what came out: two are alike whatever it was. */
const whatever = new Set(['drain-solids']);

/** Whether an event is of a plan with `every`. Stocking by a plan is left to its count: fish that come are a load, however regular. */
const isPlanned = ({ model }: Run, { kind, place, time }: RunEvent): boolean =>
  kind !== 'stock' &&
  model.scenario.actions.some(
    ({ at, repeats, action }) =>
      repeats === true &&
      action.kind === kind &&
      Math.abs(at - time) <= INSTANT &&
      (kind === 'cart-water' || Object.values(action).includes(place)),
  );

/** Whether an event is routine: done by a plan that repeats, however short the run, or the like of it so often. */
export const isRoutine = (run: Run, event: RunEvent): boolean =>
  routine.has(event.kind) &&
  (isPlanned(run, event) ||
    run.events.filter(
      ({ kind, place, text }) =>
        kind === event.kind && place === event.place && (whatever.has(kind) || text === event.text),
    ).length > SELDOM);
