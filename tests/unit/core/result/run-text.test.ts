import {
  allSeries,
  budgetOf,
  compileModel,
  createParameters,
  InputError,
  limitsOf,
  openPlainRun,
  parametersAt,
  plainRun,
  readScenarioFully,
  run,
  seriesOf,
  simulate,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { shippedScenario } from '../../../support/shipped-scenario.js';
import { smallSystem } from '../../../support/small-text.js';

describe('run', () => {
  it('reads, compiles and runs the text of a system', () => {
    const one = run(smallSystem);
    const { scenario } = readScenarioFully(smallSystem, { file: 'system.yaml' });
    const other = simulate(compileModel(scenario, createParameters(scenario.overrides)));
    expect(one.samples).toEqual(other.samples);
    expect(one.used().length).toBeGreaterThan(50);
  });

  it('takes the files that a system names beside it', () => {
    const files = { 'a/whole.yaml': 'include: small.yaml\ndays: 3\n', 'a/small.yaml': smallSystem };
    expect(run(files).outcome).toEqual({ kind: 'done', time: 3 });
    expect(() => run({ 'a/whole.yaml': 'include: smal.yaml\n', 'a/small.yaml': smallSystem })).toThrow(
      /cannot be read: no such file among those given; did you mean a\/small.yaml\?/,
    );
    expect(() => run({})).toThrow(InputError);
  });
});

describe('the times of a series', () => {
  it('are days since the start and dates of the calendar', () => {
    const series = seriesOf(run(smallSystem), 'tan@tank');
    expect(series.times).toHaveLength(series.values.length);
    expect(series.dates()[0]).toBe('2025-03-01');
    const hourly = simulate(
      compileModel({ ...shippedScenario('backyard', 2), every: 0.25 }, createParameters()),
    );
    const { startDate } = hourly.model.scenario;
    expect(seriesOf(hourly, 'tan@tank').dates().slice(0, 2)).toEqual([startDate, `${startDate} 06:00`]);
  });
});

describe('a plain run', () => {
  const scenario = shippedScenario('backyard', 20);
  const drawn = parametersAt(new Map([['aob.growth', 0.7]]), createParameters(scenario.overrides));
  const here = simulate(compileModel(scenario, drawn));
  const there = openPlainRun(structuredClone(plainRun(here)));

  it('crosses to another thread and says the same there', () => {
    const plain = (from: typeof here) => allSeries(from).map(({ name, values }) => [name, values]);
    expect(plain(there)).toEqual(plain(here));
    expect(limitsOf(there)).toEqual(limitsOf(here));
    expect(budgetOf(there, 'nitrogen', 'system')).toEqual(budgetOf(here, 'nitrogen', 'system'));
    expect(there.model.parameters.value('aob.growth')).toBe(0.7);
    expect(there.model.parameters.used()).toEqual(here.model.parameters.used());
    expect(there.state).toEqual(here.state);
  });

  it('is refused without the extension that it ran with', () => {
    expect(() => openPlainRun({ ...plainRun(here), extended: true })).toThrow(/give the extension again/);
  });
});
