import { describe, expect, it } from 'vitest';
import { readScenarioFully } from '@leat/core';
import { shippedText } from '../../../../support/shipped-scenario.js';

const read = (change: (text: string) => string) =>
  readScenarioFully(change(shippedText('glasshouse')), { file: 'farm.yaml' });
const notesOf = (change: (text: string) => string): readonly string[] => read(change).notes;

describe('other words of the trade', () => {
  it('are understood, each with a note of the name used here', () => {
    const { scenario, notes } = read((text) =>
      text
        .replace('kind: settler', 'kind: clarifier')
        .replace('crop: chard', 'crop: silverbeet')
        .replace('biofilm: cycled', 'filter: mature')
        .replace(
          /^actions:\n/m,
          'actions:\n  - { at: 3 d, mortality: { cohort: growers, number: 1 } }\n  - { at: 4 d, fallow: mint }\n',
        ),
    );
    expect(scenario.vessels.find(({ name }) => name === 'settler')?.kind).toBe('settler');
    expect(scenario.plantings.find(({ name }) => name === 'chard')?.crop).toBe('chard');
    expect(scenario.actions.map(({ action }) => action.kind)).toEqual(
      expect.arrayContaining(['lose-fish', 'leave-empty']),
    );
    for (const [word, ours] of [
      ['clarifier', 'settler'],
      ['silverbeet', 'chard'],
      ['filter', 'biofilm'],
      ['mature', 'cycled'],
      ['mortality', 'lose-fish'],
      ['fallow', 'leave-empty'],
    ])
      expect(notes).toContainEqual(
        expect.stringMatching(
          new RegExp(`^farm\\.yaml:\\d+: ${word} is understood as ${ours}, the name used here$`),
        ),
      );
  });

  it('leave names that people give alone', () => {
    expect(notesOf((text) => text.replaceAll('raft-bed-1', 'clarifier'))).toEqual(notesOf((text) => text));
  });

  it('let a flow be said as turnover of the vessel that it enters', () => {
    const { scenario } = read((text) =>
      text.replace('to: tank-1, pump: main, rate: 2.4 m3/h', 'to: tank-1, pump: main, turnover: 2 1/h'),
    );
    const [flow] = scenario.flows;
    expect(flow.kind === 'pumped' ? flow.rate : 0).toBeCloseTo(2 * 1.8 * 24, 9);
    expect(() => read((text) => text.replace('rate: 2.4 m3/h', 'rate: 2.4 m3/h, turnover: 2 1/h'))).toThrow(
      /turnover: two ways to say how much; expected one of rate, turnover/,
    );
  });

  it('let the factor of a greenhouse go by the month', () => {
    const months = Array.from({ length: 12 }, (_, month) => (month === 9 ? 35 : 70)).join(', ');
    const { scenario } = read((text) =>
      text.replace('greenhouse-factor: 70 %', `greenhouse-factor: { unit: "%", monthly: [${months}] }`),
    );
    const plain = read((text) => text).scenario;
    const values = (et0: typeof plain.et0): readonly number[] => (et0.kind === 'monthly' ? et0.values : []);
    expect(values(scenario.et0)[9]).toBeCloseTo(values(plain.et0)[9] / 2, 12);
    expect(values(scenario.et0)[0]).toBeCloseTo(values(plain.et0)[0], 12);
  });
});
