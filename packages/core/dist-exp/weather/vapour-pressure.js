/** Saturation vapour pressure, kPa, at degC. FAO-56 eq. 11. */
export function saturationPressure(values, temperature) {
    const offset = values.value('weather.vapour-offset');
    const exponent = (values.value('weather.vapour-factor') * temperature) / (temperature + offset);
    return values.value('weather.vapour-scale') * Math.exp(exponent);
}
/** Slope of the saturation vapour pressure, kPa/degC, at degC. FAO-56 eq. 13. */
export function saturationSlope(values, temperature) {
    const span = temperature + values.value('weather.vapour-offset');
    return (values.value('weather.vapour-slope') * saturationPressure(values, temperature)) / (span * span);
}
/**
 * Actual vapour pressure of a day, kPa, by the best of what was measured: dew point (FAO-56 eq. 14);
 * highest and lowest humidity (17); highest alone (18); mean (19); none of them: the dew point is taken
 * to be the lowest temperature (48).
 */
export function actualPressure(values, day) {
    const { dewPoint, humidityHigh, humidityLow, humidity } = day;
    if (dewPoint !== undefined)
        return { value: saturationPressure(values, dewPoint) };
    const atLow = saturationPressure(values, day.low);
    const atHigh = saturationPressure(values, day.high);
    if (humidityHigh !== undefined && humidityLow !== undefined) {
        return { value: (atLow * humidityHigh + atHigh * humidityLow) / 2 };
    }
    if (humidityHigh !== undefined)
        return { value: atLow * humidityHigh };
    if (humidity !== undefined)
        return { value: (humidity * (atHigh + atLow)) / 2 };
    return { value: atLow, assumed: 'dew point from the lowest temperature' };
}
//# sourceMappingURL=vapour-pressure.js.map