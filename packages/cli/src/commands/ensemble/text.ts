import type { MeasureSummary, Bands, EnsembleResult, LimitOdds } from '@leat/core';
import { askedTold, boundSign, day, type Display, percent, plain, shown } from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { columns, columnsOrUnder, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';

/** Most lines of one table. */
const most = 14;

/** An end of a band, and from one to the other, in the units that are shown. */
type Tell = (value: number) => string;
const range = ([low, high]: readonly [number, number], tell: Tell): string => `${tell(low)} .. ${tell(high)}`;
const days = ([low, high]: readonly [number, number]): string => `${day(round(low))} .. ${day(round(high))}`;
const round = (value: number): number => Math.round(value * 10) / 10;

/** The key series at the end of the run. */
function endLines(result: EnsembleResult, keys: readonly string[], display: Display): readonly string[] {
  const last = result.times.length - 1;
  const rows = keys.flatMap((key) => {
    const series = result.series.find(({ name }) => name === key);
    if (series === undefined) return [];
    const at = (edges: readonly [Float64Array, Float64Array]): [number, number] => [
      edges[0][last],
      edges[1][last],
    ];
    const { name, unit, median, band50, band90 } = series;
    const [quantity] = name.split('@');
    const tell = (value: number): string => shown(display.value(value, unit, quantity));
    const told = display.unit(unit, quantity);
    return [[name, told, tell(median[last]), range(at(band50), tell), range(at(band90), tell)]];
  });
  const head = [`on day ${day(result.times[last])}`, '', 'median', '50 %', '90 %'];
  return columns([head, ...rows], ['left', 'left', 'right', 'left', 'left']);
}

/** The limits that some members pass, the likeliest first. */
function limitLines(limits: readonly LimitOdds[], display: Display): readonly string[] {
  const passed = limits.filter((limit) => limit.passed > 0).sort((a, b) => b.probability - a.probability);
  const unjudged = limits.filter(({ judged }) => judged === 0).length;
  const notes = [
    ...(passed.length > most ? [`${passed.length - most} more: see --json`] : []),
    ...(unjudged > 0 ? [`${unjudged} not judged: run shorter than their mean, or nobody there`] : []),
  ];
  if (passed.length === 0) return ['limits: no member passes any of those that could be judged', ...notes];
  const rows = passed
    .slice(0, most)
    .map((limit) => [
      plain(limit.quantity),
      boundSign(limit, display),
      limit.place,
      percent(limit.probability),
      day(round(limit.first.median)),
      days(limit.first.band90),
      plain(limit.whom),
      `${limit.source} ${limit.mark}`,
    ]);
  const head = ['limits passed', 'limit', 'where', 'chance', 'first on day', '90 %', 'for whom', 'source'];
  return [
    ...columnsOrUnder([head, ...rows], new Array<'left'>(head.length).fill('left'), 6, screenWidth()),
    ...notes,
  ];
}

/** Measures and margins of conditions. */
function askedLines(
  title: string,
  asked: readonly MeasureSummary[],
  members: number,
  display: Display,
): readonly string[] {
  return asked.flatMap((each) => {
    const { text, answered, unanswered } = each;
    const bands: Bands = each;
    const told = askedTold(each, display);
    const tell = (value: number): string => shown(title === '' ? told.value(value) : told.difference(value));
    const line = `${title}${text}: ${tell(bands.median)} ${told.unit} (50 %: ${range(bands.band50, tell)}; 90 %: ${range(bands.band90, tell)})`;
    const lacking =
      unanswered === null
        ? []
        : [
            `  ${members - answered} without an answer, the first is member ${unanswered.member}: ${unanswered.reason}`,
          ];
    return [...wrap(line.replace(' (', ' (').trim(), screenWidth(), '  '), ...lacking];
  });
}

/** An ensemble for reading: bands of the key series, odds of the limits, what was asked, who failed. */
export function ensembleText(
  title: string,
  result: EnsembleResult,
  keys: readonly string[],
  display: Display,
  style: Style,
): string {
  const { sampling, ran, failed, drawn, conditions, measures } = result;
  const whole = ran - failed.length;
  const kept = conditions.map(
    ({ text, holds, answered, share }) => `keeps in ${holds} of ${answered} (${percent(share)}): ${text}`,
  );
  const broken = failed.slice(0, 5).map(({ member, reason }) => `  member ${member}: ${reason}`);
  const resolution = result.series.some((series) => series.resolution > 0)
    ? ['quantiles of series are told to within a bin: at most 1/127 of the span of the members at each time']
    : [];
  const lines = [
    style.strong(title),
    `${ran} of ${sampling.members} members (${sampling.method}, seed ${sampling.seed}), ${drawn.length} numbers drawn from their ranges`,
    ...(failed.length === 0
      ? []
      : [style.warn(`${failed.length} members failed and are in no band:`), ...broken]),
    ...(failed.length > 5 ? [`  and ${failed.length - 5} more: see --json`] : []),
    '',
    ...endLines(result, keys, display),
    '',
    ...limitLines(result.limits, display),
    ...(measures.length > 0 ? ['', ...askedLines('', measures, whole, display)] : []),
    ...(conditions.length > 0 ? ['', ...kept, ...askedLines('margin of ', conditions, whole, display)] : []),
    '',
    ...resolution,
    'The bands hold what the numbers of the tables leave open, not what the model leaves out.',
    ...cautionLines(style),
  ];
  return linesText(lines);
}
