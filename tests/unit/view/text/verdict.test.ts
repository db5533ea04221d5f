import { describe, expect, it } from 'vitest';
import type { RunVerdict, Trouble } from '@leat/core';
import { betterLine, dayNames, harvestLines, spanPhrase, verdictLines, verdictTold } from '@leat/view/text';

const nitrite: Trouble = {
  ...{ quantity: 'nitrite', direction: 'above', value: 16.2, unit: 'mg N/L', whom: 'nile-tilapia' },
  ...{ places: ['tank-1', 'tank-2'], first: 31.04, total: 20, worst: 413, worstAt: 60 },
};
const enough: RunVerdict['water'] = {
  ...{ state: 'enough', lowDays: 0, perDay: 0.136, capDays: 0, pumps: [], dry: [] },
};
const sound: RunVerdict = {
  fish: { state: 'safe', troubles: [], deaths: [] },
  water: enough,
  filter: { state: 'keeps-up', by: 'ammonia', ammonia: 0.5, nitrite: 0.2 },
  crops: { harvested: [{ crop: 'basil', mass: 94_200, dry: false }], shortOfNitrogen: 0 },
};

describe('a verdict in lines', () => {
  it('is four lines where all is well, fish first', () => {
    expect(verdictLines(sound, '2025-10-01')).toEqual([
      'Fish: safe.',
      'Filter: keeps up (ammonia at most 0.5, nitrite 0.2 mg N/L).',
      'Water: enough, 136 L a day.',
      'Crops: 94.2 kg basil harvested.',
    ]);
  });

  it('tells feed that fish leave: of fish that are dead, what they left before', () => {
    const uneaten = [{ cohort: 'growers', share: 0.516 }];
    const lines = (fish: NonNullable<RunVerdict['fish']>) => verdictLines({ ...sound, fish }, '2025-10-01');
    const told = lines({ state: 'safe', troubles: [], deaths: [], uneaten });
    expect([told[0], told.at(-1)]).toEqual(['Fish: safe.', 'Feed: not eaten, 52 % of that of growers.']);
    const before = [{ ...uneaten[0], until: 2 }];
    expect(lines({ state: 'dead', from: 33, troubles: [], deaths: [], uneaten: before }).at(-1)).toBe(
      'Feed: not eaten, 52 % of that of growers until day 2 (3 Oct).',
    );
  });

  it('tells fish that grow lighter, and water that runs over, before what is well', () => {
    const thin = [{ cohort: 'growers', share: 0.304, from: 0, until: 120 }];
    const fish = { state: 'safe', troubles: [], deaths: [], thin } as const;
    const told = verdictLines({ ...sound, fish, water: { ...enough, over: 1.84 } }, '2025-10-01');
    expect(told.slice(0, 2)).toEqual([
      'Fish: safe. Lighter: growers by 30 % from day 0 (1 Oct) to day 120 (29 Jan).',
      'Water: enough, 136 L a day; 1.84 m3 a day runs over the rim of the reservoir.',
    ]);
  });

  it('says first what kills fish, of what, where, since when, and that what follows is no forecast', () => {
    const [first] = verdictLines(
      { ...sound, fish: { state: 'lethal', from: 31.04, troubles: [nitrite], deaths: [] } },
      '2025-10-01',
    );
    expect(first).toBe(
      'Fish: in deadly water from day 31 (1 Nov): nitrite above 16.2 mg N/L in tank-1 and tank-2 for 20 d, ' +
        'at worst 413 on day 60 (30 Nov). What follows is no forecast.',
    );
  });

  it('tells deaths, and what began it', () => {
    const [first] = verdictLines(
      {
        ...sound,
        fish: {
          ...{ state: 'dead', from: 33, troubles: [nitrite] },
          deaths: [{ cohort: 'growers', vessel: 'tank-1', share: 1, cause: 'nitrite', halfBy: 33 }],
        },
        beginning: {
          time: 31.04,
          what: { kind: 'limit', trouble: nitrite },
          after: { time: 31, kind: 'pump', place: 'main', text: 'off, power cut' },
        },
      },
      '2025-10-01',
    );
    expect(first).toContain('half or more dead by day 33 (3 Nov)');
    expect(first).toContain('Dead: all of growers, of nitrite.');
    expect(first).toMatch(/It began 58 min after a power cut\.$/);
  });

  it('puts the worst first behind from when on it is no forecast: a filter that falls behind before fish that are well', () => {
    const lines = verdictTold(
      {
        ...sound,
        holdsUntil: { time: 25, why: 'broken-off' },
        filter: {
          ...{ state: 'falls-behind', by: 'ammonia', from: 20, held: 'acid', ammonia: 35.5, nitrite: 0.7 },
        },
        water: { ...enough, state: 'pump', pumps: [{ pump: 'main', times: 2, first: 9, total: 0.5 }] },
      },
      '2025-10-01',
    );
    expect(lines.map(({ of }) => of)).toEqual(['forecast', 'filter', 'water', 'fish', 'crops']);
    expect(lines[1].text).toContain('the water too acid for it');
    expect(lines[2].text).toContain('pump main sucks air 2 times from day 9 (10 Oct), 12 h in all');
  });
});

it('names days with their date, across a year and a leap day', () => {
  const name = dayNames('2023-12-31');
  expect([0, 1, 60, 60.97, 61.04].map(name)).toEqual([
    'day 0 (31 Dec)',
    'day 1 (1 Jan)',
    'day 60 (29 Feb)',
    'day 61 (29 Feb)',
    'day 61 (1 Mar)',
  ]);
});

it('says how long in hours or days', () => {
  expect([0.01, 0.5, 1.5, 20].map((days) => spanPhrase(days))).toEqual(['14 min', '12 h', '36 h', '20 d']);
});

it('says on what each of several runs is better, and where they are alike', () => {
  const worse: RunVerdict = {
    ...sound,
    fish: { state: 'at-risk', from: 3, troubles: [nitrite], deaths: [] },
    crops: { harvested: [{ crop: 'basil', mass: 50_000, dry: false }], shortOfNitrogen: 0 },
  };
  const line = betterLine([
    { name: 'A', verdict: worse },
    { name: 'B', verdict: sound },
  ]);
  expect(line).toBe('better on fish: B; on the filter: alike; on water: alike; on harvest: B');
});

it('tells a harvest by crop, per square metre, kilogram of feed and cubic metre of water, and fish', () => {
  const lines = harvestLines({
    crops: [
      { planting: 'greens', crop: 'pak-choi', dry: 500, fresh: 10_000, plants: 40, months: [] },
      { planting: 'taro', crop: 'taro', dry: 100, months: [] },
    ],
    fish: [{ cohort: 'growers', species: 'nile-tilapia', number: 12, mass: 6000, months: [] }],
    ...{ fresh: 10_000, area: 5, feed: 20_000, water: 2 },
  });
  expect(lines).toEqual([
    'harvest',
    '  greens (pak choi): 10 kg fresh, 40 plants',
    '  taro: 0.1 kg dry',
    '  crops in all: 10 kg fresh, 2 kg per m2, 0.5 kg per kg of feed, 5 kg per m3 of water',
    '  growers: 12 fish, 6 kg',
  ]);
});
