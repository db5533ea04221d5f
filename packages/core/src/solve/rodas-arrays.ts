import type { RateSystem } from './contract.js';
import { A, GROWS_FROM, STAGES } from './rodas-tableau.js';
import type { Bound, Floats, Room } from './room.js';
import { addedProduct, stoichiometryProduct } from './sparse-rows.js';

/** The arrays of a step, in one room. */
export interface StepArrays {
  /** Where it begins. */
  readonly y: Floats;
  /** The values of the stoichiometry. */
  readonly moved: Floats;
  /** Partials of the rates by states and by time, and what the latter make of the slope. */
  readonly partials: Floats;
  readonly ratesByTime: Floats;
  readonly slopeByTime: Floats;
  /** Rates and unknowns of the stages, one after another and each by itself. */
  readonly allRates: Floats;
  readonly rates: readonly Floats[];
  readonly allStages: Floats;
  readonly stage: readonly Floats[];
  /** Where a stage looks, what the states change by there, and at the beginning. */
  readonly point: Floats;
  readonly slope: Floats;
  readonly firstSlope: Floats;
  readonly next: Floats;
  /** What the extents gain. */
  readonly gain: Floats;
  readonly weights: Floats;
  readonly rateWeights: Floats;
  /** One number. */
  readonly share: Floats;
}

/** Lays out the arrays of a step. */
export function stepArrays({ states, rates, stoichiometry, dependence }: RateSystem, room: Room): StepArrays {
  const allRates = room.floats(STAGES * rates);
  const allStages = room.floats(STAGES * states);
  const cut = (whole: Floats, length: number): Floats[] =>
    Array.from({ length: STAGES }, (_, s) => room.part(whole, s * length, length));
  return {
    y: room.floats(states),
    moved: room.floats(stoichiometry.value),
    partials: room.floats(dependence.column.length),
    ratesByTime: room.floats(rates),
    slopeByTime: room.floats(states),
    allRates,
    rates: cut(allRates, rates),
    allStages,
    stage: cut(allStages, states),
    point: room.floats(states),
    slope: room.floats(states),
    firstSlope: room.floats(states),
    next: room.floats(states),
    gain: room.floats(rates),
    weights: room.floats(STAGES),
    rateWeights: room.floats(STAGES),
    share: room.floats(1),
  };
}

/** The loops of one stage. */
interface StageLoops {
  /** Where it looks, from the stages before; of no use in the first. */
  readonly point: Bound<void>;
  /** What the states change by there, from its rates. */
  readonly slope: Bound<void>;
  /** The right side of its equations, by the weights, and then with the share of what time does. */
  readonly right: Bound<void>;
  readonly drift: Bound<void>;
  /** Whether what solves them is finite. */
  readonly finite: Bound<number>;
}

/** The loops of a step on its arrays. */
export interface StepLoops {
  readonly stages: readonly StageLoops[];
  readonly ratesFinite: Bound<number>;
  readonly partialsFinite: Bound<number>;
  readonly driftFinite: Bound<number>;
  readonly gainFinite: Bound<number>;
  readonly firstSlope: Bound<void>;
  readonly slopeByTime: Bound<void>;
  /** Adds to `gain` what `point` does by the partials. */
  readonly spread: Bound<void>;
  /** `slope` from `gain`. */
  readonly gainSlope: Bound<void>;
  /** `next` from the point of the last stage and that stage. */
  readonly next: Bound<void>;
  /** `slope` becomes the solution inside the step, by the weights. */
  readonly solution: Bound<void>;
  /** `gain` with the share of the partials by time, and that with the rates of all stages; `point` with the stages. */
  readonly gainDrift: Bound<void>;
  readonly gainRates: Bound<void>;
  readonly gainStages: Bound<void>;
}

/** Binds the loops of a step to its arrays. */
export function stepLoops(system: RateSystem, room: Room, arrays: StepArrays): StepLoops {
  const { states, rates } = system;
  const { y, moved, partials, ratesByTime, allStages, allRates, point, slope, firstSlope } = arrays;
  const { next, gain, weights, rateWeights, share, slopeByTime } = arrays;
  const moves = stoichiometryProduct(system.stoichiometry, states).in(room);
  const spread = addedProduct(system.dependence).in(room);
  const finite = (array: Floats, length: number): Bound<number> => room.bind('finite', array, length);
  const one = room.floats(Float64Array.of(1));
  const last = arrays.stage[STAGES - 1];
  return {
    stages: arrays.stage.map((u, s): StageLoops => ({
      point:
        s < GROWS_FROM
          ? room.bind('combine', y, room.floats(Float64Array.from(A[s])), allStages, point, states, s)
          : room.bind('combine', point, one, arrays.stage[s - 1], point, states, 1),
      slope: moves(moved, arrays.rates[s], slope),
      right: room.bind('combine', s === 0 ? firstSlope : slope, weights, allStages, u, states, s),
      drift: room.bind('combine', u, share, slopeByTime, u, states, 1),
      finite: finite(u, states),
    })),
    ratesFinite: finite(arrays.rates[0], rates),
    partialsFinite: finite(partials, system.dependence.column.length),
    driftFinite: finite(ratesByTime, rates),
    gainFinite: finite(gain, rates),
    firstSlope: moves(moved, arrays.rates[0], firstSlope),
    slopeByTime: moves(moved, ratesByTime, slopeByTime),
    spread: spread(partials, point, gain),
    gainSlope: moves(moved, gain, slope),
    next: room.bind('combine', point, one, last, next, states, 1),
    solution: room.bind('combine', y, weights, allStages, slope, states, STAGES),
    gainDrift: room.bind('combine', gain, share, ratesByTime, gain, rates, 1),
    gainRates: room.bind('combine', gain, rateWeights, allRates, gain, rates, STAGES),
    gainStages: room.bind('combine', point, rateWeights, allStages, point, states, STAGES),
  };
}
