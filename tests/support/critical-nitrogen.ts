import { createParameters } from '../../packages/core/src/library/parameters.js';
import { scopeTo } from '../../packages/core/src/model/scope.js';
import { critical, cropCoefficients } from '../../packages/core/src/processes/kernels/crop.js';

const parameters = createParameters();
/** g m-2 of one t/ha. */
const perTonne = 100;
const conditions = {
  temperature: 22,
  air: 22,
  volume: 1,
  surface: 0,
  open: 0,
  airShare: 0,
  pressure: 1,
  most: 0,
  setPoint: 7,
  band: 1,
  sign: 1,
  floor: 0,
  capture: 0,
  aeration: 0,
  inflow: 0,
  fed: 0,
  fedShare: 0,
  pace: 1,
  area: 1,
  light: 20,
  bearing: 0,
  ionic: 0.01,
};

/** Critical nitrogen of a crop at a dry mass in t/ha, % of dry mass, as its process reads it. */
export function criticalNitrogen(crop: string, tonnes: number): number {
  const k = cropCoefficients(scopeTo(parameters, { crop }), conditions);
  return 100 * critical(tonnes * perTonne, k, 0);
}
