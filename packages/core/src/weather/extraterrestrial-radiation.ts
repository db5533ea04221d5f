import type { Values } from '../model/composition.js';
import type { SunPosition } from './sun-position.js';

const minutesPerDay = 24 * 60;

/** Solar radiation above the atmosphere, MJ m-2 d-1. FAO-56 eq. 21. */
export function extraterrestrialRadiation(values: Values, sun: SunPosition): number {
  const { latitude, declination, sunset, nearness } = sun;
  const high = sunset * Math.sin(latitude) * Math.sin(declination);
  const round = Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  return (minutesPerDay / Math.PI) * values.value('weather.solar-constant') * nearness * (high + round);
}
