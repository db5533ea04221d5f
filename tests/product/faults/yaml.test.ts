import { expect, it, describe } from 'vitest';
import { edited, messagesOf } from './small-system.js';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'a key written twice',
    edits: [['days: 30', 'days: 30\ndays: 31']],
    messages: ['small.yaml:3:1: key written twice; got days'],
  },
  {
    name: 'a tab in the indentation',
    edits: [['  et0: 4 mm/d', '	et0: 4 mm/d']],
    messages: ['small.yaml:6:1: a tab in the indentation: use spaces'],
  },
  {
    name: 'an unclosed bracket',
    edits: [['from: [mains]', 'from: [mains']],
    messages: ['small.yaml:19:53: a bracket that is not closed, or a line that is not set in enough'],
  },
  {
    name: 'two documents',
    edits: [['days: 30', '---\ndays: 30']],
    messages: ['small.yaml:2:1: more than one document in the file: remove the line "---"'],
  },
  {
    name: 'an alias without an anchor',
    edits: [['et0: 4 mm/d', 'et0: *weather']],
    messages: ['small.yaml:6:8: alias without an anchor; got *weather'],
  },
  {
    name: 'a key that is a list',
    edits: [['days: 30', 'days: 30\n? [a, b]\n: 1']],
    messages: ['small.yaml:3:3: a key must be a word'],
  },
  {
    name: 'a bracket that closes nothing: one fault, whatever follows',
    edits: [['days: 30', '}days: 30']],
    messages: ['small.yaml:2:1: not YAML from here on'],
  },
];

describe('messages about the YAML itself', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });
});
