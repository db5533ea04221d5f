import { checkScenario, costsOf, openModel, openScenarioText, simulate } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { messageOf } from '../../../support/message-of.js';
import { smallSystem } from '../../../support/small-text.js';

const priced = `${smallSystem}dosing:
  - { into: sump, product: potassium-bicarbonate, mass: 20 g, at: 2 d, every: 3 d }
actions:
  - { at: 3 d, harvest-fish: { cohort: tilapia, number: 10 } }
  - { at: 4 d, change-water: { vessel: tank, volume: 100 L, water: mains } }
prices:
  feed: 2 EUR per kg
  water: 5 per m3
  electricity: 0.5 EUR per kWh
  power: 0.1 kW
  dosing: { potassium-bicarbonate: 4 per kg }
  harvest: { lettuce-butterhead: 0.7 EUR per plant }
  fish: 3 per fish
`;
const read = (text: string) => openScenarioText(text, { file: 'small.yaml', days: 16 }).reading;
const message = (prices: string): string => messageOf(() => read(`${smallSystem}prices: ${prices}\n`));

describe('prices', () => {
  it('are read with their currency, and a run is accounted for by them', () => {
    const reading = read(priced);
    expect(reading.scenario.prices).toMatchObject({
      currency: 'EUR',
      feed: 2,
      power: 100,
      fish: { per: 'fish' },
    });
    const run = simulate(openModel(reading).model);
    const costs = costsOf(run);
    const amounts = Object.fromEntries((costs?.rows ?? []).map(({ name, amount }) => [name, amount]));
    // 0.1 kW for 16 days; five doses of 20 g; ten fish; a batch of 44 plants cut on day 14.
    expect(amounts).toMatchObject({
      electricity: expect.closeTo(0.5 * 0.1 * 24 * 16, 9) as number,
      'potassium-bicarbonate': expect.closeTo(0.4, 9) as number,
      fish: expect.closeTo(30, 6) as number,
      'lettuce-butterhead': expect.closeTo(0.7 * 44, 6) as number,
    });
    const last = run.samples[run.samples.length - 1];
    const valve = run.model.streams.findIndex(({ kind }) => kind === 'top-up');
    expect(amounts['water']).toBeCloseTo(5 * (last.carried[valve] + 0.1), 9);
    expect(costs?.spent).toBeCloseTo(
      amounts['feed'] + amounts['water'] + amounts['electricity'] + amounts['potassium-bicarbonate'],
      9,
    );
    expect(costsOf(simulate(openModel(read(smallSystem)).model))).toBeUndefined();
  });

  it('change nothing in a run', () => {
    const [with_, without] = [priced, priced.slice(0, priced.indexOf('prices:'))].map(
      (text) => simulate(openModel(read(text)).model).samples.at(-1)?.y,
    );
    expect(with_).toEqual(without);
  });

  it.each([
    ['{ feed: 2 }', 'prices.feed: wrong kind of value'],
    ['{ feed: two per kg }', 'prices.feed: not a price'],
    ['{ water: 3 per L }', 'prices.water: a price per another unit'],
    ['{ feed: 2 EUR per kg, water: 3 USD per m3 }', 'prices.water: another currency'],
    ['{ electricity: 0.3 per kWh }', 'prices.power: missing'],
    ['{ power: 60 W }', 'prices.electricity: missing'],
    ['{ power: 60 hp }', 'prices.power: not a power'],
    ['{ dosing: { potasium-bicarbonate: 4 per kg } }', 'did you mean potassium-bicarbonate'],
    ['{ harvest: { basil: 4 per kg } }', 'prices.harvest.basil: unknown crop'],
    ['{ fed: 2 per kg }', 'did you mean feed'],
  ])('of %s are refused: %s', (prices, problem) => {
    expect(message(prices)).toContain(problem);
  });

  it('tells every fault at once', () => {
    const all = message('{ feed: lots, water: 3 per L, dosing: { potasium: 4 per kg } }');
    for (const key of ['prices.feed', 'prices.water', 'prices.dosing.potasium']) expect(all).toContain(key);
  });

  it('are checked alike in a scenario built in code', () => {
    const { scenario } = read(priced);
    expect(
      messageOf(() => {
        checkScenario({
          ...scenario,
          prices: {
            currency: 'EUR',
            feed: -1,
            electricity: 0.3,
            products: [{ name: 'sand', price: 1, per: 'kg' }],
            crops: [{ name: 'basil', price: Number.NaN, per: 'kg' }],
          },
        });
      }),
    ).toMatch(/prices\.feed[\s\S]*prices\.power: missing[\s\S]*unknown product[\s\S]*unknown crop/);
    expect(() => {
      checkScenario(scenario);
    }).not.toThrow();
  });
});
