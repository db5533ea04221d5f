import type { i32 } from '../../base/whole.js';
import { exp, pow } from '../../base/elementary.js';
import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import { guarded, guardedSlope } from './intake.js';
import type { Kernel, Sites } from './kernel.js';

/** What deaths depend on; the amount that dies comes after them. */
export const hazardReads = ['oxygen', 'ammonia', 'nitrite', 'chloride', 'carbon-dioxide'] as const;

/** What fish die of. */
export const causesOfDeath = [
  'other',
  'cold',
  'heat',
  'oxygen',
  'un-ionised ammonia',
  'nitrite',
  'carbon dioxide',
] as const;

/** What a fish died of: `other` is what dies in sound water. */
export type CauseOfDeath = (typeof causesOfDeath)[number];

/** Hazard at a 96-h LC50, d-1: half are dead after four days, by its definition. */
const AT_LC50 = Math.LN2 / 4;

/** A hazard, d-1, that bends to the highest there is. */
const bent = (hazard: number, highest: number): number => (hazard * highest) / (hazard + highest);

/**
 * [hazard of temperature and of sound water, d-1; highest hazard, d-1; oxygen hazard times the lethal oxygen to the power of
 * the slope; that slope; LC50 of un-ionised ammonia and of nitrite without chloride, g m-3; chloride that halves the effect
 * of nitrite, g m-3; LC50 of carbon dioxide, mol m-3; slope of the three].
 */
export function hazardCoefficients(values: Values, at: Conditions): readonly number[] {
  const [other, cold, heat] = ofTemperature(values, at.temperature);
  const slope = values.value('fish.hazard-oxygen-slope');
  const carbonDioxide = values.value('molar.carbon') + values.value('molar.oxygen-gas');
  return [
    other + cold + heat,
    values.value('fish.hazard-highest'),
    values.value('fish.hazard-oxygen') * pow(values.value('species.lethal-oxygen'), slope),
    slope,
    values.value('species.lethal-ammonia'),
    values.value('species.lethal-nitrite'),
    values.value('species.chloride-halving'),
    values.value('species.lethal-carbon-dioxide') / carbonDioxide,
    values.value('fish.hazard-slope'),
  ];
}

/** Hazards that the water does not decide, d-1: in sound water, by cold, by heat. */
function ofTemperature(values: Values, temperature: number): readonly [number, number, number] {
  const highest = values.value('fish.hazard-highest');
  const per = values.value('fish.hazard-temperature');
  const beyond = (degrees: number): number => bent(AT_LC50 * exp(Math.min(degrees / per, 50)), highest);
  return [
    values.value('species.mortality'),
    beyond(values.value('species.lethal-temperature-low') - temperature),
    beyond(temperature - values.value('species.lethal-temperature-high')),
  ];
}

/** Of a poison at c times its LC50, d-1, before it bends. */
const straight = (c: number, slope: number): number => (c > 0 ? AT_LC50 * pow(c, slope) : 0);

/** d(bent)/dc of a poison. */
function bentSlope(c: number, slope: number, hazard: number, highest: number): number {
  if (!(c > 0)) return 0;
  const share = highest / (hazard + highest);
  return ((slope * hazard) / c) * share * share;
}

/** Oxygen to the power of its slope. */
const breath = (c: number, slope: number): number => (c > 0 ? pow(c, slope) : 0);

/** Of each cause that the water decides, d-1: oxygen (the highest where there is none), ammonia, nitrite, carbon dioxide. */
function ofWater(
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
): readonly [number, number, number, number] {
  return [
    k[2] / (breath(v[at[0]], k[3]) + k[2] / k[1]),
    bent(straight(v[at[1]] / k[4], k[8]), k[1]),
    bent(straight((v[at[2]] * guarded(v[at[3]], k[6])) / k[5], k[8]), k[1]),
    bent(straight(v[at[4]] / k[7], k[8]), k[1]),
  ];
}

/** Hazard, d-1. Here and below the places of variables begin at at[n], coefficients at k[o]. */
function hazardAt(v: Float64Array, at: ArrayLike<number>, n: i32, k: ArrayLike<number>, o: i32): number {
  const highest = k[o + 1];
  const slope = k[o + 8];
  const nitrite = (v[at[n + 2]] * guarded(v[at[n + 3]], k[o + 6])) / k[o + 5];
  return (
    k[o] +
    k[o + 2] / (breath(v[at[n]], k[o + 3]) + k[o + 2] / highest) +
    bent(straight(v[at[n + 1]] / k[o + 4], slope), highest) +
    bent(straight(nitrite, slope), highest) +
    bent(straight(v[at[n + 4]] / k[o + 7], slope), highest)
  );
}

/** Fills d[n] to d[n + 4] with the partials of the hazard. Returns the hazard. */
function hazardPartialsAt(
  v: Float64Array,
  at: ArrayLike<number>,
  n: i32,
  k: ArrayLike<number>,
  o: i32,
  d: Float64Array,
): number {
  const highest = k[o + 1];
  const slope = k[o + 8];
  const oxygen = v[at[n]];
  const breathing = breath(oxygen, k[o + 3]);
  const stifling = k[o + 2] / (breathing + k[o + 2] / highest);
  const guard = guarded(v[at[n + 3]], k[o + 6]);
  const ammonia = v[at[n + 1]] / k[o + 4];
  const nitrite = (v[at[n + 2]] * guard) / k[o + 5];
  const acid = v[at[n + 4]] / k[o + 7];
  const byAmmonia = straight(ammonia, slope);
  const byNitrite = straight(nitrite, slope);
  const byAcid = straight(acid, slope);
  const perNitrite = bentSlope(nitrite, slope, byNitrite, highest) / k[o + 5];
  d[n] = oxygen > 0 ? ((-stifling * stifling * k[o + 3]) / k[o + 2]) * (breathing / oxygen) : 0;
  d[n + 1] = bentSlope(ammonia, slope, byAmmonia, highest) / k[o + 4];
  d[n + 2] = perNitrite * guard;
  d[n + 3] = perNitrite * v[at[n + 2]] * guardedSlope(v[at[n + 3]], k[o + 6]);
  d[n + 4] = bentSlope(acid, slope, byAcid, highest) / k[o + 7];
  return k[o] + stifling + bent(byAmmonia, highest) + bent(byNitrite, highest) + bent(byAcid, highest);
}

/** Variables of deaths, of which the last is the amount, and coefficients. */
const AMOUNT = hazardReads.length;
const WIDTH = AMOUNT + 1;
const SIZE = 9;

/** Those of the rows of deaths that stand for every group. */
function ofAll(rows: readonly Sites[]): Sites {
  let most = rows[0];
  for (const each of rows) if (each.count > most.count) most = each;
  return most;
}

/** Where among some places, from the j-th on, one of them stands. */
function placeFrom(j: i32, { place }: Sites, sought: i32): i32 {
  let at = j;
  while (place[at] !== sought) at++;
  return at;
}

/**
 * Deaths of every amount of every group: the hazard is worked out once a group. Some rows stand for those groups only whose
 * dead are left, or are not.
 */
const deathsKernel: Kernel = {
  name: 'deaths',
  rates: (rows, v, r) => {
    const all = ofAll(rows);
    for (let i = 0; i < all.count; i++) r[all.row + i] = hazardAt(v, all.at, i * WIDTH, all.k, i * SIZE);
    for (const { count, row, place, at } of rows) {
      if (row === all.row) continue;
      for (let i = 0, j = 0; i < count; i++) {
        j = placeFrom(j, all, place[i]);
        r[row + i] = r[all.row + j] * v[at[i * WIDTH + AMOUNT]];
      }
    }
    for (let i = 0; i < all.count; i++) r[all.row + i] *= v[all.at[i * WIDTH + AMOUNT]];
  },
  partials: (rows, v) => {
    const all = ofAll(rows);
    for (let i = 0, n = 0; i < all.count; i++, n += WIDTH)
      all.d[n + AMOUNT] = hazardPartialsAt(v, all.at, n, all.k, i * SIZE, all.d);
    for (const some of rows) {
      if (some === all) continue;
      for (let i = 0, j = 0; i < some.count; i++) {
        j = placeFrom(j, all, some.place[i]);
        spread(some, i * WIDTH, all.d, j * WIDTH, v);
      }
    }
    for (let n = 0; n < all.count * WIDTH; n += WIDTH) spread(all, n, all.d, n, v);
  },
};

/** From the hazard and its partials, from[m] on, to the partials of the deaths of an amount, d[n] on. */
function spread({ at, d }: Sites, n: i32, from: Float64Array, m: i32, v: Float64Array): void {
  const there = v[at[n + AMOUNT]];
  for (let q = 0; q < AMOUNT; q++) d[n + q] = from[m + q] * there;
  d[n + AMOUNT] = from[m + AMOUNT];
}

/** Deaths of an amount, per day; variables: those of the hazard, then the amount. */
export const deaths = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number =>
    hazardAt(v, at, 0, k, 0) * v[at[5]],
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    d[5] = hazardPartialsAt(v, at, 0, k, 0, d);
    for (let m = 0; m < 5; m++) d[m] *= v[at[5]];
  },
  kernel: deathsKernel,
};

/**
 * Hazard of each cause, d-1, in the order of `causesOfDeath`.
 * @param water oxygen, un-ionised ammonia, nitrite, chloride (g m-3), carbon dioxide (mol m-3)
 */
export function hazardsOf(values: Values, at: Conditions, water: Float64Array): readonly number[] {
  const k = hazardCoefficients(values, at);
  return [...ofTemperature(values, at.temperature), ...ofWater(water, [0, 1, 2, 3, 4], k)];
}
