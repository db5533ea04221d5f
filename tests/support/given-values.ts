import { createParameters } from '../../packages/core/src/library/parameters.js';
import type { Values } from '../../packages/core/src/library/values.js';

const constants = createParameters();

/** The numbers given; of the tables only molar masses and the constants of dissociation and solubility. */
export function givenValues(given: Readonly<Record<string, number>>): Values {
  return {
    value: (id) => {
      if (Object.hasOwn(given, id)) return given[id];
      if (
        /^(molar|emerson|carbonate|water\.kw|oxygen|kelvin|gas\.oxygen-solubility$|gas\.constant$)/.test(id)
      )
        return constants.value(id);
      throw new RangeError(`${id} is not given`);
    },
  };
}
