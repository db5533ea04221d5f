import {
  afterEvents,
  allSeries,
  compileModel,
  createParameters,
  limitsOf,
  simulate,
  verdictOf,
} from '@leat/core';
import { afterLines, verdictLines } from '@leat/view/text';
import { describe, expect, it } from 'vitest';
import { doneRun } from '../../../support/run-of.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

const cut = (every: number) => doneRun({ ...shippedScenario('power-cut'), every });
const hourly = cut(1 / 24);
const daily = cut(1);

describe('how long after an event limits are held', () => {
  const after = afterEvents(daily).find(({ time }) => time === 30);

  it('tells a power cut as one event, with the hours until each limit in each tank, the soonest first', () => {
    expect(after?.events.length).toBeGreaterThan(1);
    const passed = after?.passed ?? [];
    expect(new Set(passed.map(({ place }) => place))).toEqual(new Set(['tank-1', 'tank-2']));
    expect(passed.map(({ quantity }) => quantity)).toContain('oxygen');
    expect(passed.map(({ hours }) => hours)).toEqual(passed.map(({ hours }) => hours).sort((a, b) => a - b));
    for (const { hours } of passed) expect(hours > 1.5 && hours < 6).toBe(true);
  });

  it('is dated at daily output as at hourly output, to a quarter of an hour', () => {
    const finer = afterEvents(hourly).find(({ time }) => time === 30)?.passed ?? [];
    expect(finer.length).toBe(after?.passed.length);
    finer.forEach(({ id, place, hours }) => {
      const same = after?.passed.find((each) => each.id === id && each.place === place);
      expect(Math.abs((same?.hours ?? Number.NaN) - hours)).toBeLessThan(0.25);
    });
  });

  it('is told of the stop, not of the upkeep of two days before', () => {
    const before = afterEvents(daily).filter(({ time }) => time >= 27 && time < 30);
    expect(before.length).toBeGreaterThan(0);
    for (const { passed } of before) expect(passed).toEqual([]);
  });

  it('is said in lines', () => {
    const lines = afterLines(afterEvents(daily), daily.model.scenario.startDate);
    expect(lines[0]).toBe('after what happened');
    expect(lines).toContain('  a power cut, day 30 (31 Oct)');
    expect(lines.join('\n')).toMatch(
      /tank-1: oxygen below 3 mg\/L \(harms them\) after \d\.\d h, .*\(deadly\) after \d\.\d h/,
    );
    expect(lines.at(-1)).toMatch(
      /no limit for fish was passed within 3 days .* stock of juveniles \(2 times\)/,
    );
    // Weekly doses are routine, however few of them there were before the cut.
    expect(lines.join()).not.toContain('dose');
    expect(afterLines([], '2025-01-01')).toEqual([]);
  });

  it('counts down from a dose too: free ammonia after caustic is poured into the sump', () => {
    const scenario = shippedScenario('glasshouse', 10);
    const run = doneRun({
      ...scenario,
      every: 1,
      actions: [
        { at: 5.4, action: { kind: 'dose', vessel: 'sump', product: 'potassium-hydroxide', mass: 3000 } },
      ],
    });
    const [first] = afterEvents(run);
    expect(first.time).toBe(5.4);
    expect(first.passed.map(({ quantity }) => quantity)).toContain('un-ionised-ammonia');
    for (const { hours } of first.passed) expect(hours).toBeGreaterThan(0);
  });
});

describe('a close look after events', () => {
  it('leaves output times, series and steps as they were', () => {
    expect(daily.samples.map(({ time }) => time)).toEqual(Array.from({ length: 33 }, (_, day) => day));
    for (const { values } of allSeries(daily).slice(0, 20)) expect(values.length).toBe(33);
    expect(daily.work).toEqual(hourly.work);
  });

  it('is ascending, never at an output time, and over within three days of the last event', () => {
    const times = (daily.between ?? []).map(({ time }) => time);
    expect(times.length).toBeGreaterThan(50);
    times.forEach((time, i) => {
      expect(time > (times[i - 1] ?? -1)).toBe(true);
      expect(Math.abs(time - Math.round(time))).toBeGreaterThan(1e-6);
    });
  });

  it('dates the verdict at daily output after its cause, as at hourly output', () => {
    const [line] = verdictLines(verdictOf(daily), daily.model.scenario.startDate);
    expect(line).toMatch(/oxygen below 3 mg\/L in tank-[12](?: and tank-[12])?, 2\.\d+ h after a power cut/);
    const first = (run: typeof daily) =>
      limitsOf(run).find(({ harm, passed }) => harm === 'lethal' && passed)?.first ?? Number.NaN;
    expect(first(daily)).toBeGreaterThan(30);
    expect(Math.abs(first(daily) - first(hourly))).toBeLessThan(0.02);
  });

  it('gives the same bytes for the same input', () => {
    const scenario = shippedScenario('power-cut', 31);
    const once = () => simulate(compileModel(scenario, createParameters(scenario.overrides))).between;
    expect(once()).toEqual(once());
  });
});
