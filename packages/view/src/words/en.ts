import { advice } from './en/advice.js';
import { compare } from './en/compare.js';
import { evidence } from './en/evidence.js';
import { names } from './en/names.js';
import { pictures } from './en/pictures.js';
import { plan } from './en/plan.js';
import { plot } from './en/plot.js';
import { report } from './en/report.js';
import { run } from './en/run.js';
import { text } from './en/text.js';
import { verdict } from './en/verdict.js';
import { why } from './en/why.js';

/** Every phrase in English, by what it is said of. Another language has the same keys (`es: Words`). */
export const en = {
  /** BCP 47: how numbers, dates, lists and plural forms are told. */
  language: 'en',
  /** For numbers and names of months; for lists (without a comma before `and`). */
  locale: 'en-US',
  lists: 'en-GB',
  ...{ advice, compare, evidence, names, pictures, plan, plot, report, run, text, verdict, why },
};

/** The phrases of a language. */
export type Words = typeof en;
