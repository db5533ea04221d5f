import type { Values } from '../model/composition.js';

/** Where the sun stands on a day, seen from a latitude. Angles in radians. */
export interface SunPosition {
  readonly latitude: number;
  readonly declination: number;
  /** Hour angle of sunset: pi where the sun does not set, 0 where it does not rise. */
  readonly sunset: number;
  /** Inverse relative distance of the earth from the sun, squared. */
  readonly nearness: number;
}

/**
 * Position of the sun (FAO-56 eq. 22-25) for degrees north and day of the year. Beyond the polar circles
 * the cosine of eq. 25 leaves -1..1: then the day lasts 24 hours or none.
 */
export function sunPosition(values: Values, degrees: number, dayOfYear: number): SunPosition {
  const latitude = (degrees * Math.PI) / 180;
  const season = (2 * Math.PI * dayOfYear) / 365;
  const nearness = 1 + values.value('weather.sun-distance') * Math.cos(season);
  const phase = values.value('weather.sun-declination-phase');
  const declination = values.value('weather.sun-declination') * Math.sin(season - phase);
  const cosine = -Math.tan(latitude) * Math.tan(declination);
  const sunset = cosine <= -1 ? Math.PI : cosine >= 1 ? 0 : Math.acos(cosine);
  return { latitude, declination, sunset, nearness };
}
