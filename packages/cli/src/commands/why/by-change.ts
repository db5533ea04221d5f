import { planChanges, shapley, type FileChange, type ChangePlan, type ChangeShare } from '@leat/core';
import { openRunsProgress } from '../../terminal/progress.js';
import { FileError } from '../../files/read.js';
import { interruptible } from '../../workers/interruptible.js';
import { runJobs } from '../../workers/pool.js';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';
import { readTexts, type ScenarioOptions } from '../shared/referenced-files.js';
import { job, withText } from './job.js';

/** A change and its part of the difference. */
interface ChangePart extends ChangeShare {
  readonly change: FileChange;
}

/** A difference split by what was changed. */
export interface ByChange {
  /** The largest first; they sum to the difference. */
  readonly parts: readonly ChangePart[];
  /** How many runs it took. */
  readonly runs: number;
  /** Names of changes that were taken together. */
  readonly grouped: readonly string[];
}

/** Both files as texts; the first with all that either names. */
function bothTexts(
  files: readonly [string, string],
  options: ScenarioOptions,
): readonly [ReferencedFiles, ReferencedFiles] {
  const [a, b] = [readTexts(files[0], options), readTexts(files[1], options)];
  return [{ ...a, beside: new Map([...b.beside, ...a.beside]) }, b];
}

function planOf([a, b]: readonly [ReferencedFiles, ReferencedFiles], most: number): ChangePlan {
  const written = (texts: ReferencedFiles) => openTexts(texts).reading.resolved.written;
  return planChanges(written(a), written(b), most, (text) => {
    openTexts(withText(a, text));
  });
}

/**
 * Splits what a quantity differs by between two files among what was changed, by running every set of the changes.
 * Throws FileError where one of those runs broke off before the day.
 */
export async function byChange(
  files: readonly [string, string],
  {
    of,
    day,
    most,
    workers,
  }: { readonly of: string; readonly day: number; readonly most: number; readonly workers?: number },
  options: ScenarioOptions,
): Promise<ByChange> {
  const both = bothTexts(files, options);
  const plan = planOf(both, most);
  const progress = await openRunsProgress('sets of changes', plan.texts.length, 0);
  let done = 0;
  try {
    const answers = await interruptible((signal) =>
      runJobs(job, { texts: both[0], of, day }, plan.texts, {
        signal,
        ...(workers === undefined ? {} : { workers }),
        onDone: () => {
          progress.day(++done);
        },
      }),
    );
    const broken = answers.flatMap((answer, set) =>
      'broke' in answer ? [`with ${nameOfSet(plan, set)}: ${answer.broke}`] : [],
    );
    if (broken.length > 0)
      throw new FileError([
        'a set of changes has no value on that day, so the difference cannot be split',
        ...broken,
      ]);
    const values = answers.map((answer) => ('value' in answer ? answer.value : Number.NaN));
    const parts = shapley(values).map((share, i) => ({ ...share, change: plan.changes[i] }));
    return {
      parts: parts.sort((p, q) => Math.abs(q.value) - Math.abs(p.value)),
      runs: plan.texts.length,
      grouped: plan.grouped,
    };
  } finally {
    progress.end();
  }
}

const nameOfSet = ({ changes }: ChangePlan, set: number): string => {
  const names = changes.filter((_, i) => (set & (1 << i)) !== 0).map(({ name }) => name);
  return names.length === 0 ? 'no change' : names.join(', ');
};
