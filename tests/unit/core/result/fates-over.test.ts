import { budgetOf, fatesOf, fatesOver } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { doneRun } from '../../../support/run-of.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

const run = doneRun(shippedScenario('glasshouse', 50));

describe('fatesOver', () => {
  it('ends with the fates of the whole run and starts with nothing', () => {
    const { time, parts } = fatesOver(run, 'nitrogen', 12);
    expect([time[0], time[time.length - 1], time.length]).toEqual([0, 50, 12]);
    const { to } = fatesOf(budgetOf(run, 'nitrogen', 'system'));
    const ends = parts.map(({ name, amounts }) => ({ name, amount: amounts[amounts.length - 1] }));
    expect(ends.filter(({ amount }) => amount > 0)).toEqual(to.map(({ name, amount }) => ({ name, amount })));
    expect(parts.every(({ amounts }) => amounts[0] === 0)).toBe(true);
  });

  it('adds up at every time to all that had come by then', () => {
    const { time, parts } = fatesOver(run, 'nitrogen', 6);
    time.slice(1).forEach((day, i) => {
      const until = { ...run, samples: run.samples.filter((sample) => sample.time <= day) };
      const { total } = fatesOf(budgetOf(until, 'nitrogen', 'system'));
      const sum = parts.reduce((all, { amounts }) => all + amounts[i + 1], 0);
      expect(sum).toBeCloseTo(total, 6);
    });
  });

  it('takes every output time of a short run once', () => {
    expect(fatesOver(run, 'water', 400).time).toEqual(run.samples.map(({ time }) => time));
  });
});
