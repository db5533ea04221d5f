import { budgetsOf, seriesOf, worstResidual } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { full } from '../../support/length.js';
import { bandsOf, isFailing, listedBands, listedVerdict } from './bands.js';
import { systemCases } from './cases.js';
import { drawnRuns, usualRun, usualRuns } from './draw-runs.js';
import { lastDays } from './last-days.js';
import { lastingFilm, mcmurtryPlanted, quickFilm } from './mcmurtry-1997.js';
import { failingText, systemsTable } from './systems-table.js';
import { fed, fishShare, generation, harvested } from './unit-quantities.js';
import { uviCurrent } from './uvi-current.js';

// Predictions of whole published systems: a hit stays a hit and a miss stays a miss until its text is changed.
// What asks for all draws (bands, how often a system fails) stands in the full length only.

describe.each(systemCases)('$name', (system) => {
  it('changes no number of the tables', () => {
    expect(usualRun(system.file, []).model.scenario.overrides).toEqual([]);
  });

  it.runIf(full)('comes out as its texts say: hit, missed, vague, or failing as a whole', () => {
    for (const { quantity, verdict, low, median, high } of bandsOf(system).bands) {
      const { what } = quantity;
      expect([low, median, high].every(Number.isFinite), what).toBe(true);
      expect(verdict, `${what}: ${low} to ${high}; change its text with it`).toBe(
        listedVerdict(system, quantity),
      );
    }
  });

  it.runIf(full)(
    'fails in at most a twentieth of the draws, where it is not said why it fails in more',
    () => {
      const found = bandsOf(system);
      expect(isFailing(found), failingText(found)).toBe(system.fails !== undefined);
    },
  );

  it('gives a reason of some length for all that is no hit', () => {
    const reasons = system.quantities.flatMap(({ miss, vague }) => [miss, vague]);
    for (const reason of [system.fails, ...reasons])
      if (reason !== undefined) expect(reason.length).toBeGreaterThan(80);
    expect(new Set(system.quantities.map(({ what }) => what)).size).toBe(system.quantities.length);
  });

  it('closes every budget to 1e-9, with the numbers of the tables and with drawn ones', () => {
    for (const runs of [usualRuns(system), drawnRuns(system, 1)]) {
      for (const run of Object.values(runs)) {
        expect(worstResidual(budgetsOf(run)).share).toBeLessThan(1e-9);
      }
    }
  });

  const blames = system.quantities.flatMap((quantity) =>
    (quantity.blame ?? []).map((blame) => ({ quantity, what: quantity.what, ...blame })),
  );
  if (blames.length > 0) {
    it('moves as its reasons say when the assumption is changed', () => {
      const usual = usualRuns(system);
      for (const { quantity, assumption, set, low, high } of blames) {
        const value = quantity.value(usualRuns(system, set));
        const text = `${quantity.what} with ${assumption}: ${value}`;
        expect(value, text).toBeGreaterThanOrEqual(low);
        expect(value, text).toBeLessThanOrEqual(high);
        const before = quantity.value(usual);
        expect(before < low || before > high, `${text}, before ${before}`).toBe(true);
      }
    });
  }
});

describe('the current unit at the University of the Virgin Islands', () => {
  const run = usualRun('uvi-current', []);

  it('repeats itself: in its last generation the fish in the tanks change by less than 0.1 % of the feed', () => {
    const last = lastDays(run, generation);
    const mass = (index: number): number =>
      last.model.layout.fish.reduce((sum, fish) => sum + last.samples[index].y[fish.mass], 0);
    const change = mass(last.samples.length - 1) - mass(0);
    const body = run.model.parameters.value('fish.nile-tilapia.body-nitrogen');
    expect(Math.abs(change * body) / fed(last)).toBeLessThan(1e-3);
    expect(run.events.filter(({ kind }) => kind === 'harvest-fish').length).toBe(8);
  });

  it('is told by a run at the usual tolerance within 0.5 %', () => {
    const fine = usualRun('uvi-current', [], 1e-5);
    for (const measure of [fishShare, harvested]) {
      const coarse = measure(lastDays(run, generation));
      expect(Math.abs(measure(lastDays(fine, generation)) / coarse - 1)).toBeLessThan(5e-3);
    }
    for (const { value, what } of uviCurrent.quantities) {
      expect(Math.abs(value({ unit: fine }) / value({ unit: run }) - 1), what).toBeLessThan(5e-3);
    }
  });
});

describe('what the reasons say of the two units', () => {
  it('feed and harvests of the current unit do not belong together by a fifth', () => {
    // 77 fish/m3 of 7.8 m3, 61.5 kg/m3 at harvest, 79.2 g at stocking, feed conversion 1.7, against 99.6 g/m2/d on 214 m2.
    const net = 61.5 * 7.8 - 600 * 0.0792;
    expect((99.6 * 214) / 1000 / ((1.7 * net) / 42)).toBeCloseTo(1.22, 2);
  });

  it('the rule of 0.092 leaves 16 % of the nitrogen in feed for fish', () => {
    const toTan = 0.8 * 0.8 * 0.9;
    const [faeces, urea] = [0.2, 0.8 * 0.8 * 0.1];
    expect(0.16 * toTan).toBeCloseTo(0.092, 3);
    expect(1 - toTan - faeces - urea).toBeCloseTo(0.16, 12);
  });

  it('the last two harvests of the earlier unit are alike', () => {
    const run = usualRun('uvi-earlier', []);
    const [before, last] = [lastDays(run, 84), lastDays(run, 42)];
    expect(harvested(last) / (harvested(before) / 2)).toBeCloseTo(1, 3);
  });
});

describe('what the reasons say of sand beds without base', () => {
  const [, tan] = mcmurtryPlanted.quantities;
  const usual = usualRuns(mcmurtryPlanted);

  it('a film that gets used to acid four times as fast, or dies half as fast, ends at no less TAN', () => {
    for (const film of [quickFilm, lastingFilm]) {
      const ratio = tan.value(usualRuns(mcmurtryPlanted, film)) / tan.value(usual);
      expect(ratio).toBeGreaterThan(0.99);
      expect(ratio).toBeLessThan(1.1);
    }
  });

  it('with the quicker film pH goes to 3.1, not 3.8', () => {
    const [quick, slow] = [usualRuns(mcmurtryPlanted, quickFilm), usual].map(({ planted }) =>
      Math.min(...seriesOf(planted, 'pH@tank').values),
    );
    expect(quick).toBeCloseTo(3.1, 1);
    expect(slow).toBeCloseTo(3.8, 1);
  });
});

describe('the table of whole systems', () => {
  it('names every system and every quantity, and is the same twice', () => {
    const bands = full ? bandsOf : listedBands;
    const table = systemsTable(bands);
    for (const system of systemCases) {
      const { name, quantities } = system;
      expect(table).toContain(name);
      expect(table).toContain(failingText(bands(system)));
      for (const { what } of quantities) expect(table).toContain(`| ${what} |`);
    }
    expect(systemsTable(bands)).toBe(table);
  });
});
