import { seriesOf, type Run } from '@leat/core';
import type { Colour, Line } from './chart.js';

/** A series of a run as a line of a picture. */
export function course(run: Run, series: string, name: string, colour: Colour, dash?: string): Line {
  const { values } = seriesOf(run, series);
  const time = run.samples.map((sample) => sample.time);
  return { name, time, values, colour, ...(dash !== undefined && { dash }) };
}
