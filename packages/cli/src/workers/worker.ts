import { parentPort, workerData } from 'node:worker_threads';
import { loadJob } from './job-kinds.js';
import type { WorkerAnswer, WorkerStart, WorkerTask } from './message.js';

const port = parentPort;
if (port === null) throw new Error('a worker is started by the pool');
const { kind, shared } = workerData as WorkerStart;
const runner = loadJob(kind).then((job) => job.open(shared));

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
