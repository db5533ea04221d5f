import type { LimitResult } from '@leat/core';
import { unitShown } from '@leat/core/units';
import type { CourseLimit } from './courses.js';
import { boundLabel } from '../text/limits.js';
import { placeOf, quantityOf, quantityPhrase, seriesPhrase } from '../text/names.js';
import { dateNames } from '../text/verdict.js';
import { type Display, plainDisplay } from '../display/display.js';
import type { Colours } from './palette.js';
import { coursePicture } from './course-picture.js';
import type { Frame } from './frame.js';
import { newMaker, type Maker } from './document.js';
import { finished } from './frame.js';
import { sheet } from './frame.js';
import { domainOf, isDrawn } from './courses.js';

/** A series on a slide. */
export interface SlideSeries {
  readonly name: string;
  readonly unit: string;
  readonly values: readonly number[];
}

/** What is drawn on a slide. */
export interface Slide {
  readonly title: string;
  readonly time: readonly number[];
  readonly series: readonly SlideSeries[];
  /** Date of day 0, `yyyy-mm-dd`: the axis has dates; without it, days. */
  readonly startDate?: string;
  /** Those on what is drawn are drawn in. */
  readonly limits: readonly LimitResult[];
  readonly colours: Colours;
}

const [width, height] = [960, 540];
const head = 64;
const margin = 28;

/** Series whose largest values differ by more than this factor get axes of their own. */
const mostApart = 12;

/** A series in the unit it is shown in. */
function inShownUnit(series: SlideSeries, display: Display): SlideSeries {
  const quantity = quantityOf(series.name);
  const unit = unitShown(series.unit, display.choice.units, quantity);
  return {
    ...series,
    unit,
    values: series.values.map((value) => display.value(value, series.unit, quantity)),
  };
}

/** Limits on the series of one panel, each value once. */
function limitsOn(
  series: readonly SlideSeries[],
  limits: readonly LimitResult[],
  display: Display,
): readonly CourseLimit[] {
  const found = limits.filter(
    (limit) => isDrawn(limit) && series.some(({ name }) => name === `${limit.quantity}@${limit.place}`),
  );
  const key = ({ quantity, direction, value, whom }: LimitResult): string =>
    [quantity, direction, value, whom].join('|');
  const once = new Map(found.map((limit) => [key(limit), limit]));
  const many = new Set(series.map(({ name }) => quantityOf(name))).size > 1;
  return [...once.values()].map(({ quantity, direction, value, unit, whom }) => ({
    direction,
    value: display.value(value, unit, quantity),
    text: `${many ? `${quantityPhrase(quantity, display)}, ` : ''}${boundLabel(direction, [whom], display)}`,
  }));
}

const sizeOf = ({ values }: SlideSeries): number =>
  values.reduce((most, value) => (Math.abs(value) > most ? Math.abs(value) : most), 0);

/** Series that share an axis: of one unit and about one size, so that none lies flat on the ground. */
function panelsOf(series: readonly SlideSeries[]): readonly (readonly SlideSeries[])[] {
  const panels: SlideSeries[][] = [];
  for (const each of series) {
    const fitting = panels.find(([first]) => {
      const sizes = [sizeOf(first), sizeOf(each)];
      return first.unit === each.unit && Math.max(...sizes) <= mostApart * Math.min(...sizes);
    });
    if (fitting === undefined) panels.push([each]);
    else fitting.push(each);
  }
  return panels;
}

/** Name of a line: its place where all of a panel are of one quantity, else all of it. */
function lineName(panel: readonly SlideSeries[], { name }: SlideSeries, display: Display): string {
  const one = new Set(panel.map((each) => quantityOf(each.name))).size === 1;
  return one ? placeOf(name) : quantityPhrase(quantityOf(name), display);
}

function panelPicture(
  maker: Maker,
  panel: readonly SlideSeries[],
  { time, limits, colours, startDate }: Slide,
  box: { readonly y: number; readonly height: number },
): Element[] {
  const { display } = maker;
  const lines = panel.map((each) => ({ name: lineName(panel, each, display), values: each.values }));
  const course = { time, lines, limits: limitsOn(panel, limits, display) };
  const [{ unit, name }] = panel;
  const told = display.words.text.unit(unit);
  const fromZero = !['pH', 'degC', 'degF'].includes(unit);
  const frame: Frame = {
    width: width - 2 * margin,
    height: box.height - 24,
    ...{ left: 62, right: 190, top: 14, bottom: 34, letters: 17 },
  };
  const svg = coursePicture(maker, {
    course,
    vertical: domainOf({ fromZero, runs: [course] }),
    horizontal: [time[0], time[time.length - 1]],
    ...(startDate !== undefined && { startDate }),
    colours,
    frame,
  });
  svg.setAttribute('x', String(margin));
  svg.setAttribute('y', String(box.y + 24));
  const quantities = [...new Set(panel.map((each) => quantityPhrase(quantityOf(each.name), display)))];
  const names = quantities.length === 1 ? quantities[0] : quantities.join(', ');
  const label = maker.svg(
    'text',
    { x: margin + 4, y: box.y + 16, 'font-size': 17, 'font-weight': 600, fill: colours.soft },
    told === '' || unit === quantityOf(name) ? names : `${names}, ${told}`,
  );
  return [label, svg];
}

/**
 * Courses as one standalone SVG, 16 to 9: series of one unit share a panel, panels stand one above the
 * other. The same input gives the same bytes.
 * @param document what the picture is built in
 */
export function slide(document: Document, given: Slide, display: Display = plainDisplay): string {
  const maker = newMaker(document, display);
  const asked = { ...given, series: given.series.map((each) => inShownUnit(each, display)) };
  const { title, time, series, colours, startDate } = asked;
  const words = display.words.pictures;
  const panels = panelsOf(series);
  const each = (height - head - 26) / panels.length;
  const parts = panels.flatMap((panel, i) =>
    panelPicture(maker, panel, asked, { y: head + i * each, height: each }),
  );
  const svg = sheet(maker, { width, height }, colours, [
    maker.svg(
      'text',
      { x: margin + 4, y: 42, 'font-size': 26, 'font-weight': 700, fill: colours.ink },
      title,
    ),
    ...parts,
    maker.svg(
      'text',
      { x: width - margin, y: height - 14, 'font-size': 15, 'text-anchor': 'end', fill: colours.soft },
      startDate === undefined
        ? words.dayOfRun
        : words.dayZero(dateNames(startDate, display)(0), startDate.slice(0, 4)),
    ),
  ]);
  const ends = series.map(({ name, unit, values }) =>
    words.fromTo(
      seriesPhrase(name, display),
      display.number(values[0]),
      `${display.number(values[values.length - 1])} ${display.words.text.unit(unit)}`,
    ),
  );
  const days = words.days(display.number(time[0]), display.number(time[time.length - 1]));
  const done = finished(maker, svg, { title, description: `${ends.join('; ')}; ${days}.` });
  return `${done.outerHTML}\n`;
}
