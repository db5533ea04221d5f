import {
  openModel,
  openScenarioText,
  planAim,
  planQuantity,
  simulate,
  usualQuantities,
  withRation,
  adviceOutcome,
  planWeeks,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { messageOf } from '../../../../support/message-of.js';
import { smallSystem } from '../../../../support/small-text.js';

const text = `${smallSystem}actions:
  - { at: 3 d, harvest-fish: { cohort: tilapia, number: 10 } }
  - { at: 4 d, stock: { cohort: tilapia, number: 5, mass: 20 g } }
dosing:
  - { into: sump, product: potassium-bicarbonate, mass: 20 g, at: 2 d, every: 3 d }
prices: { feed: 2 per kg, fish: 10 per kg }
`;
const { reading } = openScenarioText(text, { file: 'small.yaml', days: 16 });
const { scenario } = reading;
const { plain } = reading.resolved;
const model = openModel(reading).model;
const run = simulate(model);

describe('what is planned', () => {
  it('takes all beds in proportion', () => {
    const beds = planQuantity('beds=1 m2:4 m2', scenario, plain);
    expect(beds.apply(plain, 3)).toMatchObject({ plantings: { lettuce: { area: '3 m2' } } });
  });

  it('takes all fish in proportion, with what is put in and taken out', () => {
    const fish = planQuantity('fish=6:120', scenario, plain);
    const half = fish.apply(plain, 30);
    expect(half).toMatchObject({
      fish: { tilapia: { number: 30, ration: '1.5 %/d' } },
      actions: [{ 'harvest-fish': { number: 5 } }, { stock: { number: 3 } }],
    });
  });

  it('takes a value of the file by its path', () => {
    const flow = planQuantity('flows[0].rate=1 m3/h:3 m3/h', scenario, plain);
    expect(flow.apply(plain, 2.5)).toMatchObject({ flows: [{ rate: '2.5 m3/h' }, {}, {}, {}] });
  });

  it('is beds and fish where nobody says', () => {
    expect(usualQuantities(scenario).map(({ name, from, to }) => [name, from, to])).toEqual([
      ['beds', 0.4, 4],
      ['fish', 6, 120],
    ]);
  });

  it.each([
    ['beds', 'not a quantity with two ends'],
    ['beds=1:4', 'not two areas above 0'],
    ['fish=1.5:4', 'not two numbers of fish'],
    ['vessels.tnk.volume=1 m3:2 m3', 'vessels.tnk.volume: no such entry'],
    ['fish=9:4', 'an empty range'],
  ])('refuses %s', (given, problem) => {
    expect(messageOf(() => planQuantity(given, scenario, plain))).toContain(problem);
  });

  it('caps every water but rain', () => {
    expect(withRation(plain, '30 L/d')).toMatchObject({
      'top-up': { from: [{ water: 'mains', cap: '30 L/d' }] },
    });
    expect(messageOf(() => withRation({}, '30 L/d'))).toContain('--ration');
  });
});

describe('an aim', () => {
  it('is of a run, in a word or by a measure', () => {
    const outcome = adviceOutcome(run);
    const of = (words: string): number => planAim(words, model).of(run, outcome);
    expect(of('most harvest')).toBe(outcome.crops);
    expect(of('least water')).toBe(outcome.water);
    expect(of('most last fish-mass@tilapia')).toBeGreaterThan(0);
    // 2 a kg of feed, 10 a kg of fish taken out.
    const taken = run.events.find(({ kind }) => kind === 'harvest-fish')?.text ?? '';
    const grams = Number(/, ([\d.]+) g/.exec(taken)?.[1]);
    expect(of('most income')).toBeCloseTo(grams / 100 - 2 * outcome.feed, 2);
  });

  it('is refused where it is none', () => {
    expect(messageOf(() => planAim('harvest', model))).toContain('not an aim');
    expect(messageOf(() => planAim('most hrvest', model))).toContain('no such statistic');
  });
});

describe('the weeks of a plan', () => {
  it('add up to what the run did', () => {
    const weeks = planWeeks(run);
    expect(weeks.map(({ from }) => from)).toEqual([0, 7, 14]);
    const given = weeks.map(({ feed }, i) => feed[0].perDay * (i === 2 ? 2 : 7)).reduce((a, b) => a + b, 0);
    expect(given / 1000).toBeCloseTo(adviceOutcome(run).feed, 9);
    // On days 2, 5, 8, 11 and 14.
    expect(weeks.map(({ doses }) => doses.map(({ mass }) => mass))).toEqual([[40], [40], [20]]);
    expect(weeks[0].fishOut).toMatchObject([{ cohort: 'tilapia', number: expect.closeTo(10, 6) as number }]);
    expect(weeks[0].fishIn).toMatchObject([{ cohort: 'tilapia', number: 5 }]);
    const out = weeks.flatMap(({ setOut }) => setOut);
    const gave = weeks.flatMap(({ gives }) => gives).reduce((total, { mass }) => total + mass, 0);
    expect(gave / 1000).toBeCloseTo(adviceOutcome(run).crops, 9);
    // A batch of 2 m2, 22 plants on each.
    expect(out).toEqual([{ planting: 'lettuce', area: 2, plants: 44 }]);
  });
});
