import {
  compileModel,
  conditionOf,
  createParameters,
  findSize,
  handbookOf,
  InputError,
  judgeRun,
  simulate,
  sizeReasons,
  surfacesVaried,
  type Condition,
  type Model,
  type Run,
  type SizeAnswer,
  type Trial,
} from '@leat/core';
import { exit, type ExitCode } from '../exit.js';
import type { ScenarioOptions } from '../open-scenario.js';
import { sizeDocument, sizeText, type SizeTold } from '../render/size.js';
import { styleFor } from '../render/style.js';
import type { Streams } from '../streams.js';
import { openAt, openVaried, type Varied } from '../vary.js';

/** What `leat size` was asked. */
export interface SizeCommandOptions extends ScenarioOptions {
  readonly vary: string;
  readonly from: string;
  readonly to: string;
  readonly keep: readonly string[];
  readonly largest?: boolean;
  readonly within?: number;
  readonly json?: boolean;
}

function modelAt(
  file: string,
  options: ScenarioOptions,
  varied: Varied,
  value: number,
  closure: { readonly closureDraws?: number } = {},
): Model {
  const { scenario } = openAt(file, options, [{ varied, value }]);
  return compileModel(scenario, createParameters(scenario.overrides), closure);
}

/** Reads every condition, and says every fault of all of them at once. */
export function conditionsOf(texts: readonly string[], model: Model): readonly Condition[] {
  const faults: InputError['faults'][number][] = [];
  const conditions = texts.flatMap((text) => {
    try {
      return [conditionOf(text, model, '--keep')];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      faults.push(...error.faults);
      return [];
    }
  });
  if (faults.length > 0) throw new InputError(faults);
  return conditions;
}

/** How a search ended, for the exit code: an answer, no answer in the range, or no run that came to its end. */
function endingOf(answer: SizeAnswer, told: SizeTold): { code: ExitCode; text: string } {
  const between = `from ${told.varied.text(told.varied.from)} to ${told.varied.text(told.varied.to)}`;
  if (answer.kind === 'holds-nowhere') {
    const all = answer.trials.every(({ broke }) => broke !== undefined);
    const text = `no value ${between} of those tried keeps every condition`;
    return all
      ? { code: exit.notFinished, text: `not finished: ${answer.trials[0].broke ?? ''}` }
      : {
          code: exit.badInput,
          text: `${told.varied.path}: ${text}; expected a range in which they hold somewhere`,
        };
  }
  if (answer.kind === 'not-monotone') {
    return {
      code: exit.badInput,
      text: `${told.varied.path}: the conditions hold, fail and hold again ${between}: there is no one size`,
    };
  }
  return { code: exit.done, text: '' };
}

/** `leat size FILE`: the smallest or largest value at which every condition holds, beside what handbooks say. */
export function sizeCommand(file: string, options: SizeCommandOptions, streams: Streams): ExitCode {
  const names = { from: '--from', to: '--to' };
  const asked = { path: options.vary, from: options.from, to: options.to };
  const varied = openVaried(file, options, asked, names);
  const atFrom = modelAt(file, options, varied, varied.from);
  const atTo = modelAt(file, options, varied, varied.to);
  const conditions = conditionsOf(options.keep, atFrom);
  let nearest: { readonly trial: Trial; readonly run: Run } | undefined;
  const judge = (value: number): Trial => {
    try {
      const run = simulate(modelAt(file, options, varied, value, { closureDraws: 0 }));
      const trial = judgeRun(run, value, conditions);
      if (run.outcome.kind === 'done' && (nearest === undefined || trial.holds || !nearest.trial.holds))
        nearest = { trial, run };
      return trial;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return { value, holds: false, margins: conditions.map(() => Number.NaN), broke: error.message };
    }
  };
  const want = options.largest === true ? 'largest' : 'smallest';
  const answer = findSize({ ...varied, want, within: options.within ?? 0.01, judge });
  const ends = { from: varied.from, to: varied.to, atFrom, atTo };
  const told: SizeTold = { title: atFrom.scenario.title, varied, want, conditions, answer };
  const cells = surfacesVaried(ends);
  const beside =
    nearest === undefined
      ? {}
      : {
          handbook: handbookOf(ends, nearest.run),
          ...(cells.length === 0
            ? {}
            : { reasons: sizeReasons(nearest.run, cells), at: nearest.trial.value }),
        };
  const whole = { ...told, ...beside };
  streams.result(
    options.json === true
      ? sizeDocument(whole)
      : sizeText(whole, styleFor(process.stdout.isTTY, process.env)),
  );
  const { code, text } = endingOf(answer, told);
  if (text !== '') streams.note(`${text}\n`);
  return code;
}
