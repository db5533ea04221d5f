import { parentPort, workerData } from 'node:worker_threads';
import type { Job, WorkerAnswer, WorkerStart, WorkerTask } from './job.js';

const port = parentPort;
if (port === null) throw new Error('a worker is started by the pool');
const { module, shared } = workerData as WorkerStart;
const runner = (import(module) as Promise<{ readonly job: Job<unknown, unknown, unknown> }>).then(({ job }) =>
  job.open(shared),
);

async function answer({ index, input }: WorkerTask): Promise<void> {
  try {
    const opened = await runner;
    const output = opened.run(input);
    port?.postMessage({ index, output } satisfies WorkerAnswer);
  } catch (error) {
    const { name, message, stack = '' } = error instanceof Error ? error : new Error(String(error));
    port?.postMessage({ index, error: { name, message, stack } } satisfies WorkerAnswer);
  }
}

port.on('message', (task: WorkerTask) => void answer(task));
