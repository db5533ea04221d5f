import type { FatesOver } from '@leat/core';
import * as Plot from '@observablehq/plot';
import { placedPhrase, short } from '../text/names.js';
import type { Colours } from './palette.js';
import type { Maker } from './document.js';
import { fateColour } from './palette.js';
import { plotFrame, type Frame } from './frame.js';
import { dateAxis } from './time-axis.js';
import { spreadLabels } from './labels.js';

/** Parts below this share of the whole at the end have an area but no name of their own. */
const nameless = 0.004;

/** Scales that pictures of several runs share. */
export interface FatesScale {
  /** g, at the top. */
  readonly most: number;
  readonly days: readonly [number, number];
  /** Date of day 0, `yyyy-mm-dd`. */
  readonly startDate: string;
  /** Names of the layers, from the bottom. */
  readonly order: readonly string[];
}

/** Where nitrogen had gone by each day, one layer on the other. */
export function fatesArea(
  maker: Maker,
  fates: FatesOver,
  { most, days, startDate, order }: FatesScale,
  frame: Frame,
  colours: Colours,
): Element {
  const { time, parts } = fates;
  const { display } = maker;
  const base = time.map(() => 0);
  const place = ({ name }: { readonly name: string }): number => order.indexOf(name);
  const layers = [...parts]
    .sort((a, b) => place(a) - place(b))
    .map(({ name, amounts }) => {
      const points = time.map((t, i) => ({ t, low: base[i], high: base[i] + amounts[i] }));
      amounts.forEach((amount, i) => {
        base[i] += amount;
      });
      return { name, points, end: points[points.length - 1] };
    });
  const perPixel = most / (frame.height - frame.top - frame.bottom);
  const named = layers.filter(({ end }) => end.high - end.low > nameless * base[base.length - 1]);
  const places = spreadLabels(
    named.map(({ end }) => (end.low + end.high) / 2),
    (frame.letters + 1) * perPixel,
    [5 * perPixel, most],
  );
  const texts = named.map(({ name, end }, i) => ({
    x: days[1],
    y: places[i],
    text: `${short(placedPhrase(name, display), 16)} ${display.number(end.high - end.low)}`,
  }));
  return Plot.plot({
    ...plotFrame(maker, frame, colours),
    x: { domain: [...days], label: null },
    y: { domain: [0, most], label: null },
    marks: [
      Plot.gridY({ stroke: colours.grid, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({
        ...{ ticks: 4, tickSize: 0, label: null, fontSize: frame.letters },
        ...(display.ticks !== undefined && { tickFormat: display.ticks }),
      }),
      dateAxis(maker, startDate, days, { fontSize: frame.letters }),
      ...layers.map(({ name, points }) =>
        Plot.areaY(points, {
          ...{ x: 't', y1: 'low', y2: 'high', fill: colours[fateColour(name)] },
          ...{ stroke: colours.paper, strokeWidth: 0.8 },
        }),
      ),
      Plot.ruleY([0], { stroke: colours.soft }),
      Plot.text(texts, {
        ...{ x: 'x', y: 'y', text: 'text', textAnchor: 'start', dx: 6, fill: colours.ink },
        fontSize: frame.letters - 1,
      }),
    ],
  });
}
