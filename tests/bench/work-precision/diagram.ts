/// <reference lib="dom" />
import * as Plot from '@observablehq/plot';
import { parseHTML } from 'linkedom';
import type { Point } from './point.js';

/** How lines show the ways of meeting changes of forcing. */
const dashes = { 'as it is run': 'none', restart: 'none', stop: '6 3', across: '2 3' };

/** Draws error against time, one line for each contestant and way of meeting changes of forcing, as SVG. */
export function diagram(points: readonly Point[]): string {
  const { document } = parseHTML('<html></html>');
  const rows = points.map((point) => ({ ...point, curve: `${point.name} (${point.forcing})` }));
  const ends = [
    ...new Map([...rows].sort((a, b) => b.error - a.error).map((row) => [row.curve, row])).values(),
  ];
  const plot = Plot.plot({
    document,
    width: 960,
    height: 640,
    marginRight: 60,
    marginLeft: 60,
    style: { background: 'white', fontFamily: 'sans-serif' },
    x: { type: 'log', label: 'time for the year, ms', grid: true },
    y: { type: 'log', label: 'largest error, share of the largest value', grid: true, tickFormat: '.0e' },
    color: { scheme: 'tableau10', domain: [...new Set(points.map(({ name }) => name))] },
    marks: [
      ...Object.entries(dashes).map(([forcing, strokeDasharray]) =>
        Plot.line(
          rows.filter((row) => row.forcing === forcing),
          { x: 'milliseconds', y: 'error', z: 'curve', stroke: 'name', strokeDasharray, sort: 'tolerance' },
        ),
      ),
      Plot.dot(rows, { x: 'milliseconds', y: 'error', fill: 'name', r: 2.5 }),
      Plot.text(ends, { x: 'milliseconds', y: 'error', text: 'curve', fill: 'name', dy: 10, fontSize: 9 }),
    ],
  });
  plot.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  return `${plot.outerHTML}\n`;
}
