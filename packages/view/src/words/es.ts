import type { Words } from './en.js';
import { advice } from './es/advice.js';
import { names } from './es/names.js';
import { pictures } from './es/pictures.js';
import { text } from './es/text.js';
import { verdict } from './es/verdict.js';

/** Every phrase in Spanish, in the words of the trade: TAN is nitrógeno amoniacal total. */
export const es: Words = {
  language: 'es',
  locale: 'es',
  lists: 'es',
  ...{ advice, names, pictures, text, verdict },
};
