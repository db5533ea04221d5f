import type { MeasureSummary, Bands, LimitOdds } from '@leat/core';
import type { Maker } from '@leat/view/pictures';
import { boundPhrase, day, percent, plain, shown } from '@leat/view/text';
import type { SavedEnsemble } from '../files/saved-ensemble.js';
import type { RunSummary } from './run-summary.js';
import { bar } from './elements.js';
import { runTitle, section } from './elements.js';
import { scrolling, table } from './elements.js';

type Ensemble = SavedEnsemble['result'];

const tenths = (value: number): string => day(Math.round(value * 10) / 10);

/** A median and its band; the median alone where all runs say the same. */
function daysOf({ median, band90 }: Bands): string {
  const [middle, low, high] = [median, ...band90].map(tenths);
  return low === high ? middle : `${middle} (${low} to ${high})`;
}

function runsText({ sampling, ran, failed, drawn }: Ensemble): string {
  const { members, seed, method } = sampling;
  const part = ran === members ? `${ran} runs` : `${ran} of ${members} runs`;
  const broken =
    failed.length === 0
      ? ''
      : ` ${failed.length} of them broke off and are in no band; the first, ${failed[0].member}, for: ${failed[0].reason}.`;
  return (
    `${part}, each with ${drawn.length} numbers drawn from their published ranges (${method}, seed ${seed}).${broken} ` +
    'The bands hold what those ranges leave open, not what the model leaves out.'
  );
}

function limitRow(maker: Maker, limit: LimitOdds): HTMLElement {
  const { probability, place, whom, first, total, source, mark } = limit;
  const when = `first on day ${daysOf(first)}, for ${daysOf(total)} d; ${source} [${mark}]`;
  return maker.html(
    'tr',
    {},
    maker.html(
      'th',
      { scope: 'row' },
      `${boundPhrase(limit)}, ${place}, for ${plain(whom)}`,
      maker.html('span', { class: 'under' }, when),
    ),
    maker.html('td', { class: 'number' }, percent(probability)),
    maker.html('td', { class: 'bar' }, bar(maker, { value: probability, colour: 'var(--limit)' }, 1, false)),
  );
}

/** Limits that some runs passed, the likeliest first. */
function oddsTable(maker: Maker, limits: readonly LimitOdds[]): readonly HTMLElement[] {
  const passed = limits.filter((limit) => limit.passed > 0).sort((a, b) => b.probability - a.probability);
  if (passed.length === 0) return [];
  const head = maker.html(
    'tr',
    {},
    maker.html('th', { scope: 'col' }, 'limit; day and length: median and 90 % band'),
    maker.html('th', { scope: 'col', class: 'number' }, 'share'),
    maker.html('td', {}),
  );
  return [
    maker.html(
      'table',
      { class: 'bars odds' },
      maker.html('caption', {}, 'Share of the runs in which a limit was passed'),
      maker.html('thead', {}, head),
      maker.html('tbody', {}, ...passed.map((limit) => limitRow(maker, limit))),
    ),
  ];
}

function limitNote(limits: readonly LimitOdds[]): string {
  const never = limits.filter(({ judged, passed }) => judged > 0 && passed === 0).length;
  const unjudged = limits.filter(({ judged }) => judged === 0).length;
  const limitsWere = (count: number): string => (count === 1 ? '1 limit was' : `${count} limits were`);
  return [
    ...(never > 0 ? [`${limitsWere(never)} passed in none of them.`] : []),
    ...(unjudged > 0 ? [`${limitsWere(unjudged)} judged in none of them.`] : []),
  ].join(' ');
}

const unitOf = ({ unit }: MeasureSummary): string => (unit === '1' ? '' : ` ${unit}`);
const reach = ([low, high]: readonly [number, number]): string => `${shown(low)} to ${shown(high)}`;

/** What was asked of every run, and in how many runs a condition holds. */
function askedTable(maker: Maker, { measures, conditions }: Ensemble): readonly HTMLElement[] {
  if (measures.length + conditions.length === 0) return [];
  const cells = (asked: MeasureSummary): readonly string[] => [
    `${shown(asked.median)}${unitOf(asked)}`,
    reach(asked.band50),
    reach(asked.band90),
    String(asked.answered),
  ];
  const rows = [
    ...measures.map((asked) => [asked.text, '', ...cells(asked)]),
    ...conditions.map((asked) => [`margin of: ${asked.text}`, percent(asked.share), ...cells(asked)]),
  ];
  const columns = [
    { name: 'asked' },
    { name: 'holds in', number: true },
    { name: 'median', number: true },
    { name: '50 % band', number: true },
    { name: '90 % band', number: true },
    { name: 'runs with an answer', number: true },
  ];
  return [
    scrolling(
      maker,
      'What was asked of every run',
      table(maker, 'What was asked of every run', columns, rows, 'stack'),
    ),
  ];
}

/** How sure we are: how likely each limit is passed, for each run that has an ensemble. */
export function chancesSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const parts = runs.flatMap(({ ensemble, letter, account }) => {
    if (ensemble === undefined) return [];
    const note = limitNote(ensemble.limits);
    return [
      ...(runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : []),
      maker.html('p', { class: 'note' }, runsText(ensemble)),
      ...oddsTable(maker, ensemble.limits),
      ...(note === '' ? [] : [maker.html('p', { class: 'note' }, note)]),
      ...askedTable(maker, ensemble),
    ];
  });
  return section(maker, 'sure', 'How sure we are', ...parts);
}
