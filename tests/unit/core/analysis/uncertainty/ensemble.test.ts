import { describe, expect, it } from 'vitest';
import {
  ensembleOf,
  ensembleResult,
  basisOf,
  compileModel,
  createParameters,
  drawParameters,
  createRandom,
  openMembers,
  openRuns,
  openScenarioText,
  openAccumulator,
  parametersAt,
  rowOf,
  seriesOf,
  type Sampling,
} from '@leat/core';
import { quantileSorted } from 'd3-array';
import { smallSystem } from '../../../../support/small-text.js';

const open = openScenarioText(smallSystem, { file: 'small.yaml', days: 8 });
const sampling: Sampling = { method: 'latin-hypercube', members: 12, seed: 4 };
const questions = {
  measures: ['highest nitrite@tank', 'share nitrogen kept-in-living-fish'],
  conditions: ['highest tan@tank below 5 mg N/L', 'keeps limits'],
};
const basis = basisOf(open, questions);
const result = ensembleOf(open, sampling, questions);

describe('what is drawn', () => {
  it('is every number with a range that reading, running or judging used', () => {
    const ids = basis.rows.map(({ id }) => id);
    expect(ids).toEqual([...ids].sort());
    expect(ids).toContain('feed.grower-32.protein'); // read with the file
    expect(ids).toContain('biofilm.cycled-aob'); // start
    expect(ids).toContain('fish.nile-tilapia.temperature-low'); // judged by
    expect(ids.some((id) => id.startsWith('fish.rainbow-trout'))).toBe(false);
    expect(basis.rows.every(({ low, high }) => low < high)).toBe(true);
  });

  it('reaches the system: a drawn number of the reading changes the scenario as writing it would', () => {
    const value = 0.41;
    const again = open.again(parametersAt(new Map([['feed.grower-32.protein', value]]), createParameters()));
    expect(again.fish[0].feed.protein).toBe(value);
    const written = openScenarioText(smallSystem, {
      file: 'small.yaml',
      days: 8,
      set: [{ path: 'parameters.feed.grower-32.protein', value: String(value) }],
    }).reading.scenario;
    expect({ ...again, overrides: [] }).toEqual({ ...written, overrides: [] });
  });

  it('runs as a model compiled with all its checks would', () => {
    const [row] = basis.rows.filter(({ id }) => id === 'aob.growth');
    const rows = row === undefined ? basis.rows.slice(0, 1) : [row];
    const run = openRuns(open, rows)([0.3]);
    const values = run.model.parameters.value(rows[0].id);
    const full = compileModel(
      open.reading.scenario,
      parametersAt(new Map([[rows[0].id, values]]), createParameters()),
    );
    expect(Array.from(run.model.stoichiometry.value)).toEqual(Array.from(full.stoichiometry.value));
  });

  it('stays in the file where the user gives a number without a range', () => {
    const given = openScenarioText(smallSystem, {
      file: 'small.yaml',
      days: 8,
      set: [{ path: 'parameters.feed.grower-32.protein', value: '0.35' }],
    });
    expect(basisOf(given, { measures: [], conditions: [] }).rows.map(({ id }) => id)).not.toContain(
      'feed.grower-32.protein',
    );
  });
});

describe('an ensemble of few members', () => {
  const draw = openRuns(open, basis.rows);
  const members = openMembers(open, basis, sampling);

  it('has the exact quantiles of its members at every output time', () => {
    const all = Array.from({ length: 12 }, (_, member) => members(member));
    const at = basis.series.findIndex(({ name }) => name === 'nitrate@sump') * basis.times.length + 8;
    const values = all
      .map((member) => (member.kind === 'done' ? member.series[at] : Number.NaN))
      .sort((a, b) => a - b);
    const nitrate = result.series.find(({ name }) => name === 'nitrate@sump');
    expect(nitrate?.median[8]).toBe(quantileSorted(values, 0.5));
    expect(nitrate?.band90[1][8]).toBe(quantileSorted(values, 0.95));
    expect(nitrate?.resolution).toBe(0);
    expect(new Set(values).size).toBe(12);
  });

  it('runs with the numbers as they stand where every draw is the middle', () => {
    const middle = draw(basis.rows.map(() => 0.5));
    const lognormal = basis.rows.filter(({ distribution }) => distribution === 'lognormal');
    for (const { id, value } of lognormal) expect(middle.model.parameters.value(id)).toBeCloseTo(value, 9);
    expect(middle.outcome.kind).toBe('done');
  });

  it('keeps what is asked of each member, and counts who holds', () => {
    expect(result.measures.map(({ text, answered }) => [text, answered])).toEqual([
      ['highest nitrite@tank', 12],
      ['share nitrogen kept-in-living-fish', 12],
    ]);
    const [tan, limits] = result.conditions;
    expect(tan.holds).toBeLessThanOrEqual(12);
    expect(tan.share).toBe(tan.holds / 12);
    expect(limits.band90[0]).toBeLessThanOrEqual(limits.band90[1]);
  });

  it('tells the odds of each limit and when it is first passed', () => {
    for (const { judged, passed, probability, first } of result.limits) {
      expect(passed).toBeLessThanOrEqual(judged);
      if (judged > 0) expect(probability).toBe(passed / judged);
      if (passed > 0) expect(first.median).toBeGreaterThanOrEqual(0);
      else expect(first.median).toBeNaN();
    }
    expect(result.limits.some(({ judged }) => judged > 0)).toBe(true);
  });

  it('counts and names members that break off, and keeps them out of the bands', () => {
    const accumulator = openAccumulator(basis, 3);
    accumulator.add(2, { kind: 'failed', reason: 'singular on day 3' });
    accumulator.add(0, members(0));
    accumulator.add(1, { kind: 'failed', reason: 'not-finite on day 1' });
    const told = ensembleResult(basis, { ...sampling, members: 3 }, accumulator);
    expect(told.failed).toEqual([
      { member: 1, reason: 'not-finite on day 1' },
      { member: 2, reason: 'singular on day 3' },
    ]);
    expect([told.ran, told.measures[0].answered, accumulator.series.count(0)]).toEqual([3, 1, 1]);
    expect(() => {
      accumulator.add(1, { kind: 'failed', reason: 'again' });
    }).toThrow('member 1 is in already');
  });
});

describe('draws of the tables', () => {
  it('are found again by value', () => {
    const drawn = drawParameters(createRandom(3));
    const same = parametersAt(new Map(basis.rows.map(({ id }) => [id, drawn.value(id)])), createParameters());
    for (const { id } of basis.rows) expect(same.value(id)).toBe(drawn.value(id));
    const protein = 'feed.grower-32.protein';
    expect(rowOf(same, protein)).toEqual({
      ...rowOf(createParameters(), protein),
      value: drawn.value(protein),
    });
    expect(() => parametersAt(new Map([['no.such', 1]]), createParameters())).toThrow(RangeError);
  });

  it('gives a series for each of the runs', () => {
    expect(seriesOf(basis.run, 'nitrate@sump').values).toHaveLength(basis.times.length);
  });
});
