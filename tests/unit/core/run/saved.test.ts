import { compileModel, createParameters, readScenario, simulate } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { endStateOf } from '../../../../packages/core/src/run/saved.js';
import { smallSystem } from '../../../support/small-text.js';

const run = simulate(
  compileModel(readScenario(smallSystem, { file: 'small.yaml', days: 10 }), createParameters()),
);

describe('endStateOf', () => {
  const state = endStateOf(run);

  it('holds every state by component and place, and every volume', () => {
    expect(state).toMatchObject({ schema: 'leat-state', version: 3, time: 10, date: '2025-03-11' });
    expect(state.volumes).toMatchObject({ tank: 2, filter: 0.3, bed: 1 });
    expect(state.states.map(({ amount }) => amount)).toEqual(Array.from(run.samples[10].y));
    expect(state.states[0]).toMatchObject({ component: 'tan', place: 'tank', vessel: 'tank', unit: 'g N' });
  });

  it('holds the age of each batch that stands, by its name', () => {
    expect(state.ages['lettuce#1']).toBe(24);
  });

  it('holds nothing of how a system is operated that no action has changed', () => {
    const { rations, factors, feeds, waters, pumpsOff, airOff, topUpStopped } = state.operation;
    expect([rations, factors, feeds, waters]).toEqual([{}, {}, {}, {}]);
    expect([pumpsOff, airOff, topUpStopped]).toEqual([[], [], false]);
  });

  it('comes back the same from JSON', () => {
    expect(JSON.parse(JSON.stringify(state))).toEqual(state);
  });
});
