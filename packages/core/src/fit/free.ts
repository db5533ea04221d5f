import type { Prior } from './prior.js';

/** What the water of a vessel may be fitted to hold at the start. */
export const startQuantities = [
  'ammonia',
  'nitrite',
  'nitrate',
  'alkalinity',
  'oxygen',
  'chloride',
  'solids',
  'settled',
] as const;

export type StartQuantity = (typeof startQuantities)[number];

/** A number that a fit may change. */
export interface Free {
  /** As written: the id of a number, `start.nitrate`, `start.nitrate@sump`, or a path of the file. */
  readonly name: string;
  readonly kind: 'number' | 'start' | 'path';
  /** Unit of its values: what the file is written in for a path, internal for the others; '' without. */
  readonly unit: string;
  readonly prior: Prior;
}
