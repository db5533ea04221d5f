import type { Run } from '@leat/core';
import { type Display, plainDisplay, quantityPhrase } from '../text/index.js';

/** A row of the summary: a series under a plain name, in a unit for reading. */
export interface Key {
  readonly label: string;
  readonly series: string;
  readonly unit?: string;
  readonly factor?: number;
}

const water = [
  'tan',
  'un-ionised-ammonia',
  'nitrite',
  'nitrate',
  'pH',
  'alkalinity',
  'oxygen',
  'chloride',
] as const;

/**
 * The rows: the water of the first fish tank (or the reservoir), the level, stock and crops.
 * @param count most cohorts, and most plantings, told one by one
 */
export function keysOf(run: Run, count: number, display: Display = plainDisplay): readonly Key[] {
  const { keys } = display.words.run;
  const { reservoir, fish: cohorts, plantings } = run.model.scenario;
  const home = cohorts[0]?.vessel ?? reservoir;
  return [
    ...water.map((quantity) => ({ label: quantityPhrase(quantity, display), series: `${quantity}@${home}` })),
    { label: keys.water, series: `volume@${reservoir}` },
    ...cohorts
      .slice(0, count)
      .map(({ name }) => ({ label: keys.fish, series: `fish-mass@${name}`, unit: 'kg', factor: 1e-3 })),
    ...(cohorts.length > 0 ? [{ label: keys.feed, series: 'feed@system' }] : []),
    ...plantings
      .slice(0, count)
      .map(({ name }) => ({ label: keys.crop, series: `crop-mass@${name}`, unit: 'kg dry', factor: 1e-3 })),
  ];
}

/** Names of the series that say most of a run, in the order of the summary: every cohort and every planting. */
export function keySeries(run: Run): readonly string[] {
  return keysOf(run, Infinity).map(({ series }) => series);
}
