import { exp, log } from '../base/elementary.js';
import { hypot } from '../base/trigonometry.js';

/** A quantity counted in errors of its kit: on this scale a sound reading errs by a standard deviation of 1 everywhere. */
export interface KitScale {
  /** From the internal unit; infinite bounds stay so. */
  to(value: number): number;
  /** To the internal unit. */
  from(scaled: number): number;
}

function asinh(x: number): number {
  const size = log(Math.abs(x) + hypot(x, 1));
  return x < 0 ? -size : size;
}

/**
 * The scale on which a kit's error is the same everywhere: the integral of 1 / sqrt(a² + r² x²), asinh(r x / a) / r, where
 * a is the error at nothing and r the share (a variance-stabilising transform, M. S. Bartlett, Biometrics 3, 1947).
 */
export function kitScale(error: { readonly deviation: (value: number) => number }): KitScale {
  const absolute = error.deviation(0);
  const one = error.deviation(1);
  const relative = Math.sqrt(Math.max(0, one * one - absolute * absolute));
  if (relative < 1e-9) return { to: (x) => x / absolute, from: (z) => z * absolute };
  return {
    to: (x) => (Number.isFinite(x) ? asinh((relative * x) / absolute) / relative : x),
    from: (z) => {
      if (!Number.isFinite(z)) return z;
      const turns = exp(relative * z);
      return ((absolute / relative) * (turns - 1 / turns)) / 2;
    },
  };
}
