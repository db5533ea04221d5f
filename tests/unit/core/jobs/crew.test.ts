import { Worker } from 'node:worker_threads';
import { openCrew, type Crew } from '@leat/core/workers';
import { describe, expect, it } from 'vitest';
import { tenfoldWorker } from '../../../support/tenfold-worker.js';

async function withCrew<T>(
  work: (crew: Crew<number, number>) => Promise<T>,
  signal?: AbortSignal,
): Promise<T> {
  const crew = openCrew<number, number>(() => new Worker(tenfoldWorker), undefined, { workers: 2, signal });
  try {
    return await work(crew);
  } finally {
    await crew.close();
  }
}

describe('a crew of workers that stay', () => {
  it('does one round after another, outputs in the order of the inputs', async () => {
    const rounds = await withCrew(async (crew) => [
      await crew.do([1, 2, 3, 4, 5]),
      await crew.do([]),
      await crew.do([7]),
    ]);
    expect(rounds).toEqual([[10, 20, 30, 40, 50], [], [70]]);
  });

  it('ends with the faults of a job that fails, and does nothing after', async () => {
    await withCrew(async (crew) => {
      await expect(crew.do([1, 13, 2])).rejects.toMatchObject({ faults: [{ problem: 'thirteen' }] });
      await expect(crew.do([1])).rejects.toMatchObject({ faults: [{ problem: 'thirteen' }] });
    });
  });

  it('says that a worker died', async () => {
    await withCrew(async (crew) => {
      await expect(crew.do([1, 66])).rejects.toThrow('a worker died: it ended with code 7');
    });
  });

  it('is stopped by a signal while it works', async () => {
    const stop = new AbortController();
    await withCrew(async (crew) => {
      const under = crew.do([99]);
      stop.abort(new Error('enough'));
      await expect(under).rejects.toThrow('enough');
    }, stop.signal);
    expect(() => openCrew(() => new Worker(tenfoldWorker), undefined, { signal: stop.signal })).toThrow(
      'enough',
    );
  });
});
