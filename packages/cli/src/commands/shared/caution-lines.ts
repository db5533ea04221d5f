import { cautionsIn, type Display, plainDisplay } from '@leat/view/text';
import { wrap } from '../../terminal/columns.js';
import type { Style } from '../../terminal/style.js';
import { screenWidth } from '../../terminal/width.js';

/** What stands under every answer, as wide as the screen. */
export const cautionLines = (style: Style, display: Display = plainDisplay): readonly string[] =>
  cautionsIn(display).flatMap((line) => wrap(line, screenWidth(), '  ').map((each) => style.faint(each)));
