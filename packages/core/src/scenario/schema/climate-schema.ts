import { daily } from './daily-schema.js';
import { formByKey } from './form-by-key.js';
import { section, share } from './values.js';
import { waterTemperature } from './water-temperature-schema.js';
import { weatherSchema } from './weather-schema.js';

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
