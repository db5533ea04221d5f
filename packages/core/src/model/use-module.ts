import { LOOPS, LOOP_STATICS } from '../solve/loops.generated.js';
import { moduleFrom } from '../solve/open-module.js';
import { useForLoops } from '../solve/room.js';
import { useForRates } from './rate-room.js';
import { ratesModule } from './rates-module.js';

/**
 * Has what runs in this thread from now on done by modules of WebAssembly where it can be: a first run takes less time, and many
 * of them too. Results are the same to the last byte. Where there is no WebAssembly, or a page's content security policy lacks
 * `'wasm-unsafe-eval'`, all goes on as JavaScript. Call it once in each thread, workers too; the modules are made at the first run.
 */
export function useModule(): void {
  useForLoops(moduleFrom(LOOPS, LOOP_STATICS));
  useForRates(ratesModule());
}
