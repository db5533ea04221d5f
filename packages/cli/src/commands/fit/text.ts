import type { Fit } from '@leat/core';
import { shown } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';

type Lines = readonly string[];

const verdicts = {
  stays: 'stays at its prior: this log does not tell',
  narrowed: 'narrowed',
  moved: 'moved',
} as const;

function numberLines({ numbers }: Fit): Lines {
  const rows = numbers.map(({ name, unit, value, low, high, prior, deviation, verdict }) => [
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

function courseLines({ courses }: Fit): Lines {
  const rows = courses.map(({ reads, vessel, count, spread, offset }) => [
    reads,
    vessel,
    String(count),
    spread === undefined ? '-' : spread.toFixed(1),
    offset === undefined ? '-' : (Math.round(10 * offset) / 10 || 0).toFixed(1),
    spread !== undefined && spread > 2
      ? 'scatters more than its kit: bands are too narrow'
      : offset !== undefined && Math.abs(offset) > 1
        ? 'lies to one side of the model'
        : '',
  ]);
  return columns(
    [['readings', 'where', 'count', 'spread', 'offset', ''], ...rows],
    ['left', 'left', 'right', 'right', 'right', 'left'],
  );
}

function spoiltLines({ spoilt }: Fit): Lines {
  return spoilt.length === 0
    ? []
    : [
        '',
        'taken for spoilt, and hardly counted:',
        ...spoilt.map(
          ({ row, column, text, predicted }) =>
            `  row ${row}, ${column}: ${text}; the model has ${shown(predicted)}`,
        ),
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
    ...notes.map((note) => `  ${note}`),
    ...(oddities === 0 ? [] : [`  ${oddities} odd values in the log: leat log tells of each`]),
    `  ${same} of ${starts.length} searches end at the same place`,
    '',
    ...numberLines(fit),
    '  error left: standard error over that of the prior, 1 where nothing was learned',
    ...entangledLines(fit),
    '',
    ...courseLines(fit),
    '  spread and offset of the readings about the model, in errors of the kit',
    ...spoiltLines(fit),
    ...testLines(fit),
  ];
}
