import { conditionOf, measureOf, openModel, sweepGrid } from '@leat/core';
import type { Display, Sweep } from '@leat/view/text';
import { readAll } from '@leat/core/tasks';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';
import { readTexts } from '../shared/referenced-files.js';
import { InterruptedError, interruptible } from '../../workers/interruptible.js';
import { noteReplaced, runJobs } from '../../workers/pool.js';
import { openRunsProgress } from '../../terminal/progress.js';
import { styleFor } from '../../terminal/style.js';
import { sweepCsv, sweepDocument } from './text.js';
import { sweepText } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { job } from './job.js';
import { varyLists } from './vary-list.js';
import { openAt } from '@leat/core/tasks';
import { openOutputs } from '../../files/outputs.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat sweep` was asked. */
export interface SweepOptions extends ScenarioOptions, Pick<DisplayOptions, 'units'> {
  readonly vary: readonly string[];
  readonly of: readonly string[];
  readonly keep: readonly string[];
  readonly workers?: number;
  readonly csv?: string;
  readonly svg?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** Every point of the grid, run on the workers, in the order of the grid, and how the file wants it told. */
async function sweep(
  texts: ReferencedFiles,
  options: SweepOptions,
  streams: Streams,
): Promise<{ readonly swept: Sweep; readonly display: Display }> {
  const { notes, display: wanted } = openTexts(texts).reading;
  const display = displayInUnits(options, wanted);
  const lists = varyLists(options.vary, texts);
  const first = lists.map(({ varied, values }) => ({ varied, value: values[0] }));
  const { model } = openModel(openAt(texts, first).reading);
  const { scenario, parameters } = model;
  streams.note(linesText([...notes, ...parameters.warnings]));
  const measures = readAll(options.of, (text) => measureOf(text, model, '--of'));
  const conditions = readAll(options.keep, (text) => conditionOf(text, model, '--keep'));
  const grid = sweepGrid(lists.map(({ values }) => values));
  const varied = lists.map((list) => list.varied);
  const shared = { texts, varied, of: options.of, keep: options.keep };
  const progress = await openRunsProgress('points', grid.length, 0);
  let done = 0;
  try {
    const points = await interruptible((signal) =>
      runJobs(job, shared, grid, {
        signal,
        ...(options.workers === undefined ? {} : { workers: options.workers }),
        ...noteReplaced(streams),
        onDone: () => {
          progress.day(++done);
        },
      }),
    );
    const answers = points.map((point, i) => ({ ...point, values: grid[i] }));
    return { swept: { title: scenario.title, lists, measures, conditions, points: answers }, display };
  } finally {
    progress.end();
  }
}

/**
 * `leat sweep FILE`: runs every point of a range, or of a grid of two, and tells what was asked of each. Points whose
 * run broke off are named; where none came to its end the code says so.
 */
export async function sweepCommand(file: string, options: SweepOptions, streams: Streams): Promise<ExitCode> {
  try {
    const texts = readTexts(file, options);
    const { csv, svg } = openOutputs<'csv' | 'svg'>(options, { csv: 'points', svg: 'svg' }, options);
    const { swept, display } = await sweep(texts, options, streams);
    csv?.write(sweepCsv(swept));
    if (svg !== undefined) {
      const { sweepPicture } = await import('@leat/view/pictures');
      const { newDocument } = await import('../../files/new-document.js');
      svg.write(sweepPicture(newDocument(), swept, display));
    }
    const style = styleFor(process.stdout.isTTY, process.env);
    streams.result(options.json === true ? sweepDocument(swept) : sweepText(swept, display, style));
    const all = swept.points.every(({ broke }) => broke !== undefined);
    if (!all) return exit.done;
    streams.note(linesText([`not finished: no point has an answer: ${swept.points[0].broke ?? ''}`]));
    return exit.notFinished;
  } catch (error) {
    if (!(error instanceof InterruptedError)) throw error;
    streams.note('stopped: nothing is told of a sweep that is not whole\n');
    return error.code;
  }
}
