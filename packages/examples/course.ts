import { type Series } from '@leat/core';

/** The course of a series as an SVG picture: a line over the days, from 0 to its highest value, which is written at its left. */
export function course({ name, unit, times, values }: Series): string {
  const [from, to, top] = [times[0], times.at(-1) ?? 1, Math.max(...values) || 1];
  const x = (day: number): string => (40 + (255 * (day - from)) / (to - from)).toFixed(1);
  const y = (value: number): string => (95 - (85 * value) / top).toFixed(1);
  const points = times.map((day, i) => `${x(day)},${y(values[i])}`).join(' ');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 110" font-size="8" role="img">
<title>${name}, ${unit}, day ${from} to ${to}</title>
<text x="0" y="12">${top.toPrecision(3)}</text><text x="0" y="98">0 ${unit}</text>
<text x="40" y="106">day ${from}</text><text x="295" y="106" text-anchor="end">day ${to}</text>
<polyline points="${points}" fill="none" stroke="currentColor" /></svg>
`;
}
