// The modules of WebAssembly that run what takes the time of a run, for who wants it: a program that is to be small goes without.
export { useModule } from './model/use-module.js';
