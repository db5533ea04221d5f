import { exp, pow } from '../../base/elementary.js';
import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import { guarded, guardedSlope } from './intake.js';

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

/** Of a poison at c times its LC50. */
const poisoned = (c: number, slope: number, highest: number): number =>
  c > 0 ? bent(AT_LC50 * pow(c, slope), highest) : 0;

/** d(poisoned)/dc. */
function poisonedSlope(c: number, slope: number, highest: number): number {
  if (!(c > 0)) return 0;
  const hazard = AT_LC50 * pow(c, slope);
  const share = highest / (hazard + highest);
  return ((slope * hazard) / c) * share * share;
}

/** Of want of oxygen: the highest where there is none. */
const stifled = (c: number, k: ArrayLike<number>): number =>
  k[2] / ((c > 0 ? pow(c, k[3]) : 0) + k[2] / k[1]);

/** Of each cause that the water decides, d-1: oxygen, ammonia, nitrite, carbon dioxide. */
function ofWater(
  v: Float64Array,
  at: ArrayLike<number>,
  k: ArrayLike<number>,
): readonly [number, number, number, number] {
  return [
    stifled(v[at[0]], k),
    poisoned(v[at[1]] / k[4], k[8], k[1]),
    poisoned((v[at[2]] * guarded(v[at[3]], k[6])) / k[5], k[8], k[1]),
    poisoned(v[at[4]] / k[7], k[8], k[1]),
  ];
}

function hazard(v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number {
  const [oxygen, ammonia, nitrite, carbonDioxide] = ofWater(v, at, k);
  return k[0] + oxygen + ammonia + nitrite + carbonDioxide;
}

/** Deaths of an amount, per day; variables: those of the hazard, then the amount. */
export const deaths = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => hazard(v, at, k) * v[at[5]],
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const there = v[at[5]];
    const oxygen = v[at[0]];
    const stifling = stifled(oxygen, k);
    d[0] = oxygen > 0 ? (-there * stifling * stifling * k[3] * pow(oxygen, k[3] - 1)) / k[2] : 0;
    d[1] = (there * poisonedSlope(v[at[1]] / k[4], k[8], k[1])) / k[4];
    const guard = guarded(v[at[3]], k[6]);
    const byNitrite = (there * poisonedSlope((v[at[2]] * guard) / k[5], k[8], k[1])) / k[5];
    d[2] = byNitrite * guard;
    d[3] = byNitrite * v[at[2]] * guardedSlope(v[at[3]], k[6]);
    d[4] = (there * poisonedSlope(v[at[4]] / k[7], k[8], k[1])) / k[7];
    d[5] = hazard(v, at, k);
  },
};

/**
 * Hazard of each cause, d-1, in the order of `causesOfDeath`.
 * @param water oxygen, un-ionised ammonia, nitrite, chloride (g m-3), carbon dioxide (mol m-3)
 */
export function hazardsOf(values: Values, at: Conditions, water: Float64Array): readonly number[] {
  const k = hazardCoefficients(values, at);
  return [...ofTemperature(values, at.temperature), ...ofWater(water, [0, 1, 2, 3, 4], k)];
}
