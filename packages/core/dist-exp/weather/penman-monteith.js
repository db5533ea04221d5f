// Reads numbers as: Penman-Monteith
import { InputError } from '../base/faults.js';
import { clearSkyRadiation, daylightHours, extraterrestrialRadiation, netLongWave, netShortWave, solarRadiation, sunPosition, } from './radiation.js';
import { actualPressure, saturationPressure, saturationSlope } from './vapour-pressure.js';
import { weatherFaults } from './weather-day.js';
/** Pressure of the air, kPa, at a height above the sea, m. FAO-56 eq. 7. */
export function airPressure(values, elevation) {
    const standard = values.value('weather.temperature-standard');
    const ratio = (standard - values.value('weather.lapse') * elevation) / standard;
    return values.value('weather.pressure-sea') * ratio ** values.value('weather.pressure-exponent');
}
/** Pressure of the air as a share of that at the sea (atm), at a height above it, m. FAO-56 eq. 7. */
export function pressureShare(values, elevation) {
    return elevation === 0 ? 1 : airPressure(values, elevation) / airPressure(values, 0);
}
/** Height for which the Penman-Monteith equation is written, m. */
const reference = 2;
/**
 * Wind at 2 m, m/s, from wind measured at a height, m (FAO-56 eq. 47; at 2 m itself: as measured). Where
 * none was measured: 2 m/s, the mean of many stations (FAO-56 chapter 3).
 */
export function windAtTwoMetres(values, wind, height = reference) {
    if (wind === undefined) {
        const value = values.value('weather.wind-missing');
        return { value, assumed: `wind of ${value} m/s` };
    }
    if (height === reference)
        return { value: wind };
    const inner = values.value('weather.wind-height') * height - values.value('weather.wind-displacement');
    return { value: (wind * values.value('weather.wind-profile')) / Math.log(inner) };
}
/**
 * Reference evapotranspiration by FAO Penman-Monteith over one day (FAO-56 eq. 6, with 8, 9, 12, 40 and no
 * heat into the soil, 42); what was not measured is filled in by the rules of FAO-56 chapter 3.
 * @throws InputError with every value that cannot be true, and where the sun does not rise (eq. 39 then
 *   has no Rs/Rso)
 */
export function penmanMonteith(values, site, day) {
    const faults = weatherFaults(site, day);
    if (faults.length > 0)
        throw new InputError(faults);
    const k = (name) => values.value(`weather.${name}`);
    const { high, low } = day;
    const mean = (high + low) / 2;
    const sun = sunPosition(values, site.latitude, day.dayOfYear);
    const extraterrestrial = extraterrestrialRadiation(values, sun);
    if (!(extraterrestrial > 0)) {
        const got = `day ${day.dayOfYear} at ${site.latitude} degrees`;
        throw new InputError([{ key: 'latitude', got, problem: 'the sun does not rise on this day' }]);
    }
    const pressure = airPressure(values, site.elevation);
    const psychrometric = k('psychrometric') * pressure;
    const slope = saturationSlope(values, mean);
    const saturation = (saturationPressure(values, high) + saturationPressure(values, low)) / 2;
    const actual = actualPressure(values, day);
    const wind = windAtTwoMetres(values, day.wind, site.windHeight);
    const radiation = solarRadiation(values, site, day, sun);
    const clearSky = clearSkyRadiation(values, extraterrestrial, site.elevation);
    const netShort = netShortWave(values, radiation.value);
    const netLong = netLongWave(values, high, low, actual.value, radiation.value, clearSky);
    const net = netShort - netLong;
    const drying = (k('aerodynamic') / (mean + k('aerodynamic-kelvin'))) * wind.value;
    const energy = k('evaporated') * slope * net;
    const air = psychrometric * drying * (saturation - actual.value);
    return {
        et0: (energy + air) / (slope + psychrometric * (1 + k('wind-resistance') * wind.value)),
        pressure,
        psychrometric,
        slope,
        saturation,
        actual: actual.value,
        wind: wind.value,
        extraterrestrial,
        daylight: daylightHours(sun),
        radiation: radiation.value,
        clearSky,
        netShort,
        netLong,
        net,
        assumed: [actual, radiation, wind].flatMap(({ assumed }) => (assumed === undefined ? [] : [assumed])),
    };
}
//# sourceMappingURL=penman-monteith.js.map