import * as Plot from '@observablehq/plot';
import type { Maker } from '../pictures/document.js';
import { spreadLabels } from '../pictures/labels.js';
import { pageColours } from '../pictures/palette.js';
import { described } from './described.js';
import { numberText, plainly } from './fill.js';
import type { LessonFrame } from './words.js';

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
export interface Level {
  readonly text: string;
  readonly value: number;
  readonly kind: 'limit' | 'guess';
}

/** What a picture of courses shows. */
export interface ChartOptions {
  /** What is to be seen, for those who do not see it. */
  readonly title: string;
  /** Such as `mg N/L`. */
  readonly unit: string;
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

/** What a picture is drawn with: the page, its words, and the room that there is, px. */
export interface Canvas {
  readonly maker: Maker;
  readonly frame: LessonFrame;
  readonly width: number;
}

interface Point {
  readonly t: number;
  readonly v: number;
}

const height = 280;
const margins = { top: 26, bottom: 34, left: 46 };

/** A number with about three digits. */
function threeDigits(value: number, language: string): string {
  const size = Math.abs(value);
  const decimals = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : 4;
  return numberText(value, decimals, language);
}

function inWords({ title, unit, lines }: ChartOptions, { lineText, language }: LessonFrame): string {
  const words = lines.map(({ name, values }) => {
    const all = Array.from(values).filter((value) => !Number.isNaN(value));
    return plainly(lineText, {
      ...{ name, unit },
      first: threeDigits(all[0], language),
      last: threeDigits(all[all.length - 1], language),
      highest: threeDigits(Math.max(...all), language),
    });
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

/** What a picture is drawn on: its size, what its axes reach over, and the levels that fall on them. */
interface Scales {
  readonly width: number;
  /** Room right of the axes for the names of the lines, px. */
  readonly right: number;
  readonly vertical: readonly [low: number, top: number];
  /** d. */
  readonly horizontal: readonly [start: number, end: number];
  /** In the unit of the lines. */
  readonly perPixel: number;
  readonly levels: readonly Level[];
}

/** Width of a letter, px: names are measured by it, for there is no other measure before they are drawn. */
const letter = 7.4;

function scalesOf(options: ChartOptions, room: number): Scales {
  const { lines, levels = [], band, points = [], atLeast = 0, from = 0 } = options;
  const width = Math.max(Math.min(room, 760), 260);
  const values = lines.flatMap((line) => Array.from(line.values)).filter((value) => !Number.isNaN(value));
  const drawn = levels.filter(
    ({ kind, value }) => kind === 'guess' || value < 3 * Math.max(...values, atLeast),
  );
  const highest = Math.max(
    ...values,
    ...drawn.map(({ value }) => value),
    ...points.map(({ v }) => v),
    ...(band === undefined ? [] : Array.from(band.high)),
    atLeast,
  );
  const top = 1.08 * highest;
  const low = Math.min(from, ...values.map((value) => (value < from ? value : from)));
  return {
    width,
    right: Math.min(12 + letter * Math.max(...lines.map(({ name }) => name.length)), 0.32 * width),
    vertical: [low, top],
    horizontal: [
      Math.min(...lines.map(({ time }) => time[0])),
      Math.max(...lines.map(({ time }) => time[time.length - 1])),
    ],
    perPixel: (top - low) / (height - margins.top - margins.bottom),
    levels: drawn,
  };
}

function bandMark({ time, low, high }: NonNullable<ChartOptions['band']>): Plot.Markish {
  return Plot.areaY(time, {
    x: (t: number) => t,
    y1: (_: number, i: number) => low[i],
    y2: (_: number, i: number) => high[i],
    fill: pageColours.wash,
  });
}

/** Words with a rim of the ground, so that lines behind do not cross them out. */
const rim = { stroke: pageColours.paper, strokeWidth: 4, paintOrder: 'stroke' } as const;

/** The row that each moment is named in, from the top, so that no two names overprint. */
function rowsOf(spans: readonly (readonly [left: number, right: number])[]): readonly number[] {
  const ends: number[] = [];
  return spans.map(([left, right]) => {
    const free = ends.findIndex((end) => end < left);
    const row = free < 0 ? ends.length : free;
    ends[row] = right + 6;
    return row;
  });
}

function momentMarks(
  given: NonNullable<ChartOptions['moments']>,
  { horizontal: [start, end], vertical: [, top], width, right, levels }: Scales,
): readonly Plot.Markish[] {
  const moments = [...given].sort((a, b) => a.time - b.time);
  const perDay = (width - margins.left - right) / (end - start);
  const late = ({ time }: { time: number }): boolean => time > start + 0.55 * (end - start);
  const rows = rowsOf(
    moments.map((moment) => {
      const [at, long] = [perDay * (moment.time - start), letter * moment.text.length];
      return late(moment) ? [at - 5 - long, at] : [at, at + 5 + long];
    }),
  );
  const first = levels.some(({ value }) => value > 0.85 * top) ? 24 : 9;
  return [
    Plot.ruleX(moments, { x: 'time', stroke: pageColours.soft, strokeDasharray: '2 3' }),
    ...moments.map((moment, i) =>
      Plot.text([moment], {
        ...{ x: 'time', y: top, text: 'text', dy: first + 15 * rows[i], dx: late(moment) ? -5 : 5 },
        ...{ textAnchor: late(moment) ? 'end' : 'start', fill: pageColours.soft, ...rim },
      }),
    ),
  ];
}

const levelColour = (kind: Level['kind']): string =>
  kind === 'limit' ? pageColours.limit : pageColours.soft;

const levelMark = ({ value, kind }: Level): Plot.Markish =>
  Plot.ruleY([value], {
    stroke: levelColour(kind),
    strokeWidth: 1.3,
    strokeDasharray: kind === 'limit' ? '6 3' : '2 4',
  });

/** The names of levels over their lines, moved apart. */
function levelNames(lines: readonly Line[], scales: Scales): readonly Plot.Markish[] {
  const { levels, perPixel, vertical, horizontal } = scales;
  const [low, top] = vertical;
  const [start, end] = horizontal;
  const places = spreadLabels(
    levels.map(({ value }) => value + 8 * perPixel),
    14 * perPixel,
    [low + 7 * perPixel, top],
  );
  return levels.map(({ text, kind }, i) => {
    const y = places[i];
    const side = sideOf(lines, y, start, end);
    return Plot.text([text], {
      ...{ x: side === 'start' ? start : end, y, textAnchor: side, dx: side === 'start' ? 4 : -4 },
      ...{ fontStyle: 'italic', fill: levelColour(kind), ...rim },
    });
  });
}

const lineMark = ({ time, values, colour, dash }: Line): Plot.Markish =>
  Plot.lineY(
    time.map((t, i): Point => ({ t, v: values[i] })),
    {
      ...{ x: 't', y: 'v', stroke: pageColours[colour], strokeWidth: 2.4 },
      ...(dash !== undefined && { strokeDasharray: dash }),
    },
  );

/** A name in lines of so many letters. */
function broken(name: string, most: number): readonly string[] {
  return name.split(' ').reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > most) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
    return lines;
  }, []);
}

/** The names of lines behind their ends, moved apart. */
function lineNames(lines: readonly Line[], { perPixel, vertical, horizontal, right }: Scales): Plot.Markish {
  const names = lines.map(({ name }) => broken(name, Math.floor((right - 8) / letter)));
  const places = spreadLabels(
    lines.map(({ values }) => values[values.length - 1]),
    15 * Math.max(...names.map(({ length }) => length)) * perPixel,
    vertical,
  );
  return Plot.text(
    lines.map(({ colour }, i) => ({ name: names[i].join('\n'), y: places[i], colour: pageColours[colour] })),
    {
      ...{ x: horizontal[1], y: 'y', text: 'name', textAnchor: 'start', dx: 7, fontWeight: 600 },
      ...{ fill: (d: { colour: string }) => d.colour },
    },
  );
}

/** Courses over time with their names at the line ends, limits and guesses drawn in, and a text alternative. */
export function chart({ maker, frame, width: room }: Canvas, options: ChartOptions): Element {
  const { unit, lines, moments = [], band, points = [] } = options;
  const scales = scalesOf(options, room);
  const { width, right, horizontal, vertical, levels } = scales;
  const svg = Plot.plot({
    document: maker.document,
    width,
    height,
    marginTop: margins.top,
    marginBottom: margins.bottom,
    marginLeft: margins.left,
    marginRight: right,
    style: { fontSize: '13px', background: 'none', overflow: 'visible' },
    x: { domain: [...horizontal], label: null },
    y: { domain: [...vertical], label: null },
    marks: [
      ...(band === undefined ? [] : [bandMark(band)]),
      Plot.gridY({ stroke: pageColours.grid, strokeOpacity: 1, ticks: 5 }),
      Plot.axisY({
        ...{ ticks: 5, tickSize: 0, label: null },
        tickFormat: (value: number) => value.toLocaleString(frame.language),
      }),
      Plot.axisX({
        ticks: width < 500 ? 4 : 8,
        tickSize: 4,
        tickFormat: (value: number) => value.toLocaleString(frame.language),
        label: options.horizontal ?? frame.days,
        labelAnchor: 'center',
        labelArrow: 'none',
      }),
      Plot.text([unit], {
        ...{ frameAnchor: 'top-left', dx: -margins.left + 4, dy: -20, fill: pageColours.soft },
      }),
      ...momentMarks(moments, scales),
      ...levels.map(levelMark),
      ...lines.map(lineMark),
      Plot.dot(points, {
        ...{ x: 't', y: 'v', r: 4.5, strokeWidth: 1.8 },
        ...{ fill: pageColours.paper, stroke: pageColours.ink },
      }),
      ...levelNames(lines, scales),
      lineNames(lines, scales),
    ],
  });
  return described(svg, inWords(options, frame));
}
