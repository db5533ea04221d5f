import type { PlotOptions } from '@observablehq/plot';
import type { Colours } from './colours.js';
import type { Frame } from './course-picture.js';
import type { Maker } from './document.js';

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
