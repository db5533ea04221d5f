import type { Free } from './free-parameter.js';

/** A model that is run at numbers: predictions of what was looked for; undefined where the run breaks off. */
export interface Predicting {
  predict(at: Float64Array): Float64Array | undefined;
  /** What it is, in plain data, for who runs it elsewhere. */
  readonly part?: FitPart;
}

/** A part of a fit that is run: of the log up to a date, and some days on. */
export interface FitPart {
  readonly until: string;
  /** d past the last reading. */
  readonly ahead: number;
  /** Relative tolerance of the run. */
  readonly tolerance: number;
  /** What may vary: who runs it elsewhere need not find it anew, which takes a run. */
  readonly free: readonly Free[];
}

/** Which part of a fit a problem is. */
export const partOf = ({ until, ahead, tolerance, free }: FitPart): FitPart => ({
  ...{ until, ahead, tolerance, free },
});

/** Predictions that a search waits for. */
export interface Wanted {
  readonly of: Predicting;
  readonly at: readonly Float64Array[];
}

/** What was wanted, in its order. */
export type Answers = readonly (Float64Array | undefined)[];

/**
 * Work that asks for predictions on its way: all that it waits for at once, so that they can be worked out side by side.
 * `answered` answers here and now, `answeredBy` waits for who answers.
 */
export type Asking<T> = Generator<readonly Wanted[], T, readonly Answers[]>;

/** Asks for predictions at some places. */
export function* ask(of: Predicting, at: readonly Float64Array[]): Asking<Answers> {
  const [found] = yield [{ of, at }];
  return found;
}

/** Two pieces of work in step: what both wait for is asked for at once. */
export function* sideBySide<A, B>(first: Asking<A>, second: Asking<B>): Asking<readonly [A, B]> {
  let [a, b] = [first.next(), second.next()];
  while (a.done !== true || b.done !== true) {
    const [ofA, ofB] = [a.done === true ? [] : a.value, b.done === true ? [] : b.value];
    const found = yield [...ofA, ...ofB];
    if (a.done !== true) a = first.next(found.slice(0, ofA.length));
    if (b.done !== true) b = second.next(found.slice(ofA.length));
  }
  return [a.value, b.value];
}

/** Does the work to its end, each prediction by a run of its own, one after another. */
export function answered<T>(work: Asking<T>): T {
  let next = work.next();
  while (next.done !== true)
    next = work.next(next.value.map(({ of, at }) => at.map((each) => of.predict(each))));
  return next.value;
}

/** Does the work to its end with predictions by another, such as workers; the same to the last bit. */
export async function answeredBy<T>(
  work: Asking<T>,
  answer: (wanted: readonly Wanted[]) => Promise<readonly Answers[]>,
): Promise<T> {
  let next = work.next();
  while (next.done !== true) next = work.next(await answer(next.value));
  return next.value;
}
