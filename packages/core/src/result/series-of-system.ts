import type { StreamKind } from '../model/streams.js';
import type { Course } from '../run/run.js';
import { sum } from '../sum.js';
import type { SeriesSource } from './series-source.js';

/** Mean flow of all streams of some kinds over the output step that ends at a sample (the first: 0), m3/d. */
function flow({ samples, model }: Course, kinds: readonly StreamKind[]): (index: number) => number {
  const streams = model.streams.flatMap(({ kind }, i) => (kinds.includes(kind) ? [i] : []));
  return (index) => {
    if (index === 0) return 0;
    const before = samples[index - 1];
    const now = samples[index];
    return sum(streams.map((i) => now.carried[i] - before.carried[i])) / (now.time - before.time);
  };
}

/**
 * Series of the whole: feed offered, evapotranspiration of the day, water in all vessels, and top-up and
 * discharge as means over the output step that ends at the time (0 at the start). The rain tank stands
 * outside the water budget: what it holds, and what has run over its edge since the start, are told here.
 */
export function systemSources(run: Course): readonly SeriesSource[] {
  const source = (quantity: string, unit: string, value: SeriesSource['value']): SeriesSource => ({
    name: `${quantity}@system`,
    unit,
    value,
  });
  const topUp = flow(run, ['top-up']);
  const discharge = flow(run, ['exchange', 'leak', 'overflow']);
  return [
    source('feed', 'g/d', ({ fed }) => sum(fed)),
    source('evapotranspiration', 'm3/d', ({ evapotranspiration }) => evapotranspiration),
    source('top-up', 'm3/d', (_, index) => topUp(index)),
    source('discharge', 'm3/d', (_, index) => discharge(index)),
    source('volume', 'm3', ({ volume }) => sum(volume)),
    source('rain-tank', 'm3', ({ rain }) => rain),
    source('rain-tank-spilled', 'm3', ({ spilled }) => spilled),
  ];
}
