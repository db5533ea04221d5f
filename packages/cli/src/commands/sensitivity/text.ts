import type { ElementaryEffects, Estimate, LocalEffect, SobolIndices, Summary, TableRow } from '@leat/core';
import { askedTold, type AskedTold, type Display, percent, shown } from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { columns, linesText, wrap } from '../../terminal/columns.js';
import type { Style } from '../../terminal/style.js';

/** What was found of one number of the tables. */
export interface Finding {
  readonly row: TableRow;
  readonly local?: LocalEffect;
  readonly morris?: ElementaryEffects;
  readonly sobol?: SobolIndices & {
    /** Width of the 90 % band of the outcome if this number were known, by the first-order index. */
    readonly bandIfKnown: number;
  };
}

/** What an outcome depends on. */
export interface SensitivityResult {
  readonly title: string;
  readonly measure: string;
  readonly unit: string;
  /** The outcome with every number as it stands. */
  readonly outcome: number;
  readonly method: string;
  readonly seed: number;
  /** Runs made, and those of them without an outcome, with the reason of the first. */
  readonly runs: number;
  readonly failed: number;
  readonly reason?: string;
  /** Spread of the outcome over the points of the Sobol indices, and how many base points were used. */
  readonly spread?: Summary & { readonly used: number };
  /** The strongest first, by the best that is known of each. */
  readonly findings: readonly Finding[];
}

/** Most numbers listed one by one. */
const most = 10;

const unitText = (unit: string): string => (unit === '' ? '' : ` ${unit}`);
/** A number of the tables, in the unit of the tables. */
const valueText = ({ value, low, high, unit }: TableRow): string =>
  `${shown(value)} (${shown(low)} .. ${shown(high)})${unitText(unit === '1' ? '' : unit)}`;
const sourceText = ({ source, mark }: TableRow): string => `${source} ${mark}`;
const share = ({ value, low, high }: Estimate): string =>
  `${percent(value)} (${percent(low)} .. ${percent(high)})`;

/** Numbers with Sobol indices: what each alone, and with others, makes of the spread, and what knowing it would leave. */
function sobolLines({ findings, spread }: SensitivityResult, told: AskedTold): readonly string[] {
  const known = findings.flatMap(({ row, sobol }) => (sobol === undefined ? [] : [{ row, sobol }]));
  if (known.length === 0 || spread === undefined) return [];
  const [low, high] = spread.band90;
  const part = (value: number): string => shown(told.difference(value));
  const whole = (value: number): string => shown(told.value(value));
  const rows = known
    .slice(0, most)
    .map(({ row, sobol }) => [
      row.id,
      valueText(row),
      share(sobol.first),
      share(sobol.total),
      `${part(sobol.bandIfKnown)} of ${part(high - low)}`,
      sourceText(row),
    ]);
  const head = ['number', 'value and range', 'alone', 'with others', '90 % band if known', 'source'];
  return [
    `spread over these: median ${whole(spread.median)}, 90 % ${whole(low)} .. ${whole(high)}${unitText(told.unit)} (${spread.used} base points)`,
    'share of the variance (95 % interval):',
    ...columns([head, ...rows], new Array<'left'>(head.length).fill('left')),
    ...(known.length > most ? [`${known.length - most} more: see --json`] : []),
  ];
}

function table(
  title: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
  left: number,
): readonly string[] {
  if (rows.length === 0) return [];
  return [
    title,
    ...columns([head, ...rows], new Array<'left'>(head.length).fill('left')),
    ...(left > 0 ? [`${left} more, weaker: see --json`] : []),
    '',
  ];
}

function morrisLines({ findings }: SensitivityResult, told: AskedTold): readonly string[] {
  const known = findings
    .flatMap(({ row, morris }) => (morris === undefined ? [] : [{ row, morris }]))
    .sort((a, b) => b.morris.muStar - a.morris.muStar);
  const rows = known
    .slice(0, most)
    .map(({ row, morris }) => [
      row.id,
      shown(told.difference(morris.muStar)),
      shown(told.difference(morris.sigma)),
      valueText(row),
      sourceText(row),
    ]);
  const head = ['number', 'mu*', 'sigma', 'value and range', 'source'];
  return table(
    `screening (Morris): change over the whole range${unitText(told.unit)}`,
    head,
    rows,
    known.length - most,
  );
}

function localLines({ findings }: SensitivityResult, told: AskedTold): readonly string[] {
  const size = ({ local }: Finding): number => Math.abs(local?.overRange ?? 0);
  const known = findings.filter(({ local }) => local !== undefined).sort((a, b) => size(b) - size(a));
  const rows = known
    .slice(0, most)
    .map(({ row, local }) => [
      row.id,
      shown(local?.elasticity),
      shown(local === undefined ? undefined : told.difference(local.overRange)),
      valueText(row),
      sourceText(row),
    ]);
  const head = ['number', '% per %', `over its range${unitText(told.unit)}`, 'value and range', 'source'];
  return table('near the values as they stand:', head, rows, known.length - most);
}

/** Whether nothing that was varied moved the outcome at all. */
function isConstant({ findings }: SensitivityResult): boolean {
  return findings.every(
    ({ local, morris, sobol }) =>
      (local?.overRange ?? 0) === 0 && (morris?.muStar ?? 0) === 0 && (sobol?.total.value ?? 0) === 0,
  );
}

/** What an outcome depends on, for reading: the few numbers that matter, each with its source and mark. */
export function sensitivityText(result: SensitivityResult, display: Display, style: Style): string {
  const { title, measure, unit, outcome, runs, failed, reason, findings, spread, method, seed } = result;
  const told = askedTold({ text: measure, unit }, display);
  const stands = `${shown(told.value(outcome))}${unitText(told.unit)}`;
  const constant = failed < runs && isConstant(result);
  const nothing =
    spread === undefined && (method === 'screened' || method === 'all') && failed < runs
      ? ['none of the numbers moves it']
      : [];
  const lines = [
    style.strong(title),
    `${measure}: ${stands} with the numbers as they stand`,
    `${findings.length} numbers looked at in ${runs} runs (${method}, seed ${seed})`,
    ...(failed === 0 ? [] : [style.warn(`${failed} runs have no outcome, the first: ${reason ?? ''}`)]),
    '',
    ...(constant
      ? wrap(
          `it is ${stands} whatever the numbers are: none of the ${findings.length} that were varied moves it`,
          100,
        )
      : [
          ...nothing,
          ...sobolLines(result, told),
          ...(spread === undefined ? [] : ['']),
          ...morrisLines(result, told),
          ...localLines(result, told),
        ]),
    'A number matters here as far as its range in the tables reaches; the model itself is not in question.',
    ...cautionLines(style),
  ];
  return linesText(lines);
}
