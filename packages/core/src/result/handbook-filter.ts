/** What the handbook sizes a filter from; masses of ammonia and of the areal rate in the same form (N, or NH3). */
export interface FilterDemand {
  /** Feed given, g d-1. */
  readonly feed: number;
  /** Ammonia made per g of feed, g g-1: 0.03, or protein x 0.092 (Timmons & Ebeling). */
  readonly ammoniaPerFeed: number;
  /** Ammonia that goes with exchanged water and never reaches the filter, g d-1; absent: none. */
  readonly dilution?: number;
  /** What a m2 of grown-in surface removes, g d-1. */
  readonly arealRate: number;
  /** Surface of the media, m2 per m3 of bulk. */
  readonly specificSurface: number;
}

/** A filter by the handbook. */
export interface FilterSize {
  /** Ammonia to remove, g d-1. */
  readonly load: number;
  /** m2. */
  readonly surface: number;
  /** Of media in bulk, m3. */
  readonly volume: number;
}

/**
 * Sizes a filter as handbooks do: ammonia from feed, less dilution, over an areal rate, over a specific surface.
 * It knows no temperature, pH, oxygen or start-up but what the areal rate was taken at; it stands beside the
 * model's answer for comparison. FAO 589 Appendix 4; Miller, Florida A&M training slides.
 * Throws RangeError where a number is not finite, feed, ammonia or dilution is below 0, rate or surface is not above
 * 0, or dilution takes more than is made.
 */
export function handbookFilter(demand: FilterDemand): FilterSize {
  const { feed, ammoniaPerFeed, dilution = 0, arealRate, specificSurface } = demand;
  const fromZero = { feed, ammoniaPerFeed, dilution };
  for (const [name, value] of Object.entries(fromZero)) {
    if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} is ${value}; expected 0 or more`);
  }
  for (const [name, value] of Object.entries({ arealRate, specificSurface })) {
    if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} is ${value}; expected more than 0`);
  }
  const made = feed * ammoniaPerFeed;
  if (dilution > made) {
    throw new RangeError(`dilution is ${dilution} g/d; expected no more than the ${made} g/d made`);
  }
  const load = made - dilution;
  const surface = load / arealRate;
  return { load, surface, volume: surface / specificSurface };
}
