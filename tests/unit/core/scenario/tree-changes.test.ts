import { describe, expect, it } from 'vitest';
import { changesBetween, withChanges } from '../../../../packages/core/src/scenario/file/tree-changes.js';

const a = {
  title: 'before',
  fish: { growers: { ration: '420 g/d', number: 30 }, juveniles: { number: 60 } },
  dosing: [{ into: 'sump', product: 'lime', mass: '1 kg', every: '7 d' }],
  actions: [
    { at: '14 d', stock: { cohort: 'growers', number: 3 } },
    { at: '20 d', 'leave-empty': 'lettuce' },
  ],
};
const b = {
  title: 'after',
  fish: { growers: { ration: '200 g/d', number: 20 }, juveniles: { number: 60 } },
  actions: [
    { at: '10 d', 'leave-empty': 'basil' },
    { at: '14 d', stock: { cohort: 'growers', number: 3 } },
    { at: '60 d', plant: 'basil' },
  ],
  start: { biofilm: 'uncycled' },
};

describe('what two files say otherwise', () => {
  const changes = changesBetween(a, b);

  it('is told by the thing that it is about; titles are no difference', () => {
    expect(changes.map(({ name }) => name)).toEqual([
      'fish.growers',
      'dosing: lime',
      'actions: lettuce',
      'actions: basil',
      'start',
    ]);
    expect(changes[0].pieces.length).toBe(2);
    expect(changesBetween(a, { ...a, title: 'another' })).toEqual([]);
  });

  it('is made one by one, and with all of it one file says what the other does, in its order', () => {
    expect(withChanges(a, b, [])).toEqual(a);
    const whole = withChanges(a, b, changes);
    expect({ ...whole, title: b.title, dosing: undefined }).toEqual({ ...b, dosing: undefined });
    expect(whole['actions']).toEqual(b.actions);
    const [ration] = changes;
    expect(withChanges(a, b, [ration])).toEqual({ ...a, fish: b.fish });
    expect(withChanges(a, b, [changes[1]])['dosing'] ?? []).toEqual([]);
    expect(withChanges(a, b, [changes[3]])['actions']).toEqual([
      a.actions[0],
      a.actions[1],
      b.actions[0],
      b.actions[2],
    ]);
  });

  it('counts items that come twice as often as they come', () => {
    const item = { at: '1 d', dose: 'sump' };
    const [change] = changesBetween({ actions: [item, item] }, { actions: [item] });
    expect(change.pieces).toMatchObject([{ removed: [item], added: [] }]);
  });
});
