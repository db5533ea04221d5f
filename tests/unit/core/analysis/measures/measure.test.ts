import { describe, expect, it } from 'vitest';
import {
  budgetOf,
  compileModel,
  createParameters,
  fatesOf,
  InputError,
  measureOf,
  NoAnswerError,
  seriesOf,
} from '@leat/core';
import { doneRun } from '../../../../support/run-of.js';
import { teachingSystem } from '../../../../support/teaching-system.js';

const run = doneRun({ ...teachingSystem({ days: 20 }), startDate: '2026-02-20' });
const { model } = run;
const of = (text: string): number => measureOf(text, model).of(run);
const values = (name: string): number[] => Array.from(seriesOf(run, name).values);

function fault(text: string): string {
  try {
    measureOf(text, model, '--of');
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error(`${text} was taken`);
}

describe('a statistic of a series', () => {
  const tan = values('tan@tank-1');

  it('is read from the output times and the lines between them', () => {
    expect(of('highest tan@tank-1')).toBe(Math.max(...tan));
    expect(of('lowest tan@tank-1')).toBe(Math.min(...tan));
    expect(of('first tan@tank-1')).toBe(tan[0]);
    expect(of('last tan@tank-1')).toBe(tan[20]);
    expect(of('change tan@tank-1')).toBe(tan[20] - tan[0]);
    const lines = tan.slice(1).map((value, i) => (value + tan[i]) / 2);
    expect(of('mean tan@tank-1')).toBeCloseTo(lines.reduce((sum, each) => sum + each) / 20, 12);
  });

  it('looks at no more than from and to, which may lie between output times or be dates', () => {
    expect(of('first tan@tank-1 from 3 d')).toBe(tan[3]);
    expect(of('last tan@tank-1 to 60 h')).toBeCloseTo((tan[2] + tan[3]) / 2, 12);
    expect(of('mean tan@tank-1 from 60 h to 72 h')).toBeCloseTo((tan[2] + 3 * tan[3]) / 4, 12);
    expect(of('first tan@tank-1 from 2026-03-01')).toBe(tan[9]);
    expect(of('highest tan@tank-1 from 5 d to 6 d')).toBe(Math.max(tan[5], tan[6]));
  });

  it('takes the mean first where it is averaged, every mean within the window', () => {
    const means = [5, 6, 7, 8].map((i) => (tan[i] + tan[i + 1]) / 2);
    expect(of('highest tan@tank-1 averaged 1 d from 5 d to 9 d')).toBeCloseTo(Math.max(...means), 12);
    expect(of('last tan@tank-1 averaged 20 d')).toBeCloseTo(of('mean tan@tank-1'), 12);
  });

  it('says its unit and its plain text', () => {
    const { text, unit } = measureOf('  highest   nitrate@sump from 2 d ', model);
    expect([text, unit]).toEqual(['highest nitrate@sump from 2 d', 'mg N/L']);
  });
});

describe('days', () => {
  it('counts the time beyond a level, which may be a number of the tables', () => {
    const level = of('mean nitrate@sump');
    const above = of(`days nitrate@sump above ${level}`);
    const below = of(`days nitrate@sump below ${level} mg N/L`);
    expect(above).toBeGreaterThan(0);
    expect(above + below).toBeCloseTo(20, 9);
    expect(of(`days nitrate@sump > ${level} from 5 d`)).toBeLessThanOrEqual(15);
    expect(of('days nitrite@tank-1 below fish.nile-tilapia.limit-nitrite')).toBe(20);
  });
});

describe('share', () => {
  it('is that of the fates of a budget, 0 for a fate that got none', () => {
    const { to } = fatesOf(budgetOf(run, 'nitrogen', 'system'));
    const kept = to.find(({ name }) => name === 'kept in living fish');
    expect(of('share nitrogen kept-in-living-fish')).toBe(kept?.share);
    expect(of('share nitrogen dead-fish')).toBe(to.find(({ name }) => name === 'dead fish')?.share ?? 0);
    expect(measureOf('share water evaporation', model).unit).toBe('1');
  });

  it('knows every fate that the budgets of this run name', () => {
    for (const quantity of ['nitrogen', 'oxygen-demand', 'charge', 'chloride', 'carbon', 'water'] as const) {
      const fates = fatesOf(budgetOf(run, quantity, 'system')).to;
      for (const { name, share } of fates)
        expect(of(`share ${quantity} ${name.replaceAll(' ', '-')}`)).toBe(share);
    }
  });
});

describe('a measure that cannot be', () => {
  it.each([
    [
      'tallest tan@tank-1',
      /^--of: tallest tan@tank-1: no such statistic; got tallest; expected highest, lowest/,
    ],
    ['hihgest tan@tank-1', /did you mean highest\?$/],
    ['', /no such statistic; got nothing/],
    ['highest', /no such series; got nothing/],
    ['highest tan@tnak-1', /no such series; got tan@tnak-1; .* did you mean tan@tank-1\?$/],
    ['highest tan@tank-1 avereged 2 d', /not understood; got avereged 2 d; .* did you mean averaged\?$/],
    ['highest tan@tank-1 above 2', /does not belong here; got above 2$/],
    ['mean tan@tank-1 averaged 2 d', /a mean is averaged already/],
    ['highest tan@tank-1 averaged 2', /a number without a unit/],
    ['highest tan@tank-1 averaged', /got nothing after averaged/],
    ['highest tan@tank-1 from 19 d to 30 d', /outside the run; got 19 d to 30 d; expected from 0 to 20 d$/],
    ['highest tan@tank-1 from 9 d to 3 d', /the end does not come after the beginning/],
    [
      'highest tan@tank-1 averaged 30 d',
      /averaged over longer than what is looked at; got 30 d; expected at most 20 d/,
    ],
    ['highest tan@tank-1 from 2026-02-30', /no such date; got 2026-02-30/],
    ['highest tan@tank-1 from 2026-01-30', /outside the run/],
    ['highest tan@tank-1 from 1 d from 2 d', /from is said twice/],
    ['days tan@tank-1', /beyond what\?/],
    ['days tan@tank-1 above 1 below 2', /two levels/],
    ['days tan@tank-1 above 1 m3', /wrong dimension: this is a volume/],
    ['days tan@tank-1 above 1 mg/L', /ambiguous unit/],
    [
      'days nitrite@tank-1 above fish.nile-tilapia.temperature-low',
      /wrong unit; got .* in degC; expected a number in mg N\/L/,
    ],
    [
      'days nitrite@tank-1 above fish.nile-tilapia.limit-nitrit',
      /did you mean fish.nile-tilapia.limit-nitrite\?$/,
    ],
    ['share nitrogen sluge', /no such fate; got sluge; .* did you mean sludge\?$/],
    ['share nitrogn sludge', /no such conserved quantity; got nitrogn; .* did you mean nitrogen\?$/],
    ['share nitrogen sludge from 3 d', /does not belong here; got from 3 d$/],
  ])('%s', (text, message) => {
    expect(fault(text)).toMatch(message);
  });

  it('says all that is wrong at once', () => {
    const lines = fault('highest tan@tnak-1 from 90 d').split('\n');
    expect(lines).toHaveLength(2);
  });
});

describe('a run that cannot answer', () => {
  it('is an error by name, never a number', () => {
    const broken = { ...run, outcome: { kind: 'step-too-small', time: 3 } as const };
    expect(() => measureOf('highest tan@tank-1', model).of(broken)).toThrow(NoAnswerError);
    expect(() => measureOf('highest tan@tank-1', model).of(broken)).toThrow(
      'the run broke off on day 3: step-too-small',
    );
    expect(() => measureOf('share nitrogen sludge', model).of(broken)).toThrow(NoAnswerError);
  });

  it('has no mean mass of no fish', () => {
    const scenario = teachingSystem({ days: 3 });
    const cohorts = scenario.fish.map((cohort) => ({ ...cohort, number: 0 }));
    const none = doneRun({ ...scenario, fish: cohorts });
    const measure = measureOf('highest fish-mean-mass@young', none.model);
    expect(() => measure.of(none)).toThrow(/no value there to be counted/);
  });

  it('reads the model, so needs no run to be checked', () => {
    const fresh = compileModel(model.scenario, createParameters());
    expect(measureOf('highest pH@sump', fresh).unit).toBe('pH');
  });
});
