import { describe, expect, it } from 'vitest';
import { endStateOf } from '../../../../packages/core/src/result/record.js';
import { smallRun } from './small-run.js';

describe('endStateOf', () => {
  it('holds every state by component and place, and every volume', () => {
    const run = smallRun();
    const state = endStateOf(run);
    expect(state).toMatchObject({
      schema: 'leat-state',
      version: 1,
      time: 10,
      volumes: { tank: 2, sump: 1.2 },
    });
    expect(state.states.map(({ amount }) => amount)).toEqual(Array.from(run.samples[10].y));
    expect(state.states[0]).toMatchObject({ component: 'tan', place: 'tank', vessel: 'tank', unit: 'g N' });
  });

  it('holds the age of each batch that stands, by its name', () => {
    expect(endStateOf(smallRun()).ages).toEqual({ 'lettuce#1': 30 });
  });

  it('comes back the same from JSON', () => {
    const state = endStateOf(smallRun());
    expect(JSON.parse(JSON.stringify(state))).toEqual(state);
  });
});
