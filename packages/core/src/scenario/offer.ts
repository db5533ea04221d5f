import type { Ration } from './scenario.js';

/** Feed offered: a fixed mass, g d-1, and a share of what stands in the tank, d-1. */
export interface Offer {
  readonly fed: number;
  readonly share: number;
  /** How much faster than over a whole day it is given and eaten; absent: all day, 1. */
  readonly pace?: number;
}

/** What a ration offers to a cohort on a day; a table is read by the mean mass of that morning. */
export function offerOf(ration: Ration, mass: number, number: number): Offer {
  if (!(mass > 0)) return { fed: 0, share: 0 };
  switch (ration.kind) {
    case 'mass':
      return { fed: ration.gramsPerDay, share: 0 };
    case 'share':
      return { fed: 0, share: ration.perDay };
    case 'table': {
      const mean = mass / number;
      const row = ration.rows.filter((entry) => entry.mass <= mean).at(-1) ?? ration.rows[0];
      return { fed: 0, share: row.perDay };
    }
  }
}
