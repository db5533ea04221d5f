import { eachJob, runJobs } from '@leat/core/workers';
import { describe, expect, it } from 'vitest';
import { threads } from '../../../../packages/cli/src/workers/pool.js';

/** A worker that tells its thread and what it was opened with; dies at `die`, answers `hang` never. */
const program = (): URL =>
  new URL(
    `data:text/javascript,${encodeURIComponent(`
    // ${Math.random()}
    import { parentPort, threadId } from 'node:worker_threads';
    let given;
    parentPort.on('message', ({ leat, shared, index, input }) => {
      if (leat === 'open') given = shared;
      if (leat !== 'do' || input === 'hang') return;
      if (input === 'die') process.exit(7);
      if (input === 'fail') parentPort.postMessage({ leat: 'failed', index, error: { name: 'Error', message: 'ill', stack: '' } });
      else parentPort.postMessage({ leat: 'done', index, output: { threadId, given } });
    });
  `)}`,
  );

type Said = { readonly threadId: number; readonly given: string };

const one = async (start: ReturnType<typeof threads>, input = 'tell', shared = 'a'): Promise<Said> =>
  (await runJobs<string, Said>(start, shared, [input], { workers: 1 }))[0];

describe('threads that are kept', () => {
  it('do the next work too, opened with what that shares', async () => {
    const start = threads({}, program());
    const first = await one(start);
    expect(first.given).toBe('a');
    expect(await one(start, 'tell', 'b')).toEqual({ threadId: first.threadId, given: 'b' });
  });

  it('are as many as work side by side', async () => {
    const start = threads({}, program());
    const two = await runJobs<string, Said>(start, 'a', ['tell', 'tell'], { workers: 2 });
    const { threadId } = await one(start);
    expect(two.map((each) => each.threadId)).toContain(threadId);
  });

  it('go on after a job that failed', async () => {
    const start = threads({}, program());
    const first = await one(start);
    await expect(one(start, 'fail')).rejects.toThrow('ill');
    expect((await one(start)).threadId).toBe(first.threadId);
  });

  it('are not those of another kind', async () => {
    const where = program();
    const first = await one(threads({}, where));
    expect((await one(threads({ heapMegabytes: 100 }, where))).threadId).not.toBe(first.threadId);
  });

  it('end where they were left at work, and where they died', async () => {
    const start = threads({}, program());
    const first = await one(start);
    const controller = new AbortController();
    const leaving = eachJob(start, 'a', ['hang'], () => undefined, { workers: 1, signal: controller.signal });
    controller.abort(new Error('enough'));
    await expect(leaving).rejects.toThrow('enough');
    const second = await one(start);
    expect(second.threadId).not.toBe(first.threadId);
    await expect(one(start, 'die')).rejects.toThrow('a worker died while it did job 1 of 1');
    expect((await one(start)).threadId).not.toBe(second.threadId);
  });
});
