/**
 * Oxygen in fresh water at saturation, g m-3, at degC under a pressure of the air, atm. Benson & Krause 1980/84; APHA
 * 4500-O; valid 0-40 degC, 0.5-1.1 atm. Air over water is moist, so at half the pressure is a little less than half.
 */
export function oxygenSaturation(values, temperature, pressure = 1) {
    const kelvin = temperature + values.value('kelvin.zero');
    const term = (name) => values.value(`oxygen.saturation.${name}`);
    const atSea = Math.exp(term('a') +
        term('b') / kelvin +
        term('c') / kelvin ** 2 +
        term('d') / kelvin ** 3 +
        term('e') / kelvin ** 4);
    const under = (name) => values.value(`oxygen.pressure.${name}`);
    const vapour = Math.exp(under('a') + under('b') / kelvin + under('c') / kelvin ** 2);
    const second = under('d') + under('e') * temperature + under('f') * temperature ** 2;
    const part = (atm) => (1 - vapour / atm) * (1 - second * atm);
    return (atSea * pressure * part(pressure)) / part(1);
}
/** Below this many times its fill, what a bubble takes on leaves its air as it was: the series serves. */
const SMALL = 1e-6;
/**
 * Share of the transfer of an open surface that rising air still gives, which fills up as it rises (plug flow):
 * (1 - e^-n)/n, 1 where n is 0.
 * @param n transfer over what the air can carry away: units of transfer
 */
export function carriedShare(n) {
    return n < SMALL ? 1 - n / 2 : -Math.expm1(-n) / n;
}
//# sourceMappingURL=gases.js.map