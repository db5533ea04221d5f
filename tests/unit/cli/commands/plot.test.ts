import { describe, expect, it } from 'vitest';
import { terminalChart } from '../../../../packages/cli/src/commands/plot/text.js';

/** Dots of a drawing, row by row from the top, and how many columns of dots it has. */
function dotsOf(lines: readonly string[]): boolean[][] {
  const bits = [
    [0x01, 0x08],
    [0x02, 0x10],
    [0x04, 0x20],
    [0x40, 0x80],
  ];
  return lines.flatMap((line) => {
    const letters = Array.from(line.slice(line.indexOf('┤') + 1), (letter) => letter.charCodeAt(0) - 0x2800);
    return bits.map((pair) => letters.flatMap((letter) => pair.map((bit) => (letter & bit) !== 0)));
  });
}

const days = Array.from({ length: 366 }, (_, i) => i);

describe('terminalChart', () => {
  it('keeps a peak of one day in a year', () => {
    const values = days.map((day) => (day === 200 ? 9 : 1));
    const lines = terminalChart('nitrite', days, values);
    expect(lines[0]).toBe('nitrite');
    expect(lines[1].trimStart().startsWith('9 ┤')).toBe(true);
    const dots = dotsOf(lines.slice(1, -1));
    const column = dots[0].indexOf(true);
    expect(column / (2 * 68)).toBeCloseTo(200 / 365, 2);
    expect(dots.every((row) => row[column])).toBe(true);
  });

  it('draws every column of a course, and none of a gap', () => {
    const dots = dotsOf(terminalChart('a', days, days).slice(1, -1));
    for (let column = 0; column < 2 * 68; column += 1) expect(dots.some((row) => row[column])).toBe(true);
  });

  it('is at most 80 columns wide and says the days', () => {
    const lines = terminalChart('a', days, days.map(Math.sin));
    expect(Math.max(...lines.map((line) => Array.from(line).length))).toBeLessThanOrEqual(80);
    expect(lines.at(-1)?.trim().split(/\s+/)).toEqual(['day', '0', '91.3', '182.5', '273.8', '365']);
  });

  it('says in words what has no course', () => {
    expect(
      terminalChart(
        'feed',
        days,
        days.map(() => 720),
      ),
    ).toEqual(['feed: steady at 720']);
    expect(
      terminalChart(
        'mass',
        days,
        days.map(() => Number.NaN),
      ),
    ).toEqual(['mass: nothing to draw']);
  });
});
