import type { EnsembleResult } from '@leat/core';
import { csv } from '../render/csv.js';

/** One row per output time; for every series its median and the edges of its 50 % and 90 % bands. */
export function ensembleCsv({ times, series }: EnsembleResult): string {
  const columns = series.flatMap(({ name, unit, median, band50, band90 }) => [
    { name: `${name} median`, unit, values: median },
    { name: `${name} 25 %`, unit, values: band50[0] },
    { name: `${name} 75 %`, unit, values: band50[1] },
    { name: `${name} 5 %`, unit, values: band90[0] },
    { name: `${name} 95 %`, unit, values: band90[1] },
  ]);
  return csv(times, columns);
}
