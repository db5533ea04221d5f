// Reads numbers as: activities of ions
import { pow, pow10 } from '../base/elementary.js';
import type { Values } from '../library/values.js';

const LITRES = 1000;

/**
 * Concentrations that say how strong the ions of a water are: g m-3 of nitrogen (`ammonia`, `nitrite`, `nitrate`) and chloride, alkalinity eq m-3,
 * calcium mol m-3.
 */
export interface IonContent {
  readonly ammonia: number;
  readonly nitrite: number;
  readonly nitrate: number;
  readonly chloride: number;
  readonly alkalinity: number;
  readonly calcium: number;
}

/**
 * Opens the ionic strength of a water, mol L-1, by what is known of it: ammonium, nitrite, nitrate, chloride and
 * alkalinity with one charge, calcium with two, and the strong cations less strong anions that are not known, whose
 * charge is that of the others: potassium, sodium and the like as ions of one charge, and so magnesium and sulphate
 * too, which makes it 5-15 % low where there is much of them.
 */
export function openIonicStrength(values: Values): (water: IonContent) => number {
  const perNitrogen = 1 / values.value('molar.nitrogen');
  const perChlorine = 1 / values.value('molar.chlorine');
  return ({ ammonia, nitrite, nitrate, chloride, alkalinity, calcium }) => {
    const ammonium = ammonia * perNitrogen;
    const acids = (nitrite + nitrate) * perNitrogen + chloride * perChlorine;
    const others = alkalinity - ammonium + acids - 2 * calcium;
    return (Math.abs(alkalinity) + ammonium + acids + 4 * calcium + Math.abs(others)) / (2 * LITRES);
  };
}

/** Activity coefficients of ions of `one` and of `two` charges. */
export interface Activities {
  readonly one: number;
  readonly two: number;
}

/** The equation of Davies holds up to this ionic strength, mol L-1; beyond it its value there stands. */
const STRONGEST = 0.5;

/**
 * Activity coefficients by the equation of Davies (1962): log g = -A z^2 (sqrt I / (1 + sqrt I) - 0.3 I), with A by the
 * permittivity of water at its temperature.
 * @param temperature degC
 * @param ionic ionic strength, mol L-1
 */
export function davies(values: Values, temperature: number, ionic: number): Activities {
  return openDavies(values, temperature)(ionic);
}

/** As `davies`, for many waters of one temperature. */
export function openDavies(values: Values, temperature: number): (ionic: number) => Activities {
  const kelvin = temperature + values.value('kelvin.zero');
  const permittivity =
    values.value('water.permittivity.a') / (kelvin + values.value('water.permittivity.b')) +
    values.value('water.permittivity.c');
  const slope = values.value('davies.a') * pow(permittivity * kelvin, -1.5);
  const linear = values.value('davies.linear');
  return (ionic) => {
    const strength = Math.max(0, Math.min(ionic, STRONGEST));
    const root = Math.sqrt(strength);
    const perCharge = slope * (root / (1 + root) - linear * strength);
    return { one: pow10(-perCharge), two: pow10(-4 * perCharge) };
  };
}
