import { expect, it, describe } from 'vitest';
import { edited, messagesOf, smallSystem } from './small-system.js';

/** What is changed in the small system, and every message that follows. */
const cases: { name: string; edits: [string, string][]; messages: string[] }[] = [
  {
    name: 'an include that cannot be read',
    edits: [['days: 30', 'days: 30\ninclude: base.yaml']],
    messages: ['small.yaml:3:10: include: other files cannot be read here; got "base.yaml"'],
  },
];

describe('messages about what is given beside the file', () => {
  it.each(cases)('$name', ({ edits, messages }) => {
    expect(messagesOf(edited(...edits))).toEqual(messages);
  });

  it('set of an unknown entry', () => {
    expect(messagesOf(smallSystem, { set: [{ path: 'vessels.tnak.volume', value: '2 m3' }] })).toEqual([
      '--set: vessels.tnak: no such entry; did you mean tank?',
    ]);
  });

  it('set of an unknown section', () => {
    expect(messagesOf(smallSystem, { set: [{ path: 'vessles.tank.volume', value: '2 m3' }] })).toEqual([
      '--set: vessles: no such entry; did you mean vessels?',
    ]);
  });

  it('set of an unknown key', () => {
    expect(messagesOf(smallSystem, { set: [{ path: 'vessels.tank.volum', value: '2 m3' }] })).toEqual([
      '--set: vessels.tank.volum: unknown key; did you mean volume?',
    ]);
  });

  it('set of a wrong dimension', () => {
    expect(messagesOf(smallSystem, { set: [{ path: 'vessels.tank.volume', value: '2 kg' }] })).toEqual([
      '--set: vessels.tank.volume: wrong dimension: this is a mass; got "2 kg"; expected a volume such as "1.8 m3" or "450 L"',
    ]);
  });

  it('set beyond a list', () => {
    expect(messagesOf(smallSystem, { set: [{ path: 'flows[7].rate', value: '2 m3/h' }] })).toEqual([
      '--set: flows[7]: no such place in the list; got 7; expected a number from 0 to 2',
    ]);
  });

  it('set below a single value', () => {
    expect(messagesOf(smallSystem, { set: [{ path: 'days.x', value: '2' }] })).toEqual([
      '--set: days.x: nothing can stand below a single value',
    ]);
  });

  it('days out of range', () => {
    expect(messagesOf(smallSystem, { days: -1 })).toEqual([
      '--days: out of range; got -1; expected a number of days above 0, at most 36525',
    ]);
  });

  it('an output step that is no time', () => {
    expect(messagesOf(smallSystem, { every: '1 kg' })).toEqual([
      '--every: wrong dimension: this is a mass; got "1 kg"; expected a time such as "30 d" or "6 h"',
    ]);
  });
});
