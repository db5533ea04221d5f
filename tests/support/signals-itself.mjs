/**
 * Loaded before the command in tests of signals: the process signals itself in a known state, however slow the machine.
 *
 *   LEAT_SIGNAL     the signal, such as SIGINT
 *   LEAT_SIGNAL_AT  the state: `tasks N`, when workers have been given N tasks; `rates N`, when the main thread has called the
 *                   modules of a simulation N times, which reading a file never does; `half N`, when the Nth file is half written
 *                   under its name in .part; `whole N`, when it is written and not yet renamed; `kept NAME`, when a file of that
 *                   name is first in place
 *
 * Clocks go a thousand times too fast, so that what is kept now and then is kept at once.
 */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { performance } from 'node:perf_hooks';
import { isMainThread, Worker } from 'node:worker_threads';

const [state, wanted] = (process.env.LEAT_SIGNAL_AT ?? '').split(' ');
const send = () => process.kill(process.pid, process.env.LEAT_SIGNAL);

let seen = 0;
const isTheOne = () => ++seen === Number(wanted);

/** Puts a function around a method, which it is given first. */
function around(object, name, make) {
  const original = object[name];
  object[name] = function (...args) {
    return make((...given) => Reflect.apply(original, this, given), ...args);
  };
}

/** Signals when the method is called for the Nth time. */
const countCalls = (object, name) =>
  around(object, name, (original, ...args) => {
    if (isTheOne()) send();
    return original(...args);
  });

/** Signals when a function of a WebAssembly module is called for the Nth time, whichever it is. */
function countModuleCalls() {
  const assembly = globalThis.WebAssembly;
  const { Instance } = assembly;
  assembly.Instance = function (...given) {
    const exports = { ...new Instance(...given).exports };
    for (const [name, value] of Object.entries(exports))
      if (typeof value === 'function') countCalls(exports, name);
    return { exports };
  };
}

if (isMainThread) {
  around(performance, 'now', (now) => 1000 * now());
  if (state === 'tasks') countCalls(Worker.prototype, 'postMessage');
  if (state === 'rates') countModuleCalls();
  if (state === 'half' || state === 'whole')
    around(fs, 'writeFileSync', (write, path, data, ...more) => {
      const now = String(path).endsWith('.part') && isTheOne();
      write(path, now && state === 'half' ? data.slice(0, data.length / 2) : data, ...more);
      if (now) send();
    });
  if (state === 'kept')
    around(fs, 'renameSync', (rename, from, to) => {
      rename(from, to);
      if (String(to).endsWith(wanted) && ++seen === 1) send();
    });
  syncBuiltinESMExports();
}
