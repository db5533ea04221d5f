import type { Fit, SpoiltReading } from '@leat/core';
import { shown } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';
import { saidByReadings, verdictLines } from './verdict-text.js';

type Lines = readonly string[];

const verdicts = {
  stays: 'stays at its prior: this log does not tell',
  narrowed: 'narrowed',
  moved: 'moved',
} as const;

function numberLines({ numbers }: Fit): Lines {
  const learned = ['moved', 'narrowed', 'stays'];
  const sorted = [...numbers].sort((a, b) => learned.indexOf(a.verdict) - learned.indexOf(b.verdict));
  const rows = sorted.map(({ name, unit, value, low, high, prior, deviation, verdict }) => [
    name,
    shown(value),
    `${shown(low)} to ${shown(high)}`,
    unit === '1' ? '' : unit,
    `${shown(prior.low)} to ${shown(prior.high)}`,
    shown(deviation),
    verdicts[verdict],
  ]);
  return columns(
    [['number', 'fitted', '90 % band', 'unit', 'range before', 'error left', ''], ...rows],
    ['left', 'right', 'left', 'left', 'left', 'right', 'left'],
  );
}

function entangledLines({ entangled }: Fit): Lines {
  return entangled.length === 0
    ? []
    : [
        '',
        'cannot be told apart by this log:',
        ...entangled.map(
          ({ a, b, correlation }) => `  ${a} and ${b} (correlation ${correlation.toFixed(2)})`,
        ),
      ];
}

/** What to mind of the readings of a quantity: the gravest alone. */
function remark({ spread, offset }: Fit['courses'][number], trust: Fit['trust'][number] | undefined): string {
  if (trust?.trusted === false) return 'not to be trusted';
  if (trust?.trusted === undefined) return 'too few to tell';
  if (spread !== undefined && spread > 2) return 'scatters more than its kit: bands are too narrow';
  return offset !== undefined && Math.abs(offset) > 1 ? 'lies to one side of the model' : '';
}

function courseLines({ courses, trust }: Fit): Lines {
  const rows = courses.map((course) => {
    const { reads, vessel, count, spread, offset } = course;
    const own = trust.find((each) => each.reads === reads && each.vessel === vessel);
    return [
      reads,
      vessel,
      String(count),
      shown(own?.fitted),
      own === undefined ? '-' : saidByReadings(own),
      spread === undefined ? '-' : spread.toFixed(1),
      offset === undefined ? '-' : (Math.round(10 * offset) / 10 || 0).toFixed(1),
      remark(course, own),
    ];
  });
  return columns(
    [['readings', 'where', 'count', 'fit today', 'readings today', 'spread', 'offset', ''], ...rows],
    ['left', 'left', 'right', 'right', 'left', 'right', 'right', 'left'],
  );
}

/** What a reading says, in the unit that the model's value stands in. */
function readAs({ low, high, unit }: SpoiltReading): string {
  const of = unit === '' ? '' : ` ${unit}`;
  if (low === -Infinity) return `at most ${shown(high)}${of}`;
  if (high === Infinity) return `at least ${shown(low)}${of}`;
  return `${shown(low)} to ${shown(high)}${of}`;
}

function spoiltLines({ spoilt }: Fit): Lines {
  return spoilt.length === 0
    ? []
    : [
        '',
        `far from the model, and hardly counted: ${spoilt.length}`,
        ...spoilt
          .slice(0, mostSpoilt)
          .map(
            (each) =>
              `  row ${each.row}, ${each.column}: ${each.text} (${readAs(each)}); the model has ${shown(each.predicted)}${each.unit === '' ? '' : ` ${each.unit}`}`,
          ),
        ...(spoilt.length > mostSpoilt ? [`  and ${spoilt.length - mostSpoilt} more: --json has all`] : []),
      ];
}

/** Most spoilt readings that are listed. */
const mostSpoilt = 12;

const percent = (share: number): string => `${shown(100 * share)} %`;

/** Falls of nitrate that may be water changes nobody wrote down, with the line of the map that accepts each. */
function jumpLines({ jumps }: Fit): Lines {
  if (jumps.length === 0) return [];
  return [
    '',
    'falls of nitrate that may be water changes nobody wrote down; to accept one, put its line under actions in the map:',
    ...jumps.flatMap(({ vessel, before, after, from, to, share, line }) => [
      `  nitrate in ${vessel} fell from ${shown(from)} to ${shown(to)} mg N/L between ${before} and ${after}: a water change of about ${percent(Math.round(share * 20) / 20)}?`,
      `    - ${line}`,
    ]),
  ];
}

function testLines({ nextTests }: Fit): Lines {
  return [
    '',
    'tests that would tell most, each on its best day of the next four weeks:',
    ...columns(
      nextTests
        .slice(0, 5)
        .map(({ reads, vessel, date, bits, narrows }) => [
          `  ${reads} in ${vessel}`,
          date,
          `${bits.toFixed(2)} bits`,
          `narrows ${narrows.name} by ${shown(100 * narrows.share)} %`,
        ]),
      ['left', 'left', 'right', 'left'],
    ),
  ];
}

/** A fit in words: what was found, what the log tells and what not, and which test to make next. */
export function fitLines(fit: Fit, oddities: number): Lines {
  const { provenance, starts, notes, readings } = fit;
  const lowest = Math.min(...starts.map(({ value }) => value));
  const same = starts.filter(({ value }) => value - lowest < 0.5).length;
  return [
    `${fit.title}: ${readings} readings from ${provenance.from} to ${provenance.until}`,
    ...verdictLines(fit),
    ...notes.map((note) => `  ${note}`),
    ...(oddities === 0
      ? []
      : [`  ${oddities} odd ${oddities === 1 ? 'value' : 'values'} in the log: leat log tells of each`]),
    `  ${same} of ${starts.length} searches end at the same place`,
    '',
    ...numberLines(fit),
    '  error left: standard error over that of the prior, 1 where nothing was learned',
    ...entangledLines(fit),
    '',
    ...courseLines(fit),
    '  spread and offset of the readings about the model, in errors of the kit',
    ...spoiltLines(fit),
    ...jumpLines(fit),
    ...testLines(fit),
  ];
}
