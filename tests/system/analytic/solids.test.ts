import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../packages/core/src/library/parameters.js';
import { relativeDeviation } from '../../support/deviation.js';
import { amountOf, concentration, courseOf, doneRun, extentOf, lastOf } from '../../support/run-of.js';
import {
  constant,
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../support/scenario-builder.js';

const parameters = createParameters();
/** More oxygen than is used, with bacteria that take the last of it: its limitation is 1, and no use of it shows. */
const plenty = 90;
const greedy = ['solids.k-oxygen', 'denitrification.k-nitrate', 'dissolved.k-tan'].map((id) => ({
  id,
  value: 1e-12,
}));
const theta = parameters.value('solids.theta');

/** Suspended solids lie still, and what is dissolved stays so: to the last digits that are looked at. */
const asleep = [
  ...greedy,
  ...['solids.hydrolysis-suspended', 'dissolved.oxidation'].map((id) => ({ id, value: 1e-12 })),
];
/** A floor so wide that what lies on it is all within reach of what the water brings. */
const wide = 1e6;
const yielded = parameters.value('solids.yield');

describe('solids alone in a vessel', () => {
  it('settle at velocity x floor / volume (exact solution)', () => {
    const sump = vessel('sump', 2, { floor: 0.1 });
    const water = stillWater(2, 7.5, { solids: 40, refractory: 20, oxygen: plenty });
    const overrides = [...asleep, { id: 'solids.hydrolysis-settled', value: 1e-12 }];
    const start = [startOf(sump, { water })];
    const run = doneRun(scenarioOf([sump], { start, days: 5, overrides }), { tolerance: 1e-8 });
    const k = (parameters.value('solids.settling-velocity') * 0.1) / 2;
    const left = run.samples.map(({ time }) => 40 * Math.exp(-k * time));
    const fallen = run.samples.slice(1).map((sample) => amountOf(run, sample, 'settled', 'sump'));
    expect(relativeDeviation(courseOf(run, 'solids', 'sump'), left)).toBeLessThan(1e-7);
    expect(
      relativeDeviation(
        fallen,
        left.slice(1).map((c) => 2 * (40 - c)),
      ),
    ).toBeLessThan(1e-7);
    // What hardly breaks down settles as fast, and goes by its own slow breakdown beside.
    const slow = k + parameters.value('solids.refractory-hydrolysis');
    const refractory = run.samples.map(({ time }) => 20 * Math.exp(-slow * time));
    expect(relativeDeviation(courseOf(run, 'refractory', 'sump'), refractory)).toBeLessThan(1e-7);
  });

  it('settle half as fast where air stirs the water over the floor by as much as halves it', () => {
    // 20 m of water on the floor.
    const settled = (aeration: number): number => {
      const sump = vessel('sump', 2, { floor: 0.1, aeration: aeration / 20 });
      const start = [startOf(sump, { water: stillWater(2, 7.5, { solids: 40 }) })];
      const run = doneRun(scenarioOf([sump], { start, days: 0.01, every: 0.01 }), { tolerance: 1e-8 });
      return extentOf(run, lastOf(run), 'settling@sump');
    };
    expect(settled(parameters.value('solids.stirring')) / settled(0)).toBeCloseTo(0.5, 2);
  });

  it('are caught with the stated efficiency from a steady flow (exact steady state)', () => {
    // Without oxygen fish eat nothing: all feed becomes solids, at a constant rate. They would die of it, and then nobody
    // feeds them: here they do not.
    const settler = vessel('settler', 0.3, { capture: 0.6 });
    const sump = vessel('sump', 1);
    const run = doneRun(
      scenarioOf([settler, sump], {
        pumps: [mainPump],
        flows: [pumped('sump', 'settler', 10), gravity('settler', 'sump')],
        fish: [tilapia('fish', 'sump', { ration: { kind: 'mass', gramsPerDay: 50 } })],
        start: [settler, sump].map((each) => startOf(each, { water: stillWater(2, 7.5, { oxygen: 0 }) })),
        days: 40,
        every: 20,
        overrides: [
          ...asleep,
          { id: 'solids.refractory-hydrolysis', value: 1e-12 },
          { id: 'fish.hazard-highest', value: 1e-12 },
        ],
      }),
    );
    const share = parameters.value('solids.refractory-feed');
    const perGram =
      (1 - share) * parameters.value('solids.demand') + share * parameters.value('solids.refractory-demand');
    const dry = (50 * parameters.value('feed.grower-32.demand')) / perGram;
    for (const [component, made] of [
      ['solids', (1 - share) * dry],
      ['refractory', share * dry],
    ] as const) {
      const [into, out] = ['sump', 'settler'].map((name) => concentration(run, lastOf(run), component, name));
      expect(out / into).toBeCloseTo(1 - 0.6, 6);
      expect((10 * (into - out)) / made).toBeCloseTo(1, 6);
    }
  });

  it('go into solution first order; their nitrogen is organic, then TAN (exact solution)', () => {
    const sump = vessel('sump', 1, { temperature: constant(25) });
    const start = [startOf(sump, { water: stillWater(2, 7.5, { solids: 10, oxygen: plenty }) })];
    const overrides = [...greedy, { id: 'dissolved.oxidation', value: 1e-12 }];
    const run = doneRun(scenarioOf([sump], { start, days: 8, overrides }), { tolerance: 1e-8 });
    const k = parameters.value('solids.hydrolysis-suspended') * theta ** 5;
    const a = parameters.value('organic-nitrogen.ammonification') * theta ** 5;
    const left = run.samples.map(({ time }) => 10 * Math.exp(-k * time));
    expect(relativeDeviation(courseOf(run, 'solids', 'sump'), left)).toBeLessThan(1e-7);
    const gone = left.slice(1).map((c) => 10 - c);
    const dissolved = gone.map((g) => g * parameters.value('solids.demand'));
    expect(relativeDeviation(courseOf(run, 'dissolved', 'sump').slice(1), dissolved)).toBeLessThan(1e-7);
    const nitrogen = 10 * parameters.value('solids.nitrogen');
    const organic = run.samples
      .slice(1)
      .map(({ time }) => ((nitrogen * k) / (a - k)) * (Math.exp(-k * time) - Math.exp(-a * time)));
    expect(relativeDeviation(courseOf(run, 'organic-nitrogen', 'sump').slice(1), organic)).toBeLessThan(1e-6);
    const tan = gone.map((g, i) => g * parameters.value('solids.nitrogen') - organic[i]);
    expect(relativeDeviation(courseOf(run, 'tan', 'sump').slice(1), tan)).toBeLessThan(1e-6);
  });

  it('gone into solution, are burnt first order where oxygen and TAN abound, but for the cells that grow (exact solution)', () => {
    const sump = vessel('sump', 1);
    const water = stillWater(2, 7.5, { dissolved: 10, oxygen: plenty, ammonia: 1 });
    const overrides = [...greedy, { id: 'solids.hydrolysis-suspended', value: 1e-12 }];
    const run = doneRun(scenarioOf([sump], { start: [startOf(sump, { water })], days: 8, overrides }), {
      tolerance: 1e-8,
    });
    const left = run.samples.map(
      ({ time }) => 10 * Math.exp(-parameters.value('dissolved.oxidation') * time),
    );
    expect(relativeDeviation(courseOf(run, 'dissolved', 'sump'), left)).toBeLessThan(2e-6);
    const cells = left.slice(1).map((c) => ((10 - c) * yielded) / parameters.value('solids.demand'));
    expect(relativeDeviation(courseOf(run, 'solids', 'sump').slice(1), cells)).toBeLessThan(2e-6);
  });

  it('settled, are burnt first order where oxygen reaches them all, but for the cells that stay (exact solution)', () => {
    const sump = vessel('sump', 1, { floor: wide });
    const start = [startOf(sump, { settled: 50, water: stillWater(2, 7.5, { oxygen: plenty }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 20, overrides: greedy }), { tolerance: 1e-8 });
    const k = parameters.value('solids.hydrolysis-settled') * (1 - yielded);
    const got = run.samples.map((sample) => amountOf(run, sample, 'settled', 'sump'));
    expect(
      relativeDeviation(
        got,
        run.samples.map(({ time }) => 50 * Math.exp(-k * time)),
      ),
    ).toBeLessThan(2e-6);
  });

  it('settled, denitrify first order where nitrate abounds and oxygen is absent (exact solution)', () => {
    const sump = vessel('sump', 1, { floor: wide, temperature: constant(15) });
    const start = [startOf(sump, { settled: 300, water: stillWater(2, 7.5, { oxygen: 0, nitrate: 1000 }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 20, overrides: greedy }), { tolerance: 1e-8 });
    const k =
      parameters.value('solids.hydrolysis-settled') *
      (1 - yielded) *
      theta ** -5 *
      parameters.value('denitrification.activity');
    const got = run.samples.map((sample) => amountOf(run, sample, 'settled', 'sump'));
    const exact = run.samples.map(({ time }) => 300 * Math.exp(-k * time));
    expect(relativeDeviation(got, exact)).toBeLessThan(2e-6);
    const done = (row: string): number => extentOf(run, lastOf(run), `${row}@sump`);
    // The little that ferments comes back as cells.
    const used = done('denitrification') * (1 - yielded) + done('sludge-fermentation') - done('settling');
    expect(used).toBeCloseTo(300 - amountOf(run, lastOf(run), 'settled', 'sump'), 8);
  });

  it('settled, go into solution where neither oxygen nor nitrate comes (exact solution)', () => {
    const sump = vessel('sump', 1, { floor: 1 });
    const start = [startOf(sump, { settled: 300, water: stillWater(2, 7.5, { oxygen: 0 }) })];
    const run = doneRun(scenarioOf([sump], { start, days: 20 }), { tolerance: 1e-8 });
    const k = parameters.value('solids.hydrolysis-settled') * parameters.value('denitrification.activity');
    const exact = run.samples.map(({ time }) => 300 * Math.exp(-k * time));
    const got = run.samples.map((sample) => amountOf(run, sample, 'settled', 'sump'));
    expect(relativeDeviation(got, exact)).toBeLessThan(1e-6);
    const dissolved = exact.slice(1).map((left) => (300 - left) * parameters.value('solids.demand'));
    expect(relativeDeviation(courseOf(run, 'dissolved', 'sump').slice(1), dissolved)).toBeLessThan(1e-6);
  });
});

describe('a deep layer of settled solids', () => {
  /** Rates of the first moments of a kilogram on a square metre, g/d. */
  const rates = (water: Parameters<typeof stillWater>[2]): { oxygen: number; nitrate: number } => {
    const sump = vessel('sump', 1000, { floor: 1 });
    const start = [startOf(sump, { settled: 3000, water: stillWater(2, 7.5, water) })];
    const days = 0.001;
    const run = doneRun(scenarioOf([sump], { start, days, every: days }), { tolerance: 1e-8 });
    const made = (row: string): number => extentOf(run, lastOf(run), row) / days;
    const burnt = (1 - yielded) * parameters.value('solids.demand');
    const perNitrate = (1.25 * parameters.value('molar.oxygen-gas')) / parameters.value('molar.nitrogen');
    return {
      oxygen: made('sludge-mineralisation@sump') * burnt,
      nitrate: (made('denitrification@sump') * burnt) / perNitrate,
    };
  };

  it('takes oxygen as sqrt(2 D c r) a m2, r what a m3 of it breathes (zero order, exact limit)', () => {
    const breath =
      parameters.value('solids.hydrolysis-settled') *
      (1 - yielded) *
      parameters.value('solids.demand') *
      parameters.value('solids.settled-density');
    const taken = Math.sqrt(2 * parameters.value('solids.oxygen-diffusion') * 8 * breath);
    const limit = 8 / (8 + parameters.value('solids.k-oxygen'));
    expect(rates({ oxygen: 8 }).oxygen / (taken * limit)).toBeCloseTo(1, 4);
  });

  it('takes no more nitrate than comes through still water, and nearly that where there is little of it', () => {
    const brought = (nitrate: number): number => parameters.value('denitrification.transfer') * nitrate;
    for (const nitrate of [0.5, 5, 50]) {
      const taken = rates({ oxygen: 0, nitrate }).nitrate;
      expect(taken).toBeLessThan(brought(nitrate));
      if (nitrate < 1) expect(taken / brought(nitrate)).toBeGreaterThan(0.95);
    }
  });
});
