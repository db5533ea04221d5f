import { describe, expect, it } from 'vitest';
import { eachTask } from '../../../../packages/cli/src/workers/pool.js';

/** A worker that gives ten times its input, after a while for small ones; fails at 13, dies at 66, of a full heap at 77, never answers 99. */
const entry = new URL(
  `data:text/javascript,${encodeURIComponent(`
    import { parentPort } from 'node:worker_threads';
    parentPort.on('message', ({ index, input }) => {
      if (input === 66) process.exit(7);
      if (input === 77) for (const held = []; ; ) held.push(new Array(1e5).fill(held.length));
      if (input === 99) return;
      if (input === 13) {
        parentPort.postMessage({ index, error: { name: 'InputError', message: 'thirteen', stack: '' } });
        return;
      }
      setTimeout(() => parentPort.postMessage({ index, output: 10 * input }), 30 - input);
    });
  `)}`,
);
const start = { module: '', shared: undefined };

async function outputs(inputs: readonly number[], workers = 2, signal?: AbortSignal): Promise<unknown[]> {
  const found: unknown[] = [];
  await eachTask(
    entry,
    start,
    inputs,
    (index, output) => {
      found[index] = output;
    },
    { workers, ...(signal && { signal }) },
  );
  return found;
}

describe('the worker pool', () => {
  it.each([1, 2, 3, 20])('does every input once, by %i workers', async (workers) => {
    expect(await outputs([1, 2, 3, 4, 5], workers)).toEqual([10, 20, 30, 40, 50]);
  });

  it('has nothing to do for no inputs', async () => {
    expect(await outputs([])).toEqual([]);
  });

  it('gives an error of a job by its name, and stops', async () => {
    await expect(outputs([1, 13, 2])).rejects.toMatchObject({ name: 'InputError', message: 'thirteen' });
  });

  it('reports a worker that dies, with what it did', async () => {
    await expect(outputs([1, 2, 66], 1)).rejects.toMatchObject({
      name: 'WorkerDiedError',
      message: 'a worker died while it did job 3 of 3: it ended with code 7',
    });
  });

  it('reports a worker whose heap is full, with what it did', async () => {
    const dying = eachTask(entry, start, [1, 77], () => undefined, { workers: 1, heapMegabytes: 40 });
    await expect(dying).rejects.toMatchObject({
      name: 'WorkerDiedError',
      message: expect.stringMatching(/^a worker died while it did job 2 of 2: .*memory limit/) as string,
    });
  });

  it('ends at once when it is told to', async () => {
    const controller = new AbortController();
    const ending = outputs([1, 99], 2, controller.signal);
    setTimeout(() => {
      controller.abort(new Error('enough'));
    }, 50);
    await expect(ending).rejects.toThrow('enough');
    await expect(outputs([1], 1, AbortSignal.abort(new Error('before')))).rejects.toThrow('before');
  });

  it('gives the fault of what takes an output', async () => {
    const taking = eachTask(entry, start, [1], () => {
      throw new RangeError('full');
    });
    await expect(taking).rejects.toThrow('full');
  });
});
