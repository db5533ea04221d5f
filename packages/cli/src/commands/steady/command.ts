import {
  allSeries,
  dayOn,
  InputError,
  limitsOf,
  manifestOf,
  NoSteadyStateError,
  openModel,
  parseQuantity,
  steadyState,
} from '@leat/core';
import { cautions } from '@leat/view/text';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { openScenario } from '../shared/referenced-files.js';
import { steadyText } from './text.js';
import { styleFor } from '../../terminal/style.js';
import type { Streams } from '../../terminal/streams.js';
import { savedDocument } from '../../files/saved-document.js';
import { linesText } from '../../terminal/columns.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';

/** What `leat steady` was asked. */
export interface SteadyCommandOptions extends ScenarioOptions, Pick<DisplayOptions, 'units'> {
  readonly on?: string;
  readonly crops: 'mean' | 'as-at-start';
  readonly hold: readonly string[];
  /** As `1095 d`. */
  readonly patience: string;
  readonly detail?: boolean;
  readonly json?: boolean;
}

/** `leat steady FILE`: the state that lasts, what was held for it, its time constants and the limits it passes. */
export function steadyCommand(file: string, options: SteadyCommandOptions, streams: Streams): ExitCode {
  const reading = openScenario(file, options);
  const { scenario } = reading;
  const display = displayInUnits(options, reading.display);
  const day = options.on === undefined ? 0 : dayOn(options.on, scenario, '--on');
  const patience = parseQuantity(options.patience, 'time');
  if ('problem' in patience)
    throw new InputError([{ file: '--patience', got: JSON.stringify(options.patience), ...patience }]);
  const { model, notes } = openModel(reading);
  streams.note(linesText(notes));
  try {
    const state = steadyState(model, {
      day,
      crops: options.crops,
      hold: options.hold,
      patience: patience.value,
    });
    const series = allSeries(state.course);
    const limits = limitsOf(state.course);
    const style = styleFor(process.stdout.isTTY, process.env);
    if (options.json === true) {
      const { course, ...rest } = state;
      const document = {
        title: scenario.title,
        ...rest,
        // A saved form keeps its keys.
        spread: state.spread.map(({ action, every }) => ({ deed: action, every })),
        time: course.samples.map(({ time }) => time),
        series: Object.fromEntries(
          series.map(({ name, unit, values }) => [name, { unit, values: Array.from(values) }]),
        ),
        limits,
        manifest: manifestOf(course),
        cautions,
      };
      streams.result(savedDocument('leat-steady', document));
    } else {
      streams.result(
        steadyText({ state, series, limits }, { detail: options.detail === true, display }, style),
      );
    }
    return exit.done;
  } catch (error) {
    if (!(error instanceof NoSteadyStateError)) throw error;
    const hint = '(--hold keeps what comes or goes for decades as it is at the start, such as calcium)';
    streams.note(linesText([`not finished: ${error.message}`, hint]));
    return exit.notFinished;
  }
}
