import { dirname, join, relative } from 'node:path';
import { nearest, readScenarioFully } from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { FileError } from '../../files/read.js';
import { readText } from '../../files/read.js';
import { columns, linesText } from '../../terminal/columns.js';
import { questionOf } from '@leat/view/text';
import { shippedBeside, shippedNames, shippedPath } from '../../files/shipped.js';
import type { Streams } from '../../terminal/streams.js';
import { askForSystem } from './ask.js';
import { type Copy, withSchema, writeCopies } from './write.js';

/** What `leat new` was asked. */
export interface NewOptions {
  readonly list?: boolean;
  readonly ask?: boolean | string;
  readonly out?: string;
  readonly force?: boolean;
}

/** Where a system of the questions goes that nobody named. */
const askedFile = 'system.yaml';

/** The scenario and every file that reading it takes, with the places they go to, the scenario last. */
function copiesOf(name: string, out: string): readonly Copy[] {
  const source = shippedPath(name);
  const text = readText(source);
  const beside = new Map<string, string>();
  const load = (path: string): string => {
    const found = readText(path);
    const copied = path.endsWith('.yaml') ? withSchema(found) : found;
    beside.set(join(dirname(out), relative(dirname(source), path)), copied);
    return found;
  };
  readScenarioFully(text, { file: source, load });
  for (const path of shippedBeside(name)) load(path);
  return [...[...beside].map(([to, found]) => ({ to, text: found })), { to: out, text: withSchema(text) }];
}

/** What was asked of the command line that does not go together; undefined where all does. */
function usageProblem(name: string | undefined, { ask, out, list }: NewOptions): string | undefined {
  if (ask === undefined) return undefined;
  if (list === true) return '--ask and --list: expected one of them';
  if (name !== undefined) return `--ask and ${name}: expected the questions, or the name of a what-if`;
  if (typeof ask === 'string' && out !== undefined)
    return `--ask ${ask} and --out ${out}: expected one of them`;
  return undefined;
}

const isTerminal = (): boolean => process.stdin.isTTY && process.stdout.isTTY;

async function askCommand({ ask, out, force }: NewOptions, streams: Streams): Promise<ExitCode> {
  if (!isTerminal()) {
    streams.note(
      'leat new --ask: no terminal to ask in; expected one, or the name of a what-if (leat new --list)\n',
    );
    return exit.badInput;
  }
  const path = out ?? (typeof ask === 'string' ? ask : askedFile);
  const { openPrompts } = await import('./prompts.js');
  return askForSystem(path, await openPrompts(), { streams, ...(force !== undefined && { force }) });
}

/**
 * `leat new NAME`: copies a scenario that comes with the command, and what it includes, into the current
 * folder or to `--out`; `--list` prints the names and their questions; `--ask`, and no name in a terminal, asks about ten
 * questions and writes a system from the answers. The JSON Schema for editors comes beside. Nothing is overwritten without
 * `--force`: all places are looked at before the first file is written. Throws FileError for an unknown name or a taken
 * place.
 */
export async function newCommand(
  name: string | undefined,
  options: NewOptions,
  streams: Streams,
): Promise<ExitCode> {
  const problem = usageProblem(name, options);
  if (problem !== undefined) {
    streams.note(`leat new: ${problem}\n`);
    return exit.badUsage;
  }
  const names = shippedNames();
  if (options.list === true) {
    const rows = names.map((each) => [each, questionOf(readText(shippedPath(each)))]);
    streams.result(linesText(columns(rows, ['left', 'left'])));
    return exit.done;
  }
  if (options.ask !== undefined || (name === undefined && isTerminal())) return askCommand(options, streams);
  if (name === undefined) {
    streams.note('leat new: give a name, --list to see them, or --ask to be asked\n');
    return exit.badUsage;
  }
  if (!names.includes(name)) {
    const near = nearest(name, names);
    const hint = near === undefined ? '' : `; did you mean ${near}?`;
    throw new FileError(`${name}: no scenario of that name${hint} (leat new --list shows them)`);
  }
  const out = options.out ?? `${name}.yaml`;
  writeCopies(copiesOf(name, out), options.force, streams);
  return exit.done;
}
