import { type Run, seriesOf } from '@leat/core';
import { dateNames, day, type Display, plainDisplay, quantityOf } from '@leat/view/text';
import { keySeries } from '@leat/view/documents';

/** Letters across and lines down of the drawing itself. */
const [width, height] = [68, 6];

/** Dots of a braille letter by row and column, as bits over U+2800. */
const bits = [
  [0x01, 0x08],
  [0x02, 0x10],
  [0x04, 0x20],
  [0x40, 0x80],
] as const;

/** Lowest and highest value of the line between points within each of some equal stretches of time. */
function spans(
  points: readonly (readonly [t: number, v: number])[],
  count: number,
): readonly (readonly [low: number, high: number] | undefined)[] {
  const [first, last] = [points[0][0], points[points.length - 1][0]];
  const edge = (k: number): number => first + ((last - first) * k) / count;
  const found: ([number, number] | undefined)[] = new Array<undefined>(count).fill(undefined);
  const take = (k: number, value: number): void => {
    const span = found[k];
    if (span === undefined) found[k] = [value, value];
    else found[k] = [Math.min(span[0], value), Math.max(span[1], value)];
  };
  for (let i = 1; i < points.length; i += 1) {
    const [[t0, v0], [t1, v1]] = [points[i - 1], points[i]];
    const at = (t: number): number => v0 + ((v1 - v0) * (t - t0)) / (t1 - t0);
    const from = Math.min(count - 1, Math.floor(((t0 - first) / (last - first)) * count));
    const to = Math.min(count - 1, Math.floor(((t1 - first) / (last - first)) * count));
    for (let k = from; k <= to; k += 1) {
      take(k, at(Math.max(t0, edge(k))));
      take(k, at(Math.min(t1, edge(k + 1))));
    }
  }
  return found;
}

/** Writes words into a line of letters, each about its place. */
function placed(words: readonly (readonly [at: number, word: string])[]): string {
  let line = '';
  for (const [at, word] of words) {
    const from = Math.max(line === '' ? 0 : line.length + 1, Math.round(at - word.length / 2));
    line = line.padEnd(from) + word;
  }
  return line;
}

/**
 * The course of one quantity in braille dots, about 80 columns wide: highest and lowest value beside it, days below.
 * Every column of dots reaches from the lowest to the highest value of its stretch, so that no peak is lost.
 */
export function terminalChart(
  title: string,
  time: readonly number[],
  values: ArrayLike<number>,
  { startDate, display = plainDisplay }: { readonly startDate?: string; readonly display?: Display } = {},
): readonly string[] {
  const words = display.words.plot;
  const shown = display.number;
  const points = time.flatMap((t, i) => (Number.isFinite(values[i]) ? [[t, values[i]] as const] : []));
  if (points.length < 2) return [words.noCourse(title)];
  const known = points.map(([, value]) => value);
  const [low, high] = [Math.min(...known), Math.max(...known)];
  if (shown(low) === shown(high)) return [words.steady(title, shown(high))];
  const rows = height * 4;
  const row = (value: number): number => Math.round(((high - value) / (high - low)) * (rows - 1));
  const cells = Array.from({ length: height }, () => new Array<number>(width).fill(0));
  spans(points, width * 2).forEach((span, column) => {
    if (span === undefined) return;
    for (let dot = row(span[1]); dot <= row(span[0]); dot += 1)
      cells[dot >> 2][column >> 1] |= bits[dot & 3][column & 1];
  });
  const labels = cells.map((_, i) => (i === 0 ? shown(high) : i === height - 1 ? shown(low) : ''));
  const room = Math.max(...labels.map((label) => label.length));
  const lines = cells.map((letters, i) => {
    const drawn = letters.map((dots) => String.fromCharCode(0x2800 + dots)).join('');
    return `${labels[i].padStart(room)} ┤${drawn}`.replace(/\u2800+$/, '');
  });
  const [first, last] = [points[0][0], points[points.length - 1][0]];
  const days = [0, 0.25, 0.5, 0.75, 1].map((share) => {
    const at = Number((first + share * (last - first)).toFixed(1));
    const word = share === 0 ? words.day(day(at, display)) : day(at, display);
    const date = startDate === undefined ? '' : ` (${dateNames(startDate, display)(at)})`;
    return [share * (width - 1), `${word}${date}`] as const;
  });
  const under = ' '.repeat(room + 2);
  return [title, ...lines, `${under}${placed(days)}`];
}

const usual: ReadonlySet<string> = new Set(['tan', 'nitrite', 'nitrate', 'pH']);

/**
 * Courses of some series drawn with letters, one below the other.
 * @param asked names, or true for TAN, nitrite, nitrate and pH where the fish live
 * @throws InputError for a series that there is none of, with the nearest name
 */
export function terminalCharts(
  run: Run,
  asked: true | readonly string[],
  display: Display = plainDisplay,
): string {
  const names =
    asked === true ? keySeries(run).filter((name) => usual.has(name.slice(0, name.indexOf('@')))) : asked;
  const time = run.samples.map((sample) => sample.time);
  const charts = names.map((name) => {
    const { unit, values } = seriesOf(run, name);
    const quantity = quantityOf(name);
    const told = display.unit(unit, quantity);
    const drawn = Array.from(values, (value) => display.value(value, unit, quantity));
    const { startDate } = run.model.scenario;
    return terminalChart(told === '' ? name : `${name}, ${told}`, time, drawn, {
      startDate,
      display,
    }).join('\n');
  });
  return `\n${charts.join('\n\n')}\n`;
}
