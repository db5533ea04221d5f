import { auditOf, domainAtStart, openModel, processTable } from '@leat/core';
import { boundPhrase, cautions, shown } from '@leat/view/text';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { openScenario } from '../shared/referenced-files.js';
import { auditLines } from './text.js';
import { processTableLines } from './text.js';
import { resolvedLines } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat check` was asked. */
export interface CheckOptions extends ScenarioOptions {
  readonly table?: boolean;
  readonly resolved?: boolean;
}

/**
 * `leat check FILE`: reads, validates and compiles without simulating, and looks the design over. With
 * `--table` it prints the stoichiometric table instead, with `--resolved` the file with all it includes.
 */
export function checkCommand(file: string, options: CheckOptions, streams: Streams): ExitCode {
  const reading = openScenario(file, options);
  const { scenario, resolved } = reading;
  const { model, notes } = openModel(reading);
  const outside = domainAtStart(model).map(
    (limit) =>
      `${limit.place}: ${boundPhrase(limit)} at the start (${shown(limit.worst)}), where what the model knows was not measured: no forecast`,
  );
  streams.note(linesText([...notes, ...outside]));
  const table = processTable(model);
  const parts: string[] = [];
  if (options.resolved === true) parts.push(linesText(resolvedLines(resolved)));
  if (options.table === true) parts.push(linesText(processTableLines(table)));
  if (parts.length === 0) {
    const lines = [
      scenario.title,
      `valid: ${model.layout.states.length} states in ${scenario.vessels.length} ${scenario.vessels.length === 1 ? 'vessel' : 'vessels'}, ${model.rows.length} rows`,
      `closure: every process keeps nitrogen, oxygen demand, charge, chloride, carbon, calcium and water, here and at random draws of its numbers`,
      '',
      ...auditLines(auditOf(model)),
      '',
      ...cautions,
    ];
    parts.push(linesText(lines));
  }
  streams.result(parts.join('\n'));
  return exit.done;
}
