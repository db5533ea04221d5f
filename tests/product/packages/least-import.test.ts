import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { scenarioOf, sourceWater, startOf, tilapia, vessel } from '../../support/scenario-builder.js';
import { bundled, type Bundle } from './bundled.js';
import { checkedRun, type leastRun } from './least-run.js';
import { emptyFolder, root } from './packed.js';
import { written } from './written.js';

/** What is promised, bytes as they are sent (minified, gzip -9): of a system that was checked, and of one that is checked. */
const promised = 60_000;
const promisedChecked = 82_000;
/** Of one that reads files. */
const promisedReading = 195_000;
/** What a run has no need of: reading YAML, and what is only done with many runs. */
const needless =
  /node_modules\/(?:yaml|zod|d3-dsv|d3-array|odex)\/|core\/dist\/(?:scenario\/(?:file\/read|sections|read)|calibration|analysis|log\/|jobs)|core\/dist\/(?:model\/extend|library\/(?:conditions|origins|rows-in-use))/;
/** What a checked system has no need of either. */
const checks =
  /core\/dist\/(?:scenario\/check|library\/(?:override|subject-faults|tables?\.|table-rows)|base\/units)/;

const tank = vessel('tank', 2, { kind: 'fish-tank', aeration: 100, surface: 60, exchange: 0.2 });
const scenario = scenarioOf([tank], {
  waters: [sourceWater('mains')],
  topUp: { level: 2, rate: 10, sources: [{ kind: 'mains', water: 'mains', dailyCap: Infinity }] },
  fish: [tilapia('fish', 'tank', { number: 30 })],
  start: [startOf(tank, { aob: 0.1, nob: 0.1 })],
});

const source = join(root, 'tests/product/packages/least-run.ts');

/** The bundle of a program that calls one function of the file. */
const bundledOf = (name: 'leastRun' | 'checkedRun'): Promise<Bundle> =>
  bundled(new URL(written(emptyFolder(), `${name}.js`, `export { ${name} } from '${source}';\n`)).pathname);

let least: Bundle | undefined;
let checked: Bundle | undefined;
function bundle(of = least): Bundle {
  if (of === undefined) throw new Error('nothing was bundled');
  return of;
}

describe('a program that builds its systems itself, runs them and reads a series', () => {
  beforeAll(async () => {
    least = await bundledOf('leastRun');
    checked = await bundledOf('checkedRun');
  });

  it('is sent in under 60 kB where its systems were checked before, the library with it', () => {
    expect(bundle().sent).toBeLessThan(promised);
    expect(bundle().modules.filter((path) => checks.test(path))).toEqual([]);
    expect(bundle().modules.filter((path) => path.includes('core/dist/run/')).length).toBeGreaterThan(5);
    expect(bundle().imports).toEqual([]);
  });

  it('is sent in under 82 kB where it checks them itself', () => {
    expect(bundle(checked).sent).toBeLessThan(promisedChecked);
    expect(bundle(checked).modules.filter((path) => checks.test(path)).length).toBeGreaterThan(15);
    expect(bundle(checked).modules.filter((path) => needless.test(path))).toEqual([]);
  });

  it('brings no reader of YAML, no schemas and nothing that is done with many runs', () => {
    expect(bundle().modules.filter((path) => needless.test(path))).toEqual([]);
  });

  it('would be seen to bring them where it read a file', async () => {
    const reading = await bundled(join(root, 'tests/product/packages/every-series.ts'));
    expect(reading.sent).toBeGreaterThan(promisedChecked);
    expect(reading.sent).toBeLessThan(promisedReading);
    for (const name of ['yaml', 'zod'])
      expect(
        reading.modules.some((path) => needless.test(path) && path.includes(`/${name}/`)),
        name,
      ).toBe(true);
  });

  it('runs, with the numbers of the library', async () => {
    const file = written(emptyFolder(), 'least.mjs', bundle().code);
    const loaded = (await import(/* @vite-ignore */ file)) as { leastRun: typeof leastRun };
    const values = loaded.leastRun(scenario, 'nitrate@tank');
    expect(values).toEqual(checkedRun(scenario, 'nitrate@tank'));
    expect(values).toHaveLength(11);
    expect(values[10]).toBeGreaterThan(1);
    expect(() => loaded.leastRun(scenario, 'nitrat@tank')).toThrow('nitrate@tank');
  });
});
