import { describe, expect, it } from 'vitest';
import { InputError } from '../../../../packages/core/src/base/faults.js';
import { seriesNames, seriesOf } from '../../../../packages/core/src/result/series.js';
import { quantitiesOf } from '../../../../packages/core/src/result/why-quantities.js';
import { why, type Difference } from '../../../../packages/core/src/result/why.js';
import type { TimedAction } from '../../../../packages/core/src/scenario/scenario.js';
import { doneRun } from '../../../support/run-of.js';
import {
  constant,
  float,
  scenarioOf,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../../support/scenario-builder.js';
import { teachingSystem } from '../../../support/teaching-system.js';

/** A bit of every action that posts, from day 0 on. */
const busy: TimedAction[] = [
  { at: 0, action: { kind: 'stock', cohort: 'young', number: 20, mass: 40 } },
  { at: 0, action: { kind: 'change-water', vessel: 'tank-1', share: 0.3, water: 'mains' } },
  { at: 4, action: { kind: 'clean', vessel: 'biofilter', biofilm: 0.3, solids: 0.5 } },
  { at: 6, action: { kind: 'medicate', vessel: 'media', kills: 0.2 } },
  { at: 9, action: { kind: 'change-water', vessel: 'sump', volume: 0.4, water: 'mains' } },
  { at: 11, action: { kind: 'harvest-fish', cohort: 'grown', share: 0.25 } },
  { at: 12, action: { kind: 'lose-fish', cohort: 'young', share: 0.1 } },
  { at: 14, action: { kind: 'harvest-crop', planting: 'basil', replant: false } },
  { at: 15, action: { kind: 'pump', pump: 'main', running: false } },
  { at: 15.5, action: { kind: 'pump', pump: 'main', running: true } },
];
const days = 20;
const planted = doneRun(teachingSystem({ days }));
const bare = doneRun(teachingSystem({ days, planted: false }));
const eventful = doneRun(teachingSystem({ days, dosed: false, load: 1.3, actions: busy }));

const partOf = (difference: Difference, name: string): number =>
  difference.parts.find((part) => part.name === name)?.value ?? 0;

/** How far the parts are from the difference, as a share of the largest part (or of 1e-6 of the value). */
function gap({ from, to, difference, parts }: Difference): number {
  const total = parts.reduce((sum, { value }) => sum + value, 0);
  const largest = Math.max(
    1e-6 * Math.abs(from),
    1e-6 * Math.abs(to),
    ...parts.map((p) => Math.abs(p.value)),
  );
  return largest === 0 ? 0 : Math.abs(total - difference) / largest;
}

describe('parts sum to the difference within 1e-9 of the largest', () => {
  const names = quantitiesOf(planted).map(({ name }) => name);

  it.each(['place', 'system'] as const)('for every quantity of two runs, around the %s', (around) => {
    const gaps = names.map((name) =>
      gap(why(name, { run: planted, day: days }, { run: eventful, day: days }, { around })),
    );
    expect(gaps).toHaveLength(names.length);
    expect(Math.max(...gaps)).toBeLessThan(1e-9);
  });

  it('for every quantity of one run at two days', () => {
    const gaps = names.map((name) => gap(why(name, { run: eventful, day: 3 }, { run: eventful, day: 16 })));
    expect(Math.max(...gaps)).toBeLessThan(1e-9);
  });

  it('where the size of a surface differs too', () => {
    const scenario = teachingSystem({ days: 5 });
    const vessels = scenario.vessels.map((each) =>
      each.name === 'biofilter' ? { ...each, surface: 2 * each.surface } : each,
    );
    const wide = doneRun({ ...scenario, vessels });
    const found = why('aob@biofilter', { run: planted, day: 5 }, { run: wide, day: 5 });
    expect(partOf(found, 'surface of biofilter')).toBeLessThan(0);
    expect(gap(found)).toBeLessThan(1e-9);
  });
});

describe('between two runs', () => {
  it('less uptake without crops means more nitrate, and water between vessels has no part in all water', () => {
    const found = why('nitrate@system', { run: planted, day: days }, { run: bare, day: days });
    expect(found.unit).toBe('mg N/L');
    expect(found.difference).toBeGreaterThan(0);
    expect(partOf(found, 'nitrate uptake by crops')).toBeGreaterThan(0);
    expect(found.parts.filter(({ name }) => name.startsWith('carried'))).toEqual([]);
    const back = why('nitrate@system', { run: bare, day: days }, { run: planted, day: days });
    expect(partOf(back, 'nitrate uptake by crops')).toBeCloseTo(
      -partOf(found, 'nitrate uptake by crops'),
      12,
    );
  });

  it('names the vessels that water came from, and the values of the series', () => {
    const found = why('nitrate@sump', { run: planted, day: days }, { run: bare, day: days });
    expect(found.from).toBe(seriesOf(planted, 'nitrate@sump').at(days));
    expect(found.to).toBe(seriesOf(bare, 'nitrate@sump').at(days));
    const names = found.parts.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['carried in from raft-1', 'carried out to tank-1']));
    const sizes = found.parts.map(({ value }) => Math.abs(value));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });

  it('shows uptake in the sump, where nothing grows, when the line is drawn around all water', () => {
    const found = why(
      'nitrate@sump',
      { run: planted, day: days },
      { run: bare, day: days },
      { around: 'system' },
    );
    expect(partOf(found, 'nitrate uptake by crops')).toBeGreaterThan(0.5 * found.difference);
    expect(Math.abs(partOf(found, 'sump against the mean of all water'))).toBeLessThan(1);
  });

  it('says that dosing made the alkalinity of one differ, in amount and as given', () => {
    const undosed = doneRun(teachingSystem({ days, dosed: false }));
    const found = why('alkalinity-amount@system', { run: undosed, day: days }, { run: planted, day: days });
    // All doses before that day, KHCO3 at 9.99 eq/kg.
    const kilograms = planted.model.scenario.actions.reduce(
      (mass, { at, action }) => (action.kind === 'dose' && at < days ? mass + action.mass / 1000 : mass),
      0,
    );
    expect(kilograms).toBeGreaterThan(0);
    expect(found.unit).toBe('eq');
    expect(partOf(found, 'dosing')).toBeCloseTo(kilograms * 9.99, 2);
  });

  it('compares runs that do not have the same plantings', () => {
    const none = doneRun({ ...teachingSystem({ days }), plantings: [] });
    const found = why('nitrate@raft-1', { run: planted, day: days }, { run: none, day: days });
    expect(partOf(found, 'nitrate uptake by crops')).toBeGreaterThan(0);
    expect(gap(found)).toBeLessThan(1e-9);
  });
});

describe('between two days of one run', () => {
  const tub = vessel('tub', 2);

  it('evaporation alone concentrates what stays: one part, the whole difference', () => {
    const run = doneRun(scenarioOf([{ ...tub, open: 10 }], { et0: constant(0.005) }));
    const found = why('chloride@tub', { run, day: 2 }, { run, day: 9 });
    expect(found.parts.map(({ name }) => name)).toEqual(['evaporation']);
    expect(found.difference).toBeGreaterThan(1);
    expect(found.parts[0].value).toBeCloseTo(found.difference, 10);
  });

  it('top-up of thinner water dilutes by (c of the source - mean c) x volume / V', () => {
    const start = [startOf(tub, { water: stillWater(2, 7.5, { chloride: 100 }) })];
    const run = doneRun(scenarioOf([{ ...tub, leak: 0.1 }], { topUp: float(2), start }));
    const found = why('chloride@tub', { run, day: 0 }, { run, day: 10 });
    const end = 50 + 50 * Math.exp(-0.5);
    expect(found.to).toBeCloseTo(end, 4);
    expect(partOf(found, 'top-up with mains')).toBeCloseTo((50 - (100 + end) / 2) / 2, 4);
    expect(found.parts).toHaveLength(2);
    expect(partOf(found, 'leak')).toBeCloseTo(found.difference - partOf(found, 'top-up with mains'), 10);
  });

  it('is nothing at one and the same day', () => {
    const found = why('tan@sump', { run: planted, day: 7 }, { run: planted, day: 7 });
    expect(found.difference).toBe(0);
    expect(found.parts).toEqual([]);
  });
});

describe('measuresOf', () => {
  it('keeps to names and units of the series where both have one', () => {
    const known = new Set(seriesNames(planted));
    const shared = quantitiesOf(planted).filter(({ name }) => known.has(name));
    expect(shared.length).toBeGreaterThan(80);
    for (const { name, unit } of shared) {
      const found = why(name, { run: planted, day: 0 }, { run: planted, day: days });
      const series = seriesOf(planted, name);
      expect([name, series.unit, series.at(days)]).toEqual([name, unit, expect.closeTo(found.to, 9)]);
    }
  });
});

describe('what cannot be answered', () => {
  const ask = (quantity: string, day = days) =>
    why(quantity, { run: planted, day }, { run: planted, day: days });

  it('an unknown quantity, with the nearest name', () => {
    expect(() => ask('nitrat@sump')).toThrow(InputError);
    expect(() => ask('nitrat@sump')).toThrow(
      'no such series; got nitrat@sump; expected quantity@place, such as nitrate@sump; did you mean nitrate@sump?',
    );
  });

  it('a quantity that is no sum, with those of its place that are', () => {
    expect(() => ask('pH@sump')).toThrow(
      /not a sum .*; got pH@sump; expected one of tan@sump, .*volume@sump/,
    );
  });

  it.each([5.5, -1, 21, Number.NaN])('day %d, which is no output time', (day) => {
    expect(() => ask('tan@sump', day)).toThrow(/not an output time.* 0 to 20 d/);
  });

  it('a quantity without a value', () => {
    const run = doneRun(scenarioOf([vessel('tub', 2)], { fish: [tilapia('later', 'tub', { number: 0 })] }));
    expect(() => why('fish-mean-mass@later', { run, day: 0 }, { run, day: 1 })).toThrow(
      'has no value then; got fish-mean-mass@later at 0 d',
    );
  });
});
