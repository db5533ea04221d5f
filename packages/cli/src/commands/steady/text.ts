import {
  worstFirst,
  type Held,
  type LimitResult,
  type Mode,
  type Series,
  type SteadyState,
} from '@leat/core';
import {
  actionPhrase,
  boundSign,
  dayNames,
  type Display,
  listed,
  longSpan,
  percent,
  plain,
  quantityPhrase,
  short,
  shown,
} from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { columns, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';

/** A steady state with what is said of it. */
export interface SteadySummary {
  readonly state: SteadyState;
  readonly series: readonly Series[];
  readonly limits: readonly LimitResult[];
}

/** Most modes in the table. */
const most = 8;
/** A quantity that moves by less than this share within a cycle is shown as one number. */
const still = 0.005;

const water = ['tan', 'nitrite', 'nitrate', 'pH', 'alkalinity', 'oxygen', 'chloride'] as const;

/** One number, or from the lowest to the highest. */
function range(values: ArrayLike<number> | undefined, shownAs: (value: number) => number): string {
  if (values === undefined) return '-';
  const all = Array.from(values, shownAs);
  const low = Math.min(...all);
  const high = Math.max(...all);
  return high - low <= still * Math.abs(high) ? shown(all[0]) : `${shown(low)}-${shown(high)}`;
}

function waterTable({ state, series }: SteadySummary, display: Display): readonly string[] {
  const known = new Map(series.map((each) => [each.name, each]));
  const places = state.course.model.layout.vessels;
  const unit = (quantity: string): string => known.get(`${quantity}@${places[0]}`)?.unit ?? '';
  return columns(
    [
      ['', ...water.map((quantity) => quantityPhrase(quantity))],
      ['', ...water.map((quantity) => (quantity === 'pH' ? '' : display.unit(unit(quantity), quantity)))],
      ...places.map((place) => [
        short(place, 16),
        ...water.map((quantity) =>
          range(known.get(`${quantity}@${place}`)?.values, (value) =>
            display.value(value, unit(quantity), quantity),
          ),
        ),
      ]),
    ],
    ['left', ...water.map(() => 'right' as const)],
  );
}

/** Components of the model in the words of who runs a system. */
const words: Readonly<Record<string, string>> = {
  aob: 'ammonia oxidisers',
  nob: 'nitrite oxidisers',
  acclimation: 'what pH the film is used to',
  awake: 'stunned nitrifiers',
  settled: 'settled solids',
  'settled-refractory': 'settled solids that hardly break down',
  solids: 'suspended solids',
  refractory: 'suspended solids that hardly break down',
  dissolved: 'dissolved organic matter',
  carbon: 'inorganic carbon',
  calcite: 'lime',
};

const inWords = (component: string): string => words[component] ?? quantityPhrase(component);

/** What is disturbed, in words: `nitrate everywhere`. */
function partsText({ parts, swing }: Mode): string {
  const largest = parts
    .slice(0, 3)
    .map(({ component, place, share }) =>
      share > 0.995 ? `${inWords(component)} ${place}` : `${inWords(component)} ${place} ${percent(share)}`,
    );
  return [...largest, ...(swing === undefined ? [] : [`swings in ${longSpan(swing)}`])].join(', ');
}

/** Time constants by the numbers, for who wants them. */
function modeTable(modes: readonly Mode[]): readonly string[] {
  return columns(
    [
      ['time constant', '95 % back in', 'made by'],
      ...modes
        .slice(0, most)
        .map((mode) =>
          mode.time > 0
            ? [`${shown(mode.time)} d`, longSpan(mode.recovery), partsText(mode)]
            : [`grows, ${shown(-mode.time)} d`, 'never', partsText(mode)],
        ),
    ],
    ['right', 'right', 'left'],
  );
}

/** For each thing that can be disturbed, how long its slowest part takes to be 95 % back. */
function recoveries(modes: readonly Mode[]): readonly string[] {
  const slowest = new Map<string, number>();
  for (const { parts, time, recovery } of modes)
    for (const { component } of parts)
      if (!slowest.has(component)) slowest.set(component, time > 0 ? recovery : Infinity);
  const bySpan = new Map<string, string[]>();
  for (const [component, days] of slowest) {
    const span = days === Infinity ? 'never' : longSpan(days);
    bySpan.set(span, [...(bySpan.get(span) ?? []), inWords(component)]);
  }
  const told = [...bySpan].map(([span, names]) => `${listed(names)} ${span}`);
  return wrap(`after a disturbance 95 % back in: ${told.join('; ')}`, screenWidth(), '  ');
}

function heldLine({ component, place, reason, settles, drift, unit = '' }: Held): string {
  const at = place === 'everywhere' ? '' : ` in ${place}`;
  const would =
    drift === undefined || drift === 0
      ? ''
      : `; the system would ${drift > 0 ? 'gain' : 'lose'} ${shown(Math.abs(drift))} ${unit} of it`;
  const long = settles === undefined ? '' : ` (it would take ${longSpan(settles)})`;
  return `held: ${inWords(component)}${at}: ${reason}${long}${would}`;
}

/** A state that a run is too short to come to. */
function longer({ modes, course }: SteadyState): readonly string[] {
  const { days } = course.model.scenario;
  const slow = modes.filter(({ recovery }) => recovery > days).length;
  return slow === 0
    ? []
    : wrap(
        `${slow === 1 ? 'one of these takes' : `${slow} of these take`} longer than the ${shown(days)} days of the run: it ends elsewhere (--hold keeps one as it is at the start, --patience holds what is slower)`,
        screenWidth(),
        '  ',
      );
}

function headline({ kind, period, day, stable, course }: SteadyState): string {
  const what =
    kind === 'constant'
      ? 'a state that stays as it is'
      : period === 1
        ? 'a state that repeats each day'
        : `a state that repeats every ${period} days`;
  const firm = stable ? 'small changes die away' : 'NOT STABLE: a small change would grow';
  return `${what}, under the weather of ${dayNames(course.model.scenario.startDate)(day)}; ${firm}`;
}

/** How the state was found, in numbers. */
function workLine({ marched, steps, passes, residual }: SteadyState): string {
  const cycle = passes === 0 ? '' : `, ${passes} passes over the cycle`;
  return `found by ${marched} d of simulation and ${steps} Newton steps${cycle}; moves by ${residual.toExponential(0)} of itself`;
}

function limitTable(limits: readonly LimitResult[], display: Display): readonly string[] {
  const passed = limits.filter((limit) => limit.passed).sort(worstFirst);
  if (passed.length === 0) return ['limits passed: none'];
  return columns(
    [
      ['limits passed', 'limit', 'here', 'where', 'for whom'],
      ...passed.map((limit) => [
        quantityPhrase(limit.quantity),
        boundSign(limit, display),
        limit.worst === undefined ? '-' : shown(display.value(limit.worst, limit.unit, limit.quantity)),
        limit.place,
        plain(limit.whom),
      ]),
    ],
    ['left', 'left', 'right', 'left', 'left'],
  );
}

/** A steady state on one screen, as wide as the screen. */
export function steadyText(
  summary: SteadySummary,
  { detail, display }: { readonly detail: boolean; readonly display: Display },
  style: Style,
): string {
  const { state, limits } = summary;
  const { scenario } = state.course.model;
  const lines = [
    style.strong(short(scenario.title, screenWidth())),
    ...wrap(headline(state), screenWidth(), '  '),
    '',
    ...waterTable(summary, display),
    '',
    ...recoveries(state.modes),
    ...longer(state),
    '',
    ...state.held.flatMap((held) => wrap(heldLine(held), screenWidth(), '  ')),
    ...state.spread.flatMap((action) => wrap(`spread evenly: ${actionPhrase(action)}`, screenWidth(), '  ')),
    ...(state.leftOut.length === 0
      ? []
      : wrap(
          `left out, for they happen once, stop, or change stock or settings: ${state.leftOut.join(', ')}`,
          screenWidth(),
          '  ',
        )),
    ...state.water.map(({ kind, place }) => `on the way: ${kind} ${place}`),
    '',
    ...limitTable(limits, display).map((line) => short(line, screenWidth())),
    '',
    ...(detail ? [...modeTable(state.modes), ...wrap(workLine(state), screenWidth(), '  '), ''] : []),
    ...cautionLines(style),
  ];
  return linesText(lines);
}
