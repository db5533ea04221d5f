import type { Colours } from './colours.js';
import type { Maker } from './document.js';

/** An SVG that stands alone, of paper of this size with what is drawn on it. */
export function sheet(
  maker: Maker,
  { width, height }: { readonly width: number; readonly height: number },
  colours: Colours,
  drawn: readonly Parameters<Maker['svg']>[2][],
): ReturnType<Maker['svg']> {
  return maker.svg(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      ...{ width, height, 'font-family': "'Source Sans 3', system-ui, sans-serif" },
    },
    maker.svg('rect', { width, height, fill: colours.paper }),
    ...drawn,
  );
}
