import { hydrogenAt, ammoniumPk } from '../../packages/core/src/chemistry/acid-base.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import { scopeTo } from '../../packages/core/src/model/scope.js';
import { flankGrownAt } from '../../packages/core/src/processes/kernels/acclimation.js';
import {
  aobActivity,
  aobCoefficients,
  aobReads,
} from '../../packages/core/src/processes/kernels/oxidiser.js';
import { monod } from '../../packages/core/src/processes/kernels/rate-terms.js';
import { anyConditions, type Variable } from '../../packages/core/src/processes/process.js';

/** Water that does not change, over a square metre of film. */
export interface FilmWater {
  readonly pH: number;
  /** Lower flank of the bell of the film, pH. Absent: that of a film grown in this water. */
  readonly flank?: number;
  /** degC. Absent: 25. */
  readonly temperature?: number;
  /** Total ammonia, g N m-3. Absent: 2. */
  readonly tan?: number;
  /** Inorganic carbon, mol m-3. Absent: 1. */
  readonly carbon?: number;
  /** g m-3. Absent: 6. */
  readonly oxygen?: number;
}

const parameters = createParameters();
const values = scopeTo(parameters, {});

/** Lower flank, pH, of a film that has long grown in water of a pH. */
export const flankAfter = (pH: number): number => flankGrownAt(parameters, pH);

/** Activity of a gram of ammonia oxidisers in held water without nitrite, 1/d, and the room and decay of a square metre. */
function film(water: FilmWater): { activity: number; room: number; decay: number } {
  const { pH, temperature = 25, tan = 2, carbon = 1, oxygen = 6 } = water;
  const free = 1 / (1 + hydrogenAt(pH) / hydrogenAt(ammoniumPk(values, temperature)));
  const held: Partial<Record<Variable, number>> = {
    tan,
    oxygen,
    carbon,
    pH,
    ammonia: tan * free,
    aob: 1,
    acclimation: water.flank ?? flankAfter(pH),
    nitrite: 0,
  };
  const v = Float64Array.from(aobReads, (name) => held[name] ?? Number.NaN);
  const k = aobCoefficients(values, { ...anyConditions, temperature, surface: 1 });
  const decay =
    values.value('aob.decay') *
    values.value('aob.decay-theta') ** (temperature - 20) *
    monod(oxygen, values.value('aob.k-oxygen'));
  return { activity: aobActivity(v, [...v.keys()], k), room: k[7], decay };
}

/** TAN that the same cells oxidise in held water, relative: growth that the water allows, 1/d. */
export const sameCells = (water: FilmWater): number => film(water).activity;

/** Ammonia oxidisers of a square metre at rest in held water, g COD: growth a (1 - X/R) meets decay b, so X = R (1 - b/a). */
export function restingCells(water: FilmWater): number {
  const { activity, room, decay } = film(water);
  return Math.max(0, room * (1 - decay / activity));
}

/** TAN that a film at rest in held water oxidises, g N m-2 d-1. */
export const restingRate = (water: FilmWater): number =>
  (film(water).activity * restingCells(water)) / values.value('aob.yield');
