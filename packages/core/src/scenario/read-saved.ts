import * as z from 'zod';
import { formProblem } from '../form-problem.js';
import { loadText, resolvePath } from './include-tree.js';
import type { Reader } from './reader.js';
import type { SavedState } from './scenario.js';
import { originAt, type Path } from './tree.js';

const amount = z.number();

/** A state saved by a run, version 1. Keys beyond these are ignored. */
const savedSchema = z.object({
  volumes: z.record(z.string(), amount.positive()),
  rainTank: amount.nonnegative(),
  ages: z.record(z.string(), amount.nonnegative()),
  states: z.array(z.object({ component: z.string(), place: z.string(), amount })),
});

const path: Path = ['start', 'saved'];

/**
 * Reads the state that `start: { saved: FILE }` goes on from. Its places must be vessels, cohorts or
 * batches of plantings of this system; places that it does not hold start as the file says.
 */
export function readSaved(
  reader: Reader,
  file: string | undefined,
  places: readonly string[],
): SavedState | undefined {
  if (file === undefined) return undefined;
  const { file: from } = originAt(reader.tree, path);
  const answer = loadText(reader.load, resolvePath(from, file), from);
  if ('problem' in answer) {
    reader.fault(path, answer.problem);
    return undefined;
  }
  let document: unknown;
  try {
    document = JSON.parse(answer.text);
  } catch {
    reader.fault(path, 'not JSON', { expected: 'a state saved with `leat run --save`' });
    return undefined;
  }
  const form = formProblem(document, 'leat-state', 1);
  if (form !== undefined) {
    const { problem, expected } = form;
    reader.fault(path, `${file}: ${problem}`, {
      expected: `${expected}: a state saved with \`leat run --save\``,
    });
    return undefined;
  }
  const reading = savedSchema.safeParse(document);
  if (!reading.success) {
    const [issue] = reading.error.issues;
    const where = issue.path.length === 0 ? 'the document' : issue.path.join('.');
    reader.fault(path, `not a saved state of version 1: ${where} does not fit`, {
      expected: 'a state saved with `leat run --save`',
    });
    return undefined;
  }
  const { volumes, rainTank, ages, states } = reading.data;
  const named = new Set([...Object.keys(volumes), ...states.map((state) => state.place)]);
  for (const name of named) reader.known(name, places, path, 'place');
  return { volumes, rainTank, ages, states };
}
