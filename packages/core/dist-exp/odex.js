// A second integrator, for a run that is to be checked by a method that shares nothing with the first.
export { explicit as odex } from './solve/explicit.js';
//# sourceMappingURL=odex.js.map