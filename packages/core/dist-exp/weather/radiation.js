/**
 * Position of the sun (FAO-56 eq. 22-25) for degrees north and day of the year. Beyond the polar circles
 * the cosine of eq. 25 leaves -1..1: then the day lasts 24 hours or none.
 */
export function sunPosition(values, degrees, dayOfYear) {
    const latitude = (degrees * Math.PI) / 180;
    const season = (2 * Math.PI * dayOfYear) / 365;
    const nearness = 1 + values.value('weather.sun-distance') * Math.cos(season);
    const phase = values.value('weather.sun-declination-phase');
    const declination = values.value('weather.sun-declination') * Math.sin(season - phase);
    const cosine = -Math.tan(latitude) * Math.tan(declination);
    const sunset = cosine <= -1 ? Math.PI : cosine >= 1 ? 0 : Math.acos(cosine);
    return { latitude, declination, sunset, nearness };
}
/** Hours from sunrise to sunset. FAO-56 eq. 34. */
export function daylightHours(sun) {
    return (24 / Math.PI) * sun.sunset;
}
const minutesPerDay = 24 * 60;
/** Solar radiation above the atmosphere, MJ m-2 d-1. FAO-56 eq. 21. */
export function extraterrestrialRadiation(values, sun) {
    const { latitude, declination, sunset, nearness } = sun;
    const high = sunset * Math.sin(latitude) * Math.sin(declination);
    const round = Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
    return (minutesPerDay / Math.PI) * values.value('weather.solar-constant') * nearness * (high + round);
}
/** Solar radiation under a clear sky, MJ m-2 d-1, at a height in m. FAO-56 eq. 37. */
export function clearSkyRadiation(values, extraterrestrial, elevation) {
    const share = values.value('weather.clear-sky') + values.value('weather.clear-sky-height') * elevation;
    return share * extraterrestrial;
}
/**
 * Solar radiation of a day, MJ m-2 d-1: measured; or from hours of sunshine (FAO-56 eq. 35); or, with
 * neither, from the daily range of temperature by Hargreaves' radiation formula (eq. 50).
 */
export function solarRadiation(values, site, day, sun) {
    if (day.radiation !== undefined)
        return { value: day.radiation };
    const above = extraterrestrialRadiation(values, sun);
    if (day.sunshine !== undefined) {
        const share = day.sunshine / daylightHours(sun);
        const none = values.value('weather.sunshine-none');
        return { value: (none + values.value('weather.sunshine-full') * share) * above };
    }
    const place = site.coastal === true ? 'coastal' : 'interior';
    const perRoot = values.value(`weather.radiation-${place}`);
    return {
        value: perRoot * Math.sqrt(day.high - day.low) * above,
        assumed: `solar radiation from the range of temperature (${place})`,
    };
}
/** Short-wave radiation kept by grass, MJ m-2 d-1. FAO-56 eq. 38. */
export function netShortWave(values, radiation) {
    return (1 - values.value('weather.albedo')) * radiation;
}
/**
 * Long-wave radiation lost by grass, MJ m-2 d-1. FAO-56 eq. 39, which counts no sky as clearer than clear:
 * the ratio Rs/Rso is at most 1.
 * @param high highest and lowest air temperature, degC
 * @param vapour actual vapour pressure, kPa
 * @param radiation solar radiation and that under a clear sky, MJ m-2 d-1
 */
export function netLongWave(values, high, low, vapour, radiation, clearSky) {
    const k = (name) => values.value(`weather.${name}`);
    const fourth = (temperature) => (temperature + k('kelvin')) ** 4;
    const black = (k('stefan-boltzmann') * (fourth(high) + fourth(low))) / 2;
    const emissivity = k('long-wave-dry') - k('long-wave-vapour') * Math.sqrt(vapour);
    const cloud = k('long-wave-clear') * Math.min(1, radiation / clearSky) - k('long-wave-cloud');
    return black * emissivity * cloud;
}
//# sourceMappingURL=radiation.js.map