import { compileModel } from '../../packages/core/src/model/compile.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import { openCropClock } from '../../packages/core/src/run/crop-clock.js';
import { planting, scenarioOf, vessel } from './scenario-builder.js';

const harvest = 100;
/** Share of the age at harvest at which each stage is read. */
const ages = { start: 0.1, full: 0.75, end: 1 };

/** Crop coefficient that a run takes for a crop at a stage, by the clock of its batches. */
export function cropCoefficient(crop: string, stage: keyof typeof ages): number {
  const bed = vessel('bed', 1);
  const scenario = scenarioOf([bed], { plantings: [planting('crop', 'bed', crop, 1, { harvest })] });
  const clock = openCropClock(compileModel(scenario, createParameters()));
  clock.planted[0] = 0;
  return clock.coefficient(0, ages[stage] * harvest);
}
