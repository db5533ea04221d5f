/**
 * Water from outside: `ammonia`, `nitrite`, `nitrate` in g N m-3; `alkalinity` eq m-3; `carbon` (inorganic) and `calcium`
 * mol m-3; `oxygen` and `chloride` g m-3.
 */
export interface SourceWater {
  readonly name: string;
  readonly ammonia: number;
  readonly nitrite: number;
  readonly nitrate: number;
  readonly alkalinity: number;
  readonly carbon: number;
  readonly oxygen: number;
  readonly chloride: number;
  readonly calcium: number;
}

/**
 * The component of the model in which a quantity of water is held: `tan` for `ammonia`; all others go by
 * their own name. So do rows of the tables (`water.mains.tan`, `dose.NAME.tan`): users write those, and they keep their ids.
 */
export function componentOf<Quantity extends string>(
  quantity: Quantity,
): Exclude<Quantity, 'ammonia'> | 'tan' {
  return quantity === 'ammonia' ? 'tan' : (quantity as Exclude<Quantity, 'ammonia'>);
}

/** What a component of the model is called where water is told of: `ammonia` for `tan`; all others go by their own name. */
export function quantityOf<Component extends string>(
  component: Component,
): Exclude<Component, 'tan'> | 'ammonia' {
  return component === 'tan' ? 'ammonia' : (component as Exclude<Component, 'tan'>);
}

/** A feed by name. */
export interface Feed {
  readonly name: string;
  /** Protein, g per g of feed as fed. */
  readonly protein: number;
}

/**
 * Feed given per day: a mass (`gramsPerDay`), a share of body mass (`perDay`, g per g of fish and day), or a table of
 * that share by mean fish `mass`, g.
 */
export type Ration =
  | { readonly kind: 'mass'; readonly gramsPerDay: number }
  | { readonly kind: 'share'; readonly perDay: number }
  | { readonly kind: 'table'; readonly rows: readonly { readonly mass: number; readonly perDay: number }[] };
