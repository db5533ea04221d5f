import * as z from 'zod';
import { convert, describeDimension, type Dimension } from '../../units.js';
import { complain } from './complaint.js';
import { choice, number, positive, quantity, section, truth, word, type Reads } from './values.js';

/** A column of a CSV file, with the unit of its plain numbers and what they measure. */
export interface ColumnGiven {
  readonly column: string;
  readonly unit: string;
  readonly dimension: Dimension;
}

function column(dimension: Dimension, description: string): Reads<ColumnGiven> {
  return section(
    {
      column: word('name of the column'),
      unit: word(`unit of its numbers, as of ${describeDimension(dimension)}`),
    },
    description,
  ).transform((given, context): ColumnGiven => {
    const answer = convert(1, given.unit, dimension);
    if ('value' in answer || answer.problem === 'negative') return { ...given, dimension };
    context.addIssue({ code: 'custom', path: ['unit'], message: complain(answer) });
    return z.NEVER;
  });
}

/** Reference evapotranspiration worked out from a file of daily weather. */
export const weatherSchema = section(
  {
    weather: word('a CSV file with one row for each day of the run, under a row of column names'),
    method: choice('how it is worked out; default penman-monteith', [
      'penman-monteith',
      'hargreaves',
    ]).optional(),
    latitude: number('degrees north; south is below 0', -90, 90),
    altitude: quantity('length', 'height above the sea; penman-monteith needs it').optional(),
    coastal: truth('on or near a coast, where radiation must be estimated; default false').optional(),
    'wind-height': positive('length', 'height of the wind meter; default 2 m').optional(),
    columns: section(
      {
        high: column('temperature', 'highest air temperature of the day'),
        low: column('temperature', 'lowest air temperature of the day'),
        'dew-point': column('temperature', 'dew point').optional(),
        'humidity-high': column('share', 'highest relative humidity').optional(),
        'humidity-low': column('share', 'lowest relative humidity').optional(),
        humidity: column('share', 'mean relative humidity').optional(),
        radiation: column('radiation', 'solar radiation').optional(),
        sunshine: column('time', 'bright sunshine').optional(),
        wind: column('speed', 'mean wind').optional(),
      },
      'what was measured; all but the temperatures may be missing, whole or on some days',
    ),
  },
  'reference evapotranspiration from weather, outdoors',
);

/** It as written, still without the file. */
export type WeatherGiven = ReturnType<typeof weatherSchema.parse>;
