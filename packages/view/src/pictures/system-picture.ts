import { shown } from '../text/numbers.js';
import type { DrawnFlow, DrawnVessel } from './drawn-system.js';
import type { Colours } from './palette.js';
import type { Maker } from './document.js';
import {
  layOutSystem,
  lineHeight,
  tapRoom,
  type PlacedVessel,
  type PlacedWay,
  type Point,
  type SystemFrame,
} from './system-layout.js';

const px = (value: number): string => String(Number(value.toFixed(1)));

/** A vessel: open above, water in it up to a wavering line, words inside; dashed where it stands for another. */
function vesselMark(
  maker: Maker,
  { box, text, again }: PlacedVessel,
  frame: SystemFrame,
  colours: Colours,
): Element {
  const { x, y, width, height } = box;
  const [left, right, up, down] = [x - width / 2, x + width / 2, y - height / 2, y + height / 2];
  const level = up + 7;
  const wave = width / 4;
  const surface = `M${px(left)},${px(level)} q${px(wave / 2)},-4 ${px(wave)},0 t${px(wave)},0 t${px(wave)},0 t${px(wave)},0`;
  const lines = [...text.name, ...(text.size === '' ? [] : [text.size]), ...text.holds];
  const titles = text.name.length;
  return maker.svg(
    'g',
    {},
    maker.svg('path', {
      d: `${surface} V${px(down)} H${px(left)} Z`,
      fill: again ? colours.paper : colours.wash,
    }),
    maker.svg('path', {
      d: `M${px(left)},${px(up)} V${px(down)} H${px(right)} V${px(up)}`,
      ...{ fill: 'none', stroke: again ? colours.soft : colours.ink, 'stroke-width': 1.6 },
      ...(again && { 'stroke-dasharray': '3 3' }),
    }),
    ...lines.map((line, i) =>
      maker.svg(
        'text',
        {
          ...{ x: px(x), y: px(level + 5 + (i + 0.75) * lineHeight(frame)), 'text-anchor': 'middle' },
          'font-size': frame.letters,
          'font-weight': i < titles && !again ? 700 : 400,
          fill: again || i === titles ? colours.soft : colours.ink,
        },
        line,
      ),
    ),
  );
}

/** A smooth line through points, leaving and entering along the water. */
function curve(points: readonly Point[], { direction }: SystemFrame): string {
  const [first, ...others] = points;
  let d = `M${px(first.x)},${px(first.y)}`;
  let from = first;
  for (const to of others) {
    const half = direction === 'LR' ? (from.x + to.x) / 2 : (from.y + to.y) / 2;
    const a = direction === 'LR' ? { x: half, y: from.y } : { x: from.x, y: half };
    const b = direction === 'LR' ? { x: half, y: to.y } : { x: to.x, y: half };
    d += ` C${px(a.x)},${px(a.y)} ${px(b.x)},${px(b.y)} ${px(to.x)},${px(to.y)}`;
    from = to;
  }
  return d;
}

function arrow(maker: Maker, { x, y }: Point, turned: number, colours: Colours): Element {
  return maker.svg('path', {
    d: 'M-8,-5 L1,0 L-8,5 Z',
    transform: `translate(${px(x)},${px(y)}) rotate(${turned})`,
    fill: colours.ink,
  });
}

function wayMark(
  maker: Maker,
  { points, width }: PlacedWay,
  frame: SystemFrame,
  colours: Colours,
): Element[] {
  return [
    maker.svg('path', {
      d: curve(points, frame),
      ...{ fill: 'none', stroke: colours.pool, 'stroke-opacity': 0.55, 'stroke-width': width.toFixed(2) },
    }),
    arrow(maker, points[points.length - 1], frame.direction === 'LR' ? 0 : 90, colours),
  ];
}

/** Water from outside, dropping into its vessel, with its name and how much. */
function tapMarks(
  maker: Maker,
  { box, taps }: PlacedVessel,
  frame: SystemFrame,
  colours: Colours,
): Element[] {
  const up = box.y - box.height / 2;
  const top = up - tapRoom(frame);
  const part = Math.max(box.width / Math.max(taps.length, 1), frame.letters * 5.4);
  return taps.flatMap((flow, i) => {
    const x = box.x + part * (i - (taps.length - 1) / 2);
    const lines = [flow.kind.replace('top-up with ', ''), `${shown(flow.rate * 1000)} L/d`];
    const texts = lines.map((line, k) =>
      maker.svg(
        'text',
        {
          ...{ x: px(x), y: px(top + (k + 0.8) * lineHeight(frame)), 'text-anchor': 'middle' },
          ...{ 'font-size': frame.letters, 'font-weight': k === 0 ? 600 : 400, fill: colours.pool },
        },
        line,
      ),
    );
    const from = top + 2.25 * lineHeight(frame);
    const drop = maker.svg('path', {
      d: `M${px(x)},${px(from)} V${px(up + 4)}`,
      ...{ stroke: colours.pool, 'stroke-width': 1.6, 'stroke-dasharray': '3 2.5' },
    });
    return [...texts, drop, arrow(maker, { x, y: up + 6 }, 90, colours)];
  });
}

/** Vessels drawn as open tanks, the ways of water between them as wide as they carry, water from outside dashed. */
export function systemPicture(
  maker: Maker,
  vessels: readonly DrawnVessel[],
  flows: readonly DrawnFlow[],
  frame: SystemFrame,
  colours: Colours,
): Element {
  const placed = layOutSystem(vessels, flows, frame);
  const [width, height] = [Math.ceil(placed.width), Math.ceil(placed.height)];
  const ways = placed.ways.map((way) => wayMark(maker, way, frame, colours));
  return maker.svg(
    'svg',
    { viewBox: `0 0 ${width} ${height}`, width, height, 'font-family': 'system-ui, sans-serif' },
    ...ways.map(([line]) => line),
    ...placed.vessels.map((vessel) => vesselMark(maker, vessel, frame, colours)),
    ...ways.map(([, head]) => head),
    ...placed.vessels.flatMap((vessel) => tapMarks(maker, vessel, frame, colours)),
  );
}
