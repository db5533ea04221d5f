import type { Values } from '../model/composition.js';

/** Short-wave radiation kept by grass, MJ m-2 d-1. FAO-56 eq. 38. */
export function netShortWave(values: Values, radiation: number): number {
  return (1 - values.value('weather.albedo')) * radiation;
}

/**
 * Long-wave radiation lost by grass, MJ m-2 d-1. FAO-56 eq. 39, which counts no sky as clearer than clear:
 * the ratio Rs/Rso is at most 1.
 * @param high highest and lowest air temperature, degC
 * @param vapour actual vapour pressure, kPa
 * @param radiation solar radiation and that under a clear sky, MJ m-2 d-1
 */
export function netLongWave(
  values: Values,
  high: number,
  low: number,
  vapour: number,
  radiation: number,
  clearSky: number,
): number {
  const k = (name: string): number => values.value(`weather.${name}`);
  const fourth = (temperature: number): number => (temperature + k('kelvin')) ** 4;
  const black = (k('stefan-boltzmann') * (fourth(high) + fourth(low))) / 2;
  const emissivity = k('long-wave-dry') - k('long-wave-vapour') * Math.sqrt(vapour);
  const cloud = k('long-wave-clear') * Math.min(1, radiation / clearSky) - k('long-wave-cloud');
  return black * emissivity * cloud;
}
