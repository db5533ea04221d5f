import type { Measurable } from '../scenario/scenario.js';
import { median } from 'd3-array';
import { stringify } from 'yaml';
import { InputError } from '../base/faults.js';
import { convert } from '../base/units.js';
import { dimensionOf } from '../scenario/measurables.js';
import { unitInHeader } from './header-unit.js';
import type { LogTable } from './log-table.js';
import { raggedRows, refuseRagged } from './ragged.js';

/** What a column seems to be. */
export interface ColumnGuess {
  readonly column: string;
  /** One clause: `ammonia in tank-1, mg N/L`. */
  readonly guess: string;
  /** What to look at before it is trusted; '' where the header says it all. */
  readonly doubt: string;
}

/** A guessed map as the text of a file, to be looked over and kept. */
export interface MapGuess {
  readonly text: string;
  readonly columns: readonly ColumnGuess[];
  /** What is to be looked at in the file as a whole, one clause each. */
  readonly doubts: readonly string[];
}

/** What a guess needs to know of the system that the log is of. */
export interface System {
  /** Names of vessels, the fish tanks first; what is tested is in the first unless the header names another. */
  readonly vessels: readonly string[];
  readonly cohorts: readonly string[];
  /** Sheet that was read of a spreadsheet; absent: its first. */
  readonly sheet?: string;
}

type Given = Record<string, unknown> | 'notes' | 'skip';

const kinds: readonly { readonly reads: Measurable; readonly pattern: RegExp }[] = [
  { reads: 'ammonia', pattern: /(?:\b(?:tan\b(?![-_ ]?\d)|nh[34])|ammoni)/i },
  { reads: 'nitrite', pattern: /\b(?:no2|nitrite)/i },
  { reads: 'nitrate', pattern: /\b(?:no3|nitrate)/i },
  { reads: 'alkalinity', pattern: /\b(?:d?kh|alk|alkalinity|carbonate hardness)\b/i },
  { reads: 'oxygen', pattern: /\b(?:d\.?o\.?|o2|oxygen)\b/i },
  { reads: 'chloride', pattern: /\b(?:cl-?|chloride)\b/i },
  { reads: 'temperature', pattern: /(?:\btemp|temperature|°|\bdeg ?[cf]\b|\bwater,? \(?[cf]\b)/i },
  { reads: 'pH', pattern: /\bph\b/i },
  { reads: 'volume', pattern: /\bvolume\b/i },
];

/** Unit of a column by its header, and what is open about it. */
function unitOf(
  reads: Measurable,
  header: string,
  values: readonly number[],
): { unit: string; doubt: string } {
  const asN = /(?:-n\b|\bas n\b|\bn\)|mg ?n\/l|\btan\b)/i.test(header);
  switch (reads) {
    case 'ammonia':
      if (asN) return { unit: 'mg N/L', doubt: '' };
      return { unit: 'mg N/L', doubt: 'many kits show nitrogen, some the ion: then "mg/L as NH4"' };
    case 'nitrite':
      return asN
        ? { unit: 'mg N/L', doubt: '' }
        : { unit: 'mg/L as NO2', doubt: 'many kits show the ion, some nitrogen: then "mg N/L"' };
    case 'nitrate':
      return asN
        ? { unit: 'mg N/L', doubt: '' }
        : { unit: 'mg/L as NO3', doubt: 'many kits show the ion, some nitrogen: then "mg N/L"' };
    case 'alkalinity':
      if (/dkh|°/i.test(header)) return { unit: 'dKH', doubt: '' };
      if (/ppm|mg\/l|caco3/i.test(header)) return { unit: 'mg/L as CaCO3', doubt: '' };
      return (median(values) ?? 0) > 25
        ? { unit: 'mg/L as CaCO3', doubt: 'told by the size of the numbers' }
        : { unit: 'dKH', doubt: 'told by the size of the numbers' };
    case 'temperature':
      if (/f\b/i.test(header.replace(/temperature|of/gi, ''))) return { unit: 'degF', doubt: '' };
      if (/(?:°|deg ?|\(|\s)c\b|celsius/i.test(header)) return { unit: 'degC', doubt: '' };
      return (median(values) ?? 0) > 45
        ? { unit: 'degF', doubt: 'told by the size of the numbers' }
        : { unit: 'degC', doubt: 'told by the size of the numbers' };
    case 'oxygen':
    case 'chloride':
      return { unit: 'mg/L', doubt: '' };
    case 'volume':
      return { unit: 'L', doubt: 'the header does not say the unit' };
    case 'pH':
      return { unit: '', doubt: '' };
  }
}

/** Units of which a kit says no more: whether nitrogen or the ion, or as what, is open. */
const open = /^(?:mg ?\/ ?l|ppm|g\/m3)$/i;

/**
 * The unit of a column of readings: as its header writes it, else by what such columns are mostly in; undefined where the
 * header writes one that is not understood of this quantity, for which no other is guessed.
 */
function readingUnit(
  reads: Measurable,
  header: string,
  values: readonly number[],
): { unit: string; doubt: string } | undefined {
  const usual = unitOf(reads, header, values);
  // Of saturation, whatever stands behind it.
  if (dimensionOf[reads] === 'concentration' && header.includes('%')) return undefined;
  const written = unitInHeader(header);
  if (written === undefined) return usual;
  const dimension = dimensionOf[reads];
  if (dimension === undefined) return undefined;
  const answer = convert(1, written, dimension);
  if (!('value' in answer))
    return open.test(written) && dimension !== 'temperature' && dimension !== 'volume' ? usual : undefined;
  const same = convert(1, usual.unit, dimension);
  return 'value' in same && same.value === answer.value ? usual : { unit: written, doubt: '' };
}

/** A column whose header writes a unit that is not understood. */
const strangeUnit = (
  what: string,
  header: string,
): { readonly given: 'skip'; readonly guess: string; readonly doubt: string } => ({
  given: 'skip',
  guess: `${what}, unit not understood`,
  doubt: `"${unitInHeader(header) ?? '%'}" is no unit of ${what}: left out unless the map says what it is`,
});

/** The name whose letters and figures the header holds; longer names first. */
function named(header: string, names: readonly string[]): string | undefined {
  const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '');
  const within = plain(header);
  return [...names].sort((a, b) => b.length - a.length).find((name) => within.includes(plain(name)));
}

/** Row of the header: the one of the first ten in which most cells are words that a log has. */
function headerRow(table: LogTable): number {
  const score = (cells: readonly string[]): number =>
    cells.filter((cell) => /date|day\b|when/i.test(cell) || kinds.some(({ pattern }) => pattern.test(cell)))
      .length;
  const scores = table.rows.slice(0, 10).map(score);
  return scores.indexOf(Math.max(...scores)) + 1;
}

/** A column of what was done, by its header; undefined of any other. */
function guessActions(
  header: string,
  { vessels, cohorts }: System,
): ReturnType<typeof guessColumn> | undefined {
  const words = /\b(?:add(?:ed|itions?)|dos(?:ed?|es|ing)|treatments?|actions?|done|maintenance)\b/i.test(
    header,
  );
  const change = /water\s*(?:change|exchange)|\bwc\b/i.test(header);
  const dead = /\b(?:dead|deaths?|died|mortalit|losses)/i.test(header);
  if (!words && !change && !dead) return undefined;
  const vessel = vessels[0] ?? 'tank';
  const unit = /%/.test(header) ? '%' : /\bl\b|lit(?:er|re)/i.test(header) ? 'L' : unitInHeader(header);
  const given = {
    'acts-on': vessel,
    ...(dead ? {} : { water: 'mains' }),
    ...(cohorts.length > 0 ? { fish: cohorts[0] } : {}),
    ...(change ? { what: 'water change' } : dead ? { what: 'died' } : {}),
    ...(change && unit !== undefined ? { unit } : {}),
  };
  const doubt = 'done to the system as its cells say: name the vessel, the water that came in and the fish';
  return { given, guess: `what was done to ${vessel}`, doubt };
}

function guessColumn(
  header: string,
  values: readonly number[],
  system: System,
): { given: Given; guess: string; doubt: string } {
  if (/note|remark|comment|observ/i.test(header)) return { given: 'notes', guess: 'words', doubt: '' };
  const acted = guessActions(header, system);
  if (acted !== undefined) return acted;
  if (/\btotal\b|\bsum\b/i.test(header) && /feed|food|fed/i.test(header))
    return { given: 'skip', guess: 'a total of feed', doubt: 'left out, so that feed does not count twice' };
  if (/\bfeed|\bfed\b|food/i.test(header)) {
    const cohort = named(header, system.cohorts) ?? 'all';
    const written = unitInHeader(header);
    const isMass = written !== undefined && 'value' in convert(1, written, 'mass');
    if (written !== undefined && !isMass) return strangeUnit('feed', header);
    const guessed = /kg/i.test(header)
      ? 'kg'
      : /\b(?:g|gr|grams?)\b/i.test(header)
        ? 'g'
        : /oz/i.test(header)
          ? 'oz'
          : /cups?/i.test(header)
            ? 'cup'
            : /scoops?/i.test(header)
              ? 'scoop'
              : 'g';
    const unit = isMass ? written : guessed;
    const doubt =
      unit === 'cup' || unit === 'scoop'
        ? `weigh one ${unit} and write it under measures`
        : isMass || /\b(?:kg|g|gr|grams?|oz)\b/i.test(header)
          ? ''
          : 'the header does not say the unit';
    return { given: { feed: cohort, unit }, guess: `feed of ${cohort}, ${unit}`, doubt };
  }
  const kind = kinds.find(({ pattern }) => pattern.test(header));
  if (kind === undefined)
    return { given: 'skip', guess: unknown, doubt: 'left out unless the map says what it is' };
  const [first] = system.vessels;
  const own = named(header, system.vessels);
  const vessel = own ?? first ?? 'tank';
  const found = readingUnit(kind.reads, header, values);
  if (found === undefined) return strangeUnit(kind.reads, header);
  const { unit, doubt } = found;
  const where =
    own === undefined && system.vessels.length !== 1 ? `which vessel is not said: ${vessel} is taken` : '';
  return {
    given: { reads: kind.reads, in: vessel, ...(unit === '' ? {} : { unit }) },
    guess: `${kind.reads} in ${vessel}${unit === '' ? '' : `, ${unit}`}`,
    doubt: [doubt, where].filter((text) => text !== '').join('; '),
  };
}

/** What is said of a column of which a guess makes nothing. */
const unknown = 'nothing known';

/** Names the instruments of a quantity that two columns read in one vessel: they are no two readings of one kit. */
function tellApart(given: Record<string, Given>, columns: ColumnGuess[]): void {
  const keyOf = (use: Given | undefined): string =>
    typeof use === 'object' && typeof use.reads === 'string' ? `${use.reads} in ${String(use.in)}` : '';
  for (const [i, { column, guess, doubt }] of columns.entries()) {
    const use = given[column];
    const key = keyOf(use);
    const others = columns.filter((each) => each.column !== column && keyOf(given[each.column]) === key);
    if (key === '' || others.length === 0 || typeof use !== 'object') continue;
    given[column] = { ...use, instrument: column };
    const apart = `read beside ${others.map((each) => each.column).join(', ')}: taken as two kits or meters of one vessel`;
    columns[i] = { column, guess, doubt: [doubt, apart].filter((text) => text !== '').join('; ') };
  }
}

/** Stops at a table in which nothing looks like a log of water tests. Throws InputError. */
function refuseStrange({ file, oddities = [] }: LogTable, names: readonly string[]): never {
  const sheets = oddities.filter(({ problem }) => /more sheets?$/.test(problem)).map(({ text }) => text);
  throw new InputError([
    {
      file,
      problem: 'no column of a test, of feed or of what was done is told by its name',
      got: names.filter((name) => name !== '').join(', '),
      expected: `a row of names such as Date, NH3, NO2, pH, Feed${sheets.length === 0 ? '' : `; other sheets, for --sheet: ${sheets.join(', ')}`}`,
    },
  ]);
}

/**
 * Guesses from the header (and the size of the numbers) what the columns of a log hold, as the text of a map
 * file that a person looks over before it is used. Nothing is read by it unseen.
 * @throws InputError where nothing in it looks like a log
 */
export function guessLogMap(table: LogTable, system: System): MapGuess {
  const header = headerRow(table);
  const long = raggedRows(table, header).filter((ragged) => ragged.long);
  refuseRagged(table, header, long);
  const names = (table.rows[header - 1] ?? []).map((name, place) => ({ name, place }));
  const date =
    names.find(({ name }) => /\bdate\b/i.test(name)) ??
    names.find(({ name }) => /^(?:day|when)\b/i.test(name)) ??
    names[0];
  const time = names.find(({ name, place }) => place !== date?.place && /^(?:time|hour|clock)\b/i.test(name));
  const columns: ColumnGuess[] = [];
  const given: Record<string, Given> = {};
  for (const { name, place } of names) {
    if (name === '' || place === date?.place || name === time?.name) continue;
    const values = table.rows
      .slice(header)
      .map((cells) => Number.parseFloat((cells[place] ?? '').replace(',', '.')))
      .filter(Number.isFinite);
    const { given: use, guess, doubt } = guessColumn(name, values, system);
    given[name] = use;
    columns.push({ column: name, guess, doubt });
  }
  tellApart(given, columns);
  if (columns.every(({ guess }) => guess === unknown))
    refuseStrange(
      table,
      names.map(({ name }) => name),
    );
  const wantsMeasure = Object.values(given).flatMap((use) =>
    typeof use === 'object' && (use.unit === 'cup' || use.unit === 'scoop') ? [use.unit] : [],
  );
  const text = stringify({
    version: 1,
    ...(header === 1 ? {} : { header }),
    ...(system.sheet === undefined ? {} : { sheet: system.sheet }),
    date: { column: date?.name ?? '', ...(time === undefined ? {} : { time: time.name }) },
    columns: given,
    ...(wantsMeasure.length === 0
      ? {}
      : {
          measures: Object.fromEntries(
            [...new Set(wantsMeasure)].map((unit) => [unit, 'WEIGH ONE, such as 110 g']),
          ),
        }),
  });
  const doubts = [
    ...(table.oddities ?? []).map(
      ({ problem, done, text }) => `${problem}${text === '' ? '' : ` (${text})`}: ${done}`,
    ),
    ...(long.length === 0
      ? []
      : [
          `rows with more cells than the header, which are left out: ${long.map(({ row }) => row).join(', ')}`,
        ]),
  ];
  return { text, columns, doubts };
}
