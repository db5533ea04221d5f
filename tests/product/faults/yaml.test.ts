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
  ...['%YAML 1.1', '%YAML 1.2', '%TAG ! tag:example.org,2000:', '%OTHER'].map((directive) => ({
    name: `a directive: ${directive}`,
    edits: [['title:', `# What is this?\n\n${directive}\n---\ntitle:`]] as [string, string][],
    messages: [
      `small.yaml:3:1: a directive of YAML; got "${directive}"; expected no line that begins with %: a file is read as YAML 1.2`,
    ],
  })),
  ...[
    ['!!timestamp 2025-03-01', '2025-03-01', '3:25'],
    ['!!binary MjAyNQ==', 'MjAyNQ==', '3:22'],
  ].map(([value, got, at]) => ({
    name: `a tag that makes no value: ${value}`,
    edits: [['days: 30', `days: 30\nstart-date: ${value}`]] as [string, string][],
    messages: [
      `small.yaml:${at}: a value of a kind that is not read; got "${got}"; expected text, a number, true or false, without a tag such as !!timestamp`,
    ],
  })),
];

describe('messages about the YAML itself', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });
});
