// Reads numbers as: acids and bases
import type { i32 } from '../base/whole.js';
import { exp, log10, pow10 } from '../base/elementary.js';
import type { Values } from '../library/values.js';
import { calciteSolubility } from './calcite.js';
import { openDavies } from './ions.js';

/**
 * Equilibrium constants at one temperature and ionic strength, in mol m-3: `k1` and `k2` of carbonic acid, `ammonium`;
 * ion product of `water` and solubility product of `calcite`, mol2 m-6. They hold for the activity of the hydrogen ion,
 * which is what pH is, and for concentrations of all else; `proton` is the concentration of hydrogen ions over their
 * activity.
 */
export interface AcidBaseConstants {
  readonly k1: number;
  readonly k2: number;
  readonly ammonium: number;
  readonly water: number;
  readonly proton: number;
  readonly calcite: number;
}

const LITRES = 1000;

/** Activity of the hydrogen ion, mol m-3, at a pH. */
export function hydrogenAt(pH: number): number {
  return pow10(-pH) * LITRES;
}

/** pH of an activity of the hydrogen ion, mol m-3. */
export function pHOf(hydrogen: number): number {
  return -log10(hydrogen / LITRES);
}

/** log10 K = A + B T + C/T + D log10 T + E/T2, T in kelvin. Plummer & Busenberg 1982. */
function logConstant(values: Values, id: string, kelvin: number): number {
  const term = (name: string): number => values.value(`${id}.${name}`);
  return (
    term('a') +
    term('b') * kelvin +
    term('c') / kelvin +
    term('d') * log10(kelvin) +
    term('e') / (kelvin * kelvin)
  );
}

/** pKa of ammonium, Emerson et al. 1975. */
export function ammoniumPk(values: Values, temperature: number): number {
  return values.value('emerson.a') + values.value('emerson.b') / (temperature + values.value('kelvin.zero'));
}

/**
 * Constants of carbonic acid, ammonium, water and calcite at degC.
 * @param ionic ionic strength, mol L-1; 0: the constants themselves, without activities
 */
export function acidBaseConstants(values: Values, temperature: number, ionic = 0): AcidBaseConstants {
  return openAcidBase(values)(temperature, ionic);
}

/** As `acidBaseConstants`, for many moments of one water: what its temperature alone decides is kept while that stays. */
export function openAcidBase(values: Values): (temperature: number, ionic: number) => AcidBaseConstants {
  let warmth = Number.NaN;
  let pure: Omit<AcidBaseConstants, 'proton'>;
  let activities: ReturnType<typeof openDavies>;
  return (temperature, ionic) => {
    if (temperature !== warmth) {
      const kelvin = temperature + values.value('kelvin.zero');
      pure = {
        k1: pow10(logConstant(values, 'carbonate.k1', kelvin)) * LITRES,
        k2: pow10(logConstant(values, 'carbonate.k2', kelvin)) * LITRES,
        ammonium: pow10(-ammoniumPk(values, temperature)) * LITRES,
        water: pow10(logConstant(values, 'water.kw', kelvin)) * LITRES * LITRES,
        calcite: calciteSolubility(values, temperature) * LITRES * LITRES,
      };
      activities = openDavies(values, temperature);
      warmth = temperature;
    }
    const { one, two } = activities(ionic);
    return {
      k1: pure.k1 / one,
      k2: (pure.k2 * one) / two,
      ammonium: pure.ammonium * one,
      water: pure.water / one,
      proton: 1 / one,
      calcite: pure.calcite / (two * two),
    };
  };
}

/** Dissolved CO2 under 1 atm of it, mol L-1, at degC. Plummer & Busenberg 1982 (Henry). */
function henry(values: Values, temperature: number): number {
  return pow10(logConstant(values, 'carbonate.kh', temperature + values.value('kelvin.zero')));
}

/**
 * Dissolved CO2 in equilibrium with air, mol m-3, at degC. Plummer & Busenberg 1982 (Henry).
 * @param share CO2 in the air, mol per mol; absent: that of open air (`gas.carbon-dioxide-air`)
 * @param pressure of the air, atm
 */
export function carbonDioxideSaturation(
  values: Values,
  temperature: number,
  share = values.value('gas.carbon-dioxide-air'),
  pressure = 1,
): number {
  return henry(values, temperature) * share * pressure * LITRES;
}

/** CO2 in air over dissolved CO2 in water at rest with it, both by volume (Henry's constant without a unit), at degC. */
export function carbonDioxideInAir(values: Values, temperature: number): number {
  const kelvin = temperature + values.value('kelvin.zero');
  return 1 / (henry(values, temperature) * values.value('gas.constant') * kelvin);
}

/** Alkalinity, eq m-3, at an activity h of the hydrogen ion: HCO3 + 2 CO3 + NH3 + OH - H. */
function alkalinityAt(h: number, carbon: number, ammonia: number, k: AcidBaseConstants): number {
  const bicarbonate = k.k1 * h;
  const carbonate = k.k1 * k.k2;
  return (
    (carbon * (bicarbonate + 2 * carbonate)) / (h * h + bicarbonate + carbonate) +
    (ammonia * k.ammonium) / (k.ammonium + h) +
    k.water / h -
    h * k.proton
  );
}

/**
 * Activity of the hydrogen ion, mol m-3, of water of given alkalinity (eq m-3), inorganic carbon and TAN (mol m-3).
 * Alkalinity falls as h rises, so the root is unique; Newton in ln h inside a shrinking bracket.
 * @param guess where to start, such as the last root
 * @returns NaN when an input is not finite or no root lies in pH 0-14.
 */
export function hydrogenIon(
  alkalinity: number,
  carbon: number,
  ammonia: number,
  k: AcidBaseConstants,
  guess: number,
): number {
  let low = 1e-11;
  let high = 1e3;
  let h = guess > low && guess < high ? guess : 1e-4;
  for (let pass = 0; pass < 100; pass++) {
    const excess = alkalinityAt(h, carbon, ammonia, k) - alkalinity;
    if (excess > 0) low = h;
    else if (excess < 0) high = h;
    else return excess === 0 ? h : Number.NaN;
    const slope = alkalinitySlope(h, carbon, ammonia, k);
    const step = -excess / (slope * h);
    // In ln h far from the root, where it is safe; plain near it, where it is the same and cheaper.
    let next = Math.abs(step) < 0.01 ? h + h * step : h * exp(step);
    // Newton is quadratic: after a relative step below 1e-8 the next root is exact to rounding. Asked
    // before the bracket, whose ends are by then as near as rounding.
    if (Math.abs(step) < 1e-8) return next;
    if (!(next > low && next < high)) next = Math.sqrt(low * high);
    // A bracket that closes without that has closed on its first end: there is no root inside.
    if (next === h) return Number.NaN;
    h = next;
  }
  return Number.NaN;
}

/** d(alkalinity)/dh at constant carbon and TAN (always negative for carbon, ammonia >= 0). */
function alkalinitySlope(h: number, carbon: number, ammonia: number, k: AcidBaseConstants): number {
  const carbonate = k.k1 * k.k2;
  const sum = h * h + k.k1 * h + carbonate;
  const base = k.ammonium + h;
  return (
    (-carbon * k.k1 * (h * h + 4 * k.k2 * h + carbonate)) / (sum * sum) -
    (ammonia * k.ammonium) / (base * base) -
    k.water / (h * h) -
    k.proton
  );
}

/** Number of values that `speciate` writes. */
export const SPECIATION = 16;

/**
 * pH, un-ionised ammonia (g N m-3), carbon dioxide (mol m-3) and saturation of water (carbonate over the solubility of
 * calcite, m3 mol-1), and their partials by TAN (g N m-3), alkalinity and carbon, by the implicit function theorem.
 * Fills out[o ..]: the four, then four rows in their order of partials by (TAN, alkalinity, carbon).
 * @param h the hydrogen ion of this water, from `hydrogenIon`
 */
export function speciate(
  tan: number,
  carbon: number,
  h: number,
  k: AcidBaseConstants,
  molarNitrogen: number,
  out: Float64Array,
  o: i32,
): void {
  const ammonia = tan / molarNitrogen;
  const carbonate = k.k1 * k.k2;
  const sum = h * h + k.k1 * h + carbonate;
  const base = k.ammonium + h;
  const free = k.ammonium / base;
  const dissolved = (h * h) / sum;
  const saturated = carbonate / (sum * k.calcite);
  const slope = alkalinitySlope(h, carbon, ammonia, k);
  const byAlkalinity = 1 / slope;
  const byCarbon = (-(k.k1 * h + 2 * carbonate) / sum) * byAlkalinity;
  const byTan = (-free / molarNitrogen) * byAlkalinity;
  const perPh = -1 / (h * Math.LN10);
  const freeByH = (-tan * k.ammonium) / (base * base);
  const dissolvedByH = (carbon * h * (k.k1 * h + 2 * carbonate)) / (sum * sum);
  const saturatedByH = (-carbon * saturated * (2 * h + k.k1)) / sum;
  out[o] = pHOf(h);
  out[o + 1] = tan * free;
  out[o + 2] = carbon * dissolved;
  out[o + 3] = carbon * saturated;
  out[o + 4] = perPh * byTan;
  out[o + 5] = perPh * byAlkalinity;
  out[o + 6] = perPh * byCarbon;
  out[o + 7] = free + freeByH * byTan;
  out[o + 8] = freeByH * byAlkalinity;
  out[o + 9] = freeByH * byCarbon;
  out[o + 10] = dissolvedByH * byTan;
  out[o + 11] = dissolvedByH * byAlkalinity;
  out[o + 12] = dissolved + dissolvedByH * byCarbon;
  out[o + 13] = saturatedByH * byTan;
  out[o + 14] = saturatedByH * byAlkalinity;
  out[o + 15] = saturated + saturatedByH * byCarbon;
}

/**
 * Inorganic carbon, mol m-3, of water with a measured alkalinity (eq m-3), pH, TAN (g N m-3) at degC.
 * @param ionic ionic strength, mol L-1
 * @returns a negative number when no carbon content gives that pH (the alkalinity is too low for it).
 */
export function carbonFromPh(
  values: Values,
  alkalinity: number,
  pH: number,
  tan: number,
  temperature: number,
  ionic = 0,
): number {
  const k = acidBaseConstants(values, temperature, ionic);
  const h = hydrogenAt(pH);
  const ammonia = tan / values.value('molar.nitrogen');
  const carbonate = k.k1 * k.k2;
  const share = (k.k1 * h + 2 * carbonate) / (h * h + k.k1 * h + carbonate);
  return (alkalinity - alkalinityAt(h, 0, ammonia, k)) / share;
}

/** Passes from a guess before the bracketed search takes over. */
const PASSES = 5;
/** Newton is quadratic: after a relative step below this the next root is exact to rounding. */
const CLOSE = 1e-8;
/** A step above this share of h is not near. */
const FAR = 0.5;

/**
 * As `hydrogenIon`, from a guess that is near the root: plain Newton with one division for each fraction. Where
 * it does not close within a few passes, `hydrogenIon` answers. The root is unique, so both find the same.
 */
export function hydrogenNear(
  alkalinity: number,
  carbon: number,
  ammonia: number,
  k: AcidBaseConstants,
  guess: number,
): number {
  const { k1, k2, ammonium, water, proton } = k;
  const carbonate = k1 * k2;
  const bound = ammonia * ammonium;
  let h = guess;
  for (let pass = 0; pass < PASSES; pass++) {
    const perSum = 1 / (h * h + k1 * h + carbonate);
    const perBase = 1 / (ammonium + h);
    const perH = 1 / h;
    const excess =
      carbon * (k1 * h + 2 * carbonate) * perSum + bound * perBase + water * perH - h * proton - alkalinity;
    const fall =
      carbon * k1 * (h * h + 4 * k2 * h + carbonate) * perSum * perSum +
      bound * perBase * perBase +
      water * perH * perH +
      proton;
    const step = excess / fall;
    const share = Math.abs(step * perH);
    if (!(share < FAR)) break;
    h += step;
    if (share < CLOSE) return h;
  }
  return hydrogenIon(alkalinity, carbon, ammonia, k, guess);
}
