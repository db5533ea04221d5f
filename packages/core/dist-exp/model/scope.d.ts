import type { Values } from '../library/values.js';
/** Tables that also know whether they have an id. */
export interface Tables extends Values {
    has(id: string): boolean;
}
/** What fish make of energy: the share of what is digested that they retain, and what holds a fish of 100 g, d-1. */
export interface Metabolism {
    readonly retention: number;
    readonly maintenance: number;
}
/**
 * Which species, crop, feed, product and lime stand for `species.*`, `crop.*`, `feed.*`, `product.*` and `lime.area` at
 * a place.
 */
export interface Subject {
    readonly species?: string;
    /** What these fish make of energy, by a measured feed conversion, in place of what their species does. */
    readonly metabolism?: Metabolism;
    readonly crop?: string;
    readonly feed?: {
        readonly name: string;
        readonly protein: number;
    };
    readonly product?: string;
    readonly lime?: string;
}
/**
 * The tables as seen from a place: `species.body-nitrogen` reads `fish.<species>.body-nitrogen`,
 * `crop.growth` reads `crop.<crop>.growth` where there is no general `crop.growth`, `feed.protein`
 * is that of the feed given, `product.alkalinity` that of the product dosed, `lime.area` that of the lime of the vessel. Values are looked up once.
 */
export declare function scopeTo(tables: Tables, subject: Subject): Values;
//# sourceMappingURL=scope.d.ts.map