import { pow } from '../../base/elementary.js';
import { hydrogenAt } from '../../chemistry/acid-base.js';
import type { Values } from '../../library/values.js';
import type { Conditions, Process } from '../process.js';
import { covering, transferOf } from './film-coefficients.js';
import { reached, reachedByMost, reachedBySubstrate } from './film.js';
import {
  arrhenius,
  bareShare,
  bareShareSlope,
  bell,
  bellByLow,
  bellSlope,
  inhibition,
  inhibitionSlope,
  monod,
  monodSlope,
} from './rate-terms.js';

/**
 * Activity of a population of nitrifiers: growth that its water would allow, g COD d-1. What the cells that are awake
 * could do, mu(T) M(inorganic carbon) bell(pH) I(NH3) I(HNO2) X, is limited by the oxygen and then by the TAN that come
 * to the film through still water (film.ts); nitrite is made in the film itself, and limits its oxidisers as M(nitrite).
 * What heterotrophs cover of the surface rests (heterotroph.ts).
 * Salt takes a share of mu: 1 / (1 + (I/K)^n), I being the ionic strength of the water that morning (Moussa et al. 2006).
 * Each population has a room of its own on a surface, its share of the capacity by yield: what both oxidise of the same
 * nitrogen makes cells in that ratio.
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
  'heterotrophs',
  'awake',
  'nitrite',
] as const;

/** Nitrite oxidisers: the same with nitrite for substrate, which is also what nitrous acid comes of. */
export const nobReads = [
  'nitrite',
  'oxygen',
  'carbon',
  'pH',
  'ammonia',
  'nob',
  'acclimation',
  'heterotrophs',
  'awake',
] as const;

/**
 * [mu, K of the substrate, K_O2, K_carbon, K_I ammonia, K_I nitrous acid, pH high, room g COD, 1/yield, h at pH high,
 * dissociation constant of nitrous acid (mol m-3), transfer of oxygen and of TAN in g COD of growth that they allow
 * (m3 d-1 g COD g-1), heterotrophs that cover one half of what they cover at most (g COD), the share that they cover at most].
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
  const salt = pow(at.ionic / own('k-salt'), own('salt-power'));
  const perOxygen = (2 * values.value('molar.oxygen-gas')) / values.value('molar.nitrogen');
  return [
    (own('growth') * arrhenius(own('growth-theta'), at.temperature)) / (1 + salt),
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
    // What both populations together take of oxygen for the same nitrogen: each has its share of what comes.
    (transferOf(values, at, 'oxygen') * own('yield')) / perOxygen,
    transferOf(values, at, 'tan') * own('yield'),
    ...covering(values, at),
  ];
}

/** Coefficients of ammonia oxidisers; half-saturations g m-3, of carbon mol m-3, inhibitors g N m-3. */
export const aobCoefficients = (values: Values, at: Conditions): readonly number[] =>
  coefficients(values, at, 'aob', 'k-tan');

/** Coefficients of nitrite oxidisers, in the same order. */
export const nobCoefficients = (values: Values, at: Conditions): readonly number[] =>
  coefficients(values, at, 'nob', 'k-nitrite');

/** What cells with ample substrate and oxygen could do without nitrous acid, g COD d-1. */
function unhindered(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  return (
    k[0] *
    monod(v[at[2]], k[3]) *
    bell(v[at[3]], v[at[6]], k[6]) *
    inhibition(v[at[4]], k[4]) *
    v[at[5]] *
    v[at[8]]
  );
}

/** Fills the partials of `unhindered` times `times` by carbon, pH, ammonia, cells, flank and share awake. */
function unhinderedPartials(
  times: number,
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): void {
  const carbon = monod(v[at[2]], k[3]);
  const acidity = bell(v[at[3]], v[at[6]], k[6]);
  const ammonia = inhibition(v[at[4]], k[4]);
  const cells = k[0] * times;
  const awake = cells * v[at[5]] * v[at[8]];
  d[2] = monodSlope(v[at[2]], k[3]) * acidity * ammonia * awake;
  d[3] = carbon * bellSlope(v[at[3]], v[at[6]], k[6]) * ammonia * awake;
  d[4] = carbon * acidity * inhibitionSlope(v[at[4]], k[4]) * awake;
  d[5] = carbon * acidity * ammonia * cells * v[at[8]];
  d[6] = carbon * bellByLow(v[at[3]], v[at[6]], k[6]) * ammonia * awake;
  d[8] = carbon * acidity * ammonia * cells * v[at[5]];
}

/** Share of nitrite that is nitrous acid, of a dissociation constant (mol m-3). */
function acidShare(pH: number, dissociation: number): number {
  const h = hydrogenAt(pH);
  return h / (h + dissociation);
}

/** Activity of ammonia oxidisers, g COD d-1. */
export function aobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  const nitrous = inhibition(v[at[9]] * acidShare(v[at[3]], k[10]), k[5]);
  const supplied = reached(v[at[1]], unhindered(v, at, k) * nitrous, k[2], k[11]);
  return bareShare(v[at[7]], k[13], k[14]) * reached(v[at[0]], supplied, k[1], k[12]);
}

/** Activity of nitrite oxidisers, g COD d-1. */
export function nobActivity(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  const nitrous = inhibition(v[at[0]] * acidShare(v[at[3]], k[10]), k[5]);
  const most = unhindered(v, at, k) * nitrous * monod(v[at[0]], k[1]);
  return bareShare(v[at[7]], k[13], k[14]) * reached(v[at[1]], most, k[2], k[11]);
}

/** Partials of the activity of ammonia oxidisers times `times`, by the ten variables. Returns the activity. */
export function aobActivityPartials(
  times: number,
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const share = acidShare(v[at[3]], k[10]);
  const acid = v[at[9]] * share;
  const free = unhindered(v, at, k);
  const nitrous = inhibition(acid, k[5]);
  const most = free * nitrous;
  const supplied = reached(v[at[1]], most, k[2], k[11]);
  const used = reached(v[at[0]], supplied, k[1], k[12]);
  const bare = bareShare(v[at[7]], k[13], k[14]) * times;
  const bySupply = bare * reachedByMost(v[at[0]], supplied, k[1], k[12], used);
  const byMost = bySupply * reachedByMost(v[at[1]], most, k[2], k[11], supplied);
  const byAcid = byMost * free * inhibitionSlope(acid, k[5]) * share;
  unhinderedPartials(byMost * nitrous, v, at, k, d);
  d[0] = bare * reachedBySubstrate(v[at[0]], supplied, k[1], k[12], used);
  d[1] = bySupply * reachedBySubstrate(v[at[1]], most, k[2], k[11], supplied);
  d[3] -= byAcid * v[at[9]] * (1 - share) * Math.LN10;
  d[7] = bareShareSlope(v[at[7]], k[13], k[14]) * used * times;
  d[9] = byAcid;
  return bareShare(v[at[7]], k[13], k[14]) * used;
}

/** Partials of the activity of nitrite oxidisers times `times`, by the nine variables. Returns the activity. */
export function nobActivityPartials(
  times: number,
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const share = acidShare(v[at[3]], k[10]);
  const acid = v[at[0]] * share;
  const free = unhindered(v, at, k);
  const nitrous = inhibition(acid, k[5]);
  const food = monod(v[at[0]], k[1]);
  const most = free * nitrous * food;
  const used = reached(v[at[1]], most, k[2], k[11]);
  const bare = bareShare(v[at[7]], k[13], k[14]) * times;
  const byMost = bare * reachedByMost(v[at[1]], most, k[2], k[11], used);
  const byAcid = byMost * free * food * inhibitionSlope(acid, k[5]) * share;
  unhinderedPartials(byMost * nitrous * food, v, at, k, d);
  d[0] = byMost * free * nitrous * monodSlope(v[at[0]], k[1]) + byAcid;
  d[1] = bare * reachedBySubstrate(v[at[1]], most, k[2], k[11], used);
  d[3] -= byAcid * v[at[0]] * (1 - share) * Math.LN10;
  d[7] = bareShareSlope(v[at[7]], k[13], k[14]) * used * times;
  return bareShare(v[at[7]], k[13], k[14]) * used;
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
