import { names } from './names.js';
import { tableRows } from './table-rows.js';
const list = (text) => text.split(' ');
/** What each kind of subject has. A test holds this against what the code reads and what the tables hold. */
export const properties = {
    fish: {
        needed: list('body-nitrogen body-demand energy-retention energy-digestibility maintenance appetite reference-temperature ' +
            'protein-digestibility mortality temperature-low temperature-high temperature-optimum-low temperature-optimum-high ' +
            'limit-ammonia limit-nitrite limit-nitrate limit-oxygen density-high lethal-temperature-low lethal-temperature-high ' +
            'lethal-oxygen lethal-ammonia lethal-nitrite chloride-halving lethal-carbon-dioxide'),
        further: list('thermal-growth'),
    },
    crop: {
        needed: list('density days dry-matter seedling-mass light-use growth base-temperature optimum-temperature nitrogen-a ' +
            'nitrogen-b nitrogen-plateau kc-start kc-full kc-end chloride-high ph-low ph-high salt-threshold salt-slope'),
        further: list('nitrogen-uptake'),
        together: list('fruit-share fruit-onset fruit-days fruit-dry-matter pick-every'),
    },
    media: { needed: list('surface'), further: list('porosity') },
    feed: { needed: list('protein demand'), further: [] },
    dose: { needed: list('alkalinity carbon chloride tan'), further: list('nitrate calcium calcite') },
    aerator: { needed: list('oxygen-share'), further: [] },
    lime: { needed: list('area'), further: [] },
    water: { needed: list('tan nitrite nitrate alkalinity ph oxygen chloride'), further: ['calcium'] },
};
/** Whether a word names a group that a user may add to. */
export function isOpenGroup(word) {
    return Object.hasOwn(properties, word);
}
/** The form of a property, from all our subjects that have it. Throws RangeError when none has. */
export function formOf(group, property) {
    const rows = names(group).flatMap((subject) => tableRows.get(`${group}.${subject}.${property}`) ?? []);
    if (rows.length === 0)
        throw new RangeError(`no ${group} has ${property}`);
    return {
        unit: rows[0].unit,
        low: Math.min(...rows.map(({ low }) => low)),
        high: Math.max(...rows.map(({ high }) => high)),
    };
}
//# sourceMappingURL=properties.js.map