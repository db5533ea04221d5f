import type { Fit, SpoiltReading } from '@leat/core';
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

type Fault = Fit['faults'][number];

/** Why a fit failed, one line: its name first. */
function faultLine(fault: Fault): string {
  switch (fault.kind) {
    case 'spoilt':
      return `spoilt readings: ${shown(100 * fault.share)} % lie far from the model, at most ${shown(100 * fault.allowed)} % are believed`;
    case 'start':
      return `start: the first readings of ${fault.reads} in ${fault.vessel} lie ${shown(Math.abs(fault.off))} kit errors ${fault.off > 0 ? 'above' : 'below'} the model`;
    case 'today':
      return `today: the last readings of ${fault.reads} in ${fault.vessel} lie ${shown(Math.abs(fault.off))} kit errors ${fault.off > 0 ? 'above' : 'below'} the model`;
    case 'scatter':
      return `scatter: half the readings of ${fault.reads} in ${fault.vessel} lie more than ${shown(fault.off)} kit errors off the model`;
    case 'end-of-range':
      return `end of range: ${fault.name} ran to ${shown(fault.value)}, the end of what was believed of it (${shown(fault.end)})`;
    case 'searches':
      return `searches: they end at different places, ${shown(fault.apart)} apart in log probability`;
  }
}

const percent = (share: number): string => `${shown(100 * share)} %`;

function missingLine({ kind, size, gain }: Fit['missing'][number]): string {
  const told = {
    discharge: `water changes or discharge that the file does not have, or a second sink of nitrate: ${percent(size)} of the water a day`,
    volume: `a wrong volume: ${shown(size)} of that of the file`,
    feed: `a wrong weight of feed: ${shown(size)} of what is written`,
  };
  return `  ${told[kind]} (gains ${shown(gain)} in log probability)`;
}

/** The verdict on a fit: that nothing speaks against it, or why it failed and what is probably missing. */
function verdictLines({ faults, missing }: Fit): Lines {
  if (faults.length === 0) return ['  verdict: nothing in the log speaks against this fit'];
  return [
    '  verdict: FAILED; do not rely on its numbers',
    ...faults.map((fault) => `    ${faultLine(fault)}`),
    ...(missing.length === 0
      ? ['  tried, and of no help: discharge or a second sink, another volume, another weight of feed']
      : [
          '  what is probably missing (tried, all else as fitted):',
          ...missing.map((each) => `  ${missingLine(each)}`),
        ]),
  ];
}

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
    ...notes.map((note) => `  ${note}`),
    ...(oddities === 0 ? [] : [`  ${oddities} odd values in the log: leat log tells of each`]),
    `  ${same} of ${starts.length} searches end at the same place`,
    ...verdictLines(fit),
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
