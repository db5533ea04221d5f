/** A `price` of something by name: of a crop, or of a product that is dosed. */
export interface NamedPrice<Per extends string> {
  readonly name: string;
  readonly price: number;
  readonly per: Per;
}

/** What things cost and fetch, in one currency. What has no price is left out of the account. */
export interface Prices {
  /** Word of the currency; empty where none was written. */
  readonly currency: string;
  /** Per kg of feed. */
  readonly feed?: number;
  /** Per m3 of water from outside; rain costs nothing. */
  readonly water?: number;
  /** Per kWh. */
  readonly electricity?: number;
  /** What pumps, air and heat draw in the mean, W. */
  readonly power?: number;
  /** Products that are dosed. */
  readonly products: readonly NamedPrice<'kg'>[];
  /** What crops fetch, fresh. */
  readonly crops: readonly NamedPrice<'kg' | 'plant'>[];
  /** What fish that are taken out alive fetch: `price` for each kg or fish. */
  readonly fish?: { readonly price: number; readonly per: 'kg' | 'fish' };
}
