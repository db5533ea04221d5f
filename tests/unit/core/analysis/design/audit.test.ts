import { describe, expect, it } from 'vitest';
import { auditOf, type AuditItem } from '../../../../../packages/core/src/analysis/design/audit.js';
import { compileChecked } from '../../../../../packages/core/src/model/compile.js';
import { smallRun } from '../../result/small-run.js';

const { model } = smallRun();
const items = auditOf(model);
const find = (name: string, place: string): AuditItem | undefined =>
  items.find((item) => item.name === name && item.place === place);

describe('auditOf', () => {
  it('counts how often a day the water of each vessel is renewed', () => {
    expect(find('turnover', 'tank')).toMatchObject({
      value: 12,
      low: 24,
      high: 48,
      verdict: 'below',
      mark: 'M',
    });
    expect(find('turnover', 'sump')).toMatchObject({ value: 24, verdict: 'none' });
  });

  it('holds what a siphon passes against what comes in while the pump runs, whatever its clock', () => {
    const { scenario, parameters } = model;
    const [tank, ...others] = scenario.vessels;
    const rate = 30;
    const siphoned = {
      ...scenario,
      vessels: [{ ...tank, drain: { rate, to: 0.2, by: 'siphon' as const } }, ...others],
      pumps: scenario.pumps.map((pump) => ({ ...pump, timer: { on: 0.25, off: 0.75, offset: 0 } })),
    };
    const audit = auditOf(compileChecked(siphoned, parameters));
    // 24 m3/d are led in, by the turnover of 12 a day of 2 m3 above.
    expect(audit.find((item) => item.name === 'siphon')).toMatchObject({
      ...{ place: 'tank', value: 30 / 24, low: 1, verdict: 'inside' },
    });
    expect(find('siphon', 'tank')).toBeUndefined();
  });

  it('holds what a bed lets out against the room of the reservoir above its float', () => {
    const { scenario, parameters } = model;
    const [tank, ...others] = scenario.vessels;
    const brim = others.find(({ name }) => name === scenario.reservoir)?.volume ?? Number.NaN;
    const drained = (to: number): AuditItem | undefined =>
      auditOf(
        compileChecked(
          {
            ...scenario,
            vessels: [{ ...tank, drain: { rate: 30, to } }, ...others],
            topUp: { level: brim - 0.5, rate: 1, sources: [{ kind: 'rain-tank' }] },
          },
          parameters,
        ),
      ).find((item) => item.name === 'draining');
    expect(drained(1.8)).toMatchObject({ place: 'tank', high: 1, verdict: 'inside' });
    expect(drained(1.8)?.value).toBeCloseTo(0.2 / 0.5, 12);
    expect(drained(1.4)).toMatchObject({ verdict: 'above' });
    expect(find('draining', 'tank')).toBeUndefined();
  });

  it('tells what fish leave of their feed before they are fed: a few per cent, all beyond what they want', () => {
    const { scenario, parameters } = model;
    const fed = (times: number): AuditItem | undefined =>
      auditOf(
        compileChecked(
          { ...scenario, fish: scenario.fish.map((each) => ({ ...each, number: each.number / times })) },
          parameters,
        ),
      ).find((item) => item.name === 'feed not eaten');
    expect(fed(1)).toMatchObject({ place: scenario.fish[0].name, verdict: 'inside' });
    const [many, double] = [fed(10)?.value ?? Number.NaN, fed(20)?.value ?? Number.NaN];
    expect(fed(10)?.verdict).toBe('above');
    // What they eat is all that they want, so that half the fish eat half.
    expect((1 - many) / (1 - double)).toBeCloseTo(2, 6);
  });

  it('holds feed against planted area', () => {
    expect(find('feed per planted area', 'system')).toMatchObject({
      value: 40,
      low: 40,
      high: 50,
      verdict: 'inside',
    });
  });

  it('gives TAN by the design rule (Timmons & Ebeling [M]) and by the fish, near the 3 % of feed of the handbooks [R]', () => {
    expect(find('TAN by rule', 'system')?.value).toBeCloseTo(80 * 0.32 * 0.092, 12);
    const perFeed = (find('TAN by this model', 'system')?.value ?? NaN) / 80;
    expect(perFeed).toBeGreaterThan(0.025);
    expect(perFeed).toBeLessThan(0.035);
  });

  it('holds fish against water, and water lost against volume', () => {
    expect(find('stocking density', 'tank')).toMatchObject({ value: 2500, high: 20000, verdict: 'inside' });
    // Two open m2 and two of lettuce at 4 mm/d over 3 m3.
    const open = model.parameters.value('water.open-coefficient');
    const crop = model.parameters.value('crop.lettuce-butterhead.kc-full');
    expect(find('water lost', 'system')?.value).toBeCloseTo((0.004 * (2 * open + 2 * crop)) / 3, 12);
  });

  it('holds surface against what the load needs', () => {
    const load = find('TAN by this model', 'system')?.value ?? 0;
    expect(find('surface, 15-20 degC', 'system')).toMatchObject({
      value: 10,
      low: load,
      high: load / 0.2,
      verdict: 'inside',
    });
  });

  it('cites a source wherever it gives a range', () => {
    for (const item of items.filter(({ verdict }) => verdict !== 'none')) expect(item.source).toBeTruthy();
  });
});
