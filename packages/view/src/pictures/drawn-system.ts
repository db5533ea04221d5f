/** A vessel as it is drawn. */
export interface DrawnVessel {
  readonly name: string;
  readonly kind: string;
  /** m3. */
  readonly volume: number;
  /** What lives, grows or lies in it, one line each. */
  readonly holds: readonly string[];
  /** What is drawn in it. */
  readonly life: readonly ('fish' | 'plants' | 'gravel')[];
}

/** A way of water as it is drawn. An end that is absent is outside. */
export interface DrawnFlow {
  readonly from?: string;
  readonly to?: string;
  /** Such as `pumped`, `gravity`, `top-up with mains`. */
  readonly kind: string;
  /** Whether it comes out of the rain tank. */
  readonly tank?: true;
  /** Mean over the run, m3/d. */
  readonly rate: number;
}

/** A level of the reservoir at which something happens. */
export interface LevelMark {
  /** m3. */
  readonly value: number;
  readonly text: string;
}

/** What stands of one planting: the dry mass of each batch at each output time, g. */
export interface Stand {
  readonly planting: string;
  readonly batches: readonly (readonly number[])[];
}
