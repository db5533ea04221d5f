import * as Plot from '@observablehq/plot';
import { spreadLabels } from './spread-labels.js';

/** One line of a picture. Colour is the name of a variable of the style sheet; its dash tells it apart in grey. */
export interface Line {
  readonly name: string;
  readonly time: readonly number[];
  readonly values: ArrayLike<number>;
  readonly colour: Colour;
  readonly dash?: string;
}

export type Colour = 'water' | 'fish' | 'crop' | 'biofilm' | 'soft' | 'limit';

/** A level drawn across: a limit, or what the student guessed. */
interface Level {
  readonly text: string;
  readonly value: number;
  readonly kind: 'limit' | 'guess';
}

/** What a picture of courses shows. */
interface ChartOptions {
  /** What is to be seen, for those who do not see it. */
  readonly title: string;
  /** Such as `mg N/L`. */
  readonly unit: string;
  readonly width: number;
  readonly lines: readonly Line[];
  readonly levels?: readonly Level[];
  /** Times that are marked, d. */
  readonly moments?: readonly { readonly text: string; readonly time: number }[];
  /** A range behind the lines. */
  readonly band?: {
    readonly time: readonly number[];
    readonly low: ArrayLike<number>;
    readonly high: ArrayLike<number>;
  };
  /** Separate points, such as readings. */
  readonly points?: readonly { readonly t: number; readonly v: number }[];
  /** Highest value that the axis shows at least. */
  readonly atLeast?: number;
  /** Where the axis starts; default 0. */
  readonly from?: number;
  readonly horizontal?: string;
}

interface Point {
  readonly t: number;
  readonly v: number;
}

const colourOf = (colour: Colour): string => `var(--${colour})`;
const height = 280;
const margins = { top: 26, bottom: 34, left: 46 };

function told({ title, unit, lines }: ChartOptions): string {
  const words = lines.map(({ name, values }) => {
    const all = Array.from(values).filter((value) => !Number.isNaN(value));
    const [first, last] = [all[0], all[all.length - 1]];
    return `${name}: from ${first.toPrecision(3)} to ${last.toPrecision(3)} ${unit}, highest ${Math.max(...all).toPrecision(3)}`;
  });
  return `${title}. ${words.join('; ')}.`;
}

/** Where the name of a level is crossed by lines least: over its left or its right part. */
function sideOf(lines: readonly Line[], y: number, start: number, end: number): 'start' | 'end' {
  const room = (from: number, to: number): number =>
    lines
      .flatMap(({ time, values }) =>
        time.map((t, i) => (t >= from && t <= to ? Math.abs(values[i] - y) : Infinity)),
      )
      .reduce((least, each) => Math.min(least, each), Infinity);
  const reach = 0.35 * (end - start);
  return room(start, start + reach) >= room(end - reach, end) ? 'start' : 'end';
}

/** Courses over time with their names at the line ends, limits and guesses drawn in, and a text alternative. */
export function chart(options: ChartOptions): SVGSVGElement {
  const { unit, lines, levels = [], moments = [], band, points = [], atLeast = 0, from = 0 } = options;
  const width = Math.max(Math.min(options.width, 760), 280);
  const right = width < 500 ? 92 : 130;
  const values = lines.flatMap((line) => Array.from(line.values)).filter((value) => !Number.isNaN(value));
  const drawn = levels.filter(
    ({ kind, value }) => kind === 'guess' || value < 3 * Math.max(...values, atLeast),
  );
  const top =
    1.08 *
    Math.max(
      ...values,
      ...drawn.map(({ value }) => value),
      ...points.map(({ v }) => v),
      ...(band === undefined ? [] : Array.from(band.high)),
      atLeast,
    );
  const low = Math.min(from, ...values.map((value) => (value < from ? value : from)));
  const perPixel = (top - low) / (height - margins.top - margins.bottom);
  const end = Math.max(...lines.map(({ time }) => time[time.length - 1]));
  const start = Math.min(...lines.map(({ time }) => time[0]));
  const places = spreadLabels(
    lines.map((line) => line.values[line.values.length - 1]),
    15 * perPixel,
    [low, top],
  );
  const levelPlaces = spreadLabels(
    drawn.map(({ value }) => value + 8 * perPixel),
    14 * perPixel,
    [low + 7 * perPixel, top],
  );
  const halo = { stroke: 'var(--paper)', strokeWidth: 4, paintOrder: 'stroke' } as const;
  const svg = Plot.plot({
    width,
    height,
    marginTop: margins.top,
    marginBottom: margins.bottom,
    marginLeft: margins.left,
    marginRight: right,
    style: { fontSize: '13px', background: 'none', overflow: 'visible' },
    x: { domain: [start, end], label: null },
    y: { domain: [low, top], label: null },
    marks: [
      ...(band === undefined
        ? []
        : [
            Plot.areaY(band.time, {
              x: (t: number) => t,
              y1: (_: number, i: number) => band.low[i],
              y2: (_: number, i: number) => band.high[i],
              fill: 'var(--wash)',
            }),
          ]),
      Plot.gridY({ stroke: 'var(--grid)', strokeOpacity: 1, ticks: 5 }),
      Plot.axisY({ ticks: 5, tickSize: 0, label: null }),
      Plot.axisX({
        ticks: width < 500 ? 5 : 8,
        tickSize: 4,
        label: options.horizontal ?? 'days',
        labelAnchor: 'center',
        labelArrow: 'none',
      }),
      Plot.text([unit], { frameAnchor: 'top-left', dx: -margins.left + 4, dy: -20, fill: 'var(--soft)' }),
      Plot.ruleX(moments, { x: 'time', stroke: 'var(--soft)', strokeDasharray: '2 3' }),
      ...moments.map(({ text, time }) => {
        const late = time > start + 0.65 * (end - start);
        return Plot.text([{ text, time }], {
          ...{ x: 'time', y: top, text: 'text', dy: drawn.length > 0 ? 24 : 9, dx: late ? -5 : 5 },
          ...{ textAnchor: late ? 'end' : 'start', fill: 'var(--soft)', ...halo },
        });
      }),
      ...drawn.map(({ value, kind }) =>
        Plot.ruleY([value], {
          stroke: kind === 'limit' ? 'var(--limit)' : 'var(--soft)',
          strokeWidth: 1.3,
          strokeDasharray: kind === 'limit' ? '6 3' : '2 4',
        }),
      ),
      ...lines.map(({ time, values: course, colour, dash }) =>
        Plot.lineY(
          time.map((t, i): Point => ({ t, v: course[i] })),
          {
            x: 't',
            y: 'v',
            stroke: colourOf(colour),
            strokeWidth: 2.4,
            ...(dash !== undefined && { strokeDasharray: dash }),
          },
        ),
      ),
      Plot.dot(points, {
        x: 't',
        y: 'v',
        r: 4.5,
        fill: 'var(--paper)',
        stroke: 'var(--ink)',
        strokeWidth: 1.8,
      }),
      ...drawn.map(({ text, kind }, i) => {
        const y = levelPlaces[i];
        const side = sideOf(lines, y, start, end);
        return Plot.text([text], {
          ...{ x: side === 'start' ? start : end, y, textAnchor: side, dx: side === 'start' ? 4 : -4 },
          ...{ fontStyle: 'italic', fill: kind === 'limit' ? 'var(--limit)' : 'var(--soft)', ...halo },
        });
      }),
      Plot.text(
        lines.map(({ name, colour }, i) => ({ name, y: places[i], colour: colourOf(colour) })),
        {
          ...{ x: end, y: 'y', text: 'name', textAnchor: 'start', dx: 7, fontWeight: 600 },
          ...{ fill: (d: { colour: string }) => d.colour },
        },
      ),
    ],
  });
  if (!(svg instanceof SVGSVGElement)) throw new TypeError('a picture of courses is one drawing');
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', told(options));
  return svg;
}
