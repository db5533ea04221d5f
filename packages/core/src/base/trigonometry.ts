/**
 * Sine, cosine and their inverses, the same bytes on every engine as `elementary.ts` is. Methods and coefficients of
 * fdlibm 5.3 (argument reduction, kernels of sine and cosine, arcsine), with its notice:
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved. Developed at SunPro, a Sun Microsystems, Inc.
 * business. Permission to use, copy, modify, and distribute this software is freely granted, provided that this notice
 * is preserved.
 */

/** Half of pi in parts of 33 bits, each with what is beyond it. */
const FIRST = 1.57079632673412561417;
const SECOND = 6.0771005063039659766e-11;
const THIRD = 2.0222662487111664558e-21;
const BEYOND_THIRD = 8.47842766036889956997e-32;
const PER_QUARTER = 6.36619772367581382433e-1;
/** Up to here a whole number of quarter turns times a part of 33 bits is exact. */
const FARTHEST = 1e5;

const HALF_PI = 1.570796326794896558;
const HALF_PI_LOW = 6.12323399573676603587e-17;

/** sin(x + y) of |x| up to pi/4 and its tail y. */
function sine(x: number, y: number): number {
  const z = x * x;
  const v = z * x;
  const r =
    8.33333333332248946124e-3 +
    z *
      (-1.98412698298579493134e-4 +
        z * (2.75573137070700676789e-6 + z * (-2.50507602534068634195e-8 + z * 1.58969099521155010221e-10)));
  return x - (z * (0.5 * y - v * r) - y - v * -1.66666666666666324348e-1);
}

/** cos(x + y) of |x| up to pi/4 and its tail y. */
function cosine(x: number, y: number): number {
  const z = x * x;
  const r =
    z *
    (4.16666666666666019037e-2 +
      z *
        (-1.38888888888741095749e-3 +
          z *
            (2.48015872894767294178e-5 +
              z *
                (-2.75573143513906633035e-7 +
                  z * (2.0875723212981748279e-9 + z * -1.13596475577881948265e-11)))));
  const half = 0.5 * z;
  const w = 1 - half;
  return w + (1 - w - half + (z * r - x * y));
}

/** sin of x moved on by some quarter turns. */
function turned(x: number, quarters: number): number {
  if (!(x >= -FARTHEST && x <= FARTHEST)) return Number.NaN;
  const n = Math.floor(x * PER_QUARTER + 0.5);
  // Three parts taken off one after another: what a subtraction rounds away is carried on.
  const a = x - n * FIRST;
  const b = n * SECOND;
  const c = a - b;
  const d = n * THIRD;
  const e = a - c - b - d - n * BEYOND_THIRD;
  const high = c + e;
  const low = c - high + e;
  const quarter = (n + quarters) & 3;
  const size = (quarter & 1) === 0 ? sine(high, low) : cosine(high, low);
  return quarter < 2 ? size : -size;
}

/** Sine of x radians, within one unit of the last place, for x from -100,000 to 100,000; beyond them NaN. */
export function sin(x: number): number {
  return turned(x, 0);
}

/** Cosine of x radians: see {@link sin}. */
export function cos(x: number): number {
  return turned(x, 1);
}

/** asin(x) - x of |x| up to 1/2. */
function beyondArc(x: number): number {
  const t = x * x;
  const top =
    t *
    (1.66666666666666657415e-1 +
      t *
        (-3.25565818622400915405e-1 +
          t *
            (2.01212532134862925881e-1 +
              t *
                (-4.00555345006794114027e-2 +
                  t * (7.91534994289814532176e-4 + t * 3.4793310759602116757e-5)))));
  const bottom =
    1 +
    t *
      (-2.40339491173441421878 +
        t * (2.02094576023350569471 + t * (-6.8828397160545329303e-1 + t * 7.70381505559019352791e-2)));
  return x * (top / bottom);
}

/** The angle in radians, from -pi/2 to pi/2, whose sine is x; within two units of the last place. NaN beyond -1 and 1. */
export function asin(x: number): number {
  const size = x < 0 ? -x : x;
  if (!(size <= 1)) return Number.NaN;
  if (size <= 0.5) return x + beyondArc(x);
  const root = Math.sqrt((1 - size) * 0.5);
  const angle = HALF_PI - (2 * (root + beyondArc(root)) - HALF_PI_LOW);
  return x < 0 ? -angle : angle;
}

/** The angle in radians, from 0 to pi, whose cosine is x; within two units of the last place. NaN beyond -1 and 1. */
export function acos(x: number): number {
  const size = x < 0 ? -x : x;
  if (!(size <= 1)) return Number.NaN;
  if (size <= 0.5) return HALF_PI - (x - (HALF_PI_LOW - beyondArc(x)));
  const root = Math.sqrt((1 - size) * 0.5);
  const angle = 2 * (root + beyondArc(root));
  return x < 0 ? Math.PI - (angle - 2 * HALF_PI_LOW) : angle;
}

/** The length of a vector of two, the same on every engine, without overflow of its squares. */
export function hypot(x: number, y: number): number {
  const a = Math.abs(x);
  const b = Math.abs(y);
  const large = a > b ? a : b;
  const small = a > b ? b : a;
  if (large === Infinity || small === Infinity) return Infinity;
  if (!(large > 0)) return large + small;
  const share = small / large;
  return large * Math.sqrt(1 + share * share);
}
