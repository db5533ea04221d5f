// The module of WebAssembly that runs what takes the time of a run, for who wants it: a program that is to be small goes without.
export { useModule } from './solve/loops-module.js';
