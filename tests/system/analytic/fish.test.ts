import { describe, expect, it } from 'vitest';
import { InputError } from '../../../packages/core/src/base/faults.js';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../packages/core/src/model/compile.js';
import type { Component } from '../../../packages/core/src/processes/components.js';
import type { Cohort, Scenario } from '../../../packages/core/src/scenario/scenario.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { relativeDeviation } from '../../support/deviation.js';
import { amountOf, doneRun, extentOf, lastOf } from '../../support/run-of.js';
import {
  constant,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../support/scenario-builder.js';

const parameters = createParameters();
const fish = (property: string): number => parameters.value(`fish.nile-tilapia.${property}`);
const general = (property: string): number => parameters.value(`fish.${property}`);
const lean =
  (fish('body-nitrogen') / parameters.value('protein.nitrogen')) * parameters.value('protein.demand');

/** Far more oxygen than fish want, mg/L. */
const OXYGEN = 100;

/** 100 fish of 100 g in so much water that nothing of what they give off is felt. */
function scenario(
  cohort: Partial<Cohort>,
  { oxygen = OXYGEN, temperature = fish('reference-temperature'), days = 20 } = {},
): Scenario {
  const pond = vessel('pond', 1e9, { temperature: constant(temperature) });
  const start = [startOf(pond, { water: stillWater(1e-3, 7.5, { oxygen }) })];
  return scenarioOf([pond], { start, fish: [tilapia('fish', 'pond', cohort)], days });
}

const pond = (...given: Parameters<typeof scenario>): Run => doneRun(scenario(...given), { tolerance: 1e-8 });

const courseOf = (run: Run, component: Component): readonly number[] =>
  run.samples.map((sample) => amountOf(run, sample, component, 'fish'));

const share = (perDay: number) => ({ ration: { kind: 'share', perDay } }) as const;

/** Hazard in sound water at a temperature: what dies there, and what is left of cold and heat far from their limits. */
function hazardAt(temperature: number): number {
  const beyond = (degrees: number): number =>
    (Math.LN2 / 4) * Math.exp(degrees / general('hazard-temperature'));
  const cold = beyond(fish('lethal-temperature-low') - temperature);
  return fish('mortality') + cold + beyond(temperature - fish('lethal-temperature-high'));
}

/** Mass of a fish and its fat, [g, g COD], a day on by 200 steps of the classical fourth order: the law written anew. */
function dayOn([w, f]: readonly [number, number], ration: number): readonly [number, number] {
  const slope = (mass: number, fat: number): readonly [number, number] => {
    const half = general('appetite-oxygen') * fish('limit-oxygen');
    const air = OXYGEN ** 2 / (OXYGEN ** 2 + half ** 2);
    const wanted = fish('appetite') * air * (mass / 100) ** -general('appetite-exponent') * mass;
    const offered = (1 - general('uneaten')) * ration * mass;
    const eaten = offered / (1 + (offered / wanted) ** 10) ** (1 / 10);
    const demand = parameters.value('feed.grower-32.demand');
    const kept = fish('energy-retention') * fish('energy-digestibility') * demand;
    const usual = (fish('body-demand') - lean) * (mass / 100) ** general('fat-exponent');
    const energy = (kept * fat) / (lean * fat + (1 + general('fat-exponent')) * usual ** 2 * mass);
    const nitrogen = 0.32 * parameters.value('protein.nitrogen') * fish('protein-digestibility');
    const protein = (general('protein-retention') * nitrogen) / fish('body-nitrogen');
    const grown = (eaten * energy) / (1 + (energy / protein) ** 4) ** 0.25;
    const burnt =
      fish('energy-retention') *
      fish('maintenance') *
      (OXYGEN / (OXYGEN + general('k-oxygen'))) *
      (mass / 100) ** (general('maintenance-exponent') - 1) *
      mass;
    const fatty = fat / (fat + general('fasting-lean') * mass);
    return [grown - ((1 - fatty) * burnt) / lean, eaten * kept - lean * grown - fatty * burnt];
  };
  const h = 1 / 200;
  let [mass, fat] = [w, f];
  for (let step = 0; step < 200; step++) {
    const a = slope(mass, fat);
    const b = slope(mass + (h / 2) * a[0], fat + (h / 2) * a[1]);
    const c = slope(mass + (h / 2) * b[0], fat + (h / 2) * b[1]);
    const d = slope(mass + h * c[0], fat + h * c[1]);
    mass += (h / 6) * (a[0] + 2 * b[0] + 2 * c[0] + d[0]);
    fat += (h / 6) * (a[1] + 2 * b[1] + 2 * c[1] + d[1]);
  }
  return [mass, fat];
}

/** What the rows of fish made of a component. */
function made(run: Run, component: Component): number {
  return run.model.rows
    .filter(({ id }) => id.endsWith('@fish'))
    .flatMap((row) => row.entries.map((entry) => ({ ...entry, extent: extentOf(run, lastOf(run), row.id) })))
    .filter((entry) => entry.component === component && entry.state >= 0)
    .reduce((sum, entry) => sum + entry.coefficient * entry.extent, 0);
}

describe('fish alone in a pond', () => {
  it('die first order in sound water (exact solution)', () => {
    const run = pond(share(0));
    const k = hazardAt(28);
    const alive = run.samples.map(({ time }) => 100 * Math.exp(-k * time));
    expect(relativeDeviation(courseOf(run, 'fish-number'), alive)).toBeLessThan(1e-7);
  });

  it.each([0, 0.01, 0.025])('fed %f a day, grow and fatten as the law worked out by other code', (ration) => {
    const run = pond(share(ration));
    let one: readonly [number, number] = [100, 100 * (fish('body-demand') - lean)];
    const days = [one, ...Array.from({ length: 20 }, () => (one = dayOn(one, ration)))];
    const alive = courseOf(run, 'fish-number');
    const each = (component: Component) => courseOf(run, component).map((amount, i) => amount / alive[i]);
    expect(
      relativeDeviation(
        each('fish-mass'),
        days.map(([mass]) => mass),
      ),
    ).toBeLessThan(1e-6);
    expect(
      relativeDeviation(
        each('fish-fat'),
        days.map(([, fat]) => fat),
      ),
    ).toBeLessThan(1e-6);
  });

  it('neither gain nor lose energy at their maintenance ration', () => {
    const digested = fish('energy-digestibility') * parameters.value('feed.grower-32.demand');
    const ration = fish('maintenance') / digested / (1 - general('uneaten'));
    const run = pond(share(ration), { days: 1 });
    const [first, last] = [run.samples[0], lastOf(run)].map((sample) => {
      const held = (component: Component): number => amountOf(run, sample, component, 'fish');
      return (lean * held('fish-mass') + held('fish-fat')) / held('fish-number');
    });
    expect(last / first).toBeCloseTo(1, 4);
  });

  it('without oxygen eat nothing, and all feed becomes particles of the same oxygen demand (limit)', () => {
    const run = pond({ ration: { kind: 'mass', gramsPerDay: 40 } }, { oxygen: 0 });
    const last = lastOf(run);
    expect(extentOf(run, last, 'feeding@fish')).toBe(0);
    // All are dead on the first day, and nobody feeds the dead.
    const day = run.events.find(({ kind }) => kind === 'fish-death')?.time ?? Number.NaN;
    expect(day).toBe(1);
    expect(extentOf(run, last, 'uneaten-feed@fish')).toBeCloseTo(40 * day, 9);
    const demand =
      made(run, 'solids') * parameters.value('solids.demand') +
      made(run, 'refractory') * parameters.value('solids.refractory-demand');
    expect(demand).toBeCloseTo(40 * day * parameters.value('feed.grower-32.demand'), 6);
    expect(amountOf(run, last, 'fish-number', 'fish')).toBe(0);
  });

  it('give off 61 % of the nitrogen eaten, dissolved, within 5 points (FAO 589 Appendix 4 [M])', () => {
    const run = pond(share(0.015));
    const eaten = extentOf(run, lastOf(run), 'feeding@fish') * 0.32 * parameters.value('protein.nitrogen');
    const given = (made(run, 'tan') + made(run, 'organic-nitrogen')) / eaten;
    expect(given).toBeGreaterThan(0.56);
    expect(given).toBeLessThan(0.66);
  });

  it('use 400 to 600 g of oxygen per kg of feed at rations of 1.5 and 2 % a day (tilapia, trout [M])', () => {
    for (const ration of [0.015, 0.02]) {
      const run = pond(share(ration));
      const offered = ['feeding@fish', 'uneaten-feed@fish'].map((id) => extentOf(run, lastOf(run), id));
      const perFeed = -made(run, 'oxygen') / (offered[0] + offered[1]);
      expect(perFeed).toBeGreaterThan(0.4);
      expect(perFeed).toBeLessThan(0.6);
    }
  });

  it('neither eat nor grow below the temperatures of their species, and the cold kills them', () => {
    const [cold, warm] = [0, 28].map((temperature) => pond(share(0.02), { temperature }));
    expect(extentOf(cold, lastOf(cold), 'feeding@fish')).toBe(0);
    expect(amountOf(cold, lastOf(cold), 'fish-number', 'fish')).toBeLessThan(0.5);
    expect(amountOf(warm, lastOf(warm), 'fish-number', 'fish')).toBeGreaterThan(99);
    expect(cold.events.map(({ kind, text }) => `${kind}: ${text}`)).toEqual([
      'fish-death: all fish of fish are dead; leading cause: cold',
    ]);
    expect(warm.events).toEqual([]);
  });
});

describe('a measured feed conversion', () => {
  it.each([1.35, 1.7])('of %f comes out at the ration it is given for', (feedConversion) => {
    const run = pond({ ...share(0.02), feedConversion }, { days: 0.01 });
    const last = lastOf(run);
    const offered = extentOf(run, last, 'feeding@fish') + extentOf(run, last, 'uneaten-feed@fish');
    const gain = extentOf(run, last, 'growing@fish') - extentOf(run, last, 'upkeep@fish') / lean;
    expect(offered / gain).toBeCloseTo(feedConversion, 2);
  });

  it('that no fish can have is a fault with its bounds', () => {
    const wrong = (cohort: Partial<Cohort>): readonly unknown[] => {
      try {
        compileModel(scenario(cohort), parameters);
      } catch (error) {
        if (error instanceof InputError) return error.faults;
        throw error;
      }
      return [];
    };
    expect(wrong({ ...share(0.02), feedConversion: 0.5 })).toMatchObject([
      {
        key: 'fish.fish.feed-conversion',
        got: '0.5',
        expected: expect.stringMatching(/^1\.\d+ to \d/) as string,
      },
    ]);
    expect(wrong({ ...share(0.001), feedConversion: 1.5 })).toMatchObject([
      { expected: 'a larger ration: at this one they do not grow' },
    ]);
  });
});

describe('dead fish that are left', () => {
  it('rot first order into dissolved matter and organic nitrogen, and nothing is lost', () => {
    const run = pond({ ...share(0), dead: 'left' }, { temperature: 8, days: 30 });
    const last = lastOf(run);
    const died = extentOf(run, last, 'mortality-left@fish');
    const rotten = extentOf(run, last, 'rot@fish');
    // The last part of a fish is booked as dead when the others have died.
    const state = run.model.layout.fish[0].dead;
    const booked = run.postings
      .filter((each) => each.state === state)
      .reduce((sum, { amount }) => sum + amount, 0);
    expect(died).toBeGreaterThan(5000);
    expect(booked).toBeGreaterThan(0);
    expect(amountOf(run, last, 'fish-dead', 'fish')).toBeCloseTo(died + booked - rotten, 6);
    expect(rotten / died).toBeGreaterThan(0.3);
    expect(made(run, 'organic-nitrogen')).toBeGreaterThan(0.5 * rotten * fish('body-nitrogen'));
    expect(extentOf(run, last, 'mortality-left-fat@fish')).toBeGreaterThan(0);
  });
});
