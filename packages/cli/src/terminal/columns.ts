import { oneLine } from '@leat/view/text';
import { styleCodes } from './style.js';

/** How a column stands: text to the left, numbers to the right. */
export type Side = 'left' | 'right';

const letters = (text: string): string[] => Array.from(text);
const width = (text: string): number => letters(text).length;

function padded(text: string, to: number, side: Side): string {
  const gap = ' '.repeat(Math.max(0, to - width(text)));
  return side === 'left' ? text + gap : gap + text;
}

/** Lines of text, each kept to its line whatever is in it. */
export const linesText = (lines: readonly string[]): string =>
  lines
    .map(
      (line) =>
        `${line
          .split(styleCodes)
          .map((part, i) => (i % 2 === 0 ? oneLine(part) : part))
          .join('')}\n`,
    )
    .join('');

/** Rows as lines with aligned columns, two spaces apart; no blanks at the end of a line. */
export function columns(written: readonly (readonly string[])[], sides: readonly Side[]): readonly string[] {
  const rows = written.map((row) => row.map(oneLine));
  const widths = sides.map((_, i) => Math.max(0, ...rows.map((row) => width(row[i] ?? ''))));
  return rows.map((row) =>
    sides
      .map((side, i) => padded(row[i] ?? '', widths[i], side))
      .join('  ')
      .trimEnd(),
  );
}

/** Two blocks of lines side by side, the right one starting at a column. */
export function beside(left: readonly string[], right: readonly string[], at: number): readonly string[] {
  const lines = Math.max(left.length, right.length);
  return Array.from({ length: lines }, (_, i) => {
    const first = left[i] ?? '';
    const second = right[i] ?? '';
    return `${padded(first, second === '' ? 0 : at, 'left')}${second}`.trimEnd();
  });
}

/** Words laid into lines of at most so many letters, a word longer than that on its own; no lines of no text. */
export function wrap(text: string, to: number, indent = ''): readonly string[] {
  const lines: string[] = [];
  if (text === '') return lines;
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && width(last) + 1 + width(word) <= to)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(lines.length === 0 ? word : indent + word);
  }
  return lines;
}

/**
 * Rows as lines with aligned columns; where they are wider than the screen, their last cells stand under each row, wrapped,
 * so that nothing is cut. The first row is the head.
 * @param keep how many of the first cells stay on the line
 * @param wide letters of a line
 */
export function columnsOrUnder(
  rows: readonly (readonly string[])[],
  sides: readonly Side[],
  keep: number,
  wide: number,
): readonly string[] {
  const whole = columns(rows, sides);
  if (whole.every((line) => width(line) <= wide)) return whole;
  const kept = columns(
    rows.map((row) => row.slice(0, keep)),
    sides.slice(0, keep),
  );
  return kept.flatMap((line, i) => {
    const rest =
      i === 0
        ? ''
        : rows[i]
            .slice(keep)
            .filter((cell) => cell !== '')
            .join('; ');
    return [line, ...wrap(oneLine(rest), wide - 4).map((each) => `    ${each}`)];
  });
}
