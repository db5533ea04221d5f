import { expect, it, describe } from 'vitest';
import { edited, messagesOf } from './small-system.js';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'an unknown key at the top',
    edits: [['days: 30', 'days: 30\nvesels: {}']],
    messages: ['small.yaml:3:1: vesels: unknown key; did you mean vessels?'],
  },
  {
    name: 'an unknown key that resembles none',
    edits: [['days: 30', 'days: 30\nzzz: 1']],
    messages: [
      'small.yaml:3:1: zzz: unknown key; expected one of include, version, title, note, days, every, start-date, reservoir, seed, climate, waters, vessels, pumps, flows, top-up, rain-tank, fish, plantings, dosing, control, drain-solids, start, actions, rules, prices, display, tables, parameters',
    ],
  },
  {
    name: 'an unknown key of a vessel',
    edits: [['volume: 500 L', 'volum: 500 L']],
    messages: [
      'small.yaml:12:3: vessels.sump.volume: missing; expected a volume such as "1.8 m3" or "450 L"',
      'small.yaml:12:23: vessels.sump.volum: unknown key; did you mean volume?',
    ],
  },
  {
    name: 'a missing title',
    edits: [['title: Small\n', '']],
    messages: ['small.yaml:1:1: title: missing; expected what the system is called'],
  },
  {
    name: 'a missing key of a flow',
    edits: [['from: bed, to: sump', 'from: bed']],
    messages: ['small.yaml:18:5: flows[2].to: missing; expected the vessel it enters'],
  },
  {
    name: 'a feed said by its protein alone, which tells no oxygen demand',
    edits: [['feed: grower-32', 'protein: 40 %']],
    messages: [
      'small.yaml:21:3: fish.tilapia.feed: missing; expected one of grower-32, starter-42, carnivore-45, low-25, trout-42',
    ],
  },
  {
    name: 'an empty value',
    edits: [['volume: 500 L', 'volume:']],
    messages: [
      'small.yaml:12:30: vessels.sump.volume: missing; expected a volume such as "1.8 m3" or "450 L"',
    ],
  },
  {
    name: 'an unknown kind',
    edits: [['kind: raft-bed', 'kind: cistern']],
    messages: [
      'small.yaml:11:16: vessels.bed.kind: unknown word; got "cistern"; expected one of fish-tank, settler, screen, biofilter, media-bed, raft-bed, channel, sump, vessel',
    ],
  },
  {
    name: 'an unknown kind close to one',
    edits: [['kind: raft-bed', 'kind: raftbed']],
    messages: [
      'small.yaml:11:16: vessels.bed.kind: unknown word; got "raftbed"; expected one of fish-tank, settler, screen, biofilter, media-bed, raft-bed, channel, sump, vessel; did you mean raft-bed?',
    ],
  },
  {
    name: 'a list for a map of names',
    edits: [['pumps:\n  main: { inlet: 50 L, restart: 80 L }', 'pumps: [main]']],
    messages: [
      'small.yaml:13:1: pumps: wrong kind of value; got a list of 1; expected a map of names',
      'small.yaml:15:35: flows[0].pump: unknown pump; got "main"; expected a pump of this file, which has none',
      'small.yaml:29:37: actions[0].pump-off: unknown pump; got "main"; expected a pump of this file, which has none',
    ],
  },
  {
    name: 'a name that cannot be one',
    edits: [
      ['  bed: {', '  bed@2: {'],
      ['to: bed }', 'to: bed@2 }'],
      ['from: bed,', 'from: bed@2,'],
      ['in: bed', 'in: bed@2'],
    ],
    messages: [
      'small.yaml:11:3: vessels.bed@2: not a name; got "bed@2"; expected a letter, then letters, digits, - and _, at most 64',
    ],
  },
  {
    name: 'days of zero',
    edits: [['days: 30', 'days: 0']],
    messages: ['small.yaml:2:7: days: out of range; got 0; expected a number from 0.001 to 36525'],
  },
  {
    name: 'no area',
    edits: [['kind: sump, volume: 500 L, area: 1 m2', 'kind: sump, volume: 500 L']],
    messages: [
      'small.yaml:12:3: vessels.sump.area: missing; expected the area seen from above, or open, covered and floor',
    ],
  },
  {
    name: 'a planting without area',
    edits: [[', area: 4 m2, light', ', light']],
    messages: [
      'small.yaml:23:3: plantings.lettuce.area: missing; expected an area such as "12 m2" or "130 ft2"',
    ],
  },
  {
    name: 'a date that does not exist',
    edits: [['days: 30', 'days: 30\nstart-date: 2026-02-30']],
    messages: [
      'small.yaml:3:13: start-date: no such date; got "2026-02-30"; expected a date such as 2026-03-01',
    ],
  },
  {
    name: 'an unknown biofilm',
    edits: [['biofilm: cycled', 'biofilm: ripe']],
    messages: [
      'small.yaml:27:12: start.biofilm: unknown word; got "ripe"; expected cycled, uncycled, a share of cycled such as "40 %", or a map of aob and nob',
    ],
  },
];

describe('messages about keys', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });

  it('no vessel at all', () => {
    const text =
      'title: x\ndays: 1\nreservoir: sump\nclimate: { et0: 0 mm/d }\nstart: { biofilm: cycled, water: { like: rain } }\n';
    expect(messagesOf(text)).toEqual(['small.yaml:1:1: vessels: missing; expected at least one vessel']);
  });
});
