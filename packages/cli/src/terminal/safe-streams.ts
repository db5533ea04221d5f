import { visible } from '@leat/view/text';
import type { Streams } from './streams.js';
import { styleCodes } from './style.js';

/** A text for a terminal: nothing unseen in it but the marks that Leat itself sets there. */
function shownText(text: string, coloured: boolean): string {
  return coloured
    ? text
        .split(styleCodes)
        .map((part, i) => (i % 2 === 0 ? visible(part) : part))
        .join('')
    : visible(text);
}

/**
 * Streams on which nothing is written that is not seen, whatever the files said: every word of the command goes through
 * here.
 * @param coloured whether the result has marks for the eye
 */
export const safeStreams = (streams: Streams, coloured: boolean): Streams => ({
  result: (text) => {
    streams.result(shownText(text, coloured));
  },
  note: (text) => {
    streams.note(visible(text));
  },
});
