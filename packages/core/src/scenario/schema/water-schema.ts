import * as z from 'zod';
import { cap } from './cap-schema.js';
import { daily } from './daily-schema.js';
import { kindComplaint } from './complaint.js';
import { formByKey } from './form-by-key.js';
import { number, positive, quantity, section, share, word } from './values.js';
import { waterTemperature } from './water-temperature-schema.js';
import { weatherSchema } from './weather-schema.js';

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

/** The section `climate`. */
export const climateSchema = section(
  {
    'water-temperature': waterTemperature('temperature of the water').optional(),
    'air-temperature': daily(
      'temperature',
      'temperature of the crops; default: that of the water',
    ).optional(),
    et0: formByKey('weather', weatherSchema, daily('depth-rate', 'reference evapotranspiration outdoors')),
    'greenhouse-factor': share('share of it that holds under glass; default 1', 'any').optional(),
  },
  'weather over the system',
);

/** The section `rain-tank`. */
export const rainTankSchema = section(
  {
    capacity: positive('volume', 'what it holds'),
    volume: quantity('volume', 'what is in it at the start'),
    roof: quantity('area', 'roof that drains into it'),
    runoff: share('share of the rain on the roof that reaches it; default 1').optional(),
    rain: daily('depth-rate', 'rain'),
    water: word('what the rain holds: a name of `waters`'),
  },
  'a store of rain',
);

const source = section(
  {
    water: word('a name of `waters`'),
    cap: cap('most in one day or one week, as written; without it, no cap').optional(),
  },
  'a supply',
);

/** The section `top-up`. */
export const topUpSchema = section(
  {
    level: positive('volume', 'volume of the reservoir at which the float closes'),
    rate: positive('volume-flow', 'most that the valve lets in'),
    from: z.array(
      z.union([word('`rain-tank` or a name of `waters`'), source], {
        error: ({ input }) =>
          kindComplaint(input, '`rain-tank`, a name of `waters`, or a map of water and cap'),
      }),
      { error: ({ input }) => kindComplaint(input, 'a list of supplies, the first used first') },
    ),
  },
  'top-up of the reservoir by a float valve',
);
