import { csvTable, actionsOverlays, readLog, readLogMap, type WaterLog } from '@leat/core';
import { describe, expect, it } from 'vitest';

const map = `
date: { column: Date, time: Time }
columns:
  NH3: { reads: ammonia, in: tank, unit: mg N/L }
  NO3: { reads: nitrate, in: tank, unit: mg N/L, changes: [{ from: 2026-03-05, unit: mg/L as NO3, resolution: 5 }] }
  pH: { reads: pH, in: tank }
  Feed a: { feed: all, unit: g }
  Feed b: { feed: all, unit: g }
  Feed total: { feed: all, unit: g }
  Added: { acts-on: tank, water: mains, fish: tilapia, pump: main }
  Water change %: { acts-on: tank, water: mains, what: water change, unit: "%" }
  Deaths: { acts-on: tank, fish: tilapia, what: died }
measures: { cup: 110 g, tbsp of baking soda: 14 g }
words: { croaked: lose-fish, ph up: potassium-hydroxide }
actions:
  - { at: 2026-03-06, change-water: { vessel: tank, share: 45 %, water: mains } }
`;
const header = 'Date,Time,NH3,NO3,pH,Feed a,Feed b,Feed total,Added,Water change %,Deaths';
const rows = [
  '2026-03-01,7:30,0.25,20,7.2,40,40,80,50 g baking soda,,',
  '2026-03-02,8 pm,0.25,20,7..3,40,40,80,2 tbsp baking soda,30,',
  '2026-03-03,evening,2026-02-01,20,6..9,40,41,81,2 tbsp epsom; 20 g muriatic acid,,2',
  '2026-03-04,x,0.25,20,7.2,40,40,80,changed 3 buckets,,0',
  '2026-03-05,,0.5,90,7.2,40,42,82,pump off 3 h + 2 croaked,,',
  '2026-03-06,,0.5,90,7.2,40,42,82,half a cup ph up,,',
];
const read = (lines = rows, by = map): WaterLog => {
  const table = csvTable(`${[header, ...lines].join('\n')}\n`, 'log.csv');
  return readLog(table, readLogMap(by, 'log.map', table));
};
const log = read();
const said = (row: number, column: string): readonly string[] =>
  log.oddities
    .filter((each) => each.row === row && each.column === column)
    .map(({ problem, done }) => `${problem}: ${done}`);

describe('a column of what was done', () => {
  it('becomes lines of a system file', () => {
    expect(log.actions.map(({ row, line }) => [row, line])).toEqual([
      [2, '{ at: 2026-03-01, dose: { into: tank, product: sodium-bicarbonate, mass: 50 g } }'],
      [3, '{ at: 2026-03-02, dose: { into: tank, product: sodium-bicarbonate, mass: 28 g } }'],
      [3, '{ at: 2026-03-02, change-water: { vessel: tank, share: 30 %, water: mains } }'],
      [4, '{ at: 2026-03-03, dose: { into: tank, product: hydrochloric-acid, mass: 20 g } }'],
      [4, '{ at: 2026-03-03, lose-fish: { cohort: tilapia, number: 2 } }'],
      [5, '{ at: 2026-03-04, change-water: { vessel: tank, volume: 30 L, water: mains } }'],
      [6, '{ at: 2026-03-05, for: 3 h, pump-off: main }'],
      [6, '{ at: 2026-03-05, lose-fish: { cohort: tilapia, number: 2 } }'],
    ]);
  });

  it('says what it does not know, what it lacks, and what it took', () => {
    expect(said(4, 'Added')).toEqual([
      '"2 tbsp epsom" is no action that is known: left out; a word of your own stands under words in the map',
      'taken as the mass of pure acid: of a bottle write only the share that is acid (wear gloves and goggles; acid into water, never water into acid): done: { at: 2026-03-03, dose: { into: tank, product: hydrochloric-acid, mass: 20 g } }',
    ]);
    expect(said(5, 'Added')).toEqual([
      'one bucket taken as 10 L, common practice: measure yours and write it in the map: done: { at: 2026-03-04, change-water: { vessel: tank, volume: 30 L, water: mains } }',
    ]);
    // A cup of feed is no cup of potash lye.
    expect(said(7, 'Added')).toEqual([
      'does not say the mass of one cup of it: weigh one and write it under measures, as "cup of potassium-hydroxide": 14 g: not acted on; in the scenario: { at: 2026-03-06, dose: { into: tank, product: potassium-hydroxide, mass: MASS } }',
    ]);
  });

  it('lies over a system file, each action on the line of its row, those of the map above it', () => {
    const [own, added] = actionsOverlays(log, 'log.map', 'system.yaml');
    expect(own.file).toBe('log.csv');
    expect(own.text.split('\n')[3]).toContain('hydrochloric-acid');
    expect(own.text.split('\n')[0]).toContain('"system.yaml"');
    expect(added.text).toContain('["log.csv"]');
    expect(added.text).toContain('45 %');
  });

  it('a word that stands for nothing is a fault', () => {
    expect(() => read(rows, map.replace('lose-fish,', 'loose-fish,'))).toThrow(/loose-fish/);
  });
});

describe('slips of the pen and of spreadsheets', () => {
  it('two points, dates for ranges, times', () => {
    expect(said(3, 'pH')).toEqual(['two points for one: kept as 7.25 to 7.35']);
    expect(said(4, 'pH')).toEqual(['a range, or 6.9 with two points, which lies in it: kept as 6 to 9']);
    expect(said(4, 'NH3')[0]).toBe('a date, which spreadsheets make of 1-2: kept as 1 to 2 mg N/L');
    expect(said(5, 'Time')).toEqual(['not a time of day: taken as the beginning of the day']);
    const hours = log.readings.filter(({ reads }) => reads === 'pH').map(({ hour }) => hour);
    expect(hours.slice(0, 3)).toEqual([7.5 / 24, 20 / 24, 19 / 24]);
  });

  it('a half of feed is one, however it is written', () => {
    const halves = ['½', '1/2', '1 1/2', '1½ cups'].map(
      (fed, i) => `2026-03-0${i + 1},,0.25,20,7.2,${fed},,,,,`,
    );
    const cups = map.replace('Feed a: { feed: all, unit: g }', 'Feed a: { feed: all, unit: cup }');
    expect(read(halves, cups).feed.map(({ grams }) => grams)).toEqual([55, 55, 165, 165]);
  });

  it('a slip downwards stands out as one upwards does, though the error is a share', () => {
    const nitrate = ['39', '40', '4', '40', '41'].map((each, i) => `2026-03-0${i + 1},,,${each},,,,,,,`);
    const plain = map.replace(/, changes: .*\}\] \}/, ' }');
    const { oddities } = read(nitrate, plain);
    expect(oddities.map(({ row, problem }) => [row, problem])).toEqual([
      [4, 'stands out from those around it (39, 40, 40, 41)'],
    ]);
  });

  it('a total does not count beside its parts', () => {
    expect(log.feed.reduce((sum, { grams }) => sum + grams, 0)).toBe(80 + 80 + 81 + 80 + 82 + 82);
    expect(said(2, 'Feed total')).toEqual(['the sum of Feed a, Feed b: not counted beside its parts']);
  });

  it('another kit is read by its own unit from its date on', () => {
    const nitrate = log.readings.filter(({ reads }) => reads === 'nitrate');
    expect(nitrate[3]).toMatchObject({ value: 20, low: 19.5, high: 20.5 });
    // Molar masses 14.007 and 62.004.
    expect(nitrate[4].value).toBeCloseTo((90 * 14.007) / 62.004, 6);
  });

  it('a reading far from those around it is told and kept', () => {
    const lines = ['20', '21', '20', '200', '20', '19', '21'].map(
      (value, i) => `2026-04-0${i + 1},,,${value},,,,,,,`,
    );
    const { oddities, readings } = read(lines, map.replace(/, changes: .*?\}\] /, ' '));
    expect(oddities.map(({ row, problem, done }) => `${row} ${problem}: ${done}`)).toEqual([
      '5 stands out from those around it (21, 20, 20, 19): kept: look whether it is a slip',
    ]);
    expect(readings).toHaveLength(7);
  });

  it('steps that are coarser than the numbers look are told once', () => {
    const lines = Array.from(
      { length: 24 },
      (_, i) => `2026-04-${String(i + 1).padStart(2, '0')},,,${10 * (1 + (i % 4))},,,,,,,`,
    );
    const { oddities } = read(lines, map.replace(/, changes: .*?\}\] /, ' '));
    expect(oddities.map(({ problem, done }) => `${problem}: ${done}`)).toEqual([
      'steps are really 10: 24 readings: read as exact to 1; with resolution: 10 in the map they are not',
    ]);
  });
});
