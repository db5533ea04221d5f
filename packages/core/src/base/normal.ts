import { exp, log } from './elementary.js';
/** A quotient of two polynomials at x, both with the coefficient of the highest power first. */
function ratio([top, bottom]: readonly [readonly number[], readonly number[]], x: number): number {
  let above = 0;
  let below = 0;
  for (let i = 0; i < top.length; i++) above = above * x + top[i];
  for (let i = 0; i < bottom.length; i++) below = below * x + bottom[i];
  return above / below;
}

/** Rational approximations of {@link normalCdf}: near 0 in x², in the shoulders in |x|, in the tails in 1/x². */
const probability = {
  centre: [
    [0.06568233791820745, 2.2352520354606837, 161.02823106855587, 1067.6894854603709, 18154.98125334356],
    [1, 47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673],
  ],
  shoulder: [
    [
      1.0765576773720192e-8, 0.39894151208813466, 8.883149794388377, 93.50665613217785, 597.2702763948002,
      2494.5375852903726, 6848.190450536283, 11602.65143764735, 9842.714838383978,
    ],
    [
      1, 22.266688044328117, 235.387901782625, 1519.3775994075547, 6485.558298266761, 18615.571640885097,
      34900.95272114598, 38912.00328609327, 19685.429676859992,
    ],
  ],
  tail: [
    [
      0.023073441764940174, 0.215898534057957, 0.12740116116024736, 0.022235277870649807,
      0.0014216191932278934, 2.9112874951168793e-5,
    ],
    [
      1, 1.284260096144911, 0.4682382124808651, 0.06598813786892856, 0.0037823963320275824,
      7.297515550839662e-5,
    ],
  ],
} as const;

/** exp(-x²/2) of x from 0: the square is parted, so that what is lost of it does not show in the tails. */
function bell(x: number): number {
  const rough = Math.trunc(x * 16) / 16;
  return exp((-rough * rough) / 2) * exp((-(x - rough) * (x + rough)) / 2);
}

/**
 * Share of standard normal draws below z, within 1e-15 of itself however far out: W. J. Cody, "Rational Chebyshev
 * approximations for the error function", Math. Comp. 23 (1969), with the coefficients of his ACM algorithm 715 (1993).
 */
export function normalCdf(z: number): number {
  const x = Math.abs(z);
  if (x <= 0.67448975) return 0.5 + z * ratio(probability.centre, z * z);
  const inverse = 1 / (x * x);
  const scaled =
    x <= Math.sqrt(32)
      ? ratio(probability.shoulder, x)
      : (1 / Math.sqrt(2 * Math.PI) - inverse * ratio(probability.tail, inverse)) / x;
  const beyond = x > 38.6 ? 0 : bell(x) * scaled;
  return z > 0 ? 1 - beyond : beyond;
}

/** Rational approximations of {@link normalQuantile}: about the middle, and at two distances from it. */
const quantiles = {
  centre: [
    [
      2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
      1971.5909503065513, 133.14166789178438, 3.3871328727963665,
    ],
    [
      5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
      687.1870074920579, 42.31333070160091, 1,
    ],
  ],
  near: [
    [
      0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
      5.769497221460691, 4.630337846156546, 1.4234371107496835,
    ],
    [
      1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008,
      0.6897673349851, 1.6763848301838038, 2.053191626637759, 1,
    ],
  ],
  far: [
    [
      2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
      0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
    ],
    [
      2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
      0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
    ],
  ],
} as const;

/**
 * The standard normal deviate below which a share u of draws lies, within 1e-15 of itself: M. J. Wichura, algorithm
 * AS 241, Appl. Statist. 37 (1988); -Infinity at 0, Infinity at 1.
 */
export function normalQuantile(u: number): number {
  if (u <= 0) return -Infinity;
  if (u >= 1) return Infinity;
  const q = u - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(quantiles.centre, 0.180625 - q * q);
  const r = Math.sqrt(-log(q < 0 ? u : 1 - u));
  const size = r <= 5 ? ratio(quantiles.near, r - 1.6) : ratio(quantiles.far, r - 5);
  return q < 0 ? -size : size;
}

/** The 95 % point of the standard normal: a range of the tables reaches from its negative to it. */
export const deviate95 = /* @__PURE__ */ normalQuantile(0.95);
