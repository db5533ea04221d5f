import { hydrogenAt } from '../../chemistry/acid-base.js';
import type { Values } from '../../library/values.js';
import type { Conditions, Process } from '../process.js';
import { HYDROGEN_AFTER_PH, type Kernel, type Sites } from './kernel.js';
import {
  arrhenius,
  bell,
  bellByLow,
  bellSlope,
  inhibition,
  inhibitionSlope,
  monod,
  monodSlope,
} from './rate-terms.js';

/**
 * Activity of a population of nitrifiers: growth that its water would allow, g COD d-1,
 * mu(T) M(substrate) M(O2) M(inorganic carbon) bell(pH) I(NH3) I(HNO2) X. Substrate is TAN of ammonia oxidisers,
 * nitrite of nitrite oxidisers. Each population has a room of its own on a surface, its share of the capacity by
 * yield: what both oxidise of the same nitrogen makes cells in that ratio.
 * Growth, not activity, is limited by room: a share 1 - X/room of the activity makes cells, the rest runs on
 * without growth.
 * The lower flank of the bell is that of the film (acclimation.ts): it is what the film has got used to.
 */
export const aobReads = [
  'tan',
  'oxygen',
  'carbon',
  'pH',
  'ammonia',
  'aob',
  'acclimation',
  'nitrite',
] as const;

/** Nitrite oxidisers: the same with nitrite for substrate, which is also what nitrous acid comes of. */
export const nobReads = ['nitrite', 'oxygen', 'carbon', 'pH', 'ammonia', 'nob', 'acclimation'] as const;

/**
 * [mu, K of the substrate, K_O2, K_carbon, K_I ammonia, K_I nitrous acid, pH high, room g COD, 1/yield, h at pH high,
 * dissociation constant of nitrous acid (mol m-3)].
 */
function coefficients(
  values: Values,
  at: Conditions,
  population: 'aob' | 'nob',
  substrate: string,
): readonly number[] {
  const own = (name: string): number => values.value(`${population}.${name}`);
  const high = own('ph-high');
  const yields = values.value('aob.yield') + values.value('nob.yield');
  return [
    own('growth') * arrhenius(own('growth-theta'), at.temperature),
    own(substrate),
    own('k-oxygen'),
    own('k-carbon'),
    own('ki-ammonia'),
    own('ki-nitrous'),
    high,
    (values.value('biofilm.capacity') * at.surface * own('yield')) / yields,
    1 / own('yield'),
    hydrogenAt(high),
    hydrogenAt(values.value('nitrous.pk')),
  ];
}

/** Coefficients of ammonia oxidisers; half-saturations g m-3, of carbon mol m-3, inhibitors g N m-3. */
export const aobCoefficients = (values: Values, at: Conditions): readonly number[] =>
  coefficients(values, at, 'aob', 'k-tan');

/** Coefficients of nitrite oxidisers, in the same order. */
export const nobCoefficients = (values: Values, at: Conditions): readonly number[] =>
  coefficients(values, at, 'nob', 'k-nitrite');

/** Activity with so much nitrite in the water, less the factor of nitrous acid, g COD d-1. */
function withoutNitrous(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  return (
    k[0] *
    monod(v[at[0]], k[1]) *
    monod(v[at[1]], k[2]) *
    monod(v[at[2]], k[3]) *
    bell(v[at[3]], v[at[6]], k[6]) *
    inhibition(v[at[4]], k[4]) *
    v[at[5]]
  );
}

/** Share of nitrite that is nitrous acid, of a dissociation constant (mol m-3). */
function acidShare(pH: number, dissociation: number): number {
  const h = hydrogenAt(pH);
  return h / (h + dissociation);
}

/** Activity of ammonia oxidisers, g COD d-1. */
export function aobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  return withoutNitrous(v, at, k) * inhibition(v[at[7]] * acidShare(v[at[3]], k[10]), k[5]);
}

/** Activity of nitrite oxidisers, g COD d-1. */
export function nobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  return withoutNitrous(v, at, k) * inhibition(v[at[0]] * acidShare(v[at[3]], k[10]), k[5]);
}

/**
 * Fills d[0] to d[6] with the partials of the activity times `times`, but for what nitrite does as nitrous acid.
 * @returns the activity
 */
function partialsBut(
  nitrite: number,
  times: number,
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const substrate = monod(v[at[0]], k[1]);
  const oxygen = monod(v[at[1]], k[2]);
  const carbon = monod(v[at[2]], k[3]);
  const acidity = bell(v[at[3]], v[at[6]], k[6]);
  const ammonia = inhibition(v[at[4]], k[4]);
  const share = acidShare(v[at[3]], k[10]);
  const nitrous = inhibition(nitrite * share, k[5]);
  const cells = k[0] * v[at[5]] * times;
  const free = acidity * ammonia * nitrous;
  const food = substrate * oxygen * carbon;
  d[0] = monodSlope(v[at[0]], k[1]) * oxygen * carbon * free * cells;
  d[1] = monodSlope(v[at[1]], k[2]) * substrate * carbon * free * cells;
  d[2] = monodSlope(v[at[2]], k[3]) * substrate * oxygen * free * cells;
  d[3] =
    food *
    ammonia *
    cells *
    (bellSlope(v[at[3]], v[at[6]], k[6]) * nitrous -
      acidity * inhibitionSlope(nitrite * share, k[5]) * nitrite * share * (1 - share) * Math.LN10);
  d[4] = inhibitionSlope(v[at[4]], k[4]) * food * acidity * nitrous * cells;
  d[5] = k[0] * food * free * times;
  d[6] = bellByLow(v[at[3]], v[at[6]], k[6]) * food * ammonia * nitrous * cells;
  return food * free * k[0] * v[at[5]];
}

/** What the activity loses by a gram more of nitrite, as nitrous acid. */
function byNitrous(nitrite: number, v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  const share = acidShare(v[at[3]], k[10]);
  return withoutNitrous(v, at, k) * inhibitionSlope(nitrite * share, k[5]) * share;
}

/** Partials of the activity of ammonia oxidisers times `times`, by the eight variables. Returns the activity. */
export function aobActivityPartials(
  times: number,
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  d[7] = times * byNitrous(v[at[7]], v, at, k);
  return partialsBut(v[at[7]], times, v, at, k, d);
}

/** Partials of the activity of nitrite oxidisers times `times`, by the seven variables. Returns the activity. */
export function nobActivityPartials(
  times: number,
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const activity = partialsBut(v[at[0]], times, v, at, k, d);
  d[0] += times * byNitrous(v[at[0]], v, at, k);
  return activity;
}

type Activity = (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
type ActivityPartials = (
  times: number,
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
) => number;

/** Growth, g COD d-1: activity x room left. Variable 5 is the population, k[7] its room. */
export function growing(
  activity: Activity,
  activityPartials: ActivityPartials,
): Pick<Process, 'rate' | 'partials'> {
  return {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
      activity(v, at, k) * (1 - v[at[5]] / k[7]),
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
      const whole = activityPartials(1 - v[at[5]] / k[7], v, at, k, d);
      d[5] -= whole / k[7];
    },
  };
}

/** Oxidation without growth, g N d-1: activity x fullness / yield. */
export function idling(
  activity: Activity,
  activityPartials: ActivityPartials,
): Pick<Process, 'rate' | 'partials'> {
  return {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
      (activity(v, at, k) * v[at[5]] * k[8]) / k[7],
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
      const whole = activityPartials((v[at[5]] * k[8]) / k[7], v, at, k, d);
      d[5] += (whole * k[8]) / k[7];
    },
  };
}

/** Coefficients a place. */
const SIZE = 11;

/** The acid term of the bell: h (mol m-3) over that at the flank of the film. */
function acidTerm(h: number, flank: number): number {
  return h * 1e-3 * Math.exp(Math.LN10 * flank);
}

/**
 * Growth and idling of one population together: the activity is worked out once, and from the hydrogen ion in
 * place of the pH, so that the bell of rate-terms.ts, h / (h + h²/h_low + h_high), takes but one exponential. The
 * first process handed over is growth, the second idling, at the same places.
 * @param width variables a place
 * @param from where among them nitrite is
 */
function populationKernel(width: number, from: number): Kernel {
  return {
    rates: ([growth, idle], v, r) => {
      const { count, at, k } = growth;
      for (let i = 0, n = 0, o = 0; i < count; i++, n += width, o += SIZE) {
        const h = v[at[n + 3] + HYDROGEN_AFTER_PH];
        const living = v[at[n + 5]];
        const activity =
          k[o] *
          monod(v[at[n]], k[o + 1]) *
          monod(v[at[n + 1]], k[o + 2]) *
          monod(v[at[n + 2]], k[o + 3]) *
          inhibition(v[at[n + 4]], k[o + 4]) *
          inhibition((v[at[n + from]] * h) / (h + k[o + 10]), k[o + 5]) *
          (h / (h + h * acidTerm(h, v[at[n + 6]]) + k[o + 9])) *
          living;
        const full = living / k[o + 7];
        r[growth.row + i] = activity * (1 - full);
        r[idle.row + i] = activity * full * k[o + 8];
      }
    },
    partials: ([growth, idle], v) => {
      const { d } = growth;
      const e = idle.d;
      for (let i = 0, n = 0; i < growth.count; i++, n += width) {
        activityPartialsAt(growth, i, from, v);
        const living = v[growth.at[n + 5]];
        const activity = d[n + 5] * living;
        const room = growth.k[i * SIZE + 7];
        const perYield = growth.k[i * SIZE + 8];
        const full = living / room;
        const idling = full * perYield;
        for (let m = n; m < n + width; m++) {
          e[m] = d[m] * idling;
          d[m] *= 1 - full;
        }
        d[n + 5] -= activity / room;
        e[n + 5] += (activity * perYield) / room;
      }
    },
  };
}

/** Fills the partials of growth with those of the activity at one place; by the population, activity per cell. */
function activityPartialsAt(growth: Sites, i: number, from: number, v: Float64Array): void {
  const { at, k, d, width } = growth;
  const n = i * width;
  const o = i * SIZE;
  const h = v[at[n + 3] + HYDROGEN_AFTER_PH];
  const nitrite = v[at[n + from]];
  const substrate = monod(v[at[n]], k[o + 1]);
  const oxygen = monod(v[at[n + 1]], k[o + 2]);
  const carbon = monod(v[at[n + 2]], k[o + 3]);
  const ammonia = inhibition(v[at[n + 4]], k[o + 4]);
  const share = h / (h + k[o + 10]);
  const nitrous = inhibition(nitrite * share, k[o + 5]);
  const acid = acidTerm(h, v[at[n + 6]]);
  const base = k[o + 9] / h;
  const bell = 1 / (1 + acid + base);
  const cells = k[o] * v[at[n + 5]];
  const free = bell * ammonia * nitrous;
  const food = substrate * oxygen * carbon;
  const lost = inhibitionSlope(nitrite * share, k[o + 5]) * share * food * bell * ammonia * cells;
  d[n] = monodSlope(v[at[n]], k[o + 1]) * oxygen * carbon * free * cells;
  d[n + 1] = monodSlope(v[at[n + 1]], k[o + 2]) * substrate * carbon * free * cells;
  d[n + 2] = monodSlope(v[at[n + 2]], k[o + 3]) * substrate * oxygen * free * cells;
  d[n + 3] = Math.LN10 * ((acid - base) * bell * food * free * cells - lost * nitrite * (1 - share));
  d[n + 4] = inhibitionSlope(v[at[n + 4]], k[o + 4]) * food * bell * nitrous * cells;
  d[n + 5] = k[o] * food * free;
  d[n + 6] = -Math.LN10 * acid * bell * food * free * cells;
  if (from === 0) d[n] += lost;
  else d[n + from] = lost;
}

/** Ammonia oxidisers: nitrite is the last of their variables. */
export const aobKernel = populationKernel(aobReads.length, 7);

/** Nitrite oxidisers: nitrite is their substrate. */
export const nobKernel = populationKernel(nobReads.length, 0);
