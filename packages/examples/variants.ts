// 200 rations on four worker threads: which is the largest at which ammonia stays low?
import { Worker } from 'node:worker_threads';
import { runJobs } from '@leat/core/workers';

const rations = Array.from({ length: 200 }, (_, i) => 0.005 + 0.0001 * i);
const start = (): Worker => new Worker(new URL('./variants-worker.js', import.meta.url));
const highest = await runJobs<number, number>(start, { days: 20 }, rations, { workers: 4 });

const low = rations.filter((_, i) => highest[i] < 1);
console.log(
  `${highest.length} runs; TAN stays below 1 mg N/L up to ${(100 * Math.max(...low)).toFixed(2)} %/d`,
);
