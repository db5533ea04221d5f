import { describe, expect, it } from 'vitest';
import { verbReaders } from '../../../packages/core/src/scenario/sections/action-verbs.js';
import { edited, messagesOf, smallSystem } from './small-system.js';

const good = {
  when: '{ read: alkalinity, in: sump, below: 4 dKH }',
  do: '{ dose: { into: sump, product: potassium-bicarbonate, mass: 20 g } }',
  wait: '3 d',
};

const verbs = Object.keys(verbReaders).join(', ');

/** The small system with one rule: the good one with some parts replaced, or left out where empty. */
function withRule(parts: Record<string, string>): string {
  const written = Object.entries({ ...good, ...parts }).filter(([, value]) => value !== '');
  return `${smallSystem}rules:\n  - { ${written.map(([key, value]) => `${key}: ${value}`).join(', ')} }\n`;
}

/** What is changed in a good rule, and what is said about it, after the place. */
const cases: [name: string, parts: Record<string, string>, messages: string[]][] = [
  [
    'that would fire for ever',
    { wait: '' },
    [
      '32:5: rules[0]: a rule that could fire for ever; got dose at every reading; expected one or more of wait, most, when.until',
    ],
  ],
  [
    'that would fire for ever on reading days',
    { wait: '', kit: '{ every: 7 d }' },
    [
      '32:5: rules[0]: a rule that could fire for ever; got dose at every reading; expected one or more of wait, most, when.until',
    ],
  ],
  [
    'with no level',
    { when: '{ read: pH, in: sump }' },
    ['32:7: rules[0].when: not one level to act on; expected one of above, below'],
  ],
  [
    'with two levels',
    { when: '{ read: pH, in: sump, above: 8, below: 6 }' },
    ['32:7: rules[0].when: not one level to act on; expected one of above, below'],
  ],
  [
    'on an unknown vessel',
    { when: '{ read: pH, in: smup, below: 6 }' },
    ['32:29: rules[0].when.in: unknown vessel; got "smup"; did you mean sump?'],
  ],
  [
    'on what nobody reads',
    { when: '{ read: nitrat, in: sump, below: 6 }' },
    [
      '32:21: rules[0].when.read: unknown word; got "nitrat"; expected one of ammonia, nitrite, nitrate, pH, alkalinity, oxygen, temperature, chloride, volume, conductivity, fish-mass, rain-tank; did you mean nitrate?',
    ],
  ],
  [
    'with a bare number',
    { when: '{ read: nitrate, in: sump, above: 6 }' },
    [
      '32:47: rules[0].when.above: a number without a unit; got 6; expected a nitrate nitrogen such as "20 mg N/L" or "90 mg/L as NO3"',
    ],
  ],
  [
    'with an ambiguous unit',
    { when: '{ read: ammonia, in: sump, above: 2 mg/L }' },
    [
      '32:47: rules[0].when.above: ambiguous unit: it may mean nitrogen or the whole ion; got "2 mg/L"; expected "mg N/L" for nitrogen or "mg/L as NH4" for the ion',
    ],
  ],
  [
    'with a pH that is none',
    { when: '{ read: pH, in: sump, above: 6 mg/L }' },
    ['32:42: rules[0].when.above: not a pH; got "6 mg/L"; expected a number from 0 to 14'],
  ],
  [
    'above a level until above it',
    { when: '{ read: pH, in: sump, above: 7, until: 8 }' },
    [
      '32:52: rules[0].when.until: a rule that acts above a level lets go below it; got 8; expected a level below 7',
    ],
  ],
  [
    'below a level until below it',
    { when: '{ read: alkalinity, in: sump, below: 4 dKH, until: 3 dKH }' },
    [
      '32:64: rules[0].when.until: a rule that acts below a level lets go above it; got "3 dKH"; expected a level above "4 dKH"',
    ],
  ],
  [
    'that does nothing',
    { do: '{}' },
    [`32:59: rules[0].do: an action does one thing; got none; expected one of ${verbs}`],
  ],
  [
    'that does two things',
    { do: '{ plant: lettuce, pump-off: main }' },
    [
      '32:59: rules[0].do: an action does one thing; got plant and pump-off; expected one action for each of them',
    ],
  ],
  [
    'on a crop that is not there',
    { do: '{ plant: letuce }' },
    ['32:72: rules[0].do.plant: unknown planting; got "letuce"; did you mean lettuce?'],
  ],
  [
    'that undoes what is not there',
    { undo: '{ pump-on: mian }' },
    ['32:161: rules[0].undo.pump-on: unknown pump; got "mian"; did you mean main?'],
  ],
  [
    'with a time in its action',
    { do: '{ plant: lettuce, at: 3 d }' },
    [`32:81: rules[0].do.at: unknown key; expected one of ${verbs}`],
  ],
  [
    'read at noon',
    { kit: '{ every: 12 h }' },
    [
      '32:158: rules[0].kit.every: not whole days: readings are taken at day boundaries; got "12 h"; expected a time such as "1 d" or "7 d"',
    ],
  ],
  [
    'with no resolution to speak of',
    { kit: '{ resolution: 0 dKH }' },
    [
      '32:163: rules[0].kit.resolution: must be more than zero; got "0 dKH"; expected a step of the scale, or no such key',
    ],
  ],
  [
    'with a resolution of another kind',
    { kit: '{ resolution: 1 L }' },
    [
      '32:163: rules[0].kit.resolution: wrong dimension: this is a volume; got "1 L"; expected an alkalinity such as "100 mg/L as CaCO3" or "5.6 dKH"',
    ],
  ],
  [
    'with an error of more than all',
    { kit: '{ error: 120 % }' },
    ['32:158: rules[0].kit.error: out of range; got "120 %"; expected more than 0 % to 100 %'],
  ],
  [
    'with a share of pH',
    { when: '{ read: pH, in: sump, below: 6 }', kit: '{ error: 5 % }' },
    [
      '32:146: rules[0].kit.error: no share can be taken of pH; got "5 %"; expected an error in pH, such as 0.2',
    ],
  ],
  [
    'that may never act',
    { most: '0' },
    ['32:150: rules[0].most: out of range; got 0; expected a whole number from 1 to 100000'],
  ],
  [
    'that waits for no time',
    { wait: '0 d' },
    ['32:139: rules[0].wait: must be more than zero; got "0 d"; expected a time such as "30 d" or "6 h"'],
  ],
];

describe('messages about a rule', () => {
  it.each(cases)('%s', (_, parts, messages) => {
    expect(messagesOf(withRule(parts))).toEqual(messages.map((message) => `small.yaml:${message}`));
  });

  it('a seed that is none', () => {
    expect(messagesOf(edited(['days: 30', 'days: 30\nseed: -1']))).toEqual([
      'small.yaml:3:7: seed: out of range; got -1; expected a whole number from 0 to 9007199254740991',
    ]);
  });
});
