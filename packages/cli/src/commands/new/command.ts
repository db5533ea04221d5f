import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { nearest, readScenarioFully } from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { FileError } from '../../files/read.js';
import { readText } from '../../files/read.js';
import { columns, linesText } from '../../terminal/columns.js';
import { questionOf, shippedBeside, shippedNames, shippedPath } from '../../files/shipped.js';
import type { Streams } from '../../terminal/streams.js';
import { openOutputList } from '../../files/outputs.js';

/** What `leat new` was asked. */
export interface NewOptions {
  readonly list?: boolean;
  readonly out?: string;
  readonly force?: boolean;
}

interface Copy {
  readonly to: string;
  readonly text: string;
}

/** The scenario and every file that reading it takes, with the places they go to. */
function copiesOf(name: string, out: string): readonly Copy[] {
  const source = shippedPath(name);
  const text = readText(source);
  const beside = new Map<string, string>();
  const load = (path: string): string => {
    const found = readText(path);
    beside.set(join(dirname(out), relative(dirname(source), path)), found);
    return found;
  };
  readScenarioFully(text, { file: source, load });
  for (const path of shippedBeside(name)) load(path);
  return [...[...beside].map(([to, found]) => ({ to, text: found })), { to: out, text }];
}

/** Whether a file that comes beside the scenario is there already, word for word. */
const isThere = ({ to, text }: Copy, out: string): boolean =>
  to !== out && existsSync(to) && readFileSync(to, 'utf8') === text;

/**
 * `leat new NAME`: copies a scenario that comes with the command, and what it includes, into the current
 * folder or to `--out`; `--list` prints the names and their questions. Nothing is overwritten without `--force`: all
 * places are looked at before the first file is written. Throws FileError for an unknown name or a taken place.
 */
export function newCommand(name: string | undefined, options: NewOptions, streams: Streams): ExitCode {
  const names = shippedNames();
  if (options.list === true) {
    const rows = names.map((each) => [each, questionOf(readText(shippedPath(each)))]);
    streams.result(linesText(columns(rows, ['left', 'left'])));
    return exit.done;
  }
  if (name === undefined) {
    streams.note('leat new: give a name, or --list to see them\n');
    return exit.badUsage;
  }
  if (!names.includes(name)) {
    const near = nearest(name, names);
    const hint = near === undefined ? '' : `; did you mean ${near}?`;
    throw new FileError(`${name}: no scenario of that name${hint} (leat new --list shows them)`);
  }
  const out = options.out ?? `${name}.yaml`;
  const writing = copiesOf(name, out).filter((copy) => !isThere(copy, out));
  const outputs = openOutputList(
    writing.map(({ to }) => ({ option: '--out', path: to, kind: 'own' })),
    options,
  );
  writing.forEach(({ text }, i) => {
    outputs[i].write(text);
  });
  streams.note(linesText([`written: ${writing.map(({ to }) => to).join(', ')}`]));
  return exit.done;
}
