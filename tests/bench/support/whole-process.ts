import { spawnSync } from 'node:child_process';

/** What a whole process took. */
export interface Taken {
  /** By the clock, ms. */
  readonly wall: number;
  /** Of all processors together, ms. */
  readonly processor: number;
  /** Most memory at once, MB. */
  readonly memory: number;
  /** What it printed. */
  readonly said: string;
}

const mark = 'whole process: ';

/** Loaded before the script: tells at the end of the main thread what the process has used. */
const hook = `
import { writeSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';
if (isMainThread) process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  writeSync(2, ${JSON.stringify(mark)} + (userCPUTime + systemCPUTime) / 1000 + ' ' + (maxRSS * 1024) / 1e6 + '\\n');
});`;

/** Runs a script of Node to its end and tells what it took. Throws where it fails. */
export function wholeProcess(args: readonly string[]): Taken {
  const from = performance.now();
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', `data:text/javascript,${encodeURIComponent(hook)}`, ...args],
    { stdio: ['ignore', 'pipe', 'pipe'], encoding: 'utf8', maxBuffer: 2 ** 28 },
  );
  const wall = performance.now() - from;
  const told = stderr.split('\n').find((line) => line.startsWith(mark));
  if (status !== 0 || told === undefined) throw new Error(`node ${args.join(' ')}: ${stderr}`);
  const [processor, memory] = told.slice(mark.length).split(' ').map(Number);
  return { wall, processor, memory, said: stdout };
}
