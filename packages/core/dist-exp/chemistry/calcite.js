/** Solubility product of calcite, mol2 L-2, without activities, at degC. Plummer & Busenberg 1982. */
export function calciteSolubility(values, temperature) {
    const kelvin = temperature + values.value('kelvin.zero');
    const term = (name) => values.value(`calcite.ks.${name}`);
    return 10 ** (term('a') + term('b') * kelvin + term('c') / kelvin + term('d') * Math.log10(kelvin));
}
/** cm s-1 as m d-1, and mmol cm-2 s-1 as mol m-2 d-1. */
const VELOCITY = 864;
const FLUX = 864_000;
/** Above this the published law has other numbers for water, degC. */
const WARM = 25;
/** How fast clean calcite dissolves in water without any, at degC. Plummer, Wigley & Parkhurst 1978. */
export function calciteAttack(values, temperature) {
    const kelvin = temperature + values.value('kelvin.zero');
    const k = (a, b) => 10 ** (values.value(`calcite.rate.${a}`) + values.value(`calcite.rate.${b}`) / kelvin);
    return {
        hydrogen: VELOCITY * k('k1.a', 'k1.b'),
        carbonDioxide: VELOCITY * k('k2.a', 'k2.b'),
        water: FLUX * (temperature > WARM ? k('k3.warm-a', 'k3.warm-b') : k('k3.a', 'k3.b')),
    };
}
//# sourceMappingURL=calcite.js.map