import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { seriesOf } from '../../../packages/core/src/result/series.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { readScenario } from '../../../packages/core/src/scenario/read-scenario.js';
import { doneRun } from '../../support/run-of.js';

const folder = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const load = (path: string): string => readFileSync(path, 'utf8');
const aired = ['tank-1', 'tank-2', 'biofilter', 'raft-bed-1', 'raft-bed-2'];

/** A shipped scenario with other values at some paths. */
function runWith(name: string, values: Readonly<Record<string, string>>, days: number): Run {
  const file = `${folder}${name}.yaml`;
  const set = Object.entries(values).map(([path, value]) => ({ path, value }));
  return doneRun(readScenario(load(file), { file, load, set, days }));
}

const day = 60;
const at = (run: Run, quantity: string): number => seriesOf(run, `${quantity}@tank-1`).at(day);

describe('fine bubbles in a closed house', () => {
  const run = (device: string, air: string): Run =>
    runWith(
      'air-and-acid',
      {
        'climate.carbon-dioxide': air,
        ...Object.fromEntries(aired.map((vessel) => [`vessels.${vessel}.aeration.device`, device])),
      },
      day,
    );
  const open = { coarse: run('coarse', '420 ppm'), fine: run('fine', '420 ppm') };
  const closed = { coarse: run('coarse', '1200 ppm'), fine: run('fine', '1200 ppm') };

  it('hold a quarter of a milligram more carbon dioxide than coarse ones, in open air or close, because a bubble that gives up its oxygen fills up with carbon dioxide', () => {
    for (const { coarse, fine } of [open, closed]) {
      const more = at(fine, 'carbon-dioxide') - at(coarse, 'carbon-dioxide');
      expect(more).toBeGreaterThan(0.24);
      expect(more).toBeLessThan(0.28);
    }
  });

  it('hold 1.1 to 1.3 mg/L more in 1200 than in 420 ppm, because that is what such air adds to water at rest with it', () => {
    for (const device of ['coarse', 'fine'] as const) {
      const more = at(closed[device], 'carbon-dioxide') - at(open[device], 'carbon-dioxide');
      expect(more).toBeGreaterThan(1.1);
      expect(more).toBeLessThan(1.3);
    }
  });

  it('lower pH by 0.04 to 0.08, and such air by a quarter: by the logarithm of the ratio of carbon dioxide, because alkalinity stays as it is within a fiftieth', () => {
    for (const [from, to, least, most] of [
      [open.coarse, open.fine, 0.07, 0.085],
      [closed.coarse, closed.fine, 0.035, 0.05],
      [open.coarse, closed.coarse, 0.26, 0.3],
      [open.fine, closed.fine, 0.22, 0.26],
    ] as const) {
      const lower = at(from, 'pH') - at(to, 'pH');
      expect(lower).toBeGreaterThan(least);
      expect(lower).toBeLessThan(most);
      const ratio = at(to, 'carbon-dioxide') / at(from, 'carbon-dioxide');
      expect(Math.abs(lower - Math.log10(ratio))).toBeLessThan(0.012);
    }
    const alkalinity = at(closed.fine, 'alkalinity') / at(open.coarse, 'alkalinity');
    expect(Math.abs(alkalinity - 1)).toBeLessThan(0.02);
  });
});

describe('a house with crops, air and a rule that doses on alkalinity', () => {
  const rule =
    '[{ when: { read: alkalinity, in: sump, below: 1 meq/L }, do: { dose: { into: sump, product: potassium-bicarbonate, mass: 200 g } }, wait: 1 d }]';
  const run = runWith('glasshouse', { dosing: '[]', rules: rule }, 180);

  it('stays between pH 7 and 8.6 in every vessel for half a year, because base is given only when it is wanting and crops give little back', () => {
    const vessels = run.model.layout.vessels.map((name) => seriesOf(run, `pH@${name}`).values);
    expect(vessels).toHaveLength(9);
    expect(Math.max(...vessels.flatMap((values) => [...values]))).toBeLessThan(8.6);
    expect(Math.min(...vessels.flatMap((values) => [...values]))).toBeGreaterThan(7);
  });

  it('keeps TAN and nitrite under 1 mg/L, and alkalinity above what the rule reads', () => {
    for (const quantity of ['tan', 'nitrite']) {
      expect(Math.max(...seriesOf(run, `${quantity}@tank-1`).values)).toBeLessThan(1);
    }
    expect(Math.min(...[...seriesOf(run, 'alkalinity@sump').values].slice(14))).toBeGreaterThan(0.9);
  });

  it('doses in the first nine weeks only, oftener at first, because mains and settled solids then bring more base than nitrification eats', () => {
    const doses = run.events.filter(({ kind }) => kind === 'dose').map(({ time }) => time);
    expect(doses.length).toBeGreaterThan(0);
    expect(Math.max(...doses)).toBeLessThan(63);
    expect(doses.filter((time) => time < 28).length).toBeGreaterThan(doses.length / 2);
    expect(seriesOf(run, 'alkalinity@sump').at(120)).toBeGreaterThan(1.1);
    expect(seriesOf(run, 'alkalinity@sump').at(180)).toBeGreaterThan(1.3);
  });
});
