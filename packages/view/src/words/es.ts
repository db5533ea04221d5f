import type { Words } from './en.js';
import { advice } from './es/advice.js';
import { compare } from './es/compare.js';
import { evidence } from './es/evidence.js';
import { names } from './es/names.js';
import { pictures } from './es/pictures.js';
import { plan } from './es/plan.js';
import { plot } from './es/plot.js';
import { report } from './es/report.js';
import { run } from './es/run.js';
import { text } from './es/text.js';
import { verdict } from './es/verdict.js';
import { why } from './es/why.js';

/** Every phrase in Spanish, in the words of the trade: TAN is nitrógeno amoniacal total. */
export const es: Words = {
  language: 'es',
  locale: 'es',
  lists: 'es',
  ...{ advice, compare, evidence, names, pictures, plan, plot, report, run, text, verdict, why },
};
