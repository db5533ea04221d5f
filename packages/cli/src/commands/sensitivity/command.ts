import {
  type Answer,
  elementaryEffects,
  fewOf,
  InputError,
  localDesign,
  localEffects,
  middleOf,
  morrisDesign,
  nearest,
  type Outline,
  type Points,
  sobolDesign,
  sobolIndices,
  summaryOf,
  type TableRow,
} from '@leat/core';
import { cautions, type Display } from '@leat/view/text';
import { type Checkpoint, openCheckpoint, keptNote, plainName } from '../../files/checkpoint.js';
import { type KeptOptions, openKept, type Output } from '../../files/outputs.js';
import { savedDocument } from '../../files/saved-document.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { Streams } from '../../terminal/streams.js';
import { styleFor } from '../../terminal/style.js';
import { InterruptedError, interruptible } from '../../workers/interruptible.js';
import { runWithCheckpoint } from '../../workers/run-with-checkpoint.js';
import { noteReplaced, runOnEach } from '../../workers/pool.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import { readTexts, type ScenarioOptions } from '../shared/referenced-files.js';
import { job as outlineJob } from '../shared/outline-job.js';
import { job } from './job.js';
import { type Finding, type SensitivityResult, sensitivityText } from './text.js';
import { linesText } from '../../terminal/columns.js';

/** Places of the rows whose id is like a pattern (`*`: anything; absent: all). Throws InputError when there are none. */
function rowsLike(rows: readonly TableRow[], pattern: string | undefined): readonly number[] {
  if (pattern === undefined) return [...rows.keys()];
  const parts = pattern.split('*').map((part) => part.replace(/[.\\+?^${}()|[\]]/g, '\\$&'));
  const like = new RegExp(`^${parts.join('.*')}$`);
  const found = rows.flatMap(({ id }, i) => (like.test(id) ? [i] : []));
  if (found.length > 0) return found;
  const near = nearest(
    pattern,
    rows.map(({ id }) => id),
  );
  throw new InputError([
    {
      file: '--only',
      got: pattern,
      problem: 'no number with a range that this system uses is like that',
      expected: 'an id, or part of one with *, such as fish.*',
      ...(near && { nearest: near }),
    },
  ]);
}

/** What `leat sensitivity` was asked. */
export interface SensitivityOptions extends ScenarioOptions, KeptOptions, Pick<DisplayOptions, 'units'> {
  readonly of: string;
  readonly method: 'screened' | 'local' | 'morris' | 'sobol' | 'all';
  readonly members: number;
  readonly seed: number;
  readonly only?: string;
  readonly tolerance?: number;
  readonly workers?: number;
  readonly json?: boolean;
}

/** Runs points of the numbers that are looked at, all others as they stand; gives the outcomes. */
type Ask = (what: string, inputs: readonly number[], points: Points) => Promise<Float64Array>;

/** Everything found by one method of so many inputs, by the place of their row. */
type Found = Map<number, Partial<Finding>>;

function put(found: Found, input: number, what: Partial<Finding>): void {
  found.set(input, { ...found.get(input), ...what });
}

async function findLocal(
  ask: Ask,
  rows: readonly TableRow[],
  inputs: readonly number[],
  outcome: number,
  found: Found,
): Promise<void> {
  const all = [...rows.keys()];
  const outcomes = await ask('local effects', all, localDesign(rows, inputs));
  localEffects(rows, inputs, outcomes, outcome).forEach((local, i) => {
    put(found, inputs[i], { local });
  });
}

async function findMorris(
  ask: Ask,
  inputs: readonly number[],
  options: SensitivityOptions,
  found: Found,
): Promise<readonly number[]> {
  const trajectories = Math.max(4, Math.round(options.members / 10));
  const points = morrisDesign(inputs.length, trajectories, options.seed);
  const effects = elementaryEffects(points, await ask('screening', inputs, points));
  effects.forEach((morris, i) => {
    put(found, inputs[i], { morris });
  });
  return fewOf(effects).map((few) => inputs[few]);
}

async function findSobol(
  ask: Ask,
  inputs: readonly number[],
  options: SensitivityOptions,
  found: Found,
): Promise<SensitivityResult['spread']> {
  if (inputs.length === 0) return undefined;
  const outcomes = await ask(
    'Sobol indices',
    inputs,
    sobolDesign(inputs.length, options.members, options.seed),
  );
  const { indices, used } = sobolIndices(inputs.length, outcomes, options);
  const width = inputs.length + 2;
  const summary = summaryOf(outcomes.filter((_, i) => i % width < 2));
  const band = summary.band90[1] - summary.band90[0];
  indices.forEach(({ first, total }, i) => {
    const left = Math.sqrt(Math.min(1, Math.max(0, 1 - first.value)));
    put(found, inputs[i], { sobol: { first, total, bandIfKnown: band * left } });
  });
  return { ...summary, used };
}

/** How much is known of a finding: total index, else screening, else slope over the range. */
const weight = ({ local, morris, sobol }: Partial<Finding>): readonly [number, number, number] => [
  sobol?.total.value ?? -1,
  morris?.muStar ?? -1,
  Math.abs(local?.overRange ?? 0),
];

function ordered(found: Found, rows: readonly TableRow[]): readonly Finding[] {
  return [...found]
    .map(([input, finding]): Finding => ({ row: rows[input], ...finding }))
    .sort((one, other) => {
      const [a, b] = [weight(one), weight(other)];
      const at = a.findIndex((each, i) => each !== b[i]);
      return at < 0 ? 0 : b[at] - a[at];
    });
}

const isAnswer = (value: unknown): value is Answer =>
  typeof value === 'object' && value !== null && 'value' in value && typeof value.value === 'number';

/** The checkpoint of the runs of a sensitivity, by what they are for. */
function openRunsCheckpoint(
  outline: Outline,
  options: SensitivityOptions,
  kept: Output | undefined,
): Checkpoint<Answer> {
  const { of, method, members, seed, only, resume } = options;
  const asked = {
    system: `${outline.title} ${outline.hash.slice(0, 8)}`,
    '--of': of,
    '--method': method,
    '--members': String(members),
    '--seed': String(seed),
    '--only': only ?? '',
  };
  const from = { system: outline.hash, asked };
  return openCheckpoint({ command: 'sensitivity', asked, from, isOutput: isAnswer }, { kept, resume });
}

async function look(
  file: string,
  options: SensitivityOptions,
  streams: Streams,
  signal: AbortSignal,
  begun: (checkpoint: Checkpoint<Answer>) => void,
): Promise<{ readonly result: SensitivityResult; readonly display: Display }> {
  const texts = readTexts(file, options);
  const { kept } = openKept(options, 'sensitivity');
  const simulation = options.tolerance === undefined ? {} : { tolerance: options.tolerance };
  const jobs = {
    ...{ signal, ...noteReplaced(streams) },
    ...(options.workers === undefined ? {} : { workers: options.workers }),
  };
  const questions = { measures: [options.of], conditions: [] };
  // Before the first run: what --units cannot be is told now.
  displayInUnits(options);
  const { outline, notes, display } = await runOnEach(
    outlineJob,
    { texts, ...simulation },
    questions,
    Infinity,
    jobs,
  );
  streams.note(linesText(notes));
  const { rows, title, measures } = outline;
  const inputs = rowsLike(rows, options.only);
  const middle = middleOf(rows);
  const shared = { texts, rows, measure: options.of, ...simulation };
  const checkpoint = openRunsCheckpoint(outline, options, kept);
  begun(checkpoint);
  let runs = 0;
  let failed = 0;
  let reason: string | undefined;
  const ask: Ask = async (what, places, points) => {
    const whole = points.map((point) => {
      const u = Float64Array.from(middle);
      places.forEach((place, i) => (u[place] = point[i]));
      return u;
    });
    const part = { part: what, shown: `runs (${what})` };
    const answers = await runWithCheckpoint(job, shared, whole, checkpoint, part, jobs);
    runs += answers.length;
    failed += answers.filter((answer) => answer.reason !== undefined).length;
    reason ??= answers.find((answer) => answer.reason !== undefined)?.reason;
    return Float64Array.from(answers, ({ value }) => value);
  };
  const results: Found = new Map();
  const [outcome] = await ask('as it stands', [], [middle]);
  const { method, seed } = options;
  if (method === 'local' || method === 'all') await findLocal(ask, rows, inputs, outcome, results);
  const few =
    method === 'local' || method === 'sobol' ? inputs : await findMorris(ask, inputs, options, results);
  const spread =
    method === 'local' || method === 'morris' ? undefined : await findSobol(ask, few, options, results);
  const result = {
    title,
    measure: measures[0].text,
    unit: measures[0].unit,
    outcome,
    ...{ method, seed, runs, failed },
    ...(reason !== undefined && { reason }),
    ...(spread && { spread }),
    findings: ordered(results, rows),
  };
  return { result, display: displayInUnits(options, display) };
}

/**
 * `leat sensitivity FILE --of MEASURE`: says which of the uncertain numbers the outcome depends on, where
 * each comes from, and how much a better value would narrow the answer. Leaves with `notFinished` when no
 * run has an outcome. What is done is kept in `--out` now and then; Ctrl-C, or a fault, keeps it too and says
 * how to go on.
 */
export async function sensitivityCommand(
  file: string,
  options: SensitivityOptions,
  streams: Streams,
): Promise<ExitCode> {
  if (options.method === 'sobol' && options.only === undefined)
    streams.note('Sobol indices of every number take many runs: --only, or --method screened, takes fewer\n');
  let checkpoint: Checkpoint<Answer> | undefined;
  let looked: Awaited<ReturnType<typeof look>>;
  try {
    looked = await interruptible((signal) =>
      look(file, options, streams, signal, (begun) => {
        checkpoint = begun;
      }),
    );
    checkpoint?.finish();
  } catch (error) {
    const kept = checkpoint?.stop(plainName(file));
    if (kept !== undefined) streams.note(keptNote(`${checkpoint?.size() ?? 0} runs`, kept));
    if (!(error instanceof InterruptedError)) throw error;
    if (kept === undefined) streams.note('interrupted before the first run was done\n');
    return error.code;
  }
  const { result, display } = looked;
  if (options.json === true) streams.result(savedDocument('leat-sensitivity', { ...result, cautions }));
  else streams.result(sensitivityText(result, display, styleFor(process.stdout.isTTY, process.env)));
  if (result.failed < result.runs) return exit.done;
  streams.note(linesText([`not finished: no run has an outcome: ${result.reason ?? ''}`]));
  return exit.notFinished;
}
