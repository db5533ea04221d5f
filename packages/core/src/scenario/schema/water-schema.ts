import { number, quantity, section, word } from './values.js';

/** Keys that say what is in water. */
const waterKeys = {
  like: word('a water of the library (or, at the start, of this file) for whatever is not given').optional(),
  ammonia: quantity('ammonia', 'total ammonia nitrogen').optional(),
  nitrite: quantity('nitrite', 'nitrite nitrogen').optional(),
  nitrate: quantity('nitrate', 'nitrate nitrogen').optional(),
  alkalinity: quantity('alkalinity').optional(),
  pH: number('acidity', 4, 10.5).optional(),
  oxygen: quantity('concentration', 'dissolved oxygen; default: saturation').optional(),
  chloride: quantity('concentration', 'chloride').optional(),
};

/** One water of `waters`. */
export const waterSchema = section(waterKeys, 'water from outside');

/** Water in a vessel at the start. */
export const startWaterSchema = section(
  { ...waterKeys, solids: quantity('concentration', 'suspended solids, dry').optional() },
  'water at the start',
);
