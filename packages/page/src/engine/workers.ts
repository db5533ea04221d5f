import type { Ask, Told } from './protocol.js';

/** The kinds of work that a worker of the page is started for, by its name. */
type WorkerName = 'engine' | 'search';

let address: string | undefined;

/**
 * A worker that runs this same script: it stands once in the page, and a worker takes it from there. A page opened from
 * the disk may start no worker from another file.
 */
function start(name: WorkerName): Worker {
  if (address === undefined) {
    const own = document.getElementById('leat')?.textContent ?? '';
    address = URL.createObjectURL(new Blob([own], { type: 'text/javascript' }));
  }
  return new Worker(address, { name });
}

/** A worker of the pool of searches. */
export const startSearch = (): Worker => start('search');

/** How many searches are at work at once: one core is left to the page. */
export const searchWorkers = (): number => Math.min(4, Math.max(1, (navigator.hardwareConcurrency || 2) - 1));

/** What hears of a question. */
export type Hear = (told: Told) => void;

type Unasked<T> = T extends unknown ? Omit<T, 'id'> : never;

/** An engine in a worker: it is asked, and ended at once where what it does is no longer wanted. */
export class Engine {
  private worker: Worker | undefined;
  private next = 0;
  private readonly hearing = new Map<number, Hear>();

  /** Starts its worker, so that the first question finds it ready. */
  warm(): void {
    this.opened();
  }

  private opened(): Worker {
    if (this.worker !== undefined) return this.worker;
    const worker = start('engine');
    worker.addEventListener('message', ({ data }: MessageEvent<Told>) => {
      this.hearing.get(data.id)?.(data);
      if (data.kind !== 'day') this.hearing.delete(data.id);
    });
    worker.addEventListener('error', ({ message }) => {
      const hearing = [...this.hearing];
      this.end();
      for (const [id, hear] of hearing) hear({ kind: 'failed', id, message });
    });
    this.worker = worker;
    return worker;
  }

  /** Asks; `hear` is told of progress and then, once, of the answer. */
  ask(ask: Unasked<Ask>, hear: Hear): void {
    const id = this.next++;
    this.hearing.set(id, hear);
    this.opened().postMessage({ ...ask, id });
  }

  /** Drops all that is under way, and is ready for more. */
  end(): void {
    this.worker?.terminate();
    this.worker = undefined;
    this.hearing.clear();
  }
}
