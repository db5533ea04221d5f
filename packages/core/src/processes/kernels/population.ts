import type { i32 } from '../../base/whole.js';
import { exp } from '../../base/elementary.js';
import { bareShare, bareShareSlope, inhibition, inhibitionSlope, monod, monodSlope } from './rate-terms.js';
import { reached, reachedByMost, reachedBySubstrate } from './film.js';
import { HYDROGEN_AFTER_PH, type Kernel, type Sites } from './kernel.js';
import { aobReads, nobReads } from './oxidiser.js';

/** Coefficients a place, as in oxidiser.ts. */
const SIZE = 15;

/** The acid term of the bell: h (mol m-3) over that at the flank of the film. */
function acidTerm(h: number, flank: number): number {
  return h * 1e-3 * exp(Math.LN10 * flank);
}

/**
 * Growth and idling of one population together: the activity is worked out once, and from the hydrogen ion in
 * place of the pH, so that the bell of rate-terms.ts, h / (h + h²/h_low + h_high), takes but one exponential. The
 * first process handed over is growth, the second idling, at the same places.
 * @param width variables a place
 * @param from where among them nitrite is: 0 where it is the substrate, and does not come through still water
 */
function populationRates(
  [growth, idle]: readonly Sites[],
  v: Float64Array,
  r: Float64Array,
  width: i32,
  from: i32,
): void {
  const { count, at, k } = growth;
  for (let i = 0, n = 0, o = 0; i < count; i++, n += width, o += SIZE) {
    const h = v[at[n + 3] + HYDROGEN_AFTER_PH];
    const living = v[at[n + 5]];
    const free =
      k[o] *
      monod(v[at[n + 2]], k[o + 3]) *
      inhibition(v[at[n + 4]], k[o + 4]) *
      inhibition((v[at[n + from]] * h) / (h + k[o + 10]), k[o + 5]) *
      (h / (h + h * acidTerm(h, v[at[n + 6]]) + k[o + 9])) *
      living *
      v[at[n + 8]];
    const used =
      from === 0
        ? reached(v[at[n + 1]], free * monod(v[at[n]], k[o + 1]), k[o + 2], k[o + 11])
        : reached(v[at[n]], reached(v[at[n + 1]], free, k[o + 2], k[o + 11]), k[o + 1], k[o + 12]);
    const activity = bareShare(v[at[n + 7]], k[o + 13], k[o + 14]) * used;
    const full = living / k[o + 7];
    r[growth.row + i] = activity * (1 - full);
    r[idle.row + i] = activity * full * k[o + 8];
  }
}

/** The partials of both. */
function populationPartials([growth, idle]: readonly Sites[], v: Float64Array, width: i32, from: i32): void {
  const { d } = growth;
  const e = idle.d;
  for (let i = 0, n = 0; i < growth.count; i++, n += width) {
    const activity = activityPartialsAt(growth, i, from, v);
    const living = v[growth.at[n + 5]];
    const room = growth.k[i * SIZE + 7];
    const perYield = growth.k[i * SIZE + 8];
    const full = living / room;
    const idling = full * perYield;
    for (let m = n; m < n + width; m++) {
      e[m] = d[m] * idling;
      d[m] *= 1 - full;
    }
    d[n + 5] -= activity / room;
    e[n + 5] += (activity * perYield) / room;
  }
}

/** Fills the partials of growth with those of the activity at one place. Returns the activity. */
function activityPartialsAt(growth: Sites, i: i32, from: i32, v: Float64Array): number {
  const { at, k, d, width } = growth;
  const n = i * width;
  const o = i * SIZE;
  const h = v[at[n + 3] + HYDROGEN_AFTER_PH];
  const nitrite = v[at[n + from]];
  const carbon = monod(v[at[n + 2]], k[o + 3]);
  const ammonia = inhibition(v[at[n + 4]], k[o + 4]);
  const share = h / (h + k[o + 10]);
  const nitrous = inhibition(nitrite * share, k[o + 5]);
  const acid = acidTerm(h, v[at[n + 6]]);
  const base = k[o + 9] / h;
  const bell = 1 / (1 + acid + base);
  const living = v[at[n + 5]];
  const awake = v[at[n + 8]];
  const food = from === 0 ? monod(v[at[n]], k[o + 1]) : 1;
  const perCell = k[o] * carbon * bell * ammonia * nitrous * food;
  const most = perCell * living * awake;
  const supplied = reached(v[at[n + 1]], most, k[o + 2], k[o + 11]);
  const bare = bareShare(v[at[n + 7]], k[o + 13], k[o + 14]);
  let used = supplied;
  let bySupply = bare;
  if (from !== 0) {
    used = reached(v[at[n]], supplied, k[o + 1], k[o + 12]);
    bySupply *= reachedByMost(v[at[n]], supplied, k[o + 1], k[o + 12], used);
    d[n] = bare * reachedBySubstrate(v[at[n]], supplied, k[o + 1], k[o + 12], used);
  }
  const byMost = bySupply * reachedByMost(v[at[n + 1]], most, k[o + 2], k[o + 11], supplied);
  const cells = byMost * k[o] * living * awake;
  const byAcid = cells * carbon * bell * ammonia * food * inhibitionSlope(nitrite * share, k[o + 5]) * share;
  d[n + 1] = bySupply * reachedBySubstrate(v[at[n + 1]], most, k[o + 2], k[o + 11], supplied);
  d[n + 2] = cells * monodSlope(v[at[n + 2]], k[o + 3]) * bell * ammonia * nitrous * food;
  d[n + 3] = Math.LN10 * ((acid - base) * bell * byMost * most - byAcid * nitrite * (1 - share));
  d[n + 4] = cells * carbon * bell * inhibitionSlope(v[at[n + 4]], k[o + 4]) * nitrous * food;
  d[n + 5] = byMost * perCell * awake;
  d[n + 6] = -Math.LN10 * acid * bell * byMost * most;
  d[n + 7] = bareShareSlope(v[at[n + 7]], k[o + 13], k[o + 14]) * used;
  d[n + 8] = byMost * perCell * living;
  if (from === 0) d[n] = cells * carbon * bell * ammonia * nitrous * monodSlope(v[at[n]], k[o + 1]) + byAcid;
  else d[n + from] = byAcid;
  return bare * used;
}

/** Where nitrite stands among the variables of its oxidisers, and of ammonia oxidisers. */
const FIRST = 0;
const LAST = 9;

/** Ammonia oxidisers: nitrite is the last of their variables. */
export const aobKernel: Kernel = {
  name: 'aob',
  rates: (all, v, r) => {
    populationRates(all, v, r, aobReads.length, LAST);
  },
  partials: (all, v) => {
    populationPartials(all, v, aobReads.length, LAST);
  },
};

/** Nitrite oxidisers: nitrite is their substrate. */
export const nobKernel: Kernel = {
  name: 'nob',
  rates: (all, v, r) => {
    populationRates(all, v, r, nobReads.length, FIRST);
  },
  partials: (all, v) => {
    populationPartials(all, v, nobReads.length, FIRST);
  },
};
