import { brought } from './kernels/brought.js';
/** What one g of the product brings; its mirror leaves the account of dosing. */
function broughtBy(values) {
    const of = (property) => values.value(`product.${property}`);
    const content = brought({
        ...{ tan: of('tan'), alkalinity: of('alkalinity'), carbon: of('carbon'), chloride: of('chloride') },
        ...{ nitrate: of('nitrate'), calcium: of('calcium'), calcite: of('calcite') },
    });
    return content.flatMap(([component, amount]) => [
        { component, coefficient: amount },
        { component, coefficient: -amount, outside: 'dosing' },
    ]);
}
const coefficients = (_values, at) => [
    at.most,
    at.setPoint,
    at.sign / at.band,
];
/** Share of the most that is fed, 0 to 1, at so many bands beyond the set point: smooth at both ends. */
function opening(x) {
    return x <= 0 ? 0 : x >= 1 ? 1 : x * x * (3 - 2 * x);
}
/** Its slope. */
function openingSlope(x) {
    return x <= 0 || x >= 1 ? 0 : 6 * x * (1 - x);
}
/** k0 s(k2 (k1 - v)), of variables [v]: a feed that opens as v falls (or rises) beyond k1, whole at one band. */
const proportionalFeed = {
    rate: (v, at, k) => k[0] * opening(k[2] * (k[1] - v[at[0]])),
    partials: (v, at, k, d) => {
        d[0] = -k[0] * k[2] * openingSlope(k[2] * (k[1] - v[at[0]]));
    },
};
/**
 * A product fed by the pH of the water in which the probe stands, per g: most x s((set point - pH)/band) for a base, of (pH - set point) for an
 * acid; s(x) = x2 (3 - 2x) between 0 and 1.
 */
export const dosingByPh = {
    id: 'dosing-by-ph',
    title: 'dosing by pH',
    place: 'doser',
    unit: 'g',
    basis: 'whole',
    reads: ['pH'],
    stoichiometry: broughtBy,
    coefficients,
    ...proportionalFeed,
};
/** A product fed by the alkalinity of the water in which the probe stands, per g; as `dosingByPh`. */
export const dosingByAlkalinity = {
    id: 'dosing-by-alkalinity',
    title: 'dosing by alkalinity',
    place: 'doser',
    unit: 'g',
    basis: 'whole',
    reads: ['alkalinity'],
    stoichiometry: broughtBy,
    coefficients,
    ...proportionalFeed,
};
//# sourceMappingURL=dosers.js.map