// Reads numbers as: what a product brings
import { brought } from '../processes/kernels/brought.js';
import { stateOf } from './layout.js';
/** What one g of a product brings; what it need not say and does not, it brings none of. */
function broughtBy(tables, product) {
    const of = (property) => {
        const id = `dose.${product}.${property}`;
        return tables.has(id) ? tables.value(id) : 0;
    };
    return brought({
        ...{ tan: of('tan'), alkalinity: of('alkalinity'), carbon: of('carbon'), chloride: of('chloride') },
        ...{ nitrate: of('nitrate'), calcium: of('calcium'), calcite: of('calcite') },
    });
}
/**
 * What a mass of a product brings to the states of a vessel: [state, amount] of each.
 * @param mass g
 * @throws RangeError where it brings what has no place there
 */
export function dosedTo(layout, tables, vessel, product, mass) {
    const place = { vessel: layout.vessels.indexOf(vessel), cohort: -1, batch: -1 };
    return broughtBy(tables, product).map(([component, perGram]) => {
        const state = stateOf(layout, place, component);
        if (state === undefined || state < 0)
            throw new RangeError(`${component} has no place in ${vessel}`);
        return [state, mass * perGram];
    });
}
//# sourceMappingURL=dosed.js.map