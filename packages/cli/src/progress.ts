import type { SingleBar } from 'cli-progress';

/** Shows how far a long run is. */
export interface Progress {
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

/** A bar on stderr, drawn only on a terminal and only once a run has taken two seconds. */
export async function openProgress(days: number): Promise<Progress> {
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
          format: 'day {value} of {total} [{bar}] {percentage} %',
          hideCursor: true,
          clearOnComplete: true,
        });
        bar.start(days, day);
      }
      bar.update(day);
    },
    end: () => bar?.stop(),
  };
}
