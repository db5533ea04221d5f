import { properties } from '../library/properties.js';
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
  readonly feed?: { readonly name: string; readonly protein: number };
  readonly product?: string;
  readonly lime?: string;
}

/** What more (or less) protein than a feed of the tables has adds to its oxygen demand in place of starch, g COD per g. */
function proteinForStarch(tables: Tables, feed: { readonly name: string; readonly protein: number }): number {
  const more = feed.protein - tables.value(`feed.${feed.name}.protein`);
  return more === 0 ? 0 : more * (tables.value('protein.demand') - tables.value('carbohydrate.demand'));
}

/**
 * The tables as seen from a place: `species.body-nitrogen` reads `fish.<species>.body-nitrogen`,
 * `crop.growth` reads `crop.<crop>.growth` where there is no general `crop.growth`, `feed.protein`
 * is that of the feed given, `feed.demand` that of its kind with the protein given in place of starch, `product.alkalinity` that of the product dosed, `lime.area` that of the lime of the vessel. Values are looked up once;
 * who asks for the same numbers in the same order again has them without a look-up by name.
 */
export function scopeTo(tables: Tables, subject: Subject): Values {
  /** Numbers found so far, the place of each by its id, and the place of the one that was last asked for after it. */
  const ids: string[] = [];
  const found: number[] = [];
  const follows: number[] = [];
  const placeOf = new Map<string, number>();
  let last = 0;
  const find = (id: string): number => {
    const property = id.slice(id.indexOf('.') + 1);
    if (subject.species !== undefined && id.startsWith('species.')) {
      if (property === 'energy-retention' && subject.metabolism !== undefined)
        return subject.metabolism.retention;
      if (property === 'maintenance' && subject.metabolism !== undefined)
        return subject.metabolism.maintenance;
      return tables.value(`fish.${subject.species}.${property}`);
    }
    if (subject.feed !== undefined && id === 'feed.protein') return subject.feed.protein;
    if (subject.feed !== undefined && id.startsWith('feed.')) {
      const own = `feed.${subject.feed.name}.${property}`;
      if (!tables.has(own)) return tables.value(id);
      return tables.value(own) + (property === 'demand' ? proteinForStarch(tables, subject.feed) : 0);
    }
    if (subject.product !== undefined && id.startsWith('product.')) {
      const own = `dose.${subject.product}.${property}`;
      // What a product may bring but need not say, it brings none of.
      return !tables.has(own) && properties.dose.further.includes(property) ? 0 : tables.value(own);
    }
    if (subject.lime !== undefined && id === 'lime.area') return tables.value(`lime.${subject.lime}.area`);
    if (subject.crop !== undefined && id.startsWith('crop.') && !tables.has(id)) {
      return tables.value(`crop.${subject.crop}.${property}`);
    }
    return tables.value(id);
  };
  return {
    value: (id) => {
      let place = follows[last];
      if (ids[place] !== id) {
        place = placeOf.get(id) ?? found.push(find(id)) - 1;
        ids[place] = id;
        placeOf.set(id, place);
        follows[last] = place;
      }
      last = place;
      return found[place];
    },
  };
}
