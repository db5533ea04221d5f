import { type Additions, type Extension } from './own.js';
/**
 * Components, processes and numbers of a user's own, for `compileModel(scenario, parameters, { extension })`. They are checked
 * there, against the scenario and its numbers: names and places, partials against differences, rates that stop where
 * what they use up ends, rows that close.
 */
export declare function extension({ components, processes, numbers }: Additions): Extension;
//# sourceMappingURL=extend.d.ts.map