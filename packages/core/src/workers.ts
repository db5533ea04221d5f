// Many jobs at once, on workers of Node or of a page. The worker is handed in: nothing here is of Node.
export { eachJob, runJobs, WorkerDiedError, WorkerHungError, type JobsOptions } from './jobs/pool.js';
export { openCrew, type Crew } from './jobs/crew.js';
export { serveJobs, type DoJob } from './jobs/serve.js';
export type {
  AliveMessage,
  DoMessage,
  DoneMessage,
  FailedMessage,
  FromWorker,
  JobPort,
  JobWorker,
  OfInput,
  OpenMessage,
  PagePort,
  PageWorker,
  SentError,
  StopSignal,
  ThreadPort,
  ThreadWorker,
  ToWorker,
} from './jobs/protocol.js';
