import * as Plot from '@observablehq/plot';
import type { Course, CourseLimit } from './courses.js';
import type { Colours } from './palette.js';
import type { CourseDrawing } from './courses.js';
import type { Domain } from './courses.js';
import type { Maker } from './document.js';
import { spreadLabels } from './labels.js';

/** Words with a rim of the ground, so that lines behind do not cross them out. */
const rimmed = (colours: Colours) =>
  ({ stroke: colours.paper, strokeWidth: 3.5, paintOrder: 'stroke' }) as const;

/** Share of the width over which the name of a bound stands. */
const nameReach = 0.6;

/** Least distance of the lines from a level over the stretch where a name would stand. */
function roomAt({ lines, time }: Course, level: number, [from, to]: Domain): number {
  const distances = lines.flatMap(({ values }) =>
    values
      .filter((value, i) => time[i] >= from && time[i] <= to && !Number.isNaN(value))
      .map((value) => Math.abs(value - level)),
  );
  return distances.reduce((least, each) => Math.min(least, each), Infinity);
}

interface NamePlace {
  readonly y: number;
  readonly anchor: 'start' | 'end';
}

/** Where the name of a bound is crossed by lines and by other bounds least: above or under it, to the left or to the right. */
function namePlace(drawing: CourseDrawing, { value, direction }: CourseLimit, perPixel: number): NamePlace {
  const { course, horizontal, vertical } = drawing;
  const [start, end] = horizontal;
  const reach = nameReach * (end - start);
  const sides = direction === 'below' ? [-8, 8] : [8, -8];
  const places = (['start', 'end'] as const).flatMap((anchor) =>
    sides.map((pixels) => ({ y: value + pixels * perPixel, anchor })),
  );
  const room = ({ y, anchor }: NamePlace): number => {
    if (y - 7 * perPixel < vertical[0] || y > vertical[1]) return -1;
    const where: Domain = anchor === 'start' ? [start, start + reach] : [end - reach, end];
    const bounds = course.limits.map((limit) => limit.value).filter((other) => other !== value);
    const fromBounds = bounds.map((other) => Math.abs(other - y));
    return Math.min(roomAt(course, y, where), ...fromBounds, 10 * perPixel);
  };
  return places.reduce((best, place) => (room(place) > room(best) ? place : best));
}

/** Bounds that fall inside the axis as lines with names, the others as words at the edge they lie beyond. */
export function limitMarks({ display }: Maker, drawing: CourseDrawing): Plot.Markish[] {
  const { course, vertical, horizontal, colours, frame } = drawing;
  const [low, high] = vertical;
  const perPixel = (high - low) / (frame.height - frame.top - frame.bottom);
  const colour = ({ direction }: CourseLimit): string =>
    direction === 'mark' ? colours.soft : colours.limit;
  const inside = course.limits.filter(({ value }) => value >= low && value <= high);
  const beyond = course.limits.filter((limit) => !inside.includes(limit));
  const label = (limit: CourseLimit): string => `${limit.text}: ${display.number(limit.value)}`;
  const wanted = [
    ...inside.map((limit) => namePlace(drawing, limit, perPixel)),
    ...beyond.map(({ value }): NamePlace => ({
      y: value > high ? high - 4 * perPixel : low + 8 * perPixel,
      anchor: 'start',
    })),
  ];
  const places = spreadLabels(
    wanted.map(({ y }) => y),
    (frame.letters + 2) * perPixel,
    [low + 7 * perPixel, high - 4 * perPixel],
  );
  const texts = [...inside, ...beyond].map((limit, i) => ({
    anchor: wanted[i].anchor,
    y: places[i],
    text: inside.includes(limit) ? label(limit) : `${limit.value > high ? '↑' : '↓'} ${label(limit)}`,
    colour: colour(limit),
  }));
  return [
    ...inside.map((limit) =>
      Plot.ruleY([limit.value], { stroke: colour(limit), strokeWidth: 1.2, strokeDasharray: '5 3' }),
    ),
    ...(['start', 'end'] as const).map((side) =>
      Plot.text(
        texts.filter(({ anchor }) => anchor === side),
        {
          ...{ x: horizontal[side === 'start' ? 0 : 1], dx: side === 'start' ? 4 : -4, textAnchor: side },
          ...{ y: 'y', text: 'text', fill: (d: { colour: string }) => d.colour },
          ...{ fontSize: frame.letters - 1, fontStyle: 'italic' },
          ...rimmed(colours),
        },
      ),
    ),
  ];
}
