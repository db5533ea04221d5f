/** Work that Ctrl-C (or a polite kill) ended. */
export class InterruptedError extends Error {
  override readonly name = 'InterruptedError';
}

/**
 * Runs work that can be stopped: the first Ctrl-C or SIGTERM aborts its signal with an InterruptedError, the
 * second ends the process as usual.
 */
export async function interruptible<T>(work: (signal: AbortSignal) => Promise<T>): Promise<T> {
  const controller = new AbortController();
  const stop = (): void => {
    release();
    controller.abort(new InterruptedError('interrupted'));
  };
  const release = (): void => {
    process.off('SIGINT', stop);
    process.off('SIGTERM', stop);
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
  try {
    return await work(controller.signal);
  } finally {
    release();
  }
}
