import type { SizeAnswer } from '@leat/core';
import { openSize, type Varied } from '@leat/core/tasks';
import { valueText } from '@leat/view/text';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { readTexts } from '../shared/referenced-files.js';
import { sizeDocument } from './text.js';
import { sizeText, type SizeSummary } from './text.js';
import { styleFor } from '../../terminal/style.js';
import { openKept } from '../../files/outputs.js';
import { sizeDraws, type DrawsOptions } from './draws.js';
import type { Streams } from '../../terminal/streams.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat size` was asked. */
export interface SizeCommandOptions extends ScenarioOptions, DrawsOptions, Pick<DisplayOptions, 'units'> {
  readonly vary: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly keep: readonly string[];
  readonly largest?: boolean;
  readonly within?: number;
  readonly json?: boolean;
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
  const want = options.largest === true ? 'largest' : 'smallest';
  const within = options.within ?? 0.01;
  const { vary, from, to, keep } = options;
  const { varied, notes, search, display: wanted } = openSize({ texts, vary, from, to, keep, want, within });
  const display = displayInUnits(options, wanted);
  streams.note(linesText(notes));
  const found = search();
  const { answer } = found;
  const { drawn, stopped } =
    options.members === undefined
      ? {}
      : await sizeDraws({ texts, varied, want, within, keep }, answer, options, kept, streams);
  const summary: SizeSummary = { ...found, ...(drawn === undefined ? {} : { drawn }) };
  const style = styleFor(process.stdout.isTTY, process.env);
  streams.result(options.json === true ? sizeDocument(summary) : sizeText(summary, display, style));
  if (stopped !== undefined) return stopped;
  const { code, text } = endingOf(answer, varied);
  if (text !== '') streams.note(linesText([text]));
  return code;
}
