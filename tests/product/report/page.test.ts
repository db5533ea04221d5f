import { budgetOf, compareRuns, fatesOf, harvestOf, why, worstFirst } from '@leat/core';
import { parseHTML } from 'linkedom';
import { beforeAll, describe, expect, it } from 'vitest';
import { reportPage } from '../../../packages/cli/src/commands/report/page.js';
import type { RunSummary } from '@leat/view/report';
import { boundPhrase, costLines, percent, shown } from '@leat/view/text';
import { banded } from './banded.js';
import { summaryOf, summaryOver } from './summarized.js';
import { pathPlaces } from '../../support/path-places.js';

const read = (html: string): Document => parseHTML(html).document;
const textIn = (document: Document, selector: string): string =>
  (document.querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ');

let told: readonly RunSummary[];
let one: string;
let three: string;

beforeAll(async () => {
  told = [
    await summaryOf('glasshouse', 'A', 60),
    await summaryOf('double-stock', 'B', 60),
    await summaryOf('bare-beds', 'C', 60),
  ];
  one = reportPage(told.slice(0, 1));
  three = reportPage(told);
});

describe('a report of one run', () => {
  it('has every section', () => {
    const ids = [...read(one).querySelectorAll('section')].map(({ id }) => id);
    expect(ids).toEqual([
      ...[
        'asked',
        'harvest',
        'water',
        'limits',
        'system',
        'after',
        'courses',
        'nitrogen',
        'base',
        'events',
        'basis',
      ],
    ]);
  });

  it('says what was asked and puts the answer in words', () => {
    const head = textIn(read(one), 'header');
    expect(head).toContain('What does nitrogen do in a well-run glasshouse in half a year?');
    expect(head).toContain('60 days from 2025-10-01');
    const { total, to } = fatesOf(told[0].account.nitrogen);
    expect(head).toContain(`Of ${shown(total / 1000)} kg of nitrogen that came`);
    const gas = to.find(({ name }) => name === 'nitrogen gas');
    expect(head).toContain(`${percent(gas?.share ?? Number.NaN)} left as nitrogen gas`);
  });

  it('names every vessel, what lives in it, and where water comes from', () => {
    const text = textIn(read(one), '#system');
    for (const { name } of told[0].system?.vessels ?? []) expect(text).toContain(name);
    for (const word of ['30 nile tilapia, 540 g', 'basil, 8 m²', 'biofilm on 97.4 m²', 'mains'])
      expect(text).toContain(word);
  });

  it('draws the courses that were asked for, with limits named', () => {
    const document = read(one);
    const titles = [...document.querySelectorAll('#limits h3, #courses h3')].map((each) => each.textContent);
    for (const title of [
      'Total ammonia (TAN)',
      'Nitrite',
      'Nitrate',
      'pH',
      'Oxygen',
      'Water level',
      'Feed',
      'Crops',
    ])
      expect(
        titles.some((each) => each.startsWith(title)),
        title,
      ).toBe(true);
    const text = textIn(document, '#limits') + textIn(document, '#courses');
    for (const name of [
      'nile tilapia at most: 0.05',
      'nile tilapia at least: 3',
      'pump main sucks air: 0.25',
    ])
      expect(text).toContain(name);
  });

  it('tells the same grams and cubic metres as the library', () => {
    const document = read(one);
    const run = told[0].system?.run;
    if (run === undefined) throw new Error('no run');
    for (const [id, quantity, unit] of [
      ['nitrogen', 'nitrogen', 'g'],
      ['water', 'water', 'm³'],
    ] as const) {
      const { from, to } = fatesOf(budgetOf(run, quantity, 'system'));
      const rows = [...document.querySelectorAll(`#${id} table.bars tbody tr`)]
        .map((row) => [...row.children].slice(0, 3).map((cell) => cell.textContent))
        .filter(([name]) => name !== 'in all');
      expect(rows).toEqual(
        [...from, ...to].map(({ name, amount, share }) => [name, `${shown(amount)} ${unit}`, percent(share)]),
      );
    }
  });

  it('lists every limit that was passed, with where its number is from', () => {
    const rows = [...read(one).querySelectorAll('#limits table.stack tbody tr')].map(
      (row) => row.textContent,
    );
    const passed = told[0].account.limits.filter((limit) => limit.passed);
    expect(rows).toHaveLength(passed.length);
    for (const { source, mark, worst } of passed)
      expect(
        rows.some((row) => row.includes(source) && row.includes(`[${mark}]`) && row.includes(shown(worst))),
      ).toBe(true);
  });

  it('cites every source and prints the manifest and the cautions', () => {
    const text = textIn(read(one), '#basis');
    for (const { citation } of told[0].sources) expect(text).toContain(citation.replace(/\s+/g, ' '));
    expect(text).toContain(told[0].manifest.scenario);
    expect(text).toContain('measure your own water');
  });

  it('gives every picture a title and a description, and none an empty one', () => {
    const document = read(one);
    const pictures = [...document.querySelectorAll('svg[role=img]')];
    expect(pictures.length).toBeGreaterThan(15);
    for (const svg of pictures) {
      const ids = (svg.getAttribute('aria-labelledby') ?? '').split(' ');
      expect(ids).toHaveLength(2);
      for (const id of ids) expect(document.getElementById(id)?.textContent.length ?? 0).toBeGreaterThan(5);
    }
    const others = [...document.querySelectorAll('svg:not([role=img])')];
    expect(others.every((svg) => svg.getAttribute('aria-hidden') === 'true')).toBe(true);
  });

  it('draws nothing that is not a number', () => {
    for (const page of [one, three]) expect(page).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });
});

describe('a report of several runs', () => {
  it('draws all panels of a row on the same scales', () => {
    const sets = [...read(three).querySelectorAll('#limits .set, #courses .set')];
    const crops = new Set(told.flatMap(({ system }) => system?.stands.map(({ planting }) => planting) ?? []));
    expect(sets).toHaveLength(11 + crops.size);
    for (const set of sets) {
      const axes = [...set.querySelectorAll('svg')].map((svg) =>
        [...svg.querySelectorAll('text[text-anchor=end], g[text-anchor=end] text')]
          .map((each) => each.textContent)
          .filter((text) => /^[\d.,−-]+$/.test(text))
          .join(),
      );
      expect(axes[0]).toMatch(/\d,.*\d/);
      expect(new Set(axes).size).toBe(1);
    }
  });

  it('says why, with the parts of the library', () => {
    const document = read(three);
    const [a, , c] = told.map(({ system }) => system?.run);
    if (a === undefined || c === undefined) throw new Error('no run');
    const tables = [...document.querySelectorAll('#differences table.bars')];
    const caption = /^alkalinity in tank-1, day (\d+) \(\d+ \w{3}\): /;
    const found = tables
      .filter((each) => caption.test(each.querySelector('caption')?.textContent ?? ''))
      .at(-1);
    const day = Number(caption.exec(found?.querySelector('caption')?.textContent ?? '')?.[1]);
    const difference = why('alkalinity@tank-1', { run: a, day }, { run: c, day }, { around: 'system' });
    const rows = [...(found?.querySelectorAll('tbody tr') ?? [])].map((row) =>
      [...row.children].slice(0, 2).map((cell) => cell.textContent),
    );
    const sign = (value: number): string => `${value > 0 ? '+' : ''}${shown(value)}`;
    expect(rows[0]).toEqual(['difference', sign(difference.difference)]);
    const [first] = difference.parts;
    expect(rows[1]).toEqual([`${first.did ?? ''} ${first.name}`.trim(), sign(first.value)]);
  });

  it('lists the key quantities as compareRuns orders them', () => {
    const { quantities } = compareRuns(
      told.map(({ account }) => account),
      0.01,
    );
    const rows = [...read(three).querySelectorAll('#differences .scroll:first-of-type tbody tr')];
    const ends = rows.slice(0, quantities.length).map((row) => row.children[2].textContent);
    expect(ends).toEqual(quantities.map(({ runs }) => shown(runs[0]?.end)));
  });
});

describe('what a report puts first', () => {
  it('marks charts in trouble and has the worst with the limits, the others at the head of the courses', () => {
    const document = read(one);
    const marks = [...document.querySelectorAll('.trouble')];
    const bad = told[0].account.limits.filter(({ passed }) => passed);
    const known = [
      'tan',
      'un-ionised-ammonia',
      'nitrite',
      'nitrate',
      'pH',
      'alkalinity',
      'oxygen',
      'chloride',
    ];
    const quantities = new Set(bad.map(({ quantity }) => quantity).filter((each) => known.includes(each)));
    expect(quantities.size).toBeGreaterThan(0);
    const level = told[0].account.verdict.water.state === 'enough' ? 0 : 1;
    expect(marks).toHaveLength(quantities.size + level);
    expect(document.querySelectorAll('#limits .trouble')).toHaveLength(Math.min(3, marks.length));
    const [first] = document.querySelectorAll('#limits figure');
    const [worst] = bad.filter(({ quantity }) => known.includes(quantity)).sort(worstFirst);
    expect(first.querySelector('.trouble')?.textContent).toContain(
      `${worst.harm === 'crop' ? 'Past what is advised' : 'In trouble'}: ${boundPhrase(worst)}`,
    );
  });

  it('folds what comes after the system, each fold opened by its link in the contents', () => {
    for (const page of [one, three]) {
      const document = read(page);
      const folds = [...document.querySelectorAll('section > details.fold')];
      expect(folds.length).toBeGreaterThan(4);
      for (const fold of folds) {
        expect(fold.hasAttribute('open')).toBe(false);
        expect(fold.querySelector('summary h2')?.textContent.length).toBeGreaterThan(5);
      }
      const open = [...document.querySelectorAll('main > section:not(.folded)')].map(({ id }) => id);
      expect(open).toEqual(['harvest', 'water', 'limits', 'system']);
      for (const link of document.querySelectorAll('nav a')) {
        const target = document.getElementById((link.getAttribute('href') ?? '').slice(1));
        expect(target, link.textContent).not.toBeNull();
      }
    }
  });

  it('draws what was harvested as bars, a month each, and crops as they stand, a line a batch', () => {
    const document = read(one);
    const run = told[0].system?.run;
    if (run === undefined) throw new Error('no run');
    const { crops, fish } = harvestOf(run);
    const given = [...crops, ...fish].filter(({ months }) => months.length > 0);
    const bars = [...document.querySelectorAll('#harvest .harvested figure')];
    expect(bars).toHaveLength(given.length);
    bars.forEach((each, i) => {
      const { months } = given[i];
      expect(each.querySelectorAll('rect')).toHaveLength(months.filter(({ mass }) => mass > 0).length);
      for (const { mass } of months) expect(each.textContent).toContain(shown(mass / 1000));
    });
    for (const { name, batches } of run.model.scenario.plantings) {
      const panel = [...document.querySelectorAll('#courses .panels figure')].find(
        (each) => each.querySelector('h3')?.textContent === `Crops: ${name} kg dry`,
      );
      expect(panel?.querySelectorAll('[stroke-width="1.1"] path, path[stroke-width="1.1"]')).toHaveLength(
        batches,
      );
    }
  });

  it('has dates on its axes, and the cost of a run that has prices', async () => {
    const ticks = [...read(one).querySelectorAll('#courses figure')].map((each) => each.textContent);
    expect(ticks.some((text) => text.includes('15 Oct'))).toBe(true);
    const priced = await summaryOver('prices: { feed: 2 EUR per kg }\n');
    const costs = priced.account.costs;
    if (costs === undefined) throw new Error('no costs');
    const lines = [...read(reportPage([priced])).querySelectorAll('.costs li')].map(
      (each) => each.textContent,
    );
    expect(lines).toEqual(costLines(costs));
    expect(lines[0]).toContain('EUR');
    expect(read(one).querySelector('.costs')).toBeNull();
  });
});

describe('a report with an ensemble', () => {
  it('draws bands and says how likely each limit is passed', () => {
    const [first] = told;
    const ensemble = banded(first);
    const page = reportPage([{ ...first, ensemble }]);
    const document = read(page);
    const text = textIn(document, '#sure');
    expect(text).toContain('200 runs, each with 2 numbers drawn');
    expect(text).toContain('1 of them broke off and are in no band; the first, 3, for: oxygen ran out.');
    expect(text).toContain('nitrite above 1 mg N/L, tank-1, for nile tilapia');
    expect(text).toContain('first on day 8 (4 to 16), for 20 (10 to 40) d; invented [P]12.5 %');
    expect(text).toContain('1 limit was passed in none of them');
    expect(text).toContain('highest tan@tank-12 mg N/L1.8 to 2.21 to 4199');
    expect(text).toContain('margin of: highest tan@tank-1 below 225.0 %');
    expect(textIn(document, '#courses')).toContain('the inner holds half of them');
    const fills = (html: string, colour: string): number => html.split(`fill="var(--${colour})"`).length - 1;
    expect(fills(page, 'mist')).toBe(ensemble.series.length);
  });

  it('says in short which limit that the run keeps others pass', () => {
    const [first] = told;
    const kept = banded(first);
    const words = (limits: typeof kept.limits): string =>
      textIn(read(reportPage([{ ...first, ensemble: { ...kept, limits } }])), '.short');
    expect(words(kept.limits)).toContain(
      'In 200 runs with numbers drawn from their ranges a limit that this run keeps was passed in 12.5 %: nitrite above 1 mg N/L in tank-1.',
    );
    const here = first.account.limits.find((limit) => limit.passed);
    const [odds] = kept.limits;
    const same = { ...odds, id: here?.id ?? '', place: here?.place ?? '' };
    expect(words([same])).toContain('no limit was passed that this run keeps');
  });

  it('has the bands in the words and in the table beside each picture', () => {
    const [first] = told;
    const ensemble = banded(first);
    const document = read(reportPage([{ ...first, ensemble }]));
    const found = [...document.querySelectorAll('#courses figure')].find(
      (each) => each.querySelector('h3')?.textContent.startsWith('Nitrate') === true,
    );
    const { median, band50, band90 } =
      ensemble.series.find(({ name }) => name === 'nitrate@tank-1') ?? banded(first).series[0];
    const last = (values: Float64Array): string => shown(values[values.length - 1]);
    expect(found?.querySelector('desc')?.textContent).toContain(
      `half lie between ${last(band50[0])} and ${last(band50[1])}, nine tenths between ${last(band90[0])} and ${last(band90[1])}.`,
    );
    const heads = [...(found?.querySelectorAll('thead th') ?? [])].map((each) => each.textContent);
    expect(heads).toEqual(['day', 'tank-1', '5 %', '25 %', 'median', '75 %', '95 %']);
    const row = [...(found?.querySelectorAll('tbody tr:last-child > *') ?? [])].map(
      (each) => each.textContent,
    );
    expect(row.slice(2)).toEqual([band90[0], band50[0], median, band50[1], band90[1]].map(last));
  });
});

describe('a report with very wide bands', () => {
  /** Bands about a run whose outer edge goes to so many times the value. */
  const wide = (first: RunSummary, factor: number): RunSummary => {
    const ensemble = banded(first);
    const series = ensemble.series.map((each) => {
      const high = each.median.map((value) => (each.name.startsWith('pH') ? value : value * factor));
      return { ...each, band90: [each.band90[0], high] as const };
    });
    return { ...first, ensemble: { ...ensemble, series } };
  };
  const figureOf = (page: string, title: string): Element | undefined =>
    [...read(page).querySelectorAll('#courses figure')].find(
      (each) => each.querySelector('h3')?.textContent.startsWith(title) === true,
    );
  /** Heights at which a path goes, px. */
  const heights = (path: Element | null | undefined): readonly number[] =>
    pathPlaces(path?.getAttribute('d') ?? '').map(([, y]) => y);
  const lineTop = (figure: Element | undefined): number =>
    Math.min(...heights(figure?.querySelector('path[stroke-width="2"], g[stroke-width="2"] path')));

  it('keeps the line legible, ends the band at the frame, and says how far it goes', () => {
    const [first] = told;
    const page = reportPage([wide(first, 40)]);
    const found = figureOf(page, 'Nitrate');
    // The frame is from 12 to 190: the line fills a third of it, as it would not on an axis 40 times as long.
    expect(lineTop(found)).toBeLessThan(130);
    const band = heights(found?.querySelector('[fill="var(--mist)"] path, path[fill="var(--mist)"]'));
    expect(Math.min(...band)).toBeGreaterThanOrEqual(11.9);
    const nitrate = first.account.series.find(({ name }) => name === 'nitrate@tank-1')?.values ?? [];
    const most = Math.max(...Array.from(nitrate)) * 40;
    expect(found?.querySelector('figcaption')?.textContent).toContain(
      `; the outer band reaches up to ${shown(most)} mg N/L, beyond the picture`,
    );
  });

  it('draws all of a band that leaves the line its half, and says nothing of it', () => {
    const [first] = told;
    const found = figureOf(reportPage([wide(first, 1.3)]), 'Nitrate');
    expect(found?.querySelector('figcaption')?.textContent).not.toContain('beyond the picture');
  });
});

describe('any report', () => {
  it('is whole: it asks for nothing outside, holds no script, and says so to the browser', () => {
    for (const page of [one, three]) {
      const document = read(page);
      expect(document.querySelectorAll('script, link, iframe, img, object, embed, base, form')).toHaveLength(
        0,
      );
      for (const each of document.querySelectorAll('*'))
        for (const { name, value } of each.attributes) {
          if (['href', 'src', 'xlink:href', 'action'].includes(name)) expect(value).toMatch(/^#/);
          expect(name.startsWith('on'), name).toBe(false);
          if (name !== 'xmlns') expect(value, name).not.toMatch(/https?:|url\(|javascript:/);
        }
      const style = document.querySelector('style')?.textContent ?? '';
      expect(style).not.toMatch(/@import|url\(|https?:/);
      const policy = document.querySelector('meta[http-equiv=Content-Security-Policy]');
      expect(policy?.getAttribute('content')).toContain("default-src 'none'");
    }
  });

  it('is the same bytes for the same input', async () => {
    const again = [await summaryOf('glasshouse', 'A', 60), await summaryOf('double-stock', 'B', 60)];
    expect(reportPage(again)).toBe(reportPage(told.slice(0, 2)));
  });
});
