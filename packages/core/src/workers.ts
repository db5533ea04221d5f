// Many jobs at once, on workers of Node or of a page. The worker is handed in: nothing here is of Node.
export { eachJob, runJobs, WorkerDiedError, WorkerHungError, type JobsOptions } from './workers/pool.js';
export { serveJobs, type DoJob } from './workers/serve.js';
export type {
  FromWorker,
  JobPort,
  JobWorker,
  PagePort,
  PageWorker,
  SentError,
  StopSignal,
  ThreadPort,
  ThreadWorker,
  ToWorker,
} from './workers/protocol.js';
