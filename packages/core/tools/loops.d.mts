import type { Compiled, SubsetFile } from './module/compile.mjs';

/** The text of the generated file of the loops of the integrator. */
export function loopsModule(): string;
/** The text of the generated file of the rates. */
export function ratesModule(): string;
/** What the module of the rates is made of. */
export function rateFiles(): readonly SubsetFile[];
/** The module of the rates: kernels that have a name, and the loops around them. */
export function rates(): Compiled;
