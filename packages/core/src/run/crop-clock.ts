// Reads numbers as: age of a crop
import { INSTANT } from '../base/instant.js';
import type { Model } from '../model/model.js';
import { scopeTo } from '../model/scope.js';
import { critical, cropCoefficients, grownFrom } from '../processes/kernels/crop.js';
import type { Conditions } from '../processes/process.js';

/** Mass and nitrogen of a batch, g. */
export interface CropStand {
  readonly mass: number;
  readonly nitrogen: number;
}

/** When each batch was planted, and what follows from its age. */
export interface CropClock {
  /** Time of planting, d; NaN while bare. */
  readonly planted: Float64Array;
  /** What stands after growing undisturbed for so many days under fixed conditions. */
  stand(batch: number, age: number, conditions: Conditions): CropStand;
  /** Crop coefficient of a batch at a time, times its cover; 0 while bare. FAO-56: flat, rising, flat, falling. */
  coefficient(batch: number, time: number): number;
  /** Whether a batch has reached its harvest age. */
  ripe(batch: number, time: number): boolean;
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
  return {
    planted,
    stand(batch, age, conditions) {
      const { planting, values } = scoped[batch];
      const k = cropCoefficients(values, conditions);
      const seedling = planting.seedling ?? values.value('crop.seedling-mass');
      // Free growth from the seedling, nitrogen on the critical curve.
      const mass = grownFrom(seedling * batches[batch].area, age, k);
      return { mass, nitrogen: mass * critical(mass, k, 0) };
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
    ripe: (batch, time) => time - planted[batch] >= scoped[batch].planting.harvest - INSTANT,
  };
}
