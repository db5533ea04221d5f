import { describe, expect, it } from 'vitest';
import { limitsOf, worstFirst } from '../../../../packages/core/src/result/limits.js';
import { verdictOf } from '../../../../packages/core/src/result/verdict.js';
import type { ResumableRun } from '../../../../packages/core/src/run/run-state.js';
import { readScenario } from '../../../../packages/core/src/scenario/read-scenario.js';
import { edited } from '../../../product/faults/small-system.js';
import { doneRun } from '../../../support/run-of.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

type Edit = readonly [from: string, to: string];

/** A run of the small system, with pieces of its text replaced. */
const runWith = (...edits: readonly Edit[]): ResumableRun =>
  doneRun(readScenario(edited(...edits), { file: 'small.yaml' }));

const action = (text: string): Edit => ['actions:\n', `actions:\n  - { ${text} }\n`];

describe('the verdict on a run', () => {
  it('is safe, enough and kept up where nothing goes wrong', () => {
    const verdict = verdictOf(doneRun(shippedScenario('glasshouse', 40)));
    expect(verdict.fish?.state).toBe('safe');
    expect(verdict.filter?.state).toBe('keeps-up');
    expect(verdict.water.state).toBe('enough');
    expect(verdict.beginning).toBeUndefined();
    expect(verdict.holdsUntil).toBeUndefined();
  });

  it('names a power cut as what began it, and is void from deadly water on', () => {
    const verdict = verdictOf(doneRun(shippedScenario('power-cut')));
    expect(['lethal', 'dead']).toContain(verdict.fish?.state);
    expect(verdict.fish?.troubles[0].quantity).toBe('oxygen');
    expect(verdict.beginning?.after?.text).toContain('power cut');
    expect(verdict.holdsUntil?.why).toBe('fish');
    expect(verdict.holdsUntil?.time).toBeGreaterThanOrEqual(30);
    expect(verdict.holdsUntil?.time).toBeLessThan(31);
  });

  it('tells feed that is left: all that is given beyond what fish want, and nothing of a ration that they eat', () => {
    const fed = (ration: string) =>
      verdictOf(doneRun(shippedScenario('backyard', 20, [{ path: 'fish.tilapia.ration', value: ration }])))
        .fish;
    expect(fed('1 %/d')?.uneaten).toBeUndefined();
    const [twice] = fed('8 %/d')?.uneaten ?? [];
    const [thrice] = fed('16 %/d')?.uneaten ?? [];
    expect(twice.share).toBeGreaterThan(0.5);
    // What is eaten is then the same, so that twice the feed leaves the half of it more.
    expect(1 - thrice.share).toBeCloseTo((1 - twice.share) / 2, 1);
    expect(thrice.share).toBeGreaterThan(twice.share);
  });

  it('tells by how much fish that are not fed grow lighter, and what was left before fish died of their feed', () => {
    const fed = (ration: string, days: number) => {
      const run = doneRun(
        shippedScenario('backyard', days, [{ path: 'fish.tilapia.ration', value: ration }]),
      );
      const { mass, number } = run.model.layout.fish[0];
      const [first, last] = [run.samples[0].y, run.samples[run.samples.length - 1].y];
      return { fish: verdictOf(run).fish, kept: last[mass] / last[number] / (first[mass] / first[number]) };
    };
    const { fish, kept } = fed('0 g/d', 60);
    expect(fish?.thin?.[0].share).toBeCloseTo(1 - kept, 3);
    expect(1 - kept).toBeGreaterThan(0.05);
    expect(fish?.uneaten).toBeUndefined();
    expect(fed('80 g/d', 60).fish?.thin).toBeUndefined();
    const much = fed('40 %/d', 30).fish;
    expect(much?.state).toBe('dead');
    expect(much?.thin).toBeUndefined();
    expect(much?.uneaten?.[0].share).toBeGreaterThan(0.8);
  });

  it('tells what runs over a reservoir that has no room for a bed that drains', () => {
    const drained = { path: 'vessels.bed.drain', value: '{ rate: 40 L/min, to: 50 L, by: siphon }' };
    const { water } = verdictOf(doneRun(shippedScenario('backyard', 5, [drained])));
    expect(water.over).toBeGreaterThan(0.5);
    expect(water.over).toBeLessThan(water.perDay);
  });

  it('names as cause of death what fish died of, and not what was passed beside it', () => {
    const cold = doneRun(
      shippedScenario('backyard', 30, [
        { path: 'climate.water-temperature', value: '12 degC' },
        { path: 'fish.tilapia.dead', value: 'left' },
      ]),
    );
    const { fish } = verdictOf(cold);
    expect(fish?.state).toBe('dead');
    expect(fish?.deaths[0].cause).toBe('cold');
    expect(fish?.troubles.map(({ quantity }) => quantity)).toEqual(['temperature']);
  });

  it('finds a reservoir that stands low, a cap that was reached and a rain tank run empty', () => {
    const { water } = verdictOf(doneRun(shippedScenario('dry-spell', 60)));
    expect(water.state).toBe('short');
    expect(water.rainTankEmpty).toBeLessThan(water.lowFirst ?? 0);
    expect(water.capDays).toBeGreaterThan(10);
    expect(water.lowest).toBeLessThan(0.95);
  });

  it('finds a pump that sucks air, how often and how long', () => {
    const run = runWith(
      ['inlet: 50 L, restart: 80 L', 'inlet: 390 L, restart: 395 L'],
      action('at: 2 d, for: 2 d, top-up: stopped'),
    );
    const { water } = verdictOf(run);
    expect(water.state).toBe('pump');
    expect(water.pumps[0].pump).toBe('main');
    expect(water.pumps[0].first).toBeGreaterThan(2);
    expect(water.pumps[0].total).toBeGreaterThan(0);
  });

  it('says of a filter that was never grown in that it falls behind for that', () => {
    const { filter } = verdictOf(doneRun(shippedScenario('start-up', 60)));
    expect(filter?.state).not.toBe('keeps-up');
    expect(filter?.held).toBe('young');
  });

  it('has nothing to say of fish where there were never any', () => {
    const run = runWith(['number: 20', 'number: 0']);
    expect(verdictOf(run).fish).toBeUndefined();
  });
});

it('sorts limits by the harm of passing them, then by how long they were passed', () => {
  const limits = [...limitsOf(doneRun(shippedScenario('power-cut')))].sort(worstFirst);
  const harms = limits.map(({ harm }) => harm);
  expect(harms.indexOf('harmful')).toBeGreaterThan(harms.lastIndexOf('lethal'));
  expect(harms.indexOf('crop')).toBeGreaterThan(harms.lastIndexOf('uncomfortable'));
  const lethal = limits.filter(({ harm }) => harm === 'lethal').map(({ total }) => total);
  expect(lethal).toEqual([...lethal].sort((a, b) => b - a));
});
