import { describe, expect, it } from 'vitest';
import {
  exp,
  expm1,
  floorLog2,
  log,
  log10,
  pow,
  pow10,
  powerOfTwo,
  wholePower,
} from '../../../../packages/core/src/base/elementary.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import { acos, asin, cos, hypot, sin } from '../../../../packages/core/src/base/trigonometry.js';
import * as exact from '../../../support/high-precision.js';
import { full } from '../../../support/length.js';

const many = full ? 5000 : 400;
const random = createRandom(20);
const between = (low: number, high: number): number => low + (high - low) * random();
/** Spread over powers of ten. */
const spread = (low: number, high: number): number =>
  Number(`${between(1, 10)}e${Math.floor(between(low, high))}`);
const drawn = (draw: () => number): readonly number[] => Array.from({ length: many }, draw);
const { exactly, unitsOff } = exact;

type Case = readonly [
  name: string,
  units: number,
  of: (x: number) => number,
  to: (x: bigint) => bigint,
  at: readonly number[],
];

/** Each function, what it promises in units of the last place, and where it is held to that. */
const cases: readonly Case[] = [
  [
    'exp',
    1,
    exp,
    exact.exp,
    [...drawn(() => between(-150, 700)), ...drawn(() => between(-2, 2)), 1, 1e-9, -1e-9],
  ],
  ['expm1', 1, expm1, exact.expm1, [...drawn(() => between(-60, 60)), ...drawn(() => spread(-12, 0)), -1e-7]],
  [
    'log',
    1,
    log,
    exact.log,
    [...drawn(() => spread(-100, 300)), ...drawn(() => between(0.5, 2)), 1.0000001, Math.E],
  ],
  [
    'log10',
    2,
    log10,
    exact.log10,
    [...drawn(() => spread(-100, 300)), ...drawn(() => between(0.5, 2)), 1e-7, 1e15],
  ],
  ['10^y', 2, pow10, (y) => exact.pow(exactly(10), y), drawn(() => between(-16, 13))],
  [
    'sin',
    1,
    sin,
    exact.sin,
    [...drawn(() => between(-7, 7)), ...drawn(() => between(-1e5, 1e5)), Math.PI, 22, 355],
  ],
  [
    'cos',
    1,
    cos,
    exact.cos,
    [...drawn(() => between(-7, 7)), ...drawn(() => between(-1e5, 1e5)), Math.PI / 2, 11, 1e5],
  ],
];

describe.each(cases)('%s', (_name, units, of, to, at) => {
  it(`is within ${units} in the last place of what 400 bits give`, () => {
    for (const x of at) expect(unitsOff(of(x), to(exactly(x))), `at ${x}`).toBeLessThanOrEqual(units);
  });
});

describe('asin and acos', () => {
  it('are within 2 in the last place', () => {
    for (const x of [...drawn(() => between(-0.999, 0.999)), 0.5, -0.5]) {
      const angle = exact.asin(exactly(x), asin(x));
      expect(unitsOff(asin(x), angle), `asin ${x}`).toBeLessThanOrEqual(2);
      expect(unitsOff(acos(x), exact.PI / 2n - angle), `acos ${x}`).toBeLessThanOrEqual(2);
    }
    expect([asin(1), acos(1), acos(-1), asin(-1)]).toEqual([Math.PI / 2, 0, Math.PI, -Math.PI / 2]);
    expect([asin(1.1), acos(-1.1), asin(Number.NaN)]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
  });
});

describe('a power', () => {
  it('is within 2 in the last place while y ln x is below 30, and farther off by a sixteenth of it beyond', () => {
    for (let i = 0; i < many; i++) {
      const x = spread(-12, 12);
      const y = between(-4, 4);
      const size = Math.abs(y * log(x));
      const most = size < 30 ? 2 : size / 16;
      expect(unitsOff(pow(x, y), exact.pow(exactly(x), exactly(y))), `${x}^${y}`).toBeLessThanOrEqual(most);
    }
  });

  it('of 10 is the nearest double where the exponent is whole, and of 1, 0 and its own what it must be', () => {
    for (let n = -22; n <= 22; n++) expect(pow10(n)).toBe(Number(`1e${n}`));
    expect([pow(7.3, 0), pow(7.3, 1), pow(1, 1e200), pow(0, 0)]).toEqual([1, 7.3, 1, 1]);
    expect([pow(0, 2), pow(0, -2), pow(Infinity, 2), pow(Infinity, -2)]).toEqual([0, Infinity, Infinity, 0]);
    expect([pow(2, Infinity), pow(0.5, Infinity), pow(2, -Infinity), pow(0.5, -Infinity)]).toEqual([
      Infinity,
      0,
      0,
      Infinity,
    ]);
    expect([pow(10, 400), pow(10, -400), pow(2, 1e300), pow(2, -1e300)]).toEqual([Infinity, 0, Infinity, 0]);
    for (const [x, y] of [
      [-1, 2],
      [Number.NaN, 2],
      [2, Number.NaN],
      [1, Infinity],
    ])
      expect(pow(x, y), `${x}^${y}`).toBeNaN();
  });

  it('of a whole exponent is multiplied', () => {
    expect([wholePower(1.1, 1), wholePower(1.1, 2), wholePower(3, 4)]).toEqual([1.1, 1.1 * 1.1, 81]);
  });

  it('of two is exact from the smallest double to the largest', () => {
    for (let k = -1080, power = 0; k <= 1030; k++) {
      power = k < -1074 ? 0 : k === -1074 ? Number.MIN_VALUE : power * 2;
      expect(powerOfTwo(k)).toBe(power);
      if (power > 0 && power < Infinity) {
        expect(floorLog2(power)).toBe(k);
        if (k > -1022) expect(floorLog2(power * (1 - Number.EPSILON / 2))).toBe(k - 1);
      }
    }
  });
});

describe('what lies beyond', () => {
  it('is infinite, 0 or no number', () => {
    expect([exp(710), exp(Infinity), exp(-746), exp(-Infinity), exp(0), exp(-0)]).toEqual([
      Infinity,
      Infinity,
      0,
      0,
      1,
      1,
    ]);
    expect([exp(-745), exp(-744.985)]).toEqual([Number.MIN_VALUE, Number.MIN_VALUE]);
    expect([expm1(710), expm1(-50), expm1(-Infinity), expm1(0), expm1(1e-300)]).toEqual([
      Infinity,
      -1,
      -1,
      0,
      1e-300,
    ]);
    expect([log(0), log(Infinity), log(1), log10(1000), log10(0)]).toEqual([
      -Infinity,
      Infinity,
      0,
      3,
      -Infinity,
    ]);
    expect(log(Number.MIN_VALUE)).toBeCloseTo(-744.4400719213812, 12);
    expect([log10(1e-310), log10(1e308), log10(1)]).toEqual([-310, 308, 0]);
    for (const nothing of [
      exp(Number.NaN),
      expm1(Number.NaN),
      log(-1),
      log(Number.NaN),
      log10(-1),
      sin(1e6),
      cos(Infinity),
    ])
      expect(nothing).toBeNaN();
  });
});

describe('the length of a vector', () => {
  it('does not overflow, and is exact of a right triangle of whole sides', () => {
    expect([hypot(3, 4), hypot(-5, 12), hypot(0, 0), hypot(0, -2)]).toEqual([5, 13, 0, 2]);
    expect(hypot(1e200, 1e200) / 1e200).toBeCloseTo(Math.SQRT2, 15);
    expect([hypot(Infinity, Number.NaN), hypot(1, Number.NaN)]).toEqual([Infinity, Number.NaN]);
  });
});
