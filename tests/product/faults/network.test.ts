import { expect, it, describe } from 'vitest';
import { edited, messagesOf } from './small-system.js';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'a loop without a pump',
    edits: [
      ['from: tank, to: bed }', 'from: tank, to: bed, share: 1 }\n  - { from: bed, to: tank, share: 50 % }'],
      ['from: bed, to: sump }', 'from: bed, to: sump, share: 50 % }'],
    ],
    messages: ['small.yaml:18:5: flows[2]: a loop without a pump; got bed > tank > bed'],
  },
  {
    name: 'no way out',
    edits: [['  - { from: bed, to: sump }\n', '']],
    messages: [
      'small.yaml:11:3: vessels.bed: no way out; expected a flow by gravity, so that its standpipe can pass what flows in',
    ],
  },
  {
    name: 'shares that do not sum to 1',
    edits: [['from: bed, to: sump }', 'from: bed, to: sump, share: 60 % }']],
    messages: [
      'small.yaml:18:35: flows[2].share: shares of what leaves bed do not sum to 1; got a sum of 0.6',
    ],
  },
  {
    name: 'several flows without shares',
    edits: [['from: tank, to: bed }', 'from: tank, to: bed }\n  - { from: tank, to: sump }']],
    messages: [
      'small.yaml:17:5: flows[1].share: missing; expected the share of what leaves tank',
      'small.yaml:18:5: flows[2].share: missing; expected the share of what leaves tank',
    ],
  },
  {
    name: 'more pumped out than flows in',
    edits: [
      [
        'from: tank, to: bed }',
        'from: tank, to: bed }\n  - { from: tank, to: sump, pump: two, rate: 2 m3/h }',
      ],
      ['restart: 80 L }', 'restart: 80 L }\n  two: {}'],
    ],
    messages: [
      'small.yaml:10:3: vessels.tank: more drawn out than flows in with everything running; got 48 m3/d out, 24 m3/d in',
    ],
  },
  {
    name: 'a vessel that no water reaches',
    edits: [
      ['  sump: { kind', '  pond: { kind: vessel, volume: 1 m3, area: 1 m2 }\n  sump: { kind'],
      ['from: bed, to: sump }', 'from: bed, to: sump }\n  - { from: pond, to: sump }'],
    ],
    messages: ['small.yaml:12:3: vessels.pond: no water reaches it from the reservoir'],
  },
  {
    name: 'gravity out of the reservoir',
    edits: [['from: sump, to: tank, pump: main, rate: 1 m3/h', 'from: sump, to: tank']],
    messages: [
      'small.yaml:14:3: pumps.main: no flow names this pump',
      'small.yaml:16:13: flows[0].from: a flow by gravity out of the reservoir; got "sump"; expected a pump and a rate',
    ],
  },
  {
    name: 'a flow from a vessel to itself',
    edits: [['from: tank, to: bed', 'from: tank, to: tank']],
    messages: ['small.yaml:17:23: flows[1].to: a flow from a vessel to itself; got "tank"'],
  },
  {
    name: 'a rate without a pump',
    edits: [['pump: main, rate: 1 m3/h', 'rate: 1 m3/h']],
    messages: [
      'small.yaml:16:5: flows[0].pump: missing; expected pump and rate for a pumped flow, or share for a flow by gravity',
    ],
  },
  {
    name: 'an inlet above the water',
    edits: [['inlet: 50 L', 'inlet: 600 L']],
    messages: [
      'small.yaml:14:18: pumps.main.inlet: inlet above the water of sump; got "600 L"; expected less than 0.5 m3',
    ],
  },
  {
    name: 'a restart at the inlet',
    edits: [['restart: 80 L', 'restart: 50 L']],
    messages: [
      'small.yaml:14:33: pumps.main.restart: not above the inlet; got "50 L"; expected between inlet and 0.5 m3',
    ],
  },
  {
    name: 'an inlet not written',
    edits: [['{ inlet: 50 L, restart: 80 L }', '{}']],
    messages: [
      'small.yaml:14:3: pumps.main.inlet: missing; expected the volume of the reservoir at which the pump sucks air',
    ],
  },
  {
    name: 'a top-up above the overflow',
    edits: [['level: 400 L', 'level: 600 L']],
    messages: [
      'small.yaml:19:18: top-up.level: above the overflow of sump; got "600 L"; expected at most 0.5 m3',
    ],
  },
  {
    name: 'a rain tank that is not there',
    edits: [['from: [mains]', 'from: [rain-tank, mains]']],
    messages: [
      'small.yaml:19:47: top-up.from[0]: no rain tank in this file; got "rain-tank"; expected a section rain-tank',
    ],
  },
  {
    name: 'a planting larger than its bed',
    edits: [['area: 4 m2, light', 'area: 40 m2, light']],
    messages: [
      'small.yaml:23:55: plantings.lettuce.area: larger than bed; got "40 m2"; expected at most 4 m2',
    ],
  },
  {
    name: 'a vessel that starts half full',
    edits: [['water: { like: mains }', 'water: { like: mains }\n  vessels: { tank: { volume: 0.5 m3 } }']],
    messages: [
      'small.yaml:29:30: start.vessels.tank.volume: only the reservoir may start below its full volume; got "0.5 m3"; expected 1 m3',
    ],
  },
];

describe('messages about the network', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });

  it('too many vessels', () => {
    const one = (_: unknown, index: number): string =>
      `  v${index}: { kind: vessel, volume: 1 m3, area: 1 m2 }\n`;
    const text = edited(['  tank: {', `${Array.from({ length: 4998 }, one).join('')}  tank: {`]);
    expect(messagesOf(text)).toEqual([
      'small.yaml:9:1: vessels: too many entries; got 5001; expected at most 5000',
    ]);
  });
});
