import { describe, expect, it } from 'vitest';
import { edited, messagesOf } from './small-system.js';

const off = 'for: 6 h, pump-off: main';
const rain = '\nrain-tank: { capacity: 1 m3, volume: 0 L, roof: 1 m2, rain: 0 mm/d, water: soft }\nstart:';
const soft = '  soft: { like: soft-mains }\n  mains:';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'a cap that is no flow',
    edits: [['from: [mains]', 'from: [{ water: mains, cap: 1 m3 }]']],
    messages: [
      'small.yaml:19:68: top-up.from[0].cap: wrong dimension: this is a volume; got "1 m3"; expected water a day or a week such as "160 L/d" or "1 m3/week"',
    ],
  },
  {
    name: 'a bare cap',
    edits: [['from: [mains]', 'from: [{ water: mains, cap: 160 }]']],
    messages: [
      'small.yaml:19:68: top-up.from[0].cap: a number without a unit; got 160; expected water a day or a week such as "160 L/d" or "1 m3/week"',
    ],
  },
  {
    name: 'a cover above the whole',
    edits: [['area: 4 m2, light', 'area: 4 m2, cover: 120 %, light']],
    messages: [
      'small.yaml:23:68: plantings.lettuce.cover: out of range; got "120 %"; expected a share from 0 to 1, such as "60 %" or 0.6',
    ],
  },
  {
    name: 'carted water for the reservoir without its name',
    edits: [[off, 'cart-water: { volume: 1 m3 }']],
    messages: ['small.yaml:30:17: actions[0].cart-water.water: missing; expected a name of `waters`'],
  },
  {
    name: 'carted water that is not in the file',
    edits: [[off, 'cart-water: { volume: 1 m3, water: manes }']],
    messages: [
      'small.yaml:30:52: actions[0].cart-water.water: unknown water; got "manes"; expected one of mains',
    ],
  },
  {
    name: 'carted water for a rain tank that is not there',
    edits: [[off, 'cart-water: { volume: 1 m3, into: rain-tank }']],
    messages: [
      'small.yaml:30:51: actions[0].cart-water.into: no rain tank in this file; got "rain-tank"; expected a section rain-tank',
    ],
  },
  {
    name: 'carted water of another kind than the rain tank holds',
    edits: [
      [off, 'cart-water: { volume: 1 m3, water: mains }'],
      ['\nstart:', rain],
      ['  mains:', soft],
    ],
    messages: [
      'small.yaml:32:52: actions[0].cart-water.water: not what the rain tank holds; got "mains"; expected soft, or into: reservoir',
    ],
  },
];

describe('messages about supplies', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });
});
