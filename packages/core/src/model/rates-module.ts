import type { AcidBaseConstants } from '../chemistry/acid-base.js';
import { moduleFrom } from '../solve/open-module.js';
import { Place } from '../solve/room.js';
import type { Group, RateModule } from './rate-room.js';
import { KERNELS, RATES, RATE_STATICS } from './rates.generated.js';

/** Fields of a record of constants as the module reads them, in the order of their interface. */
const FIELDS = [
  'k1',
  'k2',
  'ammonium',
  'water',
  'proton',
  'calcite',
] as const satisfies readonly (keyof AcidBaseConstants)[];

/** Place of the kernel of a group among those of the module, or -1. */
const placeOf = ({ kernel: { name } }: Group): number => (name === undefined ? -1 : KERNELS.indexOf(name));

/** The module of the rates: the rates of the i-th kernel are the 2 i-th function of its table, the partials come after them. */
export const ratesModule = (): RateModule => ({
  ...moduleFrom(RATES, RATE_STATICS),
  walk: (room, groups, v, r) => {
    const own = groups.filter((group) => placeOf(group) >= 0);
    const count = own.length;
    const program = room.ints(
      Int32Array.from(own.flatMap((group) => [2 * placeOf(group), group.sites.from])),
    );
    const rates = (): void => {
      for (const { kernel, sites } of own) kernel.rates(sites.array, v.array, r.array);
    };
    const partials = (): void => {
      for (const { kernel, sites } of own) kernel.partials(sites.array, v.array);
    };
    return {
      inside: {
        rates: room.bound('rates', rates, [program, count, v, r]),
        partials: room.bound('partials', partials, [program, count, v]),
      },
      outside: groups.filter((group) => placeOf(group) < 0),
    };
  },
  constants: (room, vessels, constants) => {
    const image = room.floats(1 + FIELDS.length * vessels);
    const held: (AcidBaseConstants | undefined)[] = new Array<undefined>(vessels);
    return {
      place: new Place(room, image.from, () => constants),
      renew: () => {
        for (let vessel = 0; vessel < vessels; vessel++) {
          const now = constants[vessel];
          if (held[vessel] === now) continue;
          held[vessel] = now;
          FIELDS.forEach((field, f) => {
            image.array[1 + FIELDS.length * vessel + f] = now[field];
          });
        }
      },
    };
  },
});
