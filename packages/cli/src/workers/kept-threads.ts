import { Worker } from 'node:worker_threads';
import type { FromWorker, ThreadWorker, ToWorker } from '@leat/core/workers';

/** What a thread is of: those that are alike can do each other's work. */
interface Kind {
  readonly program: URL;
  /** Heap, MB: the young part and the old one. */
  readonly young: number;
  readonly old: number;
}

/** A thread that outlives a piece of work. */
class Thread {
  private readonly worker: Worker;
  private readonly hearers: (() => void)[] = [];
  /** Inputs that it was given and has not answered. */
  private open = 0;
  alive = true;

  constructor(
    { program, young, old }: Kind,
    private readonly idle: Thread[],
  ) {
    const resourceLimits = { maxYoungGenerationSizeMb: young, maxOldGenerationSizeMb: old };
    this.worker = new Worker(program, { resourceLimits });
    this.worker.on('message', (message: Partial<FromWorker> | null) => {
      const leat = message?.leat;
      if (leat === 'done' || leat === 'failed') this.open--;
    });
    // Who uses it hears of its death too; while nobody does, it is only forgotten.
    const dead = (): void => {
      this.alive = false;
    };
    this.worker.on('error', dead);
    this.worker.on('exit', dead);
  }

  /** The thread for one piece of work. Ended at rest it waits for the next, and keeps no process alive by that. */
  take(): ThreadWorker {
    const { worker, hearers } = this;
    worker.ref();
    return {
      postMessage: (message) => {
        if ((message as ToWorker).leat === 'do') this.open++;
        worker.postMessage(message);
      },
      on: (event: string, take: (said: never) => void) => {
        const hearer = take as (said: unknown) => void;
        worker.on(event, hearer);
        hearers.push(() => worker.off(event, hearer));
      },
      terminate: () => {
        for (const leave of hearers.splice(0)) leave();
        if (this.open > 0 || !this.alive) return worker.terminate();
        worker.unref();
        this.idle.push(this);
        return undefined;
      },
    };
  }
}

/** Threads at rest in this process, by their kind. */
const resting = new Map<string, Thread[]>();

/**
 * Starts threads of a kind, or goes on with those that have done their work: they have their modules, and V8 its code of
 * them. What a run gives does not depend on what its thread did before.
 */
export function keptThreads(kind: Kind): () => ThreadWorker {
  const key = `${kind.program.href} ${kind.young} ${kind.old}`;
  const idle = resting.get(key) ?? [];
  resting.set(key, idle);
  return () => {
    for (let thread = idle.pop(); thread !== undefined; thread = idle.pop())
      if (thread.alive) return thread.take();
    return new Thread(kind, idle).take();
  };
}
