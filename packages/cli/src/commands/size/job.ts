import { openSizeMembers, type Sampling, type SizeMember } from '@leat/core';
import type { Job } from '../../workers/job.js';
import type { ReferencedFiles } from '@leat/core/tasks';
import { openAt, type Varied } from '@leat/core/tasks';

/** What all draws of a search for a size share. */
export interface SizeShared {
  readonly texts: ReferencedFiles;
  readonly varied: Varied;
  readonly want: 'smallest' | 'largest';
  readonly within: number;
  readonly keep: readonly string[];
  readonly sampling: Sampling;
  readonly about: number;
  /** Where each draw looks first; absent: it scans the range. */
  readonly near?: number;
  readonly chosen?: number;
}

/** Finds the size that a draw needs, by its number. */
export const job: Job<SizeShared, number, SizeMember> = {
  module: import.meta.url,
  open({ texts, varied, ...search }) {
    const run = openSizeMembers({
      ...search,
      from: varied.from,
      to: varied.to,
      whole: varied.whole,
      open: (value) => openAt(texts, [{ varied, value }]),
    });
    return { run };
  },
};
