import { describe, expect, it } from 'vitest';
import { csvTable } from '../../../../packages/core/src/log/log-table.js';
import { summaryOfLog } from '../../../../packages/core/src/log/log-summary.js';
import { readLog } from '../../../../packages/core/src/log/read-log.js';
import { readLogMap } from '../../../../packages/core/src/log/read-map.js';
import type { Cohort, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { scenarioOf, startOf, tilapia, vessel } from '../../../support/scenario-builder.js';

const map = `date: { column: Date }
columns:
  T sump: { reads: temperature, in: sump, unit: degC }
  NO3 tank: { reads: nitrate, in: tank, unit: mg N/L }
  NO3 sump: { reads: nitrate, in: sump, unit: mg N/L }
  TAN tank: { reads: ammonia, in: tank, unit: mg N/L }
  Feed: { feed: all, unit: g }
`;
const names = 'Date,T sump,NO3 tank,NO3 sump,TAN tank,Feed';
const logOf = (...rows: readonly string[]) => {
  const table = csvTable([names, ...rows].join('\n'), 'log.csv');
  return readLog(table, readLogMap(map, 'm', table));
};
const [tank, sump] = [vessel('tank', 2), vessel('sump', 1)];

/** Ten days from 1 March 2027 of fish that are offered so much. */
const system = (cohort: Partial<Cohort> = {}, other: Partial<Scenario> = {}): Scenario =>
  scenarioOf([tank, sump], {
    fish: [tilapia('fish', 'tank', cohort)],
    start: [startOf(tank), startOf(sump)],
    ...other,
  });
const mass = (gramsPerDay: number): Partial<Cohort> => ({ ration: { kind: 'mass', gramsPerDay } });

describe('courses of a log', () => {
  it('stand in the order of quantities, of each by the name of the vessel', () => {
    const log = logOf('2027-03-01,20,5,6,<0.1,', '2027-03-02,,8,,0.3,', '2027-03-06,,5,,0.5,');
    const { courses } = summaryOfLog(log);
    expect(courses.map(({ reads, vessel: name }) => `${reads}@${name}`)).toEqual([
      'ammonia@tank',
      'nitrate@sump',
      'nitrate@tank',
      'temperature@sump',
    ]);
    expect(courses[2]).toEqual({
      reads: 'nitrate',
      vessel: 'tank',
      count: 3,
      open: 0,
      gap: 4,
      lowest: 5,
      median: 5,
      highest: 8,
    });
    expect(courses[0]).toMatchObject({ count: 3, open: 1, gap: 4 });
    expect(courses[1]).toMatchObject({ count: 1, gap: 0 });
  });

  it('span both the first date and the last; no date spans nothing', () => {
    expect(summaryOfLog(logOf('2027-03-01,20,,,,', '2027-03-06,20,,,,')).span).toBe(6);
    expect(summaryOfLog(logOf('2027-03-01,20,,,,')).span).toBe(1);
    expect(summaryOfLog(logOf('never,20,,,,'), system())).toMatchObject({ span: 0, doubts: [] });
  });
});

describe('feed of a log', () => {
  const fed = logOf('2027-03-01,,,,,100', '2027-03-02,,,,,', '2027-03-03,,,,,200');

  it('is counted by grams and days, and its nitrogen by the protein of the feed', () => {
    const { feed, nitrogen } = summaryOfLog(fed, system());
    expect(feed).toEqual({ grams: 300, days: 2 });
    // Protein has 16 % nitrogen, by the library.
    expect(nitrogen).toBeCloseTo(300 * 0.32 * 0.16, 10);
    expect(summaryOfLog(fed).nitrogen).toBeUndefined();
  });

  it.each([
    [mass(150), undefined],
    [mass(100), undefined],
    [mass(99), '150 g on a day with feed, the file offers 99.0 g at the start'],
    [mass(97), '150 g on a day with feed, the file offers 97.0 g at the start'],
    [mass(225), undefined],
    [mass(226), '150 g on a day with feed, the file offers 226 g at the start'],
    [mass(0.5), '150 g on a day with feed, the file offers 0.500 g at the start'],
    [mass(0), undefined],
    // 100 fish of 100 g at 1.5 % of their mass: 150 g a day, and at 1.5 ‰ 15 g.
    [{}, undefined],
    [{ ration: { kind: 'share', perDay: 0.0015 } }, 'the file offers 15.0 g at the start'],
    // What the fish want is known in a run alone.
    [{ ration: { kind: 'appetite' } }, undefined],
  ] as readonly (readonly [Partial<Cohort>, string | undefined])[])(
    'is held against what the file offers, half as much again or less: %j',
    (cohort, doubt) => {
      const { doubts } = summaryOfLog(fed, system(cohort));
      expect(doubts).toHaveLength(doubt === undefined ? 0 : 1);
      if (doubt !== undefined) expect(doubts[0]).toContain(doubt);
    },
  );
});

describe('what does not fit the system', () => {
  const doubts = (rows: readonly string[], scenario = system()): readonly string[] =>
    summaryOfLog(logOf(...rows), scenario).doubts;

  it('is nothing where all fits', () => {
    expect(doubts(['2027-03-01,20,1,1,1,150', '2027-03-11,20,1,1,1,150'])).toEqual([]);
  });

  it('is a vessel or fish that it has not', () => {
    expect(doubts(['2027-03-01,20,1,,,'], scenarioOf([vessel('sump', 3)]))).toEqual([
      'the system has no vessel tank: its readings say nothing of it',
    ]);
  });

  it.each([
    [
      '2027-02-20',
      '2027-02-28',
      'the log (2027-02-20 to 2027-02-28) lies outside the 10 days from 2027-03-01',
    ],
    [
      '2027-03-12',
      '2027-03-13',
      'the log (2027-03-12 to 2027-03-13) lies outside the 10 days from 2027-03-01',
    ],
    [
      '2027-02-28',
      '2027-03-02',
      'part of the log (2027-02-28 to 2027-03-02) lies outside the 10 days from 2027-03-01',
    ],
    [
      '2027-03-02',
      '2027-03-12',
      'part of the log (2027-03-02 to 2027-03-12) lies outside the 10 days from 2027-03-01',
    ],
  ])('is days that it does not run: %s to %s', (from, to, doubt) => {
    expect(doubts([`${from},20,,,,`, `${to},20,,,,`])).toEqual([doubt]);
  });

  it('is a temperature more than 4 degC from that of the middle of the log', () => {
    const daily = { kind: 'daily', values: [10, 10, 10, 10, 20, 30, 30, 30, 30, 30, 30] } as const;
    const warming = scenarioOf([vessel('sump', 3, { temperature: daily })]);
    const rows = (value: number) => [`2027-03-03,${value},,,,`, `2027-03-07,${value},,,,`];
    expect(doubts(rows(24), warming)).toEqual([]);
    expect(doubts(rows(16), warming)).toEqual([]);
    expect(doubts(rows(25), warming)).toEqual([
      'temperature in sump is about 25.0 degC, the file has 20.0 degC',
    ]);
    expect(doubts(rows(15), warming)).toHaveLength(1);
  });

  it('is more nitrate than feed brought: 1 g of feed has 51.2 mg of nitrogen', () => {
    const rose = (to: number) => ['2027-03-01,,1,,,150', `2027-03-02,,${to},,,150`];
    // 300 g bring 15.36 g into 3 m3: 5.12 mg N/L; figures are read to the whole.
    expect(doubts(rose(7))).toEqual([]);
    expect(doubts(rose(8))).toEqual([
      'nitrate in tank rose by more nitrogen (18.0 g in 3.00 m3) than all feed brought (15.4 g)',
    ]);
    expect(doubts(['2027-03-01,,1,,,', '2027-03-02,,90,,,'])).toEqual([]);
  });
});
