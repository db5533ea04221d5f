import { describe, expect, it } from 'vitest';
import type { Observation } from '../../../../packages/core/src/calibration/readings.js';
import { readingError } from '../../../../packages/core/src/calibration/reading-loss.js';
import { verdictOfFit, type FitVerdict } from '../../../../packages/core/src/calibration/verdict.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import type { Measurable } from '../../../../packages/core/src/scenario/scenario.js';

const parameters = createParameters([]);
const days = 100;

/** What a fit has of a quantity, and what a meter says of it, by the day; read every third day with 1 % of play. */
interface Made {
  readonly reads: Measurable;
  readonly fit: (day: number) => number;
  readonly said: (day: number) => number;
  readonly every?: number;
  /** First day, and for how many. */
  readonly from?: number;
  readonly days?: number;
}

/** The verdict on a fit of which nothing but these readings is known. */
function verdictOn(made: readonly Made[], searches: readonly number[] = [10, 10]): FitVerdict {
  const all = made.flatMap(({ reads, fit, said, every = 3, from = 0, days: long = days - from }) =>
    Array.from({ length: Math.floor(long / every) }, (_, i) => {
      const time = from + i * every + 1;
      const value = said(time);
      const reading = { reads, vessel: 'tank', low: 0.99 * value, high: 1.01 * value, value };
      return { observation: { reading, vessel: 0, time } as Observation, fitted: fit(time) };
    }),
  );
  const problem: Parameters<typeof verdictOfFit>[0] = {
    ...{ parameters, days, ahead: 0, observations: all.map(({ observation }) => observation) },
    errorOf: (reads: Measurable) => readingError(parameters, reads),
  };
  const predicted = all.map(({ fitted }) => fitted);
  const minima = searches.map((value) => ({
    ...{ value, at: new Float64Array(), predicted: new Float64Array() },
    ...{ jacobian: undefined as never, converged: true, steps: 1 },
  }));
  return verdictOfFit(problem, predicted, [], [], minima);
}

const sound: Made = { reads: 'nitrate', fit: (day) => 20 + day / 5, said: (day) => 20 + day / 5 };
const named = ({ faults }: FitVerdict): readonly string[] =>
  faults.map((fault) => ('reads' in fault ? `${fault.kind} ${fault.reads}` : fault.kind));

describe('the verdict on a fit', () => {
  it('trusts what the readings agree with, and a fit whose readings lie off by less than harms', () => {
    const off: Made = { reads: 'ammonia', fit: () => 1, said: () => 1.4 };
    const { verdict, trust, faults } = verdictOn([sound, off]);
    expect([verdict, faults]).toEqual(['trusted', []]);
    expect(trust.map(({ reads, trusted }) => `${reads} ${trusted}`)).toEqual([
      'ammonia true',
      'nitrate true',
    ]);
  });

  it('fails for the nitrogen that the last readings contradict, and says what they say', () => {
    const off: Made = { reads: 'ammonia', fit: () => 1, said: (day) => (day < 70 ? 1 : 3) };
    const told = verdictOn([sound, off]);
    expect([told.verdict, named(told)]).toEqual(['failed', ['today ammonia']]);
    const [ammonia, nitrate] = told.trust;
    expect([ammonia.trusted, nitrate.trusted]).toEqual([false, true]);
    expect(ammonia.fitted).toBe(1);
    expect([ammonia.low < 3, ammonia.high > 3, ammonia.low > 2]).toEqual([true, true, true]);
  });

  it('is of a quantity, not of the kit: a factor of 2, on which pH turns at 0.3', () => {
    const at = (reads: Measurable, off: number): string =>
      verdictOn([sound, { reads, fit: () => 7, said: () => 7 + off }]).verdict;
    expect([at('pH', 0.15), at('pH', -0.15), at('pH', 0.5), at('pH', -0.5)]).toEqual([
      ...['trusted', 'trusted', 'partly', 'partly'],
    ]);
    const by = (factor: number): string =>
      verdictOn([{ reads: 'nitrate', fit: () => 40, said: () => 40 * factor }]).verdict;
    expect([by(0.7), by(1.5), by(0.4), by(2.6)]).toEqual(['trusted', 'trusted', 'failed', 'failed']);
  });

  it('a course that is off for half the time fails though today is right', () => {
    const off: Made = { reads: 'nitrite', fit: () => 1, said: (day) => (day < 65 ? 4 : 1) };
    const told = verdictOn([sound, off]);
    expect(named(told)).toContain('course nitrite');
    expect(named(told)).not.toContain('today nitrite');
    expect(told.verdict).toBe('failed');
  });

  it('half the time is of days, not of readings: a fortnight of daily tests does not outweigh months', () => {
    const daily: Made = {
      reads: 'nitrite',
      fit: () => 1,
      said: (day) => (day < 22 ? 4 : 1),
      every: 1,
      days: 30,
    };
    const weekly: Made = { reads: 'nitrite', fit: () => 1, said: () => 1, every: 7, from: 30 };
    const told = verdictOn([daily, weekly]);
    expect(told.trust).toHaveLength(1);
    expect(named(told)).toEqual(['start nitrite']);
  });

  it('a start that the file has wrong is named, and fails where it is far off', () => {
    const early = (factor: number): FitVerdict =>
      verdictOn([sound, { reads: 'ammonia', fit: () => 1, said: (day) => (day < 22 ? factor : 1) }]);
    expect([early(3).verdict, named(early(3))]).toEqual(['trusted', ['start ammonia']]);
    expect([early(8).verdict, named(early(8))]).toEqual(['failed', ['start ammonia']]);
  });

  it('one reading that is spoilt does not speak against a fit, and four say nothing of a course', () => {
    const slip: Made = { reads: 'ammonia', fit: () => 1, said: (day) => (day === 49 ? 8 : 1) };
    expect(verdictOn([slip]).faults).toEqual([]);
    const few: Made = { reads: 'ammonia', fit: () => 1, said: () => 9, every: 40 };
    const told = verdictOn([sound, few]);
    expect(told.trust[0].trusted).toBe(undefined);
    expect(told.verdict).toBe('partly');
  });

  it('searches that end far apart fail the whole of it', () => {
    const told = verdictOn([sound], [10, 30]);
    expect([told.verdict, named(told)]).toEqual(['failed', ['searches']]);
  });
});
