import { waterComponents } from '../processes/components.js';
import { ownInWater, stateOf } from './layout.js';
/** Index of the vessel whose water the rate at a place depends on: its own, unless a probe stands in another. */
export function waterRead({ vessel, probe = vessel }) {
    return probe;
}
const chemistry = {
    pH: 0,
    ammonia: 1,
    'carbon-dioxide': 2,
    saturation: 3,
};
/** Finds where the variables of a process stand for one place. */
export function readingsOf(process, layout, place) {
    return process.reads.map((variable) => {
        const which = chemistry[variable];
        if (which !== undefined)
            return { kind: 'chemistry', which };
        const state = stateOf(layout, { ...place, vessel: waterRead(place) }, variable) ?? -1;
        if (state < 0)
            throw new RangeError(`${process.id} reads ${variable}, which has no place there`);
        const dissolved = waterComponents.includes(variable) ||
            ownInWater(layout).some(({ component }) => component.id === variable);
        return { kind: dissolved ? 'concentration' : 'amount', state };
    });
}
/** Tells feeds apart: a row of feed eaten holds for one protein content. */
export function feedKey(feed) {
    return `${feed.name} ${feed.protein}`;
}
//# sourceMappingURL=instance.js.map