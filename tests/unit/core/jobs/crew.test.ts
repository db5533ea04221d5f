import { Worker } from 'node:worker_threads';
import { openCrew, type Crew } from '@leat/core/workers';
import { describe, expect, it } from 'vitest';

/** A worker that counts its inputs and gives ten times each, small ones late; fails at 13, dies at 66, never answers 99. */
const program = new URL(
  `data:text/javascript,${encodeURIComponent(`
    import { parentPort } from 'node:worker_threads';
    parentPort.on('message', ({ leat, index, input }) => {
      if (leat !== 'do' || input === 99) return;
      if (input === 66) process.exit(7);
      if (input === 13) {
        const faults = [{ key: 'vessels.tank', problem: 'thirteen' }];
        parentPort.postMessage({ leat: 'failed', index, error: { name: 'InputError', message: '', stack: '', faults } });
        return;
      }
      parentPort.postMessage('a word of somebody else');
      setTimeout(() => parentPort.postMessage({ leat: 'done', index, output: 10 * input }), 30 - input);
    });
  `)}`,
);

async function withCrew<T>(
  work: (crew: Crew<number, number>) => Promise<T>,
  signal?: AbortSignal,
): Promise<T> {
  const crew = openCrew<number, number>(() => new Worker(program), undefined, { workers: 2, signal });
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
    expect(() => openCrew(() => new Worker(program), undefined, { signal: stop.signal })).toThrow('enough');
  });
});
