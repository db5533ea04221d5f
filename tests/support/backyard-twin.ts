import { createRandom, fit, type Fit } from '@leat/core';
import { openScenarios, fittedValuesAt } from '../../packages/core/src/calibration/fitted-system.js';
import { readFree } from '../../packages/core/src/calibration/read-free.js';
import { normalQuantile } from '../../packages/core/src/base/normal.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import { fitSystem } from './fit-system.js';
import { inventedLog, inventedMap, readInvented, type InventedColumn } from './invented-log.js';

/** The drop kit of the invented backyard. */
export const backyardKit: readonly InventedColumn[] = [
  { reads: 'ammonia', vessel: 'tank', steps: [0, 0.25, 0.5, 1, 2, 4, 8], often: 0.4 },
  { reads: 'nitrite', vessel: 'tank', steps: [0, 0.1, 0.25, 0.5, 1, 2, 5], often: 0.4 },
  { reads: 'nitrate', vessel: 'tank', steps: [0, 5, 10, 20, 40, 80, 160], often: 0.3 },
  { reads: 'pH', vessel: 'tank', resolution: 0.2, often: 0.3 },
  { reads: 'alkalinity', vessel: 'tank', resolution: 0.36, often: 0.15 },
];

/** What may vary in the twins. */
export const backyardFree: readonly string[] = [
  'biofilm.capacity',
  'aob.growth',
  'nob.growth',
  'fish.nile-tilapia.energy-retention',
  'denitrification.activity',
  'start.nitrate',
  'vessels.sump.volume=0.42..0.9 m3',
];

/** A fit to the log of a system whose numbers are known. */
export interface Twin {
  readonly fit: Fit;
  /** Where each number truly stood in its prior. */
  readonly truth: readonly number[];
}

/** A log from numbers drawn from their priors, and the fit to it. */
export function backyardTwin(seed: number, days: number, names = backyardFree): Twin {
  const system = fitSystem('backyard');
  const base = system.read([], days);
  const free = readFree(names, base.scenario, createParameters());
  const random = createRandom(seed);
  const truth = free.map(() => normalQuantile(0.001 + 0.998 * random()));
  const scenario = openScenarios(system, base, days)(fittedValuesAt(free, truth));
  const log = readInvented(
    inventedLog(scenario, { seed: seed + 1000, days, columns: backyardKit, spoilt: 0.04 }),
    inventedMap(backyardKit, 'tank'),
  );
  return { fit: fit({ system, log, free: names }), truth };
}
