import { basePlan, seriesOf } from '@leat/core';
import type { Run } from '../../../packages/core/src/run/run.js';
import { flowThrough, lastDays, lengthOf, nitrogenWith, postedWith } from './last-days.js';
import type { Runs } from './system-case.js';

/** Four harvests: a whole generation. */
export const generation = 168;
/** From one harvest to the next, d. */
const interval = 42;

/** The last generation of the run named `unit`. */
export const settled = (runs: Runs): Run => lastDays(runs['unit'], generation);

/** Nitrogen of the feed of a run, g N. */
export const fed = (run: Run): number => nitrogenWith(run, 'feed');

/** Share of the nitrogen in the feed that went to an account, %. */
function shareOfFeed(run: Run, ...taken: readonly Parameters<typeof nitrogenWith>[]): number {
  return (-100 * taken.reduce((sum, each) => sum + nitrogenWith(...each), 0)) / fed(run);
}

/** Nitrogen that the fish kept, % of the feed: harvested and dead less stocked. */
export const fishShare = (run: Run): number =>
  shareOfFeed(run, [run, 'harvested fish'], [run, 'dead fish'], [run, 'stocked fish']);

/** Nitrogen in crops, % of the feed: harvested less seedlings. */
export const cropShare = (run: Run): number => shareOfFeed(run, [run, 'harvested crop'], [run, 'seedlings']);

const dissolved = ['tan', 'nitrite', 'nitrate', 'organic-nitrogen'] as const;

/** Dissolved nitrogen that left with water, % of the feed. */
export const waterShare = (run: Run): number =>
  shareOfFeed(run, [run, 'sludge', dissolved], [run, 'discharge', dissolved]);

/** Nitrogen in sludge and to nitrogen gas, % of the feed. */
export const sludgeAndGasShare = (run: Run): number =>
  shareOfFeed(
    run,
    [run, 'sludge', ['settled', 'settled-refractory', 'solids', 'refractory']],
    [run, 'air', ['dinitrogen']],
  );

/** Fish harvested, g. */
export const harvested = (run: Run): number => -postedWith(run, 'harvested fish', 'fish-mass');

/** Nitrogen to nitrogen gas, % of the feed. */
export const gasShare = (run: Run): number => shareOfFeed(run, [run, 'air', ['dinitrogen']]);

/** Harvested less stocked, g. */
export const netHarvest = (run: Run): number => harvested(run) - postedWith(run, 'stocked fish', 'fish-mass');

/** Mean mass at harvest, g. */
export const harvestMass = (run: Run): number =>
  harvested(run) / -postedWith(run, 'harvested fish', 'fish-number');

/** A mass of the run as t per year. */
export const tonnesPerYear = (grams: number, run: Run): number => (grams / 1e6 / lengthOf(run)) * 365;

/** A mass of the run as kg per m3 of a rearing tank and harvest. */
export function perTank(grams: number, run: Run, volume: number): number {
  return ((grams / 1000) * interval) / lengthOf(run) / volume;
}

/** Feed offered, g, from the nitrogen that came in with it. */
export function feedMass(run: Run): number {
  const { protein } = run.model.scenario.fish[0].feed;
  return fed(run) / (protein * run.model.parameters.value('protein.nitrogen'));
}

/** Fish harvested per fish stocked, %. */
export const survival = (run: Run): number =>
  (-100 * postedWith(run, 'harvested fish', 'fish-number')) / postedWith(run, 'stocked fish', 'fish-number');

/** Hours that water stays in a vessel. */
export const retention = (run: Run, vessel: string): number => {
  const { volume } = run.model.scenario.vessels.find(({ name }) => name === vessel) ?? { volume: Number.NaN };
  return (24 * volume) / flowThrough(run, vessel);
};

/** Mean of a series over the outputs of a run. */
export function meanOf(run: Run, series: string): number {
  const { values } = seriesOf(run, series);
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}

/** Mean over a run of TAN in one vessel less that in another, mg N/L. */
export const rise = (run: Run, from: string, to: string): number =>
  meanOf(run, `tan@${to}`) - meanOf(run, `tan@${from}`);

/** Alkalinity dosed, eq d-1. */
export const baseDosed = (run: Run): number => basePlan(run).base / lengthOf(run);

/** Fresh crop harvested, kg m-2 per year. */
export function freshPerYear(run: Run, crop: string, area: number): number {
  const dry = -postedWith(run, 'harvested crop', 'crop-mass');
  const fresh = dry / run.model.parameters.value(`crop.${crop}.dry-matter`);
  return (fresh / 1000 / area / lengthOf(run)) * 365;
}
