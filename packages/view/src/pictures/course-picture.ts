import * as Plot from '@observablehq/plot';
import type { Display } from '../display/display.js';
import { short } from '../text/names.js';
import type { CourseDrawing, Domain } from './courses.js';
import type { Maker } from './document.js';
import { type Frame, plotFrame } from './frame.js';
import { dateAxis } from './time-axis.js';
import { spreadLabels } from './labels.js';
import { limitMarks } from './limit-marks.js';
import type { Colours } from './palette.js';

/**
 * Indices of the points of a course to draw: all of a short one; of a long one the lowest and the highest of each of
 * `most / 2` equal stretches, the first and the last, so that no peak is lost.
 */
export function drawnPoints(values: ArrayLike<number>, most: number): readonly number[] {
  const count = values.length;
  if (count <= most) return Array.from({ length: count }, (_, i) => i);
  const stretches = Math.floor(most / 2);
  const chosen = new Set([0, count - 1]);
  for (let stretch = 0; stretch < stretches; stretch += 1) {
    const from = Math.floor((stretch * count) / stretches);
    const to = Math.floor(((stretch + 1) * count) / stretches);
    let [low, high] = [from, from];
    for (let i = from; i < to; i += 1) {
      if (values[i] < values[low] || Number.isNaN(values[low])) low = i;
      if (values[i] > values[high] || Number.isNaN(values[high])) high = i;
    }
    chosen.add(low).add(high);
  }
  return [...chosen].sort((a, b) => a - b);
}

/** The frame of the small pictures of a report. */
export const smallFrame: Frame = {
  width: 372,
  height: 214,
  left: 40,
  right: 98,
  top: 12,
  bottom: 24,
  letters: 12,
};

/** The frame of the small panels that stand of crops is drawn in. */
export const panelFrame: Frame = { ...smallFrame, width: 290, height: 140, left: 38, right: 74 };

/** Most points of a line, and of a thin one of a small panel. */
const mostPoints = 400;
const mostThin = 160;

const dashes = ['none', '7 3', '2 2.5', '10 3 2 3', '4 4'];

interface Point {
  readonly t: number;
  readonly v: number;
}

function pointsOf(time: readonly number[], values: ArrayLike<number>, most = mostPoints): readonly Point[] {
  return drawnPoints(values, most).map((i) => ({ t: time[i], v: values[i] }));
}

interface Strip {
  readonly t: number;
  readonly low: number;
  readonly high: number;
}

/** A strip between two edges; what of it lies beyond the axis ends at the frame. */
function stripOf(
  time: readonly number[],
  [low, high]: readonly [ArrayLike<number>, ArrayLike<number>],
  [bottom, top]: Domain,
): readonly Strip[] {
  const framed = (value: number): number => Math.min(Math.max(value, bottom), top);
  const drawn = new Set([...drawnPoints(low, mostPoints / 2), ...drawnPoints(high, mostPoints / 2)]);
  return [...drawn]
    .sort((a, b) => a - b)
    .map((i) => ({ t: time[i], low: framed(low[i]), high: framed(high[i]) }));
}

const area = (strip: readonly Strip[], fill: string): Plot.Markish =>
  Plot.areaY(strip, { x: 't', y1: 'low', y2: 'high', fill });

/** Names of the lines behind their last values. */
function endLabels(
  { display }: Maker,
  { course, vertical, horizontal, colours, frame }: CourseDrawing,
): Plot.Markish {
  const [low, high] = vertical;
  const perPixel = (high - low) / (frame.height - frame.top - frame.bottom);
  const lastOf = (values: readonly number[]): number =>
    values.filter((value) => !Number.isNaN(value)).at(-1) ?? low;
  const ends =
    course.batches === true
      ? [batchesEnd(course.lines, lastOf, colours, display)]
      : course.lines.map(({ name, values }, i) => ({
          ...{ name, value: lastOf(values), at: lastOf(values), colour: lineColour(colours, i) },
        }));
  const places = spreadLabels(
    ends.map(({ at }) => at),
    (frame.letters + 2) * perPixel,
    [low, high],
  );
  const most = Math.floor((frame.right - 6) / (frame.letters * 0.54));
  const room = ends.length === 1 ? most : most - 5;
  const one = ends.length === 1;
  const texts = ends.map(({ name, value, colour }, i) => ({
    x: horizontal[1],
    y: places[i],
    text: `${short(name, room)}${one ? '\n' : ' '}${display.number(value)}`,
    colour,
  }));
  return Plot.text(texts, {
    ...{ x: 'x', y: 'y', text: 'text', fill: (d: { colour: string }) => d.colour },
    ...{ textAnchor: 'start', dx: 6, fontWeight: 600, fontSize: frame.letters, lineHeight: 1.15 },
  });
}

/** One label for all batches of a crop: how many they are, and what stands of them at the end, at their mean. */
function batchesEnd(
  lines: CourseDrawing['course']['lines'],
  lastOf: (values: readonly number[]) => number,
  colours: Colours,
  { words }: Display,
): { name: string; value: number; at: number; colour: string } {
  const value = lines.reduce((total, { values }) => total + lastOf(values), 0);
  const name = words.pictures.batches(lines.length);
  return { name, value, at: value / Math.max(1, lines.length), colour: colours.crop };
}

/** Colour of a line by its place in the list. */
function lineColour(colours: Colours, index: number): string {
  const order = [colours.water, colours.fish, colours.crop, colours.biofilm, colours.solids];
  return order[index % order.length];
}

/** The course of one quantity: lines with names, bounds with names, range of all vessels or bands behind. */
export function coursePicture(maker: Maker, drawing: CourseDrawing): Element {
  const { course, before, bands, vertical, horizontal, colours, frame } = drawing;
  const { range } = course;
  const behind =
    bands === undefined
      ? range === undefined
        ? []
        : [area(stripOf(course.time, [range.low, range.high], vertical), colours.wash)]
      : [
          area(stripOf(bands.time, bands.band90, vertical), colours.mist),
          area(stripOf(bands.time, bands.band50, vertical), colours.wash),
          Plot.lineY(pointsOf(bands.time, bands.median), {
            ...{ x: 't', y: 'v', stroke: colours.soft, strokeWidth: 1.2, strokeDasharray: '2 2' },
          }),
        ];
  const faint = (before?.lines ?? []).map(({ values }) =>
    Plot.lineY(pointsOf(before?.time ?? [], values), {
      ...{ x: 't', y: 'v', stroke: colours.soft, strokeWidth: 1, strokeDasharray: '1.5 2.5' },
    }),
  );
  const lines = course.lines.map(({ values }, i) =>
    Plot.lineY(pointsOf(course.time, values, course.batches === true ? mostThin : mostPoints), {
      ...{ x: 't', y: 'v' },
      stroke: course.batches === true ? colours.crop : lineColour(colours, i),
      strokeWidth: course.batches === true ? 1.1 : 2,
      ...(i > 0 && course.batches !== true && { strokeDasharray: dashes[i % dashes.length] }),
    }),
  );
  return Plot.plot({
    ...plotFrame(maker, frame, colours),
    x: { domain: [...horizontal], label: null },
    y: { domain: [...vertical], label: null },
    marks: [
      ...behind,
      Plot.gridY({ stroke: colours.grid, strokeOpacity: 1, ticks: 4 }),
      Plot.axisY({
        ...{ ticks: 4, tickSize: 0, label: null, fontSize: frame.letters },
        ...(maker.display.ticks !== undefined && { tickFormat: maker.display.ticks }),
      }),
      dateAxis(maker, drawing.startDate, horizontal, { fontSize: frame.letters, stroke: colours.soft }),
      Plot.ruleY([vertical[0]], { stroke: colours.soft, strokeWidth: 1 }),
      ...faint,
      ...lines,
      ...limitMarks(maker, drawing),
      endLabels(maker, drawing),
    ],
  });
}
