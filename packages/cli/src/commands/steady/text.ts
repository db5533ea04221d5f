import type { Held, LimitResult, Mode, Series, SteadyState } from '@leat/core';
import { actionPhrase, boundSign, cautions, percent, quantityPhrase, short, shown } from '@leat/view/text';
import { columns, wrap, linesText } from '../../terminal/columns.js';
import type { Style } from '../../terminal/style.js';

/** A steady state with what is said of it. */
export interface SteadySummary {
  readonly state: SteadyState;
  readonly series: readonly Series[];
  readonly limits: readonly LimitResult[];
}

const width = 100;
/** Most modes in the table. */
const most = 8;
/** A quantity that moves by less than this share within a cycle is shown as one number. */
const still = 0.005;

const water = ['tan', 'nitrite', 'nitrate', 'pH', 'alkalinity', 'oxygen', 'chloride'] as const;

/** One number, or from the lowest to the highest. */
function range(values: ArrayLike<number> | undefined): string {
  if (values === undefined) return '-';
  const all = Array.from(values);
  const low = Math.min(...all);
  const high = Math.max(...all);
  return high - low <= still * Math.abs(high) ? shown(all[0]) : `${shown(low)}-${shown(high)}`;
}

function waterTable({ state, series }: SteadySummary): readonly string[] {
  const known = new Map(series.map((each) => [each.name, each]));
  const places = state.course.model.layout.vessels;
  const unit = (quantity: string): string => known.get(`${quantity}@${places[0]}`)?.unit ?? '';
  return columns(
    [
      ['', ...water.map(quantityPhrase)],
      ['', ...water.map((quantity) => (quantity === 'pH' ? '' : unit(quantity)))],
      ...places.map((place) => [
        short(place, 16),
        ...water.map((quantity) => range(known.get(`${quantity}@${place}`)?.values)),
      ]),
    ],
    ['left', ...water.map(() => 'right' as const)],
  );
}

/** A time in d, or in h below a day. */
function span(days: number): string {
  return Math.abs(days) < 1 ? `${shown(days * 24)} h` : `${shown(days)} d`;
}

function modeTable(modes: readonly Mode[]): readonly string[] {
  const parts = ({ parts, swing }: Mode): string => {
    const largest = parts
      .slice(0, 3)
      .map(({ component, place, share }) => `${component} ${place} ${percent(share)}`);
    return [...largest, ...(swing === undefined ? [] : [`swings in ${span(swing)}`])].join(', ');
  };
  return columns(
    [
      ['time constant', '95 % back in', 'made by'],
      ...modes
        .slice(0, most)
        .map((mode) =>
          mode.time > 0
            ? [span(mode.time), span(mode.recovery), short(parts(mode), 68)]
            : [`grows, ${span(-mode.time)}`, 'never', short(parts(mode), 68)],
        ),
    ],
    ['right', 'right', 'left'],
  );
}

/** For each thing that can be disturbed, how long its slowest part takes to be 95 % back. */
function recoveries(modes: readonly Mode[]): string {
  const slowest = new Map<string, number>();
  for (const { parts, time, recovery } of modes)
    for (const { component } of parts)
      if (!slowest.has(component)) slowest.set(component, time > 0 ? recovery : Infinity);
  return [...slowest]
    .map(([component, days]) => `${component} ${days === Infinity ? 'never' : span(days)}`)
    .join(', ');
}

function heldLine({ component, place, reason, drift, unit = '' }: Held): string {
  const at = place === 'everywhere' ? '' : ` in ${place}`;
  const would =
    drift === undefined || drift === 0
      ? ''
      : `; the system would ${drift > 0 ? 'gain' : 'lose'} ${shown(Math.abs(drift))} ${unit} of it`;
  return `held: ${component}${at}: ${reason}${would}`;
}

/** A state that a run is too short to come to. */
function longer({ modes, course }: SteadyState): readonly string[] {
  const { days } = course.model.scenario;
  const slow = modes.filter(({ recovery }) => recovery > days).length;
  return slow === 0
    ? []
    : wrap(
        `${slow} of these take longer than the ${shown(days)} d of the run: it ends elsewhere (--hold keeps one as it is at the start)`,
        width,
        '  ',
      );
}

function headline({ kind, period, day, marched, steps, passes, residual, stable }: SteadyState): string {
  const what =
    kind === 'constant'
      ? 'a constant state'
      : period === 1
        ? 'a state that repeats each day'
        : `a state that repeats every ${period} d`;
  const by = `${marched} d of march, ${steps} Newton steps${passes === 0 ? '' : `, ${passes} passes over the cycle`}`;
  const firm = stable ? 'small changes die away' : 'NOT STABLE: a small change would grow';
  return `${what}, under the weather of day ${day}; ${firm} (${by}; it moves by ${residual.toExponential(0)} of itself)`;
}

function limitTable(limits: readonly LimitResult[]): readonly string[] {
  const passed = limits.filter((limit) => limit.passed);
  if (passed.length === 0) return ['limits passed: none'];
  return columns(
    [
      ['limits passed', 'limit', 'here', 'where', 'for whom'],
      ...passed.map((limit) => [
        limit.quantity,
        boundSign(limit),
        shown(limit.worst),
        limit.place,
        limit.whom,
      ]),
    ],
    ['left', 'left', 'right', 'left', 'left'],
  );
}

/** A steady state on one screen, 100 columns wide. */
export function steadyText(summary: SteadySummary, style: Style): string {
  const { state, limits } = summary;
  const { scenario } = state.course.model;
  const lines = [
    style.strong(short(scenario.title, width)),
    ...wrap(headline(state), width, '  '),
    '',
    ...waterTable(summary),
    '',
    ...modeTable(state.modes),
    ...wrap(`95 % back, the slowest that each takes part in: ${recoveries(state.modes)}`, width, '  '),
    ...longer(state),
    '',
    ...state.held.flatMap((held) => wrap(heldLine(held), width, '  ')),
    ...state.spread.flatMap((action) => wrap(`spread evenly: ${actionPhrase(action)}`, width, '  ')),
    ...(state.leftOut.length === 0
      ? []
      : wrap(
          `left out, for they happen once, stop, or change stock or settings: ${state.leftOut.join(', ')}`,
          width,
          '  ',
        )),
    ...state.water.map(({ kind, place }) => `on the way: ${kind} ${place}`),
    '',
    ...limitTable(limits).map((line) => short(line, width)),
    '',
    ...cautions.map((line) => style.faint(short(line, width))),
  ];
  return linesText(lines);
}
