import type { SystemNames } from './small-system.js';

/** Columns of the log of an edition: what each is called in its header. */
export type LogColumns = Readonly<
  Record<
    'date' | 'ammonia' | 'nitrite' | 'nitrate' | 'pH' | 'alkalinity' | 'temperature' | 'feed' | 'notes',
    string
  >
>;

/** The blank log as a file: the header alone. */
export function blankLog(columns: LogColumns): string {
  return `${Object.values(columns).join(',')}\n`;
}

/**
 * The map that says what the columns of a log hold, for `leat log`: in any language, for its columns are not guessed.
 * @param header names of the columns that are there; those of the blank log where absent
 */
export function blankLogMap(
  of: LogColumns,
  { tank }: Pick<SystemNames, 'tank'>,
  header: readonly string[] = Object.values(of),
): string {
  const test = (reads: string, unit: string): string => `{ reads: ${reads}, in: ${tank}, unit: ${unit} }`;
  const columns: readonly (readonly [string, string])[] = [
    [of.ammonia, test('ammonia', 'mg N/L')],
    [of.nitrite, test('nitrite', 'mg N/L')],
    [of.nitrate, test('nitrate', 'mg N/L')],
    [of.pH, `{ reads: pH, in: ${tank} }`],
    [of.alkalinity, test('alkalinity', 'mg/L as CaCO3')],
    [of.temperature, test('temperature', 'degC')],
    [of.feed, '{ feed: all, unit: g }'],
    [of.notes, 'notes'],
  ];
  const lines = columns
    .filter(([name]) => header.includes(name))
    .map(([name, holds]) => `  ${JSON.stringify(name)}: ${holds}`);
  return `version: 1\ndate: { column: ${JSON.stringify(of.date)} }\ncolumns:\n${lines.join('\n')}\n`;
}
