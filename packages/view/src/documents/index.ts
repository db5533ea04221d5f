// What is kept of a run, as plain data.
export { accountOf } from './account.js';
export { keySeries, keysOf, type Key } from './keys.js';
