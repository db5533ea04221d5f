import * as Plot from '@observablehq/plot';
import { pageColours } from '../pictures/palette.js';
import type { Canvas } from './chart.js';
import { described } from './described.js';
import { numberText } from './fill.js';

/** One bar. */
export interface Bar {
  readonly name: string;
  readonly value: number;
}

/** Lying bars with their names above and their values beside them, longest scale `most`; a mark where the student guessed. */
export interface BarsOptions {
  readonly title: string;
  readonly unit: string;
  readonly bars: readonly Bar[];
  readonly most: number;
  readonly decimals: number;
  readonly guess?: Bar;
}

/** Draws them; see `BarsOptions`. */
export function bars({ maker, frame, width: room }: Canvas, options: BarsOptions): Element {
  const { title, unit, most, decimals, guess } = options;
  const width = Math.max(Math.min(room, 640), 260);
  const names = options.bars.map(({ name }) => name);
  const late = guess !== undefined && guess.value > 0.6 * most;
  const shown = ({ value }: Bar): string => `${numberText(value, decimals, frame.language)} ${unit}`;
  const svg = Plot.plot({
    document: maker.document,
    width,
    height: 16 + 58 * names.length,
    marginLeft: 4,
    marginRight: 92,
    marginTop: 4,
    marginBottom: 4,
    style: { fontSize: '13px', background: 'none', overflow: 'visible' },
    x: { domain: [0, most], axis: null },
    y: { domain: names, axis: null, padding: 0.1 },
    marks: [
      Plot.barX(options.bars, {
        x: 'value',
        y: 'name',
        fill: pageColours.water,
        insetTop: 20,
        insetBottom: 14,
      }),
      Plot.text(options.bars, {
        x: 0,
        y: 'name',
        text: 'name',
        textAnchor: 'start',
        dy: -17,
        fill: pageColours.ink,
      }),
      Plot.text(options.bars, {
        ...{
          x: 'value',
          y: 'name',
          text: shown,
          textAnchor: 'start',
          dx: 6,
          dy: 3,
          fontWeight: 600,
          fill: pageColours.ink,
        },
      }),
      ...(guess === undefined
        ? []
        : [
            Plot.tickX([guess], {
              x: 'value',
              y: 'name',
              stroke: pageColours.limit,
              strokeWidth: 3,
              insetTop: 16,
            }),
            Plot.text([guess], {
              ...{
                x: 'value',
                y: 'name',
                text: () => frame.yourGuess,
                dy: 20,
                textAnchor: late ? 'end' : 'start',
                fill: pageColours.limit,
              },
            }),
          ]),
    ],
  });
  return described(svg, `${title}. ${options.bars.map((bar) => `${bar.name}: ${shown(bar)}`).join('; ')}.`);
}
