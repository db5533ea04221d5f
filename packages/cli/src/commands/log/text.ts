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

/** Kind of an oddity: its words without what differs from cell to cell. */
const kindOf = ({ column, problem, done }: Oddity): string =>
  `${column}|${problem.replace(/[\d.,]+|"[^"]*"|\([^)]*\)/g, '#')}|${done.split(/[:;]| as /)[0].replace(/[\d.,]+/g, '#')}`;

/** How much an oddity matters: what was left out, what was taken otherwise than it stands, what only looks odd. */
function rankOf({ done, problem }: Oddity): number {
  if (/left out|refused|not counted/.test(done)) return 0;
  if (/not acted on|steps are really|stands out/.test(`${problem} ${done}`)) return 1;
  return /^(?:done|taken|read)/.test(done) ? 2 : 3;
}

function oddityLines(oddities: readonly Oddity[], all: boolean): readonly string[] {
  if (oddities.length === 0) return ['nothing odd'];
  const groups = new Map<string, Oddity[]>();
  for (const oddity of oddities) {
    const key = all ? `${groups.size}` : kindOf(oddity);
    groups.set(key, [...(groups.get(key) ?? []), oddity]);
  }
  const sorted = [...groups.values()].sort((a, b) =>
    all ? 0 : rankOf(a[0]) - rankOf(b[0]) || b.length - a.length,
  );
  const rows = sorted.map(([{ row, column, text, problem, done }, ...rest]) => [
    `row ${row}`,
    short(column, 24),
    JSON.stringify(short(text, 40)),
    `${problem}: ${done}`,
    rest.length === 0 ? '' : `and ${rest.length} more like it`,
  ]);
  const kinds =
    all || sorted.length === oddities.length ? '' : ` of ${sorted.length} kinds, what was left out first`;
  const hint = all || sorted.length === oddities.length ? [] : ['  every one of them: --all'];
  return [
    `odd values: ${oddities.length}${kinds}`,
    ...columns(rows, ['right', 'left', 'left', 'left', 'left']),
    ...hint,
  ];
}

/** What a log holds, how it fits the system, and what is odd with what was done about it: by kind, or all. */
export function logLines(log: WaterLog, summary: LogSummary, all: boolean): readonly string[] {
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
    ...(log.actions.length === 0
      ? []
      : [`${log.actions.length} actions in words, done to the system in fits and forecasts`]),
    ...(log.notes.length === 0 ? [] : [`${log.notes.length} notes in words`]),
    '',
    ...oddityLines(log.oddities, all),
  ];
}
