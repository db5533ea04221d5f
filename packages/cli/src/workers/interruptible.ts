import { exit } from '../terminal/exit.js';

/** Work that Ctrl-C or a polite kill ended, with the code to leave with. */
export class InterruptedError extends Error {
  override readonly name = 'InterruptedError';
  constructor(readonly code: typeof exit.interrupted | typeof exit.terminated) {
    super(code === exit.interrupted ? 'interrupted' : 'terminated');
  }
}

/**
 * Runs work that can be stopped: the first Ctrl-C or SIGTERM aborts its signal with an InterruptedError, the
 * second ends the process as usual. Outside such work both end the process at once, as the system has it (130, 143): a
 * handler would wait until the simulation is over.
 */
export async function interruptible<T>(work: (signal: AbortSignal) => Promise<T>): Promise<T> {
  const controller = new AbortController();
  const stop = (code: InterruptedError['code']): void => {
    release();
    controller.abort(new InterruptedError(code));
  };
  const interrupt = (): void => {
    stop(exit.interrupted);
  };
  const terminate = (): void => {
    stop(exit.terminated);
  };
  const release = (): void => {
    process.off('SIGINT', interrupt);
    process.off('SIGTERM', terminate);
  };
  process.on('SIGINT', interrupt);
  process.on('SIGTERM', terminate);
  try {
    return await work(controller.signal);
  } finally {
    release();
  }
}
