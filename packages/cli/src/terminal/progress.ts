import type { SingleBar } from 'cli-progress';

/** Shows how far long work is. */
export interface Progress {
  /** The day reached, or the number of runs done. */
  day(day: number): void;
  end(): void;
}

/** Time a run may take before it is worth a bar, ms. */
const patience = 2000;

/** Says nothing. */
export const noProgress: Progress = {
  day: () => undefined,
  end: () => undefined,
};

/** A bar on stderr, drawn only on a terminal and only once the work has taken two seconds. */
async function openBar(format: string, total: number, at: number): Promise<Progress> {
  if (!process.stderr.isTTY) return noProgress;
  const { default: progress } = await import('cli-progress');
  const began = performance.now();
  let bar: SingleBar | undefined;
  return {
    day(day) {
      if (bar === undefined && performance.now() - began < patience) return;
      if (bar === undefined) {
        bar = new progress.SingleBar({
          stream: process.stderr,
          format,
          hideCursor: true,
          clearOnComplete: true,
          etaBuffer: 50,
        });
        bar.start(total, at);
      }
      bar.update(day);
    },
    end: () => bar?.stop(),
  };
}

/** A bar for the days of one run. */
export const openProgress = (days: number): Promise<Progress> =>
  openBar('day {value} of {total} [{bar}] {percentage} %', days, 0);

/** A bar for many runs, with the time left; `day` takes the number that are done. */
export const openRunsProgress = (what: string, total: number, done: number): Promise<Progress> =>
  openBar(`{value} of {total} ${what} [{bar}] {percentage} %, {eta_formatted} left`, total, done);

/** A count of runs of which nobody knows how many there will be; `day` takes the number that are done. */
export const openCountProgress = (what: string): Promise<Progress> =>
  openBar(`{value} ${what}, {duration_formatted}`, 0, 0);
