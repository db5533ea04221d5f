import * as Plot from '@observablehq/plot';
import type { Asked, Swept } from '../render/sweep.js';
import type { Colours } from './colours.js';
import type { Maker } from './document.js';

/** What one panel of a sweep is drawn from. */
export interface SweepDrawing {
  readonly maker: Maker;
  readonly swept: Swept;
  readonly quantity: Asked;
  readonly colours: Colours;
  readonly frame: { readonly width: number; readonly height: number };
  /** What stands under the horizontal axis. */
  readonly across: string;
}

/** How the letters of a panel are set. */
export const letters = 14;

/**
 * One quantity over the values of another: a line with a dot for each run, full where every condition holds, hollow
 * where one fails, a cross at the foot where the run broke off.
 */
export function sweepLine({ maker, swept, quantity, colours, frame, across }: SweepDrawing): Element {
  const points = swept.points.map((point) => ({
    x: point.values[0],
    y: quantity.of(point),
    fails: swept.conditions.length > 0 && !point.holds,
  }));
  const told = points.filter(({ y }) => Number.isFinite(y));
  const low = Math.min(0, ...told.map(({ y }) => y));
  const broken = points.filter(({ y }) => !Number.isFinite(y));
  const dot = { x: 'x', y: 'y', r: 5, stroke: colours.water, strokeWidth: 2 } as const;
  return Plot.plot({
    document: maker.document,
    ...frame,
    marginLeft: 64,
    marginRight: 24,
    marginBottom: 46,
    style: { fontSize: `${letters}px`, background: 'none', color: colours.soft },
    x: { label: across, labelAnchor: 'center', labelArrow: 'none', grid: false },
    y: { label: null, grid: true, zero: true, nice: true },
    marks: [
      Plot.ruleY([0], { stroke: colours.soft }),
      Plot.lineY(told, { x: 'x', y: 'y', stroke: colours.water, strokeWidth: 2 }),
      Plot.dot(
        told.filter(({ fails }) => !fails),
        { ...dot, fill: colours.water },
      ),
      Plot.dot(
        told.filter(({ fails }) => fails),
        { ...dot, fill: colours.paper },
      ),
      Plot.dot(broken, {
        x: 'x',
        y: () => low,
        symbol: 'times',
        r: 6,
        stroke: colours.limit,
        strokeWidth: 2,
      }),
    ],
  });
}
