/**
 * Elementary functions to about 300 bits, by whole numbers alone: what those of the library are held against.
 * A number is held as a whole number of 2^-400.
 */
const BITS = 400n;
const ONE = 1n << BITS;

const bytes = new DataView(new ArrayBuffer(8));

/** A finite double, exactly where it is a whole number of 2^-400. */
export function exactly(x: number): bigint {
  bytes.setFloat64(0, x);
  const high = bytes.getUint32(0);
  const exponent = (high >>> 20) & 0x7ff;
  const fraction = (BigInt(high & 0xfffff) << 32n) | BigInt(bytes.getUint32(4));
  const whole = exponent === 0 ? fraction : fraction | (1n << 52n);
  const shift = BITS + BigInt((exponent === 0 ? 1 : exponent) - 1075);
  const size = shift >= 0n ? whole << shift : whole >> -shift;
  return x < 0 ? -size : size;
}

/** By how many units in the last place of a double a number is off what is exact. */
export function unitsOff(got: number, exact: bigint): number {
  const size = exact < 0n ? -exact : exact;
  const top = BigInt(size.toString(2).length) - 1n;
  const unit = 1n << (top > 52n ? top - 52n : 0n);
  const off = exactly(got) - exact;
  return Number(((off < 0n ? -off : off) * 1000n) / unit) / 1000;
}

const times = (a: bigint, b: bigint): bigint => (a * b) >> BITS;
const over = (a: bigint, b: bigint): bigint => (a << BITS) / b;

/** Sum of a series whose next term is made of the last one. */
function summed(first: bigint, next: (term: bigint, n: bigint) => bigint): bigint {
  let sum = 0n;
  let n = 1n;
  for (let term = first; term !== 0n && term !== -1n; n++) {
    sum += term;
    term = next(term, n);
  }
  return sum;
}

/** atanh or, with sign -1n, atan of 1/n. */
function arc(n: bigint, sign: bigint): bigint {
  let sum = 0n;
  let power = ONE / n;
  for (let k = 1n; power !== 0n; k += 2n) {
    sum += (sign < 0n && k % 4n === 3n ? -power : power) / k;
    power /= n * n;
  }
  return sum;
}

const LN2 = 2n * arc(3n, 1n);
const LN10 = 3n * LN2 + 2n * arc(9n, 1n);
export const PI = 16n * arc(5n, -1n) - 4n * arc(239n, -1n);

export function exp(x: bigint): bigint {
  const k = x / LN2;
  const rest = x - k * LN2;
  const power = summed(ONE, (term, n) => times(term, rest) / n);
  return k >= 0n ? power << k : power >> -k;
}

export function log(x: bigint): bigint {
  const k = BigInt(x.toString(2).length) - 1n - BITS;
  const factor = k >= 0n ? x >> k : x << -k;
  const t = over(factor - ONE, factor + ONE);
  const square = times(t, t);
  let sum = 0n;
  let power = t;
  for (let n = 1n; power > 1n || power < -1n; n += 2n) {
    sum += power / n;
    power = times(power, square);
  }
  return 2n * sum + k * LN2;
}

export const log10 = (x: bigint): bigint => over(log(x), LN10);
export const expm1 = (x: bigint): bigint => exp(x) - ONE;
export const pow = (x: bigint, y: bigint): bigint => exp(times(y, log(x)));

export function sin(x: bigint): bigint {
  const rest = x - (x / (2n * PI)) * 2n * PI;
  const square = times(rest, rest);
  return summed(rest, (term, n) => -times(term, square) / (2n * n * (2n * n + 1n)));
}

export const cos = (x: bigint): bigint => sin(x + PI / 2n);

/** An angle, corrected once: what is known of it must be good to about 1e-15. */
export function asin(x: bigint, near: number): bigint {
  let angle = exactly(near);
  for (let turn = 0; turn < 5; turn++) angle += over(x - sin(angle), cos(angle));
  return angle;
}
