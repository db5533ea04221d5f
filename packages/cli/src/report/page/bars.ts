import type { Maker } from '../../picture/document.js';

/** One bar of a table. */
export interface Bar {
  readonly value: number;
  readonly colour: string;
}

/**
 * A bar for a cell of a table, where the number itself stands beside it: from the left, or, where values go both
 * ways, from the middle.
 * @param most the value that fills the cell
 */
export function bar(maker: Maker, { value, colour }: Bar, most: number, bothWays: boolean): Element {
  const room = bothWays ? 50 : 100;
  const width = most > 0 ? (Math.abs(value) / most) * room : 0;
  const x = bothWays ? (value < 0 ? 50 - width : 50) : 0;
  return maker.svg(
    'svg',
    { viewBox: '0 0 100 10', preserveAspectRatio: 'none', 'aria-hidden': 'true' },
    ...(bothWays ? [maker.svg('rect', { x: 49.8, y: 0, width: 0.4, height: 10, fill: 'var(--soft)' })] : []),
    maker.svg('rect', {
      x: x.toFixed(2),
      y: 1,
      width: Math.max(0.3, width).toFixed(2),
      height: 8,
      fill: colour,
    }),
  );
}
