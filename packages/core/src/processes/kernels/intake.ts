import type { i32 } from '../../base/whole.js';
import { pow } from '../../base/elementary.js';
import { sin } from '../../base/trigonometry.js';
import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';

/** What intake depends on, in this order; a process may read more after them. */
export const intakeReads = [
  'oxygen',
  'ammonia',
  'nitrite',
  'chloride',
  'carbon-dioxide',
  'fish-mass',
  'fish-number',
] as const;

/** How many variables and coefficients intake has. */
export const INTAKE_READS = intakeReads.length;
export const INTAKE_COEFFICIENTS = 9;

/** Body mass, g, for which numbers that go with size are stated. */
export const STATED_MASS = 100;

/** So many fish of the stated mass stand beside every group, so that mean mass has a value where there are none. */
const BESIDE = 1e-6;

/**
 * Sharpness of the bend between what is offered and what is wanted: at 0.85 of the appetite 2 % of a ration is left, at all of it
 * 7 %. So much is left by an appetite that varies by 17 % from day to day, which is the middle of 14-20 % of groups of 25 bass
 * (abstract: two to four days of 25 fish tell their mean within 10 %). Trout on 0.85 of satiety used their feed no worse
 * (Azevedo 1998, abstract).
 */
const BEND = 10;

/** Mean mass of a fish, in units of the stated mass; 1 where there are none. */
export function relativeMass(mass: number, number: number): number {
  return (mass + STATED_MASS * BESIDE) / ((number + BESIDE) * STATED_MASS);
}

/** d(relative mass)/d(mass). */
export const byMass = (number: number): number => 1 / ((number + BESIDE) * STATED_MASS);

/** d(relative mass)/d(number), of that relative mass. */
export const byNumber = (relative: number, number: number): number => -relative / (number + BESIDE);

/**
 * Share of full appetite at a water temperature, 0..1: 0 at the ends of the range in which a species feeds, 1 in its
 * optimum, a quarter of a sine between.
 */
export function temperatureShare(values: Values, temperature: number): number {
  const low = values.value('species.temperature-low');
  const high = values.value('species.temperature-high');
  const rising = (temperature - low) / (values.value('species.temperature-optimum-low') - low);
  const falling = (high - temperature) / (high - values.value('species.temperature-optimum-high'));
  return sin((Math.PI / 2) * Math.max(0, Math.min(1, rising, falling)));
}

/**
 * [feed offered that fish could eat as a mass, g d-1; the same as a share of body mass, d-1; appetite of fish of 100 g at
 * this temperature, d-1, at the pace of feeding: what they want in a day they eat in the hours in which it is given; how it falls with size; oxygen, un-ionised ammonia, nitrite without chloride (g m-3) at which half
 * is eaten; chloride that halves the effect of nitrite, g m-3; carbon dioxide at which half is eaten, mol m-3].
 */
export function intakeCoefficients(values: Values, at: Conditions): readonly number[] {
  const eaten = 1 - values.value('fish.uneaten');
  const half = values.value('fish.appetite-toxic');
  const carbonDioxide = values.value('molar.carbon') + values.value('molar.oxygen-gas');
  return [
    at.fed * eaten,
    at.fedShare * eaten,
    values.value('species.appetite') * temperatureShare(values, at.temperature) * at.pace,
    values.value('fish.appetite-exponent'),
    values.value('fish.appetite-oxygen') * values.value('species.limit-oxygen'),
    half * values.value('species.lethal-ammonia'),
    half * values.value('species.lethal-nitrite'),
    values.value('species.chloride-halving'),
    (values.value('fish.appetite-carbon-dioxide') * values.value('species.lethal-carbon-dioxide')) /
      carbonDioxide,
  ];
}

/** c^2 / (c^2 + K^2); 0 below zero. */
const enough = (c: number, k: number): number => (c > 0 ? (c * c) / (c * c + k * k) : 0);
const enoughSlope = (c: number, k: number): number =>
  c > 0 ? (2 * c * k * k) / ((c * c + k * k) * (c * c + k * k)) : 0;

/** 1 / (1 + (c / K)^2); 1 below zero. */
const free = (c: number, k: number): number => (c > 0 ? 1 / (1 + (c / k) * (c / k)) : 1);
const freeSlope = (c: number, k: number): number => {
  const share = free(c, k);
  return c > 0 ? (-2 * c * share * share) / (k * k) : 0;
};

/** By how much chloride lessens what nitrite does: 1 without any; the gills take up both by one way. */
export const guarded = (chloride: number, halving: number): number =>
  chloride > 0 ? halving / (halving + chloride) : 1;

/** d(guarded)/d(chloride). */
export const guardedSlope = (chloride: number, halving: number): number =>
  chloride > 0 ? -halving / ((halving + chloride) * (halving + chloride)) : 0;

/** x to the power of `BEND`. */
const steep = (x: number): number => {
  const square = x * x;
  const fifth = square * square * x;
  return fifth * fifth;
};

/** The smaller of two amounts, with a bend in place of the corner; 0 where one is none. */
function lesser(a: number, b: number): number {
  if (!(a > 0 && b > 0)) return 0;
  return a < b ? a * pow(1 + steep(a / b), -1 / BEND) : b * pow(1 + steep(b / a), -1 / BEND);
}

/** d(lesser)/da, where `least` is the lesser of the two. */
function lesserSlope(a: number, b: number, least: number): number {
  if (!(b > 0)) return 0;
  if (!(a > 0)) return 1;
  if (a < b) return least / a / (1 + steep(a / b));
  const ratio = steep(b / a);
  return ((least / a) * ratio) / (1 + ratio);
}

/**
 * Appetite of a group in its water, g d-1. Here and below the places of its variables begin at at[n], its coefficients at
 * k[o].
 */
function appetite(v: Float64Array, at: ArrayLike<number>, n: i32, k: ArrayLike<number>, o: i32): number {
  const mass = v[at[n + 5]];
  if (!(mass > 0)) return 0;
  return (
    k[o + 2] *
    mass *
    pow(relativeMass(mass, v[at[n + 6]]), -k[o + 3]) *
    enough(v[at[n]], k[o + 4]) *
    free(v[at[n + 1]], k[o + 5]) *
    free(v[at[n + 2]] * guarded(v[at[n + 3]], k[o + 7]), k[o + 6]) *
    free(v[at[n + 4]], k[o + 8])
  );
}

/** Feed eaten by a group, g d-1: what is offered or what it wants, whichever is less. */
export const intake = (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
  intakeAt(v, at, 0, k, 0);

/** The same. */
export function intakeAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
): number {
  return lesser(k[o] + k[o + 1] * v[at[n + 5]], appetite(v, at, n, k, o));
}

/** Fills d[m] to d[m + 6] with the partials of feed eaten. Returns feed eaten, g d-1. */
export function intakePartialsAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  d: Float64Array,
  m: i32,
): number {
  const mass = v[at[n + 5]];
  const number = v[at[n + 6]];
  const relative = relativeMass(mass, number);
  const size = mass > 0 ? k[o + 2] * pow(relative, -k[o + 3]) : 0;
  const nitrite = v[at[n + 2]];
  const guard = guarded(v[at[n + 3]], k[o + 7]);
  const oxygen = enough(v[at[n]], k[o + 4]);
  const ammonia = free(v[at[n + 1]], k[o + 5]);
  const brown = free(nitrite * guard, k[o + 6]);
  const acid = free(v[at[n + 4]], k[o + 8]);
  const well = size * oxygen * ammonia * brown * acid;
  const offered = k[o] + k[o + 1] * mass;
  const wanted = well * mass;
  const eaten = lesser(offered, wanted);
  const byOffered = lesserSlope(offered, wanted, eaten);
  const byWanted = lesserSlope(wanted, offered, eaten);
  const base = size * mass * byWanted;
  d[m] = base * enoughSlope(v[at[n]], k[o + 4]) * ammonia * brown * acid;
  d[m + 1] = base * oxygen * freeSlope(v[at[n + 1]], k[o + 5]) * brown * acid;
  const byNitrite = base * oxygen * ammonia * freeSlope(nitrite * guard, k[o + 6]) * acid;
  d[m + 2] = byNitrite * guard;
  d[m + 3] = byNitrite * nitrite * guardedSlope(v[at[n + 3]], k[o + 7]);
  d[m + 4] = base * oxygen * ammonia * brown * freeSlope(v[at[n + 4]], k[o + 8]);
  d[m + 5] = byOffered * k[o + 1] + byWanted * well * (1 - (k[o + 3] * mass * byMass(number)) / relative);
  d[m + 6] = byWanted * well * mass * ((-k[o + 3] / relative) * byNumber(relative, number));
  return eaten;
}
