import { positive, quantity, section } from './values.js';

/** One pump of `pumps`. */
export const pumpSchema = section(
  {
    timer: section(
      {
        on: positive('time', 'time on'),
        off: positive('time', 'time off'),
        offset: quantity('time', 'first switched on').optional(),
      },
      'a clock that repeats',
    ).optional(),
    inlet: quantity(
      'volume',
      'volume of the vessel drawn from at which the pump sucks air and trips',
    ).optional(),
    restart: quantity('volume', 'volume at which it starts again').optional(),
  },
  'a pump: all flows that name it start and stop together',
);
