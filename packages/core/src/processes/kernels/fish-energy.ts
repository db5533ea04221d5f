import type { i32 } from '../../base/whole.js';
import { pow } from '../../base/elementary.js';
import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import {
  byMass,
  byNumber,
  INTAKE_COEFFICIENTS,
  INTAKE_READS,
  intakeAt,
  intakeCoefficients,
  intakeReads,
  relativeMass,
} from './intake.js';
import type { Kernel } from './kernel.js';
import { leanDemand } from './lean-body.js';
import { arrhenius, monod, monodSlope } from './rate-terms.js';

/** Nitrogen of feed, g N per g (0.16 of protein: the 6.25 convention). */
export function feedNitrogen(values: Values): number {
  return values.value('feed.protein') * values.value('protein.nitrogen');
}

/** Body fat that is usual in a fish of a relative mass, g COD per g wet: rises with size (Lupatsch et al. 1998). */
export function usualFat(values: Values, relative: number): number {
  const stated = values.value('species.body-demand') - leanDemand(values);
  return stated * pow(relative, values.value('fish.fat-exponent'));
}

/** Energy that a gram of feed eaten adds to the body, g COD: what is digested times the share retained. */
export function retainedDemand(values: Values): number {
  return (
    values.value('feed.demand') *
    values.value('species.energy-digestibility') *
    values.value('species.energy-retention')
  );
}

/** Nitrogen that is digested of a gram of feed, g N. */
export const digestedNitrogen = (values: Values): number =>
  feedNitrogen(values) * values.value('species.protein-digestibility');

/** What growth depends on: intake, and body fat. */
export const growthReads = [...intakeReads, 'fish-fat'] as const;
const FAT = INTAKE_READS;
const OWN = INTAKE_COEFFICIENTS;

/**
 * Those of intake, then [energy retained per g of feed, g COD; most growth that its protein allows, g per g; lean body,
 * g COD per g; fat usual at 100 g, g COD per g; its exponent of size].
 */
export function growthCoefficients(values: Values, at: Conditions): readonly number[] {
  const protein = values.value('fish.protein-retention') * digestedNitrogen(values);
  return [
    ...intakeCoefficients(values, at),
    retainedDemand(values),
    protein / values.value('species.body-nitrogen'),
    leanDemand(values),
    usualFat(values, 1),
    values.value('fish.fat-exponent'),
  ];
}

/** Less than this of a body, g, is no atom of one: what is left of a dead group; its inverse still is a number. */
const GONE = 1e-200;

/**
 * Growth per g of feed eaten, and its partials by mass, number and fat into `out`. Retained energy goes to lean body and
 * fat in the proportion of a fish of this size, to more lean body where the fish is fat, to less where it is thin:
 * RE F / (l F + (1 + y) f^2 B); but no faster than digested protein allows. Here and below the places of variables begin
 * at at[n], coefficients at k[o].
 */
function perFeed(
  mass: number,
  number: number,
  fat: number,
  k: ArrayLike<number>,
  o: i32,
  out: Float64Array,
): number {
  for (let m = 0; m < 3; m++) out[m] = 0;
  if (!(mass > GONE && fat > GONE)) return 0;
  const most = k[o + OWN + 1];
  const exponent = k[o + OWN + 4];
  const relative = relativeMass(mass, number);
  const usual = k[o + OWN + 3] * pow(relative, exponent);
  const marginal = (1 + exponent) * usual * usual;
  const byRelative = (2 * exponent * marginal) / relative;
  const whole = k[o + OWN + 2] * fat + marginal * mass;
  const allowed = (k[o + OWN] * fat) / whole;
  // The bend is of the fourth power: sharp enough, and two square roots undo it.
  const square = (allowed / most) * (allowed / most);
  const sum = 1 + square * square;
  const root = 1 / Math.sqrt(Math.sqrt(sum));
  const bend = root / sum;
  out[0] = (-bend * allowed * (marginal + mass * byRelative * byMass(number))) / whole;
  out[1] = (-bend * allowed * mass * byRelative * byNumber(relative, number)) / whole;
  // Quotients one by one: the square of what is left of a dead group is 0 in a computer.
  out[2] = bend * k[o + OWN] * (marginal / whole) * (mass / whole);
  return allowed * root;
}

const parts = new Float64Array(3);

/** Growth of a group, g wet d-1. */
export const growth = (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
  growthAt(v, at, 0, k, 0, intakeAt(v, at, 0, k, 0));

/** The same, of what is eaten. */
export function growthAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  eaten: number,
): number {
  return eaten * perFeed(v[at[n + 5]], v[at[n + 6]], v[at[n + FAT]], k, o, parts);
}

/** Turns the partials of what is `eaten` in d[m] to d[m + 6] into those of growth, d[m] to d[m + 7]. */
export function growthPartialsAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  eaten: number,
  d: Float64Array,
  m: i32,
): void {
  const each = perFeed(v[at[n + 5]], v[at[n + 6]], v[at[n + FAT]], k, o, parts);
  for (let q = 0; q < INTAKE_READS; q++) d[m + q] *= each;
  d[m + 5] += eaten * parts[0];
  d[m + 6] += eaten * parts[1];
  d[m + FAT] = eaten * parts[2];
}

/** What upkeep depends on. */
export const upkeepReads = ['oxygen', 'fish-mass', 'fish-number', 'fish-fat'] as const;

/**
 * [energy burnt by fish of 100 g, g COD per g and day; how it rises with the mass of a fish; half-saturation of oxygen,
 * g m-3; fat per body at which lean body and fat are burnt alike, g COD per g].
 */
export function upkeepCoefficients(values: Values, at: Conditions): readonly number[] {
  return [
    values.value('species.energy-retention') *
      values.value('species.maintenance') *
      arrhenius(
        values.value('fish.maintenance-theta'),
        at.temperature,
        values.value('species.reference-temperature'),
      ),
    values.value('fish.maintenance-exponent'),
    values.value('fish.k-oxygen'),
    values.value('fish.fasting-lean'),
  ];
}

/** Energy that upkeep takes from the body, g COD d-1; its partials by oxygen, mass and number into `out`. */
function burntAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  out: Float64Array,
): number {
  const oxygen = v[at[n]];
  const mass = v[at[n + 1]];
  const number = v[at[n + 2]];
  const relative = relativeMass(mass, number);
  const air = monod(oxygen, k[o + 2]);
  const exponent = k[o + 1] - 1;
  const each = relative > 0 ? k[o] * pow(relative, exponent) : 0;
  out[0] = each * mass * monodSlope(oxygen, k[o + 2]);
  out[1] = relative > 0 ? each * air * (1 + (exponent * mass * byMass(number)) / relative) : 0;
  out[2] = relative > 0 ? (each * air * mass * exponent * byNumber(relative, number)) / relative : 0;
  return each * mass * air;
}

/** Share of what is burnt that is fat: F / (F + a B); 0 where there is none. */
const fatShare = (fat: number, mass: number, a: number): number =>
  fat > 0 && mass > 0 ? fat / (fat + a * mass) : 0;

/** Upkeep as fat (`of` 1) or as lean body (0), in g COD d-1 times `scale`. */
const upkeepOf = (
  fatty: boolean,
): {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
} => ({
  rate: (v, at, k) => {
    const share = fatShare(v[at[3]], v[at[1]], k[3]);
    return burntAt(v, at, 0, k, 0, parts) * (fatty ? share : 1 - share);
  },
  partials: (v, at, k, d) => {
    const mass = v[at[1]];
    const fat = v[at[3]];
    const whole = burntAt(v, at, 0, k, 0, parts);
    const share = fatShare(fat, mass, k[3]);
    const sum = fat + k[3] * mass;
    const there = fat > 0 && mass > 0;
    const sign = fatty ? 1 : -1;
    for (let m = 0; m < 3; m++) d[m] = parts[m] * (fatty ? share : 1 - share);
    d[1] -= there ? sign * (whole / sum) * (fat / sum) * k[3] : 0;
    d[3] = there ? sign * (whole / sum) * ((k[3] * mass) / sum) : 0;
  },
});

/** Coefficients and variables of upkeep. */
const UPKEEP = 4;

/** Upkeep from fat and from lean body together, in this order: what is burnt is worked out once a group. */
const upkeepKernel: Kernel = {
  name: 'burnt',
  rates: ([fatty, lean], v, r) => {
    const { count, at, k } = fatty;
    for (let i = 0, n = 0; i < count; i++, n += UPKEEP) {
      const share = fatShare(v[at[n + 3]], v[at[n + 1]], k[n + 3]);
      const whole = burntAt(v, at, n, k, n, parts);
      r[fatty.row + i] = whole * share;
      r[lean.row + i] = whole * (1 - share);
    }
  },
  partials: ([fatty, lean], v) => {
    const { count, at, k, d } = fatty;
    const e = lean.d;
    for (let i = 0, n = 0; i < count; i++, n += UPKEEP) {
      const mass = v[at[n + 1]];
      const fat = v[at[n + 3]];
      const whole = burntAt(v, at, n, k, n, parts);
      const share = fatShare(fat, mass, k[n + 3]);
      const sum = fat + k[n + 3] * mass;
      const there = fat > 0 && mass > 0;
      const byMass = there ? -(whole / sum) * (fat / sum) * k[n + 3] : 0;
      const byFat = there ? (whole / sum) * ((k[n + 3] * mass) / sum) : 0;
      for (let m = 0; m < 3; m++) {
        d[n + m] = parts[m] * share;
        e[n + m] = parts[m] * (1 - share);
      }
      d[n + 1] += byMass;
      e[n + 1] -= byMass;
      d[n + 3] = byFat;
      e[n + 3] = -byFat;
    }
  },
};

/** Body fat burnt by upkeep, g COD d-1. */
export const fatUpkeep = { ...upkeepOf(true), kernel: upkeepKernel };

/** Lean body burnt by upkeep, g COD d-1. */
export const leanUpkeep = { ...upkeepOf(false), kernel: upkeepKernel };
