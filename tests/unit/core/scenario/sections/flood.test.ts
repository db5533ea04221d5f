import { describe, expect, it } from 'vitest';
import { readScenario } from '../../../../../packages/core/src/scenario/read-scenario.js';
import { messagesOf, smallSystem } from '../../../../product/faults/small-system.js';

/** The small system with some more keys of its bed. */
const withBed = (keys: string): string =>
  smallSystem.replace('{ kind: raft-bed', `{ ${keys}, kind: raft-bed`);
const bedOf = (text: string) =>
  readScenario(text, { file: 'small.yaml' }).vessels.find(({ kind }) => kind === 'raft-bed');

describe('a bed that floods and drains, averaged, as written', () => {
  it('drains so much a day as each time and how often say', () => {
    expect(bedOf(withBed('flood: { drained: 150 L, cycles: 2 1/h }'))?.flooded).toBeCloseTo(7.2, 12);
    expect(bedOf(smallSystem)).not.toHaveProperty('flooded');
  });

  it('drains by an outlet that is always open, or by a siphon', () => {
    const drain = { rate: expect.closeTo(28.8, 9) as number, to: 0.1 };
    expect(bedOf(withBed('drain: { rate: 20 L/min, to: 100 L }'))?.drain).toEqual(drain);
    expect(bedOf(withBed('drain: { rate: 20 L/min, to: 100 L, by: siphon }'))?.drain).toEqual({
      ...drain,
      by: 'siphon',
    });
  });

  it.each([
    ['flood: { drained: 9000 L, cycles: 2 1/h }', 'more than the vessel holds'],
    ['flood: { drained: 0 L, cycles: 2 1/h }', 'flood.drained'],
    ['flood: { drained: 100 L }', 'flood.cycles'],
    [
      'flood: { drained: 100 L, cycles: 2 1/h }, drain: { rate: 20 L/min, to: 100 L }',
      'a bed drains by `drain` or, averaged, by `flood`',
    ],
    ['drain: { rate: 20 L/min, to: 100 L, by: syphon }', 'did you mean siphon?'],
  ])('%s is refused', (keys, message) => {
    expect(messagesOf(withBed(keys)).join()).toContain(message);
  });
});
