import type { Slip } from './slip.js';

const option = (name: string, args: readonly string[], code = 2): Slip => ({ name, args, edits: [], code });
const usage = (name: string, ...args: readonly string[]): Slip => option(name, args, 5);
const input = (name: string, ...args: readonly string[]): Slip => option(name, args);

/** Slips on the command line of `leat run small.yaml`. */
export const optionSlips: readonly Slip[] = [
  usage('days in words', '--days', 'ten'),
  usage('days zero', '--days', '0'),
  usage('days negative', '--days', '-3'),
  usage('days NaN', '--days', 'NaN'),
  usage('days 1e309', '--days', '1e309'),
  input('days of an age', '--days', '1e6'),
  input('days 1e308', '--days', '1e308'),
  usage('days with a decimal comma', '--days', '2,5'),
  usage('days left out', '--days'),
  input('step without a unit', '--every', '6'),
  input('step zero', '--every', '0 h'),
  input('step negative', '--every', '-1 h'),
  input('step in words', '--every', 'hourly'),
  input('step as a mass', '--every', '1 kg'),
  input('step of a nanosecond', '--every', '1e-9 s'),
  usage('set without a value', '--set', 'days'),
  usage('set without a path', '--set', '=3'),
  input('set of an unknown key', '--set', 'dais=3'),
  input('set of an unknown vessel', '--set', 'vessels.tnk.volume=1 m3'),
  input('set of a wrong unit', '--set', 'vessels.tank.volume=1 kg'),
  input('set with a decimal comma', '--set', 'vessels.tank.volume=0,6 m3'),
  input('set below a value', '--set', 'days.number=3'),
  input('set of a flow that is not there', '--set', 'flows[9].rate=1 m3/h'),
  input('set of broken YAML', '--set', 'vessels.tank={ volume: 1 m3'),
  input('set of a prototype', '--set', '__proto__.x=1'),
  input('set of a number of the tables misspelt', '--set', 'parameters.fish.nile-tilapia.feed-conversoin=2'),
  input('set of an alias', '--set', 'days=*x'),
  input('tables that are not there', '--tables', 'mine.tsv'),
  input('tables that are the system', '--tables', 'small.yaml'),
  input('a fit that is not there', '--fit', 'fit.json'),
  input('a fit that is the system', '--fit', 'small.yaml'),
  usage('an integrator unknown', '--integrator', 'euler'),
  usage('a tolerance of zero', '--tolerance', '0'),
  usage('a tolerance of one', '--tolerance', '1'),
  usage('a tolerance in words', '--tolerance', 'fine'),
  usage('an option unknown', '--colour'),
  usage('an option misspelt', '--dais', '3'),
  usage('a second file', 'other.yaml'),
  input('a save into no folder', '--days', '1', '--quiet', '--save', 'no/such/end.json'),
  { ...input('a CSV into a folder', '--days', '1', '--quiet', '--csv', 'below'), files: { 'below/x': '' } },
];
