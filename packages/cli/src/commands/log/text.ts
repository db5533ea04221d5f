import { type LogSummary, type MapGuess, type Oddity, unitOfMeasurable, type WaterLog } from '@leat/core';
import { short, shown } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';

/** A guessed map for a person to look over: each column in words, then the text of the map file. */
export function guessLines(guess: MapGuess, file: string, written: string | undefined): readonly string[] {
  const table = columns(
    [
      ['column', 'looks like', 'look at this'],
      ...guess.columns.map(({ column, guess: text, doubt }) => [column, text, doubt]),
    ],
    ['left', 'left', 'left'],
  );
  const next =
    written === undefined
      ? 'To use it: keep the lines below in a file (or ask for --write-map FILE), mend them, and read the log by'
      : `Written to ${written}: mend it, and read the log by`;
  return [
    `${file}: a guess at its columns; nothing was read yet`,
    ...guess.doubts.map((doubt) => `look: ${doubt}`),
    '',
    ...table,
    '',
    `${next} leat log ${file} --map FILE`,
    '',
    ...guess.text.trimEnd().split('\n'),
  ];
}

function courseLines({ courses, span }: LogSummary): readonly string[] {
  if (courses.length === 0) return ['no readings'];
  const head = [
    'readings',
    'where',
    'unit',
    'count',
    'open',
    'every',
    'longest gap',
    'lowest',
    'median',
    'highest',
  ];
  const rows = courses.map((course) => [
    course.reads,
    course.vessel,
    unitOfMeasurable[course.reads] || course.reads,
    String(course.count),
    course.open === 0 ? '-' : String(course.open),
    `${shown(span / course.count)} d`,
    `${course.gap} d`,
    shown(course.lowest),
    shown(course.median),
    shown(course.highest),
  ]);
  return columns(
    [head, ...rows],
    ['left', 'left', 'left', 'right', 'right', 'right', 'right', 'right', 'right', 'right'],
  );
}

function oddityLines(oddities: readonly Oddity[]): readonly string[] {
  if (oddities.length === 0) return ['nothing odd'];
  const rows = oddities.map(({ row, column, text, problem, done }) => [
    `row ${row}`,
    short(column, 24),
    JSON.stringify(short(text, 40)),
    `${problem}: ${done}`,
  ]);
  return [`odd values: ${oddities.length}`, ...columns(rows, ['right', 'left', 'left', 'left'])];
}

/** What a log holds, how it fits the system, and every odd value with what was done about it. */
export function logLines(log: WaterLog, summary: LogSummary): readonly string[] {
  const { feed, nitrogen, doubts } = summary;
  const dates =
    log.from === ''
      ? 'no row with a date'
      : `${log.from} to ${log.to}, ${log.days} of ${summary.span} days written up`;
  const fed =
    feed.days === 0
      ? 'no feed written down'
      : `feed: ${shown(feed.grams)} g on ${feed.days} days${nitrogen === undefined ? '' : `, ${shown(nitrogen)} g of nitrogen`}`;
  return [
    `${log.file}: ${dates}`,
    '',
    ...courseLines(summary),
    '',
    fed,
    ...doubts.map((doubt) => `look: ${doubt}`),
    ...(log.notes.length === 0 ? [] : [`${log.notes.length} notes in words`]),
    '',
    ...oddityLines(log.oddities),
  ];
}
