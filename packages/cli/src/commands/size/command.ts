import {
  conditionOf,
  findSize,
  handbookOf,
  InputError,
  judgeRun,
  openModel,
  simulate,
  sizeReasons,
  surfacesVaried,
  type Model,
  type Run,
  type SizeAnswer,
  type Trial,
} from '@leat/core';
import { valueText } from '@leat/view/text';
import { readAll } from '../shared/vary.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { openTexts, readTexts, type ReferencedFiles } from '../shared/referenced-files.js';
import { sizeDocument } from './text.js';
import { sizeText, type SizeSummary } from './text.js';
import { styleFor } from '../../terminal/style.js';
import { openKept } from '../../files/outputs.js';
import { sizeDraws, type DrawsOptions } from './draws.js';
import type { Streams } from '../../terminal/streams.js';
import { openAt, openFactor, type Varied } from '../shared/vary.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat size` was asked. */
export interface SizeCommandOptions extends ScenarioOptions, DrawsOptions {
  readonly vary: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly keep: readonly string[];
  readonly largest?: boolean;
  readonly within?: number;
  readonly json?: boolean;
}

/** The system at one value; closure of the rows is checked at draws only where asked. */
function modelAt(texts: ReferencedFiles, varied: Varied, value: number, closureDraws?: number): Model {
  const { reading } = openAt(texts, [{ varied, value }]);
  return openModel(reading, closureDraws === undefined ? {} : { closureDraws }).model;
}

/** How a search ended, for the exit code: an answer, no answer in the range, or no run that came to its end. */
function endingOf({ kind, trials }: SizeAnswer, varied: Varied): { code: ExitCode; text: string } {
  const between = `from ${valueText(varied, varied.from)} to ${valueText(varied, varied.to)}`;
  if (kind === 'holds-nowhere' && trials.every(({ broke }) => broke !== undefined))
    return { code: exit.notFinished, text: `not finished: ${trials[0].broke ?? ''}` };
  const problem =
    kind === 'holds-nowhere'
      ? `no value ${between} of those tried keeps every condition; expected a range in which they hold somewhere`
      : kind === 'not-monotone'
        ? `the conditions hold, fail and hold again ${between}: there is no one size`
        : undefined;
  if (problem === undefined) return { code: exit.done, text: '' };
  return { code: exit.badInput, text: `--vary: ${varied.path}: ${problem}` };
}

/** What handbooks say, and why the model differs, by a run. */
function besideOf(
  varied: Varied,
  ends: { readonly atFrom: Model; readonly atTo: Model },
  at: { readonly value: number; readonly run: Run },
): Pick<SizeSummary, 'handbook' | 'reasons' | 'at' | 'sized'> {
  const sizeEnds = { ...ends, from: varied.from, to: varied.to };
  const cells = surfacesVaried(sizeEnds);
  const handbook = handbookOf(sizeEnds, at.run);
  return {
    ...(handbook === undefined ? {} : { handbook }),
    ...(cells.length === 0
      ? {}
      : {
          reasons: sizeReasons(at.run, cells),
          at: at.value,
          sized: cells.map((vessel) => at.run.model.layout.vessels[vessel]),
        }),
  };
}

/**
 * `leat size FILE`: the smallest or largest value at which every condition holds, beside what handbooks say; with
 * `--members` also how that value spreads over draws of the uncertain numbers.
 */
export async function sizeCommand(
  file: string,
  options: SizeCommandOptions,
  streams: Streams,
): Promise<ExitCode> {
  const texts = readTexts(file, options);
  const { kept } = openKept(options, 'size');
  const { notes } = openTexts(texts).reading;
  const asked = { paths: options.vary, from: options.from, to: options.to };
  const varied = openFactor(texts, asked, { from: '--from', to: '--to' });
  const ends = { atFrom: modelAt(texts, varied, varied.from), atTo: modelAt(texts, varied, varied.to) };
  const conditions = readAll(options.keep, (text) => conditionOf(text, ends.atFrom, '--keep'));
  const { warnings } = ends.atFrom.parameters;
  streams.note(linesText([...notes, ...warnings]));
  let nearest: { readonly value: number; readonly holds: boolean; readonly run: Run } | undefined;
  const judge = (value: number): Trial => {
    try {
      const run = simulate(modelAt(texts, varied, value, 0));
      const trial = judgeRun(run, value, conditions);
      const better = nearest === undefined || trial.holds || !nearest.holds;
      if (run.outcome.kind === 'done' && better) nearest = { value, holds: trial.holds, run };
      return trial;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return {
        value,
        holds: false,
        margins: conditions.map(() => Number.NaN),
        broke: error.message.replaceAll('\n', '; '),
      };
    }
  };
  const want = options.largest === true ? 'largest' : 'smallest';
  const within = options.within ?? 0.01;
  const answer = findSize({ ...varied, want, within, judge });
  const { drawn, stopped } =
    options.members === undefined
      ? {}
      : await sizeDraws({ texts, varied, want, within, keep: options.keep }, answer, options, kept, streams);
  const summary: SizeSummary = {
    title: ends.atFrom.scenario.title,
    ...{ varied, want, conditions, answer },
    ...(nearest === undefined ? {} : besideOf(varied, ends, nearest)),
    ...(drawn === undefined ? {} : { drawn }),
  };
  const style = styleFor(process.stdout.isTTY, process.env);
  streams.result(options.json === true ? sizeDocument(summary) : sizeText(summary, style));
  if (stopped !== undefined) return stopped;
  const { code, text } = endingOf(answer, varied);
  if (text !== '') streams.note(linesText([text]));
  return code;
}
