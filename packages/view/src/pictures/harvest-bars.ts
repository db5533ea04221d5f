import type { MonthlyYield } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import type { Maker } from './document.js';
import type { Colours } from './palette.js';

/** What is drawn of one harvest: of one crop or one cohort. */
export interface HarvestBars {
  /** The bars, in kg, in the order of `months`; a month without harvest has none. */
  readonly harvested: readonly MonthlyYield[];
  /** All months of the picture, `yyyy-mm`, ascending, at least one: several pictures share them. */
  readonly months: readonly string[];
  /** g: what fills the height, the same for pictures that are compared. */
  readonly most: number;
  readonly colour: string;
}

const size = { width: 190, height: 104, top: 17, bottom: 18, letters: 12 } as const;

/** Most months whose names and numbers have room side by side; of more every second or third is named. */
const mostNamed = 5;

/** A month by its name, with the year where it is the first of the picture or a January. */
export function monthLabel(month: string, first: boolean, { months }: Display = plainDisplay): string {
  const number = Number(month.slice(5, 7));
  const name = months[number - 1];
  return first || number === 1 ? `${name} ${month.slice(2, 4)}` : name;
}

/** What was harvested, a bar for each month with its kilograms over it. */
export function harvestBars(maker: Maker, drawn: HarvestBars, colours: Colours): Element {
  const { harvested, months, most, colour } = drawn;
  const step = Math.min(size.width / months.length, 47.5);
  const high = size.height - size.top - size.bottom;
  const base = size.height - size.bottom;
  const every = Math.ceil(months.length / mostNamed);
  const word = (x: number, y: number, fill: string, text: string): Element =>
    maker.svg(
      'text',
      { x: x.toFixed(1), y: y.toFixed(1), 'text-anchor': 'middle', 'font-size': size.letters, fill },
      text,
    );
  const bars = months.flatMap((month, i) => {
    const mass = harvested.find((each) => each.month === month)?.mass ?? 0;
    const tall = most > 0 ? (mass / most) * high : 0;
    const middle = (i + 0.5) * step;
    const rect = maker.svg('rect', {
      ...{ x: (i * step + 0.15 * step).toFixed(1), y: (base - tall).toFixed(1), fill: colour },
      ...{ width: (0.7 * step).toFixed(1), height: tall.toFixed(1) },
    });
    return [
      ...(mass > 0 ? [rect] : []),
      ...(mass > 0 && every === 1
        ? [
            word(
              middle,
              base - tall - 4,
              colours.ink,
              maker.display.number(maker.display.value(mass / 1000, 'kg')),
            ),
          ]
        : []),
      ...(i % every === 0
        ? [
            word(
              middle,
              size.height - 5,
              colours.soft,
              monthLabel(month, i === 0 && step * every > 40, maker.display),
            ),
          ]
        : []),
    ];
  });
  const across = (months.length * step).toFixed(1);
  return maker.svg(
    'svg',
    {
      viewBox: `0 0 ${size.width} ${size.height}`,
      ...{ width: size.width, height: size.height, 'font-family': 'system-ui, sans-serif' },
    },
    ...bars,
    maker.svg('path', { d: `M0,${base} H${across}`, stroke: colours.soft, 'stroke-width': 1 }),
  );
}
