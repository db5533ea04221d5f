import type { PlotOptions } from '@observablehq/plot';
import type { Colours } from './colours.js';
import type { Maker } from './document.js';

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

/** What Plot is told of the frame of a picture over time: size, margins, letters. */
export function plotFrame(maker: Maker, frame: Frame, colours: Colours): PlotOptions {
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
