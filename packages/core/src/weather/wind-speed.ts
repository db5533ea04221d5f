import type { Values } from '../model/composition.js';
import type { Estimate } from './actual-vapour-pressure.js';

/** Height for which the Penman-Monteith equation is written, m. */
const reference = 2;

/**
 * Wind at 2 m, m/s, from wind measured at a height, m (FAO-56 eq. 47; at 2 m itself: as measured). Where
 * none was measured: 2 m/s, the mean of many stations (FAO-56 chapter 3).
 */
export function windAtTwoMetres(values: Values, wind: number | undefined, height = reference): Estimate {
  if (wind === undefined) {
    const value = values.value('weather.wind-missing');
    return { value, assumed: `wind of ${value} m/s` };
  }
  if (height === reference) return { value: wind };
  const inner = values.value('weather.wind-height') * height - values.value('weather.wind-displacement');
  return { value: (wind * values.value('weather.wind-profile')) / Math.log(inner) };
}
