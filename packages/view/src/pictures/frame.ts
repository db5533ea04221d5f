import type { Maker } from './document.js';
import type { Colours } from './palette.js';
import { shortPath } from './short-path.js';

/** Size of a picture and the room around its axes, px. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Size of letters, px. */
  readonly letters: number;
}

/**
 * What Plot is told of a frame, as plain data: types of Plot in what others import would have them install those of its own
 * dependencies.
 */
export interface PlotFrame extends Record<`margin${'Left' | 'Right' | 'Top' | 'Bottom'}`, number> {
  readonly document: Maker['document'];
  readonly width: number;
  readonly height: number;
  readonly style: Readonly<Record<'fontSize' | 'background' | 'color', string>>;
}

/** What Plot is told of the frame of a picture over time: size, margins, letters. */
export function plotFrame(maker: Maker, frame: Frame, colours: Colours): PlotFrame {
  return {
    document: maker.document,
    width: frame.width,
    height: frame.height,
    marginLeft: frame.left,
    marginRight: frame.right,
    marginTop: frame.top,
    marginBottom: frame.bottom,
    style: { fontSize: `${frame.letters}px`, background: 'none', color: colours.soft },
  };
}

/** What a picture shows, for those who do not see it. */
export interface Telling {
  readonly title: string;
  /** What there is to be seen in it, in words. */
  readonly description: string;
}

/** Numbers of a path or a move to a tenth of a pixel: enough for print, and a third of the size. */
function rounded(path: string): string {
  return path.replace(/-?\d+\.\d{2,}/g, (digits) => String(Number(Number(digits).toFixed(1))));
}

/**
 * Makes an SVG ready for a page: a title and a description as its text alternative, its paths and
 * moves short, no style of its own.
 */
export function finished(maker: Maker, svg: Element, { title, description }: Telling): Element {
  const [titleId, textId] = [maker.id(), maker.id()];
  for (const style of [...svg.querySelectorAll('style')]) style.remove();
  for (const path of [...svg.querySelectorAll('path')]) {
    const d = path.getAttribute('d');
    if (d !== null) path.setAttribute('d', rounded(shortPath(d)));
  }
  for (const moved of [...svg.querySelectorAll('[transform]')]) {
    const move = moved.getAttribute('transform') ?? '';
    moved.setAttribute('transform', move.replace(/translate\([^)]*\)/g, rounded));
  }
  for (const group of [...svg.querySelectorAll('[aria-label]')]) group.removeAttribute('aria-label');
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-labelledby', `${titleId} ${textId}`);
  svg.prepend(maker.svg('title', { id: titleId }, title), maker.svg('desc', { id: textId }, description));
  return svg;
}

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
