// Reads numbers as: age of a crop
import { expm1 } from '../base/elementary.js';
import { INSTANT } from '../base/instant.js';
import type { Model } from '../model/model.js';
import { scopeTo } from '../model/scope.js';
import { critical, cropCoefficients, grownFrom, leftByPh } from '../processes/kernels/crop.js';
import type { Values } from '../library/values.js';
import type { Conditions } from '../processes/process.js';

/** Mass of the plants of a batch without fruit and their nitrogen, and mass of the fruit on them, g. */
export interface CropStand {
  readonly mass: number;
  readonly nitrogen: number;
  readonly fruit: number;
  /** Nitrogen of plants and of all fruit that they ever bore, g. */
  readonly taken: number;
}

/** When each batch was planted, and what follows from its age. */
export interface CropClock {
  /** Time of planting, d; NaN while bare. */
  readonly planted: Float64Array;
  /** What stands after growing undisturbed for so many days under fixed conditions, in water of a pH; absent: of one that is good. */
  stand(batch: number, age: number, conditions: Conditions, pH?: number): CropStand;
  /** Crop coefficient of a batch at a time, times its cover; 0 while bare. FAO-56: flat, rising, flat, falling. */
  coefficient(batch: number, time: number): number;
  /** Share of the growth of a batch that goes to fruit at a time. */
  bearing(batch: number, time: number): number;
  /** Whether a batch has reached its harvest age. */
  ripe(batch: number, time: number): boolean;
  /** Share of the fruit of a batch that is ripe and picked in the morning of a day; 0 on most days. */
  picked(batch: number, time: number): number;
  /** Share of the plants of a batch that is cut in the morning of a day, to grow again; 0 on most days. */
  cut(batch: number, time: number): number;
}

/** How a crop bears: a `share` of its growth from an age on, picked `every` so many days, the first time when fruit is ripe. */
interface Bearing {
  readonly share: number;
  /** Age at which fruit begins to fill, d. */
  readonly onset: number;
  /** From then to ripe, d. */
  readonly days: number;
  readonly every: number;
  /** Share of the fruit on the plants that is ripe at a pick. */
  readonly ripe: number;
}

function bearingFrom(every: number | undefined, values: Values): Bearing | undefined {
  if (every === undefined) return undefined;
  const days = values.value('crop.fruit-days');
  const ripe = -expm1(-every / days);
  return {
    share: values.value('crop.fruit-share'),
    onset: values.value('crop.fruit-onset'),
    days,
    every,
    ripe,
  };
}

/** Whether something done every so many days, first at 0, falls due within the day that ends at a time since. */
function isDue(since: number, every: number): boolean {
  const turns = Math.floor((since + INSTANT) / every);
  return turns >= 0 && turns > Math.floor((since - 1 + INSTANT) / every);
}

/**
 * Makes the clock of all batches of a model.
 * @param planted time of planting of each, d, kept by the caller; default: all bare
 */
export function openCropClock(
  model: Model,
  planted: Float64Array = new Float64Array(model.layout.batches.length).fill(Number.NaN),
): CropClock {
  const { batches } = model.layout;
  const scoped = batches.map((batch) => {
    const planting = model.scenario.plantings[batch.planting];
    return { planting, values: scopeTo(model.parameters, { crop: planting.crop }) };
  });
  const bearings = scoped.map(({ planting, values }) => bearingFrom(planting.picks, values));
  const bearingOf = (batch: number): Bearing | undefined => bearings[batch];
  return {
    planted,
    stand(batch, age, conditions, pH) {
      const { planting, values } = scoped[batch];
      const full = cropCoefficients(values, { ...conditions, bearing: 0 });
      const share = pH === undefined ? 1 : leftByPh(pH, full, 0);
      const k = [full[0] * share, full[1] * share, ...full.slice(2)];
      const seedling = (planting.seedling ?? values.value('crop.seedling-mass')) * batches[batch].area;
      // Free growth from the seedling, nitrogen on the critical curve.
      const bears = bearingOf(batch);
      if (bears === undefined || age <= bears.onset) {
        const mass = grownFrom(seedling, age, k);
        const nitrogen = mass * critical(mass, k, 0);
        return { mass, nitrogen, fruit: 0, taken: nitrogen };
      }
      const young = grownFrom(seedling, bears.onset, k);
      const left = 1 - bears.share;
      const slowed = [k[0] * left, k[1] * left];
      const plant = (since: number): number => grownFrom(young, since, slowed);
      const borne = (since: number): number => ((plant(since) - young) * bears.share) / left;
      const since = age - bears.onset;
      // A pick that falls due at this very age is still to come.
      let fruit = 0;
      let last = 0;
      for (let pick = bears.days; pick < since - INSTANT; pick += bears.every) {
        fruit = (fruit + borne(pick) - borne(last)) * (1 - bears.ripe);
        last = pick;
      }
      const mass = plant(since);
      const nitrogen = mass * critical(mass, k, 0);
      const inFruit = borne(since) * values.value('crop.fruit-nitrogen');
      return { mass, nitrogen, fruit: fruit + borne(since) - borne(last), taken: nitrogen + inFruit };
    },
    coefficient(batch, time) {
      const { planting, values } = scoped[batch];
      if (Number.isNaN(planted[batch])) return 0;
      const stage = (time - planted[batch]) / planting.harvest;
      const shaded = planting.cover ?? 1;
      const start = values.value('crop.kc-start') * shaded;
      const full = values.value('crop.kc-full') * shaded;
      const rise = values.value('crop.stage-rise');
      const cover = values.value('crop.stage-cover');
      const late = values.value('crop.stage-late');
      if (stage < rise) return start;
      if (stage < cover) return start + ((full - start) * (stage - rise)) / (cover - rise);
      if (stage < late) return full;
      const end = values.value('crop.kc-end') * shaded;
      return full + ((end - full) * Math.min(stage - late, 1 - late)) / (1 - late);
    },
    bearing(batch, time) {
      const bears = bearingOf(batch);
      return bears !== undefined && time - planted[batch] >= bears.onset - INSTANT ? bears.share : 0;
    },
    picked(batch, time) {
      const bears = bearingOf(batch);
      if (bears === undefined) return 0;
      return isDue(time - planted[batch] - bears.onset - bears.days, bears.every) ? bears.ripe : 0;
    },
    cut(batch, time) {
      const { cut } = scoped[batch].planting;
      if (cut === undefined) return 0;
      return isDue(time - planted[batch] - cut.every, cut.every) ? 1 - cut.leave : 0;
    },
    ripe: (batch, time) => time - planted[batch] >= scoped[batch].planting.harvest - INSTANT,
  };
}
