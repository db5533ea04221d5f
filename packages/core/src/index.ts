/** The public face of the library. */
export { describeFault, InputError, type Fault } from './errors.js';
