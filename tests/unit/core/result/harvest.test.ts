import { describe, expect, it } from 'vitest';
import { harvestOf } from '../../../../packages/core/src/result/harvest.js';
import { verdictOf } from '../../../../packages/core/src/result/verdict.js';
import { doneRun } from '../../../support/run-of.js';
import {
  constant,
  planting,
  scenarioOf,
  startOf,
  stillWater,
  vessel,
} from '../../../support/scenario-builder.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

describe('the harvest of a run', () => {
  const run = doneRun(shippedScenario('glasshouse', 60));
  const harvest = harvestOf(run);
  const taken = (text: RegExp, kind: string): number =>
    run.events
      .filter((event) => event.kind === kind)
      .reduce((total, event) => total + Number(text.exec(event.text)?.[1]), 0);

  it('is what the log of the run says was taken: crops dry, fish by number and mass', () => {
    const dry = harvest.crops.reduce((total, crop) => total + crop.dry, 0);
    expect(Math.abs(dry / taken(/^(\S+) g dry/, 'harvest') - 1)).toBeLessThan(1e-3);
    const number = harvest.fish.reduce((total, fish) => total + fish.number, 0);
    expect(number).toBeCloseTo(taken(/^(\S+) fish/, 'harvest-fish'), 6);
    const mass = harvest.fish.reduce((total, fish) => total + fish.mass, 0);
    expect(Math.abs(mass / taken(/, (\S+) g/, 'harvest-fish') - 1)).toBeLessThan(1e-3);
  });

  it('counts no fish that were only graded from one cohort to another', () => {
    expect(run.events.some(({ kind }) => kind === 'grade')).toBe(true);
    expect(harvest.fish.find(({ cohort }) => cohort === 'juveniles')?.number).toBe(0);
  });

  it('adds up by month', () => {
    for (const { fresh = 0, months } of harvest.crops) {
      expect(months.reduce((total, { mass }) => total + mass, 0)).toBeCloseTo(fresh, 6);
      expect(months.map(({ month }) => month)).toEqual(months.map(({ month }) => month).sort());
    }
  });

  it('stands beside the feed given and the water taken in', () => {
    expect(harvest.feed).toBeCloseTo(60 * 550, 6);
    expect(harvest.area).toBe(24);
  });
});

describe('the harvest of crops that are picked or cut', () => {
  const sump = vessel('sump', 50, { temperature: constant(22) });
  const run = doneRun(
    scenarioOf([sump], {
      start: [startOf(sump, { water: stillWater(50, 7, { nitrate: 400 }) })],
      plantings: [
        planting('vines', 'sump', 'bean', 4, { picks: 4, harvest: 65, after: 'empty' }),
        planting('herbs', 'sump', 'mint', 2, { cut: { every: 30, leave: 0.3 } }),
      ],
      light: constant(20),
      // A dry share of each that no table has; so much nitrate is no salt here.
      overrides: [
        { id: 'crop.bean.fruit-dry-matter', value: 0.125 },
        { id: 'crop.bean.dry-matter', value: 0.5 },
        { id: 'crop.mint.dry-matter', value: 0.2 },
        { id: 'crop.salt-dilution', value: 1e9 },
      ],
      days: 70,
    }),
  );
  const { crops, fresh } = harvestOf(run);
  const [vines, herbs] = crops;
  const [vine, herb] = run.model.layout.batches;
  const posted = (state: number): number =>
    -run.postings
      .filter((posting) => posting.account === 'harvested crop' && posting.state === state)
      .reduce((total, { amount }) => total + amount, 0);

  it('is of beans their fruit by its own dry share, with what hung there when the bed was cleared, without the plants', () => {
    const picks = run.events.filter(({ kind, place }) => kind === 'pick' && place === 'vines');
    expect(picks.length).toBeGreaterThan(0);
    const fruit = posted(vine.fruit);
    expect(posted(vine.mass)).toBeGreaterThan(0);
    expect(vines.dry / fruit).toBeCloseTo(1, 12);
    expect(vines.fresh).toBeCloseTo(8 * fruit, 8);
    expect(vines.plants).toBeUndefined();
  });

  it('is of mint every cut by the dry share of its leaves, and no count of plants, which stand on', () => {
    expect(run.events.filter(({ kind }) => kind === 'cut').map(({ time }) => time)).toEqual([30, 60]);
    const leaves = posted(herb.mass);
    expect(leaves).toBeGreaterThan(0);
    expect(herbs.dry / leaves).toBeCloseTo(1, 12);
    expect(herbs.fresh).toBeCloseTo(5 * leaves, 8);
    expect(herbs.plants).toBeUndefined();
  });

  it('is what the verdict tells, most first', () => {
    expect(fresh).toBeCloseTo((vines.fresh ?? 0) + (herbs.fresh ?? 0), 8);
    const told = verdictOf(run).crops?.harvested ?? [];
    expect(new Map(told.map(({ crop, mass }) => [crop, mass]))).toEqual(
      new Map(crops.map((each) => [each.crop, each.fresh])),
    );
    expect(told.every(({ dry }) => !dry)).toBe(true);
    expect(told[0].mass).toBeGreaterThan(told[1].mass);
  });
});
