import { InputError } from '@leat/core';
import { runJobs } from '@leat/core/workers';

/** The end of a series of each text, by two workers of this page; the faults where a text has some. */
export async function endsOf(series: string, texts: readonly string[]): Promise<readonly unknown[]> {
  const start = (): Worker => new Worker('./page-worker.js', { type: 'module' });
  try {
    return await runJobs<string, number>(start, { series }, texts, { workers: 2 });
  } catch (error) {
    if (error instanceof InputError) return error.faults;
    throw error;
  }
}
