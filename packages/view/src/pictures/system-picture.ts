import { flowPhrase } from '../text/names.js';
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

/** Fish in the water, gravel over the floor, or plants over the rim. */
function lifeMarks(
  maker: Maker,
  kind: PlacedVessel['life'][number],
  { x, y, width, height }: PlacedVessel['box'],
  colours: Colours,
): Element[] {
  const [left, up, down] = [x - width / 2, y - height / 2, y + height / 2];
  const spread = (count: number): number[] =>
    Array.from({ length: count }, (_, i) => left + ((i + 0.5) * width) / count);
  if (kind === 'plants')
    return spread(Math.floor(width / 17)).map((at) =>
      maker.svg('path', {
        d: `M${px(at)},${px(up + 6)} v-6 q-7,1 -6,-6 q6,0 6,6 q-1,-8 6,-8 q1,7 -6,8`,
        ...{ fill: colours.crop, stroke: colours.crop, 'stroke-width': 0.8 },
      }),
    );
  if (kind === 'gravel')
    return spread(Math.floor(width / 7)).map((at, i) =>
      maker.svg('circle', {
        ...{ cx: px(at), cy: px(down - (i % 2 === 0 ? 3.6 : 7.4)), r: i % 3 === 0 ? 3.1 : 2.5 },
        ...{ fill: colours['solids-pale'], stroke: colours.paper, 'stroke-width': 0.5 },
      }),
    );
  return spread(3).map((at, i) =>
    maker.svg('path', {
      d: `M${px(at + 9)},${px(down - 8 - (i % 2) * 3)} q-7,-6 -13,0 l-4,-3.4 v6.8 l4,-3.4 q6,6 13,0 Z`,
      fill: colours.fish,
    }),
  );
}

/** A vessel: open above, water in it up to a wavering line, words inside, and what lives there. */
function vesselMark(
  maker: Maker,
  { box, text, life }: PlacedVessel,
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
      fill: colours.wash,
    }),
    maker.svg('path', {
      d: `M${px(left)},${px(up)} V${px(down)} H${px(right)} V${px(up)}`,
      ...{ fill: 'none', stroke: colours.ink, 'stroke-width': 1.6 },
    }),
    ...life.flatMap((each) => lifeMarks(maker, each, box, colours)),
    ...lines.map((line, i) =>
      maker.svg(
        'text',
        {
          ...{ x: px(x), y: px(level + 5 + (i + 0.75) * lineHeight(frame)), 'text-anchor': 'middle' },
          'font-size': frame.letters,
          'font-weight': i < titles ? 700 : 400,
          fill: i === titles ? colours.soft : colours.ink,
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

/** A pump where its ways set out: a ring with the tip of its flow. */
function pumpMark(maker: Maker, outlets: readonly Point[], frame: SystemFrame, colours: Colours): Element {
  const mean = (of: (point: Point) => number): number =>
    outlets.reduce((total, point) => total + of(point), 0) / outlets.length;
  const [x, y] = [mean((point) => point.x), mean((point) => point.y)];
  const [cx, cy, turned] = frame.direction === 'LR' ? [x + 9, y, 0] : [x, y + 9, 90];
  return maker.svg(
    'g',
    { transform: `translate(${px(cx)},${px(cy)}) rotate(${turned})` },
    maker.svg('circle', { r: 7, fill: colours.paper, stroke: colours.ink, 'stroke-width': 1.5 }),
    maker.svg('path', { d: 'M-3,-4.6 L5.4,0 L-3,4.6 Z', fill: colours.ink }),
  );
}

/** The way back, by corners: drawn in one group, so that where ways run together they are one. */
function backMark(maker: Maker, { points, width }: PlacedWay, colours: Colours): Element {
  return maker.svg('path', {
    d: `M${points.map(({ x, y }) => `${px(x)},${px(y)}`).join(' L')}`,
    ...{ fill: 'none', stroke: colours.pool, 'stroke-width': width.toFixed(2), 'stroke-linejoin': 'round' },
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
  const { display } = maker;
  const words = display.words.pictures;
  const up = box.y - box.height / 2;
  const top = up - tapRoom(frame);
  const part = Math.max(box.width / Math.max(taps.length, 1), frame.letters * 6.4);
  return taps.flatMap((flow, i) => {
    const x = box.x + part * (i - (taps.length - 1) / 2);
    const lines = [
      flow.tank === true ? words.rainTank : words.tap(flowPhrase(flow.kind, display)),
      display.amount(flow.rate * 1000, 'L/d'),
    ];
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
    const [half, foot] = [part / 2 - 3, top + 2.2 * lineHeight(frame)];
    const tank = maker.svg('path', {
      d: `M${px(x - half)},${px(top - 2)} V${px(foot)} H${px(x + half)} V${px(top - 2)}`,
      ...{ fill: 'none', stroke: colours.pool, 'stroke-width': 1.4 },
    });
    return [
      ...(flow.tank === true ? [tank] : []),
      ...texts,
      drop,
      arrow(maker, { x, y: up + 6 }, 90, colours),
    ];
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
  const placed = layOutSystem(vessels, flows, frame, maker.display);
  const [width, height] = [Math.ceil(placed.width), Math.ceil(placed.height)];
  const onward = placed.ways.filter(({ back }) => !back);
  const returning = placed.ways.filter(({ back }) => back);
  const ways = onward.map((way) => wayMark(maker, way, frame, colours));
  const sources = new Set(placed.ways.map(({ pumpedFrom }) => pumpedFrom).filter((from) => from !== ''));
  const pumps = [...sources].map((from) =>
    placed.ways.filter(({ pumpedFrom }) => pumpedFrom === from).map(({ points }) => points[0]),
  );
  const turned = frame.direction === 'LR' ? -90 : 180;
  return maker.svg(
    'svg',
    { viewBox: `0 0 ${width} ${height}`, width, height, 'font-family': 'system-ui, sans-serif' },
    maker.svg('g', { opacity: 0.55 }, ...returning.map((way) => backMark(maker, way, colours))),
    ...ways.map(([line]) => line),
    ...placed.vessels.map((vessel) => vesselMark(maker, vessel, frame, colours)),
    ...ways.map(([, head]) => head),
    ...returning.map(({ points }) => arrow(maker, points[points.length - 1], turned, colours)),
    ...pumps.map((outlets) => pumpMark(maker, outlets, frame, colours)),
    ...placed.vessels.flatMap((vessel) => tapMarks(maker, vessel, frame, colours)),
  );
}
