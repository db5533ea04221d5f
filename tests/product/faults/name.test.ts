import { expect, it, describe } from 'vitest';
import { edited, messagesOf } from './small-system.js';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'a flow to nowhere',
    edits: [['from: bed, to: sump', 'from: bed, to: smup']],
    messages: ['small.yaml:18:22: flows[2].to: unknown vessel; got "smup"; did you mean sump?'],
  },
  {
    name: 'an unknown reservoir',
    edits: [['reservoir: sump', 'reservoir: pond']],
    messages: ['small.yaml:3:12: reservoir: unknown vessel; got "pond"; expected one of tank, bed, sump'],
  },
  {
    name: 'an unknown pump',
    edits: [['pump: main, rate', 'pump: mian, rate']],
    messages: ['small.yaml:16:35: flows[0].pump: unknown pump; got "mian"; did you mean main?'],
  },
  {
    name: 'an unknown species',
    edits: [['species: nile-tilapia', 'species: nile-talapia']],
    messages: [
      'small.yaml:21:33: fish.tilapia.species: unknown species; got "nile-talapia"; did you mean nile-tilapia?',
    ],
  },
  {
    name: 'an unknown crop',
    edits: [['crop: lettuce-butterhead', 'crop: letuce-butterhead']],
    messages: [
      'small.yaml:23:29: plantings.lettuce.crop: unknown crop; got "letuce-butterhead"; did you mean lettuce-butterhead?',
    ],
  },
  {
    name: 'another word for a crop, misspelt',
    edits: [['crop: lettuce-butterhead', 'crop: letuce']],
    messages: [
      'small.yaml:23:29: plantings.lettuce.crop: unknown crop; got "letuce"; did you mean lettuce-butterhead?',
    ],
  },
  {
    name: 'an unknown feed',
    edits: [['feed: grower-32', 'feed: grower-23']],
    messages: ['small.yaml:21:78: fish.tilapia.feed: unknown feed; got "grower-23"; did you mean grower-32?'],
  },
  {
    name: 'an unknown medium',
    edits: [['volume: 500 L', 'volume: 500 L, media: { type: pumise, volume: 10 L }']],
    messages: [
      'small.yaml:12:53: vessels.sump.media.type: unknown medium; got "pumise"; did you mean pumice?',
    ],
  },
  {
    name: 'an unknown product',
    edits: [['product: potassium-bicarbonate', 'product: potassium-bicarb']],
    messages: [
      'small.yaml:25:28: dosing[0].product: unknown product; got "potassium-bicarb"; did you mean potassium-bicarbonate?',
    ],
  },
  {
    name: 'an unknown water',
    edits: [['from: [mains]', 'from: [manes]']],
    messages: [
      'small.yaml:19:47: top-up.from[0]: unknown water; got "manes"; expected one of rain-tank, mains',
    ],
  },
  {
    name: 'fish in no vessel',
    edits: [['in: tank', 'in: tnak']],
    messages: ['small.yaml:21:18: fish.tilapia.in: unknown vessel; got "tnak"; did you mean tank?'],
  },
  {
    name: 'a planting in no vessel',
    edits: [['in: bed', 'in: bde']],
    messages: ['small.yaml:23:18: plantings.lettuce.in: unknown vessel; got "bde"; did you mean bed?'],
  },
  {
    name: 'an action on a cohort that is not there',
    edits: [
      ['pump-off: main', 'lose-fish: { cohort: trout, share: 1 }'],
      [', for: 6 h', ''],
    ],
    messages: [
      'small.yaml:30:38: actions[0].lose-fish.cohort: unknown cohort; got "trout"; expected one of tilapia',
    ],
  },
  {
    name: 'an action on a planting that is not there',
    edits: [
      ['pump-off: main', 'leave-empty: basil'],
      [', for: 6 h', ''],
    ],
    messages: [
      'small.yaml:30:30: actions[0].leave-empty: unknown planting; got "basil"; expected one of lettuce',
    ],
  },
  {
    name: 'an unknown number of the tables',
    edits: [['days: 30', 'days: 30\nparameters: { fish.nile-tilapia.body-nitrogn: 0.03 }']],
    messages: [
      'small.yaml:3:15: parameters.fish.nile-tilapia.body-nitrogn: no such number in the tables; did you mean fish.nile-tilapia.body-nitrogen?',
    ],
  },
  {
    name: 'a number of the tables out of sense',
    edits: [['days: 30', 'days: 30\nparameters: { fish.nile-tilapia.body-nitrogen: -1 }']],
    messages: [
      'small.yaml:3:48: parameters.fish.nile-tilapia.body-nitrogen: fish.nile-tilapia.body-nitrogen is below zero; got -1; expected zero or more',
    ],
  },
  {
    name: 'one bad vessel hides no other, and is no second fault elsewhere',
    edits: [
      ['tank: { kind: fish-tank, volume: 1 m3', 'tank: { kind: fish-tank, volume: 1 kg'],
      ['volume: 500 L', 'volume: 500'],
      ['days: 30', 'days: -1'],
    ],
    messages: [
      'small.yaml:2:7: days: out of range; got -1; expected a number from 0.001 to 36525',
      'small.yaml:10:36: vessels.tank.volume: wrong dimension: this is a mass; got "1 kg"; expected a volume such as "1.8 m3" or "450 L"',
      'small.yaml:12:31: vessels.sump.volume: a number without a unit; got 500; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
];

describe('messages about names', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });
});
