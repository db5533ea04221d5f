/**
 * A second reader of logs, written without the first: it walks over letters, knows a handful of ways of writing, and looks up
 * nothing. Where the two differ one of them is wrong.
 */

/** How a column is written, as the map of the other reader says it too. */
export interface NaiveColumn {
  readonly name: string;
  readonly steps?: readonly number[];
  readonly resolution?: number;
  /** From what is written to internal units. */
  readonly factor: number;
  readonly offset: number;
}

export interface NaiveReading {
  readonly row: number;
  readonly column: string;
  readonly day: number;
  readonly hour: number;
  readonly low: number;
  readonly high: number;
}

/** Rows of a text of CSV, letter by letter. */
function naiveRows(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const letter = text[i];
    if (quoted) {
      if (letter === '"' && text[i + 1] === '"') {
        cell += '"';
        i++;
      } else if (letter === '"') quoted = false;
      else cell += letter;
    } else if (letter === '"') quoted = true;
    else if (letter === ',' || letter === '\n') {
      rows[rows.length - 1].push(cell.trim());
      cell = '';
      if (letter === '\n') rows.push([]);
    } else if (letter !== '\r') cell += letter;
  }
  if (cell !== '') rows[rows.length - 1].push(cell.trim());
  return rows.filter((row) => row.length > 0);
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** Days since 1970 of a date with its time of day, or undefined where the calendar has none. */
export function naiveDate(text: string, dayFirst: boolean): { day: number; hour: number } | undefined {
  const at = text.search(/\d:\d/);
  const cut = at < 0 ? text.length : text.lastIndexOf(' ', at);
  const [dateText, timeText] = [text.slice(0, cut).trim(), text.slice(cut).trim()];
  let parts = dateText.split(/[-/. ]/).filter((part) => part !== '');
  const named = parts.findIndex((part) => months.includes(part.slice(0, 3).toLowerCase()));
  let year: number;
  let month: number;
  let day: number;
  if (named >= 0) {
    month = months.indexOf(parts[named].slice(0, 3).toLowerCase()) + 1;
    parts = parts.filter((_, i) => i !== named);
    [day, year] = [Number(parts[0]), Number(parts[1])];
  } else if (parts[0].length === 4) [year, month, day] = parts.map(Number);
  else if (dayFirst) [day, month, year] = parts.map(Number);
  else [month, day, year] = parts.map(Number);
  if (year < 100) year += 2000;
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  let hour = 0;
  if (timeText !== '') {
    const [clock, half = ''] = timeText.split(' ');
    const [hours, minutes] = clock.split(':').map(Number);
    if (minutes > 59 || hours > 23 || (half !== '' && (hours < 1 || hours > 12))) return undefined;
    hour =
      (half === 'pm' && hours < 12 ? hours + 12 : half === 'am' && hours === 12 ? 0 : hours) / 24 +
      minutes / 1440;
  }
  return { day: Math.round(date.getTime() / 86_400_000), hour };
}

const number = (text: string): number => {
  const figures = text.trim().replace(',', '.');
  if (figures === '') return Number.NaN;
  for (const letter of figures) if (!'0123456789.+-eE'.includes(letter)) return Number.NaN;
  return Number(figures);
};

/** Two points for one, where they cannot mean a range: `7..2` is 7.2, `2..7` is left as it is. */
function onePoint(text: string): string {
  const [before, after, more] = text.split('..');
  return after !== undefined && more === undefined && Number(before) > Number(after)
    ? `${before}.${after}`
    : text;
}

/** Places behind the point that a number was read to. */
function naivePlaces(text: string): number {
  const [figures, power = '0'] = text.toLowerCase().replace(',', '.').split('e');
  return Math.max(0, (figures.split('.')[1] ?? '').length - Number(power));
}

/** What is between quotes of one cell, in the unit written; undefined where nothing is said. */
function naiveCell(
  written: string,
  { steps, resolution }: NaiveColumn,
  places: number,
): readonly [low: number, high: number] | undefined {
  const text = onePoint(written);
  if (['', '-', 'n/a', 'none', '?'].includes(text)) return undefined;
  const least = steps?.[1] ?? resolution;
  if (text === 'trace') return least === undefined ? undefined : [0, least];
  const first = text[0];
  if (first === '<') return [-Infinity, number(text.slice(1))];
  if (first === '>') return [number(text.slice(1)), Infinity];
  if (text.endsWith('+')) return [number(text.slice(0, -1)), Infinity];
  const to = text.indexOf(' to ');
  const ends = to > 0 ? [number(text.slice(0, to)), number(text.slice(to + 4))] : [];
  if (to > 0 && ends[0] !== ends[1]) return [ends[0], ends[1]];
  const value = to > 0 ? ends[0] : text === 'nil' ? 0 : number(first === '~' ? text.slice(1) : text);
  if (!Number.isFinite(value)) return undefined;
  if (steps === undefined) {
    const half = (resolution ?? Number(`1e-${places}`)) / 2;
    return [value - half, value + half];
  }
  let [low, high] = [-Infinity, Infinity];
  for (let i = 0; i < steps.length; i++) {
    if (steps[i] === value) {
      return [
        i === 0 ? -Infinity : (steps[i - 1] + value) / 2,
        i === steps.length - 1 ? Infinity : (steps[i + 1] + value) / 2,
      ];
    }
    if (steps[i] < value) low = steps[i];
    if (steps[i] > value && high === Infinity) high = steps[i];
  }
  return [low, high];
}

/** Every reading of a log, row by row. */
export function naiveReadings(
  text: string,
  columns: readonly NaiveColumn[],
  dayFirst: boolean,
): NaiveReading[] {
  const [header, ...rows] = naiveRows(text);
  const readings: NaiveReading[] = [];
  for (const column of columns) {
    const place = header.indexOf(column.name);
    let places = 0;
    const dated = rows.map((cells, i) => ({ cells, row: i + 2, date: naiveDate(cells[0], dayFirst) }));
    for (const { cells, date } of dated) {
      const plain = onePoint(cells[place].replace(/^~/, ''));
      if (date !== undefined && Number.isFinite(number(plain))) places = Math.max(places, naivePlaces(plain));
    }
    for (const { cells, row, date } of dated) {
      const bounds = date === undefined ? undefined : naiveCell(cells[place], column, places);
      if (bounds === undefined || date === undefined) continue;
      const [low, high] = bounds.map((value) => value * column.factor + column.offset);
      readings.push({ row, column: column.name, ...date, low, high });
    }
  }
  return readings.sort((a, b) => a.row - b.row || a.column.localeCompare(b.column));
}
