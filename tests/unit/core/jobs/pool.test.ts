import { MessageChannel, Worker } from 'node:worker_threads';
import { InputError } from '@leat/core';
import { eachJob, runJobs, serveJobs, type JobsOptions, type PageWorker } from '@leat/core/workers';
import { describe, expect, it, vi } from 'vitest';
import { threads } from '../../../../packages/cli/src/workers/pool.js';
import { tenfoldWorker } from '../../../support/tenfold-worker.js';

const start = (): Worker => new Worker(tenfoldWorker);

const outputs = (
  inputs: readonly number[],
  workers = 2,
  options: JobsOptions = {},
  shared?: unknown,
): Promise<number[]> => runJobs<number, number>(start, shared, inputs, { workers, ...options });

describe('the pool of workers', () => {
  it.each([1, 2, 3, 20])('does every input once, by %i workers', async (workers) => {
    expect(await outputs([1, 2, 3, 4, 5], workers)).toEqual([10, 20, 30, 40, 50]);
  });

  it('has nothing to do for no inputs', async () => {
    expect(await outputs([])).toEqual([]);
  });

  it('refuses to work without workers', async () => {
    await expect(outputs([1], 0)).rejects.toThrow('0 workers do nothing');
  });

  it('gives an error of a job by its name, with its faults, and stops', async () => {
    const ending = outputs([1, 13, 2]);
    await expect(ending).rejects.toBeInstanceOf(InputError);
    await expect(ending).rejects.toMatchObject({
      message: 'vessels.tank: thirteen',
      faults: [{ key: 'vessels.tank', problem: 'thirteen' }],
    });
  });

  it('reports a worker that dies, with what it did', async () => {
    await expect(outputs([1, 2, 66], 1)).rejects.toMatchObject({
      name: 'WorkerDiedError',
      message: 'a worker died while it did job 3 of 3: it ended with code 7',
    });
  });

  it('reports a worker whose heap is full, with what it did', async () => {
    const small = threads({ heapMegabytes: 40 }, tenfoldWorker);
    const dying = eachJob(small, undefined, [1, 77], () => undefined, { workers: 1 });
    await expect(dying).rejects.toMatchObject({
      name: 'WorkerDiedError',
      message: expect.stringMatching(/^a worker died while it did job 2 of 2: .*memory limit/) as string,
    });
  });

  it('ends at once when it is told to', async () => {
    const controller = new AbortController();
    const ending = outputs([1, 99], 2, { signal: controller.signal });
    setTimeout(() => {
      controller.abort(new Error('enough'));
    }, 50);
    await expect(ending).rejects.toThrow('enough');
    await expect(outputs([1], 1, { signal: AbortSignal.abort(new Error('before')) })).rejects.toThrow(
      'before',
    );
  });

  it('gives the fault of what takes an output', async () => {
    const taking = eachJob(start, undefined, [1], () => {
      throw new RangeError('full');
    });
    await expect(taking).rejects.toThrow('full');
  });
});

describe('a worker that hangs', () => {
  it('is ended and replaced, and what it hung at is done by another', async () => {
    const replaced: number[] = [];
    const given = new SharedArrayBuffer(4);
    const options = { patience: 5, onReplaced: (input: number) => replaced.push(input) };
    expect(await outputs([1, 55, 2, 3], 1, options, given)).toEqual([10, 550, 20, 30]);
    expect(replaced).toContain(1);
    expect(new Int32Array(given)[0]).toBe(2);
  });

  it('twice at one input ends the work, by an error that names it', async () => {
    await expect(outputs([98], 1, { patience: 0.5 })).rejects.toMatchObject({
      name: 'WorkerHungError',
      message: 'job 1 of 1 hangs: two workers said nothing for 0.5 s at it',
    });
  });

  it('is not one that says that it is alive, however long it takes', async () => {
    vi.useFakeTimers();
    const replaced: number[] = [];
    const ports: PageWorker[] = [];
    const held = (): PageWorker => pageWorker((port) => ports.push(port));
    const work = runJobs<number, number>(held, undefined, [4], { onReplaced: (at) => replaced.push(at) });
    for (let quarter = 0; quarter < 8; quarter++) {
      await vi.advanceTimersByTimeAsync(1_700_000);
      ports[0].postMessage({ leat: 'alive', index: 0 });
    }
    expect(replaced).toEqual([]);
    await vi.advanceTimersByTimeAsync(1_900_000);
    expect([replaced, ports.length]).toEqual([[0], 2]);
    // The first is not heard any more.
    ports[0].postMessage({ leat: 'done', index: 0, output: 1 });
    ports[1].postMessage({ leat: 'done', index: 0, output: 40 });
    expect(await work).toEqual([40]);
    vi.useRealTimers();
  });
});

/** A worker of a page: it hears by events, as a browser has it. */
function pageWorker(serve: (port: PageWorker) => void): PageWorker {
  const ends: ((event: { readonly data: unknown }) => void)[][] = [[], []];
  const side = (mine: 0 | 1): PageWorker => ({
    postMessage: (message) => {
      const data: unknown = structuredClone(message);
      queueMicrotask(() => ends[1 - mine].forEach((take) => take({ data })));
    },
    addEventListener: (event: string, take: (event: never) => void) => {
      if (event === 'message') ends[mine].push(take as (event: { readonly data: unknown }) => void);
    },
    terminate: () => undefined,
  });
  serve(side(1));
  return side(0);
}

describe('the side of the worker', () => {
  it('is opened once, does each input, and gives back errors with their faults', async () => {
    let opened = 0;
    const worker = (): PageWorker =>
      pageWorker((port) => {
        serveJobs<number, number, number>(port, (shared) => {
          opened++;
          return (input, alive) => {
            alive();
            if (input === 4) throw new InputError([{ key: 'four', problem: 'is not to be had' }]);
            if (input === 5) throw new RangeError('five');
            return shared * input;
          };
        });
      });
    expect(await runJobs<number, number>(worker, 3, [1, 2, 3], { workers: 1 })).toEqual([3, 6, 9]);
    expect(opened).toBe(1);
    await expect(runJobs(worker, 3, [1, 4])).rejects.toMatchObject({ faults: [{ key: 'four' }] });
    await expect(runJobs(worker, 3, [5])).rejects.toMatchObject({ name: 'RangeError', message: 'five' });
  });

  it('tells what went wrong when it was opened with the first input', async () => {
    const worker = (): PageWorker =>
      pageWorker((port) => {
        serveJobs(port, () => Promise.reject(new Error('no such module')));
      });
    await expect(runJobs(worker, undefined, [1])).rejects.toThrow('no such module');
  });

  it('answers nothing that is not of the pool, and says so where it was not opened', async () => {
    const { port1, port2 } = new MessageChannel();
    const said: unknown[] = [];
    const heard = new Promise<void>((resolve) => {
      port1.on('message', (message) => {
        said.push(message);
        resolve();
      });
    });
    serveJobs(port2, () => (input) => input);
    port1.postMessage({ other: 'protocol' });
    port1.postMessage({ leat: 'do', index: 0, input: 1 });
    await heard;
    port1.close();
    expect(said).toMatchObject([
      { leat: 'failed', index: 0, error: { message: 'a worker was given an input before it was opened' } },
    ]);
  });
});
