import { properties } from '../library/properties.js';
/**
 * The tables as seen from a place: `species.body-nitrogen` reads `fish.<species>.body-nitrogen`,
 * `crop.growth` reads `crop.<crop>.growth` where there is no general `crop.growth`, `feed.protein`
 * is that of the feed given, `product.alkalinity` that of the product dosed, `lime.area` that of the lime of the vessel. Values are looked up once.
 */
export function scopeTo(tables, subject) {
    const seen = new Map();
    const find = (id) => {
        const property = id.slice(id.indexOf('.') + 1);
        if (subject.species !== undefined && id.startsWith('species.')) {
            if (property === 'energy-retention' && subject.metabolism !== undefined)
                return subject.metabolism.retention;
            if (property === 'maintenance' && subject.metabolism !== undefined)
                return subject.metabolism.maintenance;
            return tables.value(`fish.${subject.species}.${property}`);
        }
        if (subject.feed !== undefined && id === 'feed.protein')
            return subject.feed.protein;
        if (subject.feed !== undefined && id.startsWith('feed.')) {
            const own = `feed.${subject.feed.name}.${property}`;
            return tables.value(tables.has(own) ? own : id);
        }
        if (subject.product !== undefined && id.startsWith('product.')) {
            const own = `dose.${subject.product}.${property}`;
            // What a product may bring but need not say, it brings none of.
            return !tables.has(own) && properties.dose.further.includes(property) ? 0 : tables.value(own);
        }
        if (subject.lime !== undefined && id === 'lime.area')
            return tables.value(`lime.${subject.lime}.area`);
        if (subject.crop !== undefined && id.startsWith('crop.') && !tables.has(id)) {
            return tables.value(`crop.${subject.crop}.${property}`);
        }
        return tables.value(id);
    };
    return {
        value: (id) => {
            let value = seen.get(id);
            if (value === undefined) {
                value = find(id);
                seen.set(id, value);
            }
            return value;
        },
    };
}
//# sourceMappingURL=scope.js.map