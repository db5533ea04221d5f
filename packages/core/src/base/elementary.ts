/**
 * exp, log and their kin, worked out by additions, multiplications, divisions and square roots alone, which IEEE 754
 * rounds alike everywhere. The functions of `Math` need not be the same on two engines, and are not (Node 20, 22 and 24
 * differ in the last digit of powers): with these, results are the same bytes wherever they are worked out.
 *
 * The method and the coefficients of exp, expm1, log and log10 are those of fdlibm 5.3, with its notice:
 *
 * Copyright (C) 1993, 2004 by Sun Microsystems, Inc. All rights reserved. Developed at SunSoft, a Sun Microsystems, Inc.
 * business. Permission to use, copy, modify, and distribute this software is freely granted, provided that this notice
 * is preserved.
 */

import type { i32 } from './whole.js';

/** ln 2 in two parts: a whole multiple of the high part, up to 2^20 of them, is exact. */
const LN2_HIGH = 6.9314718036912381649e-1;
const LN2_LOW = 1.90821492927058770002e-10;
const PER_LN2 = 1.442695040888963387;
/** Half of ln 2 and one and a half, as finely as fdlibm looks: by the high half of a double. */
const HALF_LN2 = 1453635 / 4194304;
const LN2_AND_HALF = 1090226 / 1048576;
/** Where, below the square root of 2 and above that of 1/2, {@link log} takes another sum: less 1. */
const NEAR_ROOT = 398459 / 1048576;
const NEAR_HALF_ROOT = 1488977 / 2097152 - 1;

/** The powers of 2 that a double holds, from 2^-1074 on. */
const LEAST_POWER = -1074;
const powers = new Float64Array(1024 - LEAST_POWER);
for (let k = LEAST_POWER, power = Number.MIN_VALUE; k < 1024; k++, power *= 2)
  powers[k - LEAST_POWER] = power;

/** 2^k, exactly, of a whole k; 0 below 2^-1074, Infinity from 2^1024 on. */
export function powerOfTwo(k: i32): number {
  return k < LEAST_POWER ? 0 : k > 1023 ? Infinity : powers[k - LEAST_POWER];
}

/** x·2^k of a whole k from -2000 to 2000, rounded once. */
function scaled(x: number, k: i32): number {
  if (k > 1023) return x * powerOfTwo(1000) * powerOfTwo(k - 1000);
  // Below the smallest normal number in two goes, the first of which is exact: one rounding, not two.
  return k < -1022 ? x * powerOfTwo(k + 1000) * powerOfTwo(-1000) : x * powers[k - LEAST_POWER];
}

/** The high half of a double: sign, exponent and the first 20 bits. */
const double = new Float64Array(1);
const halves = new Int32Array(double.buffer);
double[0] = 1;
const HIGH = halves[1] === 0 ? 0 : 1;

/** e^x - 1 - x of a small x, in the form that fdlibm needs: x - x²·(1/6 - ...). */
function bentDown(x: number): number {
  const t = x * x;
  return (
    x -
    t *
      (1.66666666666666019037e-1 +
        t *
          (-2.77777777770155933842e-3 +
            t *
              (6.61375632143793436117e-5 + t * (-1.6533902205465251539e-6 + t * 4.13813679705723846039e-8))))
  );
}

/** e^x, within one unit of the last place. Infinity above 709.78, 0 below -745.13, NaN of NaN. */
export function exp(x: number): number {
  const size = x < 0 ? -x : x;
  if (!(size >= HALF_LN2)) {
    if (size < 3.725290298461914e-9) return 1 + x;
    const c = bentDown(x);
    return 1 - ((x * c) / (c - 2) - x);
  }
  if (x > 7.09782712893383973096e2) return Infinity;
  if (x < -7.4513321910194110842e2) return 0;
  if (x === 1) return Math.E;
  const k = size < LN2_AND_HALF ? (x < 0 ? -1 : 1) : (PER_LN2 * x + (x < 0 ? -0.5 : 0.5)) | 0;
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const rest = high - low;
  const c = bentDown(rest);
  return scaled(1 - (low - (rest * c) / (2 - c) - high), k);
}

/** What log(1 + f) needs beyond its first terms, for s = f / (2 + f). */
function logRest(s: number): number {
  const z = s * s;
  const w = z * z;
  const even = w * (3.999999999940941908e-1 + w * (2.222219843214978396e-1 + w * 1.531383769920937332e-1));
  const odd =
    z *
    (6.66666666666673513e-1 +
      w * (2.857142874366239149e-1 + w * (1.818357216161805012e-1 + w * 1.479819860511658591e-1)));
  return odd + even;
}

/** x parted into 2^k and a factor from sqrt(1/2) to sqrt(2), which {@link log} and {@link pow} start from. */
let exponent: i32 = 0;
function factorOf(x: number): number {
  let k: i32 = 0;
  let normal = x;
  if (x < 2.2250738585072014e-308) {
    normal = x * 18014398509481984;
    k = -54;
  }
  double[0] = normal;
  const high = halves[HIGH];
  k += (high >> 20) - 1023 + (((high & 0xfffff) + 0x95f64) >> 20);
  exponent = k;
  return scaled(normal, (normal === x ? 0 : -54) - k);
}

/** Natural logarithm, within one unit of the last place. -Infinity of 0, NaN below 0. */
export function log(x: number): number {
  if (!(x > 0)) return x === 0 ? -Infinity : Number.NaN;
  if (x === Infinity) return x;
  const f = factorOf(x) - 1;
  const k = exponent;
  if (f === 0) return k === 0 ? 0 : k * LN2_HIGH + k * LN2_LOW;
  const s = f / (2 + f);
  const rest = logRest(s);
  // Near the square root of 2 the square of f is taken out first, as fdlibm does.
  if (f >= NEAR_ROOT || f < NEAR_HALF_ROOT) {
    const half = 0.5 * f * f;
    const bent = s * (half + rest);
    return k === 0 ? f - (half - bent) : k * LN2_HIGH - (half - (bent + k * LN2_LOW) - f);
  }
  const bent = s * (f - rest);
  return k === 0 ? f - bent : k * LN2_HIGH - (bent - k * LN2_LOW - f);
}

/** The whole number k for which 2^k <= x < 2^(k + 1), exactly, of a finite x above 0. */
export function floorLog2(x: number): i32 {
  factorOf(x);
  const k = exponent;
  return x < powerOfTwo(k) ? k - 1 : k;
}

/** Logarithm to base 10, within two units of the last place; exact of 1. */
export function log10(x: number): number {
  if (!(x > 0) || x === Infinity) return log(x);
  const k = floorLog2(x);
  const twos = k < 0 ? k + 1 : k;
  const factor = scaled(x, 0 - twos);
  return (
    twos * 3.69423907715893078616e-13 +
    4.34294481903251816668e-1 * log(factor) +
    twos * 3.01029995663611771306e-1
  );
}

/**
 * x^y of an x from 0: within two units of the last place while |y·ln x| is below 30, beyond that within |y·ln x|/16 of
 * them. log(x) is held in two parts, the first of 24 bits, so that its product with y loses nothing. NaN of an x below 0.
 */
export function pow(x: number, y: number): number {
  if (y === 0) return 1;
  if (y === 1 || x !== x) return x;
  if (!(x > 0) || x === Infinity || !(y > -Infinity && y < Infinity)) return atTheEdges(x, y);
  const f = factorOf(x) - 1;
  const k = exponent;
  const half = 0.5 * f * f;
  const first = Math.fround(f - half);
  const s = f / (2 + f);
  const second = f - first - half + s * (half + logRest(s));
  const whole = k * LN2_HIGH;
  const high = Math.fround(whole + first);
  const low = whole - high + first + (second + k * LN2_LOW);
  const rough = Math.fround(y);
  if (!(rough > -1e30 && rough < 1e30)) return atTheEdges(x, y);
  const product = rough * high;
  const beyond = (y - rough) * high + y * low;
  const z = product + beyond;
  const power = exp(z);
  return power === Infinity || power === 0 ? power : power + power * (product - z + beyond);
}

/** Powers of 0, of infinite numbers and to exponents beyond all bounds. */
function atTheEdges(x: number, y: number): number {
  if (x < 0 || y !== y) return Number.NaN;
  const size = x > 1 ? 1 : x < 1 ? -1 : 0;
  if (size === 0) return y === Infinity || y === -Infinity ? Number.NaN : 1;
  return size > 0 === y > 0 ? Infinity : 0;
}

/** 10^y: see {@link pow}. A whole power from 1e-22 to 1e22 is the double nearest to it. */
export function pow10(y: number): number {
  if (y >= -22 && y <= 22 && Math.floor(y) === y) {
    const n = y | 0;
    return n < 0 ? 1 / tens[0 - n] : tens[n];
  }
  return pow(10, y);
}

/** 10^0 to 10^22: what a double holds exactly. */
const tens = new Float64Array(23);
for (let n = 0, power = 1; n < 23; n++, power *= 10) tens[n] = power;

/** The correction of e^x - 1 for a small x: see fdlibm's s_expm1.c. */
function expm1Term(x: number, halfOf: number, square: number): number {
  const r =
    1 +
    square *
      (-3.33333333333331316428e-2 +
        square *
          (1.58730158725481460165e-3 +
            square *
              (-7.93650757867487942473e-5 +
                square * (4.00821782732936239552e-6 + square * -2.01099218183624371326e-7))));
  const t = 3 - r * halfOf;
  return square * ((r - t) / (6 - x * t));
}

/** e^x - 1, within one unit of the last place, near 0 too. */
export function expm1(x: number): number {
  const size = x < 0 ? -x : x;
  if (!(size >= HALF_LN2)) {
    if (size < 5.551115123125783e-17 || x !== x) return x;
    const halfOf = 0.5 * x;
    const square = x * halfOf;
    return x - (x * expm1Term(x, halfOf, square) - square);
  }
  if (x > 7.09782712893383973096e2) return Infinity;
  if (x < -38.816243) return -1;
  const k = size < LN2_AND_HALF ? (x < 0 ? -1 : 1) : (PER_LN2 * x + (x < 0 ? -0.5 : 0.5)) | 0;
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const rest = high - low;
  const lost = high - rest - low;
  const halfOf = 0.5 * rest;
  const square = rest * halfOf;
  const term = rest * (expm1Term(rest, halfOf, square) - lost) - lost - square;
  if (k === -1) return 0.5 * (rest - term) - 0.5;
  if (k === 1) return rest < -0.25 ? -2 * (term - (rest + 0.5)) : 1 + 2 * (rest - term);
  if (k <= -2 || k > 56) return scaled(1 - (term - rest), k) - 1;
  const less = powerOfTwo(0 - k);
  return scaled(k < 20 ? 1 - less - (term - rest) : rest - (term + less) + 1, k);
}

/** x multiplied by itself n times, of a small whole n from 1. */
export function wholePower(x: number, n: i32): number {
  let product = x;
  for (let i = 1; i < n; i++) product *= x;
  return product;
}
