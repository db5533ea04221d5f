// Reads numbers as: chemistry of a vessel
import { SPECIATION, type AcidBaseConstants } from '../chemistry/acid-base.js';
import { waterComponents } from '../processes/components.js';
import { type Bound, type Floats, type Given, type Place } from '../solve/room.js';
import { ownInWater } from './layout.js';
import type { Model } from './model.js';
import { DERIVED, type WaterTables } from './rate-loops.js';
import type { RateRoom } from './rate-room.js';

/** Where the search for the hydrogen ion of each vessel begins. Plain data; it decides the last places of a root. */
export interface PhMemory {
  /** The last root, mol m-3. */
  readonly hydrogen: Float64Array;
  /** Where partials were last taken: TAN, alkalinity, carbon and root. */
  readonly origin: Float64Array;
  /** Partials of the root there, by the first three. */
  readonly slope: Float64Array;
}

/** What rates read at one point (t, y). */
export interface WaterLook {
  readonly tables: Place<WaterTables>;
  /** Its arrays as they are laid out. */
  readonly laid: Given<WaterTables>;
  /** The states. */
  readonly y: Floats;
  /** Fills v, volume and perVolume from y, at so many days of the segment. */
  look(since: number): void;
  /** Fills the partials of chemistry at the point looked at last, and predicts from there in later looks. */
  readonly open: Bound<unknown>;
}

/**
 * Lays out the water of a model.
 * @param constants acid-base constants of each vessel, which the driver sets
 * @param wantsPh whether a rate reads the pH itself, and not the hydrogen ion
 */
export function layWater(
  model: Model,
  room: RateRoom,
  constants: readonly AcidBaseConstants[],
  wantsPh: boolean,
): WaterLook {
  const states = model.layout.states.length;
  const vessels = model.layout.vessels.length;
  const molarNitrogen = model.parameters.value('molar.nitrogen');
  const own = ownInWater(model.layout).map(({ states }) => states);
  const laid: Given<WaterTables> = {
    v: room.floats(states + DERIVED * vessels),
    volume: room.floats(vessels),
    perVolume: room.floats(vessels),
    since: room.floats(1),
    start: room.floats(vessels),
    rise: room.floats(vessels),
    hydrogen: room.floats(new Float64Array(vessels).fill(1e-4)),
    origin: room.floats(new Float64Array(4 * vessels).fill(Number.NaN)),
    slope: room.floats(3 * vessels),
    speciation: room.floats(vessels * SPECIATION),
    own: room.ints(Int32Array.from(own.flatMap((of) => [...of].slice(0, vessels)))),
    owns: own.length,
    vessels,
    states,
    components: waterComponents.length,
    tan: waterComponents.indexOf('tan'),
    alkalinity: waterComponents.indexOf('alkalinity'),
    carbon: waterComponents.indexOf('carbon'),
    wantsPh: wantsPh ? 1 : 0,
  };
  const tables = room.record<WaterTables>(laid);
  const y = room.floats(states);
  const { place, renew } = room.constants(vessels, constants);
  const looks = room.bind('look', tables, y, place, molarNitrogen);
  return {
    tables,
    laid,
    y,
    look: (since) => {
      renew?.();
      laid.since.array[0] = since;
      looks.run();
    },
    open: room.bind('openChemistry', tables, place, molarNitrogen),
  };
}
