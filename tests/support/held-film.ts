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

/** A square metre of film in held water without nitrite: activity of so many g COD of cells, g COD d-1, room and decay. */
interface Film {
  readonly activity: (cells: number) => number;
  readonly room: number;
  readonly decay: number;
}

function film(water: FilmWater): Film {
  const { pH, temperature = 25, tan = 2, carbon = 1, oxygen = 6 } = water;
  const free = 1 / (1 + hydrogenAt(pH) / hydrogenAt(ammoniumPk(values, temperature)));
  const held: Partial<Record<Variable, number>> = {
    tan,
    oxygen,
    carbon,
    pH,
    ammonia: tan * free,
    aob: Number.NaN,
    acclimation: water.flank ?? flankAfter(pH),
    heterotrophs: 0,
    awake: 1,
    nitrite: 0,
  };
  const v = Float64Array.from(aobReads, (name) => held[name] ?? Number.NaN);
  const places = [...v.keys()];
  const k = aobCoefficients(values, { ...anyConditions, temperature, surface: 1 });
  const decay =
    values.value('aob.decay') *
    values.value('aob.decay-theta') ** (temperature - 20) *
    monod(oxygen, values.value('aob.k-oxygen'));
  const activity = (cells: number): number => {
    v[aobReads.indexOf('aob')] = cells;
    return aobActivity(v, places, k);
  };
  return { activity, room: k[7], decay };
}

/** TAN that the same cells, four fifths of the room of a film, oxidise in held water, relative: growth that it allows, g COD d-1. */
export function sameCells(water: FilmWater): number {
  const { activity, room } = film(water);
  return activity(0.8 * room);
}

/** Ammonia oxidisers of a square metre at rest in held water, g COD: where growth a(X) (1 - X/R) meets decay b X. */
export function restingCells(water: FilmWater): number {
  const { activity, room, decay } = film(water);
  let [low, high] = [0, room];
  for (let halving = 0; halving < 60; halving++) {
    const cells = (low + high) / 2;
    if (activity(cells) * (1 - cells / room) > decay * cells) low = cells;
    else high = cells;
  }
  return (low + high) / 2;
}

/** TAN that a film at rest in held water oxidises, g N m-2 d-1. */
export const restingRate = (water: FilmWater): number =>
  film(water).activity(restingCells(water)) / values.value('aob.yield');
