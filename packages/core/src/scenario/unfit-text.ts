import type { Fault } from '../errors.js';
import { nestingBound } from './nesting.js';

/**
 * Longest text of YAML, characters; most marks in it (what opens, closes or parts values), which bound what the parser
 * makes of it; deepest nesting, and the bound on it above which a text is not even parsed.
 */
export const yamlLimits = { characters: 2_000_000, marks: 250_000, depth: 40, bound: 200 };

const marks: ReadonlySet<string> = new Set('\n,:-?[]{}&*!|>#');

/** How many marks of YAML a text holds, those in quotes and comments too. */
export function yamlMarks(text: string): number {
  let count = 0;
  for (const sign of text) if (marks.has(sign)) count += 1;
  return count;
}

/** Why a text is no YAML that is worth parsing, found without parsing it; undefined where it may be. */
export function unfitText(text: string, file: string): Fault | undefined {
  const { characters, marks: most, depth, bound } = yamlLimits;
  if (text.length > characters) {
    return { file, problem: 'too long', got: `${text.length} characters`, expected: `at most ${characters}` };
  }
  const hidden = text.indexOf('\0');
  if (hidden >= 0) {
    const line = text.slice(0, hidden).split('\n').length;
    return { file, line, problem: 'not text', expected: 'a text file (YAML, UTF-8)' };
  }
  const count = yamlMarks(text);
  if (count > most) {
    const got = `${count} line ends, commas, colons and other marks of YAML`;
    return { file, problem: 'too much in one file', got, expected: `at most ${most}` };
  }
  return nestingBound(text) > bound ? { file, problem: `nested more than ${depth} deep` } : undefined;
}
