import { pow, wholePower } from '../../base/elementary.js';
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

/** Sharpness of the bend between what is offered and what is wanted: at half of the appetite 0.3 % of a ration is left. */
const BEND = 6;

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
 * this temperature, d-1; how it falls with size; oxygen, un-ionised ammonia, nitrite without chloride (g m-3) at which half
 * is eaten; chloride that halves the effect of nitrite, g m-3; carbon dioxide at which half is eaten, mol m-3].
 */
export function intakeCoefficients(values: Values, at: Conditions): readonly number[] {
  const eaten = 1 - values.value('fish.uneaten');
  const half = values.value('fish.appetite-toxic');
  const carbonDioxide = values.value('molar.carbon') + values.value('molar.oxygen-gas');
  return [
    at.fed * eaten,
    at.fedShare * eaten,
    values.value('species.appetite') * temperatureShare(values, at.temperature),
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
const free = (c: number, k: number): number => (c > 0 ? 1 / (1 + wholePower(c / k, 2)) : 1);
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

/** The smaller of two amounts, with a bend in place of the corner; 0 where one is none. */
function lesser(a: number, b: number): number {
  if (!(a > 0 && b > 0)) return 0;
  const [less, more] = a < b ? [a, b] : [b, a];
  return less * pow(1 + wholePower(less / more, BEND), -1 / BEND);
}

/** d(lesser)/da. */
function lesserSlope(a: number, b: number): number {
  if (!(b > 0)) return 0;
  if (!(a > 0)) return 1;
  if (a < b) return pow(1 + wholePower(a / b, BEND), -1 / BEND - 1);
  const ratio = b / a;
  return wholePower(ratio, BEND + 1) * pow(1 + wholePower(ratio, BEND), -1 / BEND - 1);
}

/** Appetite of a group in its water, g d-1. */
function appetite(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  const mass = v[at[5]];
  if (!(mass > 0)) return 0;
  return (
    k[2] *
    mass *
    pow(relativeMass(mass, v[at[6]]), -k[3]) *
    enough(v[at[0]], k[4]) *
    free(v[at[1]], k[5]) *
    free(v[at[2]] * guarded(v[at[3]], k[7]), k[6]) *
    free(v[at[4]], k[8])
  );
}

/** Feed eaten by a group, g d-1: what is offered or what it wants, whichever is less. */
export function intake(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  return lesser(k[0] + k[1] * v[at[5]], appetite(v, at, k));
}

/** Fills d[0] to d[6] with the partials of feed eaten. Returns feed eaten, g d-1. */
export function intakePartials(
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
  d: Float64Array,
): number {
  const mass = v[at[5]];
  const number = v[at[6]];
  const offered = k[0] + k[1] * mass;
  const wanted = appetite(v, at, k);
  const byOffered = lesserSlope(offered, wanted);
  const byWanted = lesserSlope(wanted, offered);
  const relative = relativeMass(mass, number);
  const size = mass > 0 ? k[2] * pow(relative, -k[3]) : 0;
  const nitrite = v[at[2]];
  const guard = guarded(v[at[3]], k[7]);
  const factors = [
    enough(v[at[0]], k[4]),
    free(v[at[1]], k[5]),
    free(nitrite * guard, k[6]),
    free(v[at[4]], k[8]),
  ];
  const [oxygen, ammonia, brown, acid] = factors;
  const base = size * mass * byWanted;
  d[0] = base * enoughSlope(v[at[0]], k[4]) * ammonia * brown * acid;
  d[1] = base * oxygen * freeSlope(v[at[1]], k[5]) * brown * acid;
  const byNitrite = base * oxygen * ammonia * freeSlope(nitrite * guard, k[6]) * acid;
  d[2] = byNitrite * guard;
  d[3] = byNitrite * nitrite * guardedSlope(v[at[3]], k[7]);
  d[4] = base * oxygen * ammonia * brown * freeSlope(v[at[4]], k[8]);
  const well = size * oxygen * ammonia * brown * acid;
  d[5] = byOffered * k[1] + byWanted * well * (1 - (k[3] * mass * byMass(number)) / relative);
  d[6] = byWanted * well * mass * ((-k[3] / relative) * byNumber(relative, number));
  return lesser(offered, wanted);
}
