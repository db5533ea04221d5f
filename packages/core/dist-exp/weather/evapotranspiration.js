// Reads numbers as: Hargreaves
import { InputError } from '../base/faults.js';
import { penmanMonteith } from './penman-monteith.js';
import { extraterrestrialRadiation, sunPosition } from './radiation.js';
import { weatherFaults } from './weather-day.js';
/**
 * Reference evapotranspiration from temperatures and latitude alone, mm/d (Hargreaves, FAO-56 eq. 52; Ra
 * in mm/d by eq. 20). Below a mean of -17.8 degC the formula goes below 0.
 * @throws InputError with every value that cannot be true
 */
export function hargreaves(values, site, day) {
    const { latitude } = site;
    const { dayOfYear, high, low } = day;
    const faults = weatherFaults({ latitude, elevation: 0 }, { dayOfYear, high, low });
    if (faults.length > 0)
        throw new InputError(faults);
    const sun = sunPosition(values, latitude, dayOfYear);
    const evaporable = values.value('weather.evaporated') * extraterrestrialRadiation(values, sun);
    const warmth = (high + low) / 2 + values.value('weather.hargreaves-offset');
    return values.value('weather.hargreaves') * warmth * Math.sqrt(high - low) * evaporable;
}
const MILLIMETRES = 1000;
/**
 * Reference evapotranspiration of one day in the unit of a scenario, m/d (outdoors: no greenhouse
 * factor). Formulas in mm/d, and what they throw: penman-monteith.ts, hargreaves.ts.
 */
export function referenceEvapotranspiration(values, method, site, day) {
    const depth = method === 'hargreaves' ? hargreaves(values, site, day) : penmanMonteith(values, site, day).et0;
    return depth / MILLIMETRES;
}
//# sourceMappingURL=evapotranspiration.js.map