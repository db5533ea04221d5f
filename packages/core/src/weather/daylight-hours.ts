import type { SunPosition } from './sun-position.js';

/** Hours from sunrise to sunset. FAO-56 eq. 34. */
export function daylightHours(sun: SunPosition): number {
  return (24 / Math.PI) * sun.sunset;
}
