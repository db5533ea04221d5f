import { parentPort } from 'node:worker_threads';
import { useModule } from '@leat/core/module';
import { serveJobs } from '@leat/core/workers';
import { withCode } from '../files/extension.js';
import type { Job, WorkerStart } from './job.js';

if (parentPort === null) throw new Error('a worker is started by the pool');

/** A call at most once a second: jobs tell every day that they simulate. */
function seldom(call: () => void): () => void {
  let last = performance.now();
  return () => {
    const now = performance.now();
    if (now - last < 1000) return;
    last = now;
    call();
  };
}

useModule();
serveJobs(parentPort, async ({ module, shared }: WorkerStart) => {
  const { job } = (await import(module)) as { readonly job: Job<unknown, unknown, unknown> };
  const runner = await job.open(await withCode(shared));
  return (input, alive) => runner.run(input, seldom(alive));
});
