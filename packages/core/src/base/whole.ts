/**
 * A whole number of at most 32 bits: a place or a count. What is told apart from other numbers by this name is held so in the modules
 * of WebAssembly that `tools/module` makes.
 */
export type i32 = number;
