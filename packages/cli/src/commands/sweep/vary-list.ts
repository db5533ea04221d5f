import { InputError, sweepValues } from '@leat/core';
import { readAll } from '@leat/core/tasks';
import type { ReferencedFiles } from '@leat/core/tasks';
import { openVaried, type Varied } from '@leat/core/tasks';

/** One quantity of a sweep with its values. */
export interface VaryList {
  readonly varied: Varied;
  readonly values: readonly number[];
}

/** Most values of one quantity, and most points of a sweep. */
const most = 1000;
const mostPoints = 100_000;

const expected = 'PATH=A:B:n, such as "vessels.biofilter.media.volume=50 L:400 L:8"';

function listOf(text: string, texts: ReferencedFiles): VaryList {
  const match = /^([^=]+)=([^:]*):([^:]*):([^:]*)$/.exec(text);
  if (match === null) {
    throw new InputError([
      { file: '--vary', got: JSON.stringify(text), problem: 'not a range of values', expected },
    ]);
  }
  const [path, from, to, count] = match.slice(1).map((part) => part.trim());
  const n = Number(count);
  if (!/^\d+$/.test(count) || n < 2 || n > most) {
    throw new InputError([
      {
        file: '--vary',
        key: path,
        got: JSON.stringify(count),
        problem: 'not a number of values',
        expected: `a whole number from 2 to ${most}`,
      },
    ]);
  }
  const varied = openVaried(texts, { path, from, to }, { from: '--vary', to: '--vary' });
  return { varied, values: sweepValues(varied, n) };
}

/**
 * Reads every `PATH=A:B:n` and says all faults at once. Throws InputError for a range that cannot be, a path given
 * twice, and more points than can be told.
 */
export function varyLists(asked: readonly string[], texts: ReferencedFiles): readonly VaryList[] {
  const lists = readAll(asked, (text) => listOf(text, texts));
  const faults: InputError['faults'][number][] = [];
  lists.forEach(({ varied: { path } }, i) => {
    if (lists.findIndex(({ varied }) => varied.path === path) < i)
      faults.push({ file: '--vary', key: path, problem: 'varied twice' });
  });
  const points = lists.reduce((product, { values }) => product * values.length, 1);
  if (points > mostPoints)
    faults.push({
      file: '--vary',
      got: `${points} points`,
      problem: 'too many points',
      expected: `at most ${mostPoints}`,
    });
  if (faults.length > 0) throw new InputError(faults);
  return lists;
}
