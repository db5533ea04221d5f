/**
 * A worker that gives ten times its input, after a while for small ones; fails at 13, dies at 66, of a full heap at 77, never
 * answers 99, spins for ever at 98, and at 55 the first time that any worker is given it.
 */
export const tenfoldWorker = new URL(
  `data:text/javascript,${encodeURIComponent(`
    import { parentPort } from 'node:worker_threads';
    let given;
    parentPort.on('message', ({ leat, shared, index, input }) => {
      if (leat === 'open') given = shared === undefined ? undefined : new Int32Array(shared);
      if (leat !== 'do') return;
      if (input === 66) process.exit(7);
      if (input === 77) for (const held = []; ; ) held.push(new Array(1e5).fill(held.length));
      if (input === 99) return;
      if (input === 98 || (input === 55 && Atomics.add(given, 0, 1) === 0)) for (;;);
      if (input === 13) {
        const faults = [{ key: 'vessels.tank', problem: 'thirteen' }];
        parentPort.postMessage({ leat: 'failed', index, error: { name: 'InputError', message: '', stack: '', faults } });
        return;
      }
      parentPort.postMessage('a word of somebody else');
      setTimeout(() => parentPort.postMessage({ leat: 'done', index, output: 10 * input }), 30 - input);
    });
  `)}`,
);
