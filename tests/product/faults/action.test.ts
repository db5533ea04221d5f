import { expect, it, describe } from 'vitest';
import { edited, messagesOf } from './small-system.js';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'before its start',
    edits: [['at: 10 d', 'at: 2000-06-01']],
    messages: [
      'small.yaml:30:11: actions[0].at: before the start of the run; got "2000-06-01"; expected day 0 to before day 30',
    ],
  },
  {
    name: 'a time without a unit',
    edits: [['at: 10 d', 'at: 10']],
    messages: [
      'small.yaml:30:11: actions[0].at: a number without a unit; got 10; expected a time after the start such as "30 d", or a date such as 2026-03-01',
    ],
  },
  {
    name: 'a bad date',
    edits: [['at: 10 d', 'at: 2001-13-01']],
    messages: [
      'small.yaml:30:11: actions[0].at: no such date; got "2001-13-01"; expected a time after the start such as "30 d", or a date such as 2026-03-01',
    ],
  },
  {
    name: 'no time',
    edits: [['at: 10 d, for: 6 h, ', '']],
    messages: ['small.yaml:30:5: actions[0].at: missing; expected at, or from and until'],
  },
  {
    name: 'no action',
    edits: [[', pump-off: main', '']],
    messages: [
      'small.yaml:30:5: actions[0]: an action does one thing; got none; expected one of stock, harvest-fish, lose-fish, grade, plant, harvest-crop, leave-empty, feed, top-up, source-water, change-water, cart-water, dose, pump-off, pump-on, air-off, air-on, control-off, control-on, power-cut, clean, medicate, drain-solids',
    ],
  },
  {
    name: 'two actions',
    edits: [['pump-off: main', 'pump-off: main, air-off: tank']],
    messages: [
      'small.yaml:30:5: actions[0]: an action does one thing; got pump-off and air-off; expected one action for each of them',
    ],
  },
  {
    name: 'an action misspelt',
    edits: [['pump-off: main', 'pump-of: main']],
    messages: ['small.yaml:30:27: actions[0].pump-of: unknown key; did you mean pump-off?'],
  },
  {
    name: 'overlapping intervals',
    edits: [
      [
        '- { at: 10 d, for: 6 h, pump-off: main }',
        '- { at: 10 d, for: 6 h, pump-off: main }\n  - { from: 10.1 d, until: 12 d, pump-off: main }',
      ],
    ],
    messages: [
      'small.yaml:31:5: actions[1]: overlapping intervals in which pump main is off; got days 10 to 10.25 and days 10.1 to 12',
    ],
  },
  {
    name: 'a power cut in an interval',
    edits: [
      [
        '- { at: 10 d, for: 6 h, pump-off: main }',
        '- { at: 10 d, for: 6 h, pump-off: main }\n  - { at: 10.2 d, for: 1 h, power-cut: all }',
      ],
    ],
    messages: [
      'small.yaml:31:5: actions[1]: overlapping intervals in which pump main is off; got days 10 to 10.25 and days 10.2 to 10.241667',
    ],
  },
  {
    name: 'what cannot be undone',
    edits: [['pump-off: main', 'dose: { into: sump, product: sodium-bicarbonate, mass: 1 g }']],
    messages: ['small.yaml:30:5: actions[0]: dose cannot be undone; expected at, not an interval'],
  },
  {
    name: 'until before from',
    edits: [['at: 10 d, for: 6 h', 'from: 10 d, until: 9 d']],
    messages: ['small.yaml:30:26: actions[0].until: not after from; got "9 d"; expected a later moment'],
  },
  {
    name: 'until without every',
    edits: [['for: 6 h', 'until: 12 d']],
    messages: [
      'small.yaml:30:24: actions[0].until: until without every; got "12 d"; expected every to repeat, or from and until for an interval',
    ],
  },
  {
    name: 'neither share nor number',
    edits: [['for: 6 h, pump-off: main', 'harvest-fish: { cohort: tilapia }']],
    messages: [
      'small.yaml:30:17: actions[0].harvest-fish: not one way to say how many; expected one of share, number',
    ],
  },
  {
    name: 'a dosing plan without time',
    edits: [['mass: 50 g, every: 7 d', 'mass: 50 g']],
    messages: ['small.yaml:25:5: dosing[0]: no time; expected at, every, or both'],
  },
  {
    name: 'aeration of a vessel without it',
    edits: [['pump-off: main', 'air-off: bed']],
    messages: ['small.yaml:30:36: actions[0].air-off: a vessel without aeration; got "bed"'],
  },
];

describe('messages about actions and plans', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });
});
