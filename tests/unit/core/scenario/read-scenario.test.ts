import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../../packages/core/src/base/faults.js';
import {
  readScenario,
  readScenarioFully,
  resolvedTree,
} from '../../../../packages/core/src/scenario/read-scenario.js';
import type { Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { edited, smallSystem } from '../../../product/faults/small-system.js';

const scenarios = new URL('../../../../packages/cli/scenarios/', import.meta.url);
const load = (path: string): string => readFileSync(path, 'utf8');

function small(text = smallSystem): Scenario {
  return readScenario(text, { file: 'small.yaml' });
}

/** The scenario without where its actions were written, which a resolved file does not keep. */
function unplaced(scenario: Scenario): unknown {
  const bare = { ...scenario, actions: scenario.actions.map(({ at, action }) => ({ at, action })) };
  return { ...bare, overrides: bare.overrides.map(({ id, value }) => ({ id, value })) };
}

describe('readScenario', () => {
  it('reads the small system into internal units', () => {
    const { vessels, flows, fish: cohorts, topUp, pumps, plantings, days } = small();
    expect(days).toBe(30);
    expect(vessels.map(({ name, volume }) => [name, volume])).toEqual([
      ['tank', 1],
      ['bed', 1],
      ['sump', 0.5],
    ]);
    expect(flows).toEqual([
      { kind: 'pumped', from: 'sump', to: 'tank', pump: 'main', rate: 24 },
      { kind: 'gravity', from: 'tank', to: 'bed', share: 1 },
      { kind: 'gravity', from: 'bed', to: 'sump', share: 1 },
    ]);
    expect(pumps).toEqual([{ name: 'main', inlet: 0.05, restart: 0.08 }]);
    expect(cohorts).toMatchObject([
      { vessel: 'tank', number: 20, ration: { kind: 'mass', gramsPerDay: 80 } },
    ]);
    expect(topUp?.sources).toEqual([{ kind: 'mains', water: 'mains', dailyCap: Infinity }]);
    expect(plantings).toMatchObject([{ harvest: 28, batches: 1, start: 'new', age: 0, after: 'replant' }]);
  });

  it('takes surfaces from bottom and walls, media, rafts and roots: four times the root of the bottom by depth, 250 m2 a m3 of pumice less its pores, rafts once, roots twice', () => {
    const text = edited([
      'area: 4 m2 }\n  sump',
      'area: 4 m2, media: { type: pumice, volume: 0.2 m3 } }\n  sump',
    ]);
    // 0.2 mm of film and still water in pores of a round radius of 2 x 0.55 / 250 = 4.4 mm: 250 / (1 + 0.2 / 4.4) m2 a m3.
    // Walls: 4 x 1 m x 1 m deep, 4 x 2 m x 0.25 m, 4 x 1 m x 0.5 m.
    const [tank, bed, sump] = small(text).vessels.map(({ surface }) => surface);
    expect([tank, sump]).toEqual([1 + 4, 1 + 2]);
    expect(bed).toBeCloseTo(4 + 2 + 50 / (1 + 0.2 / 4.4) + 4 + 2 * 4, 9);
  });

  it('covers beds and leaves tanks open, unless told otherwise', () => {
    expect(small().vessels.map(({ open, covered, floor }) => [open, covered, floor])).toEqual([
      [1, 0, 1],
      [0, 4, 4],
      [1, 0, 1],
    ]);
  });

  it('starts the reservoir at its float and all other vessels full', () => {
    expect(small().start.map(({ vessel, volume }) => [vessel, volume])).toEqual([
      ['tank', 1],
      ['bed', 1],
      ['sump', 0.4],
    ]);
  });

  it('takes the carbon of water from its pH: more than its alkalinity below pH 8.3', () => {
    const [mains] = small().waters;
    expect(mains?.carbon).toBeGreaterThan(2);
    expect(mains?.carbon).toBeLessThan(2.3);
  });

  it('lets the options set the length, the step and single values', () => {
    const scenario = readScenario(smallSystem, {
      file: 'small.yaml',
      days: 20,
      every: '6 h',
      set: [
        { path: 'vessels.tank.volume', value: '2 m3' },
        { path: 'flows[0].rate', value: '2 m3/h' },
        { path: 'parameters.vessel.outline', value: '5' },
      ],
    });
    expect(scenario).toMatchObject({
      days: 20,
      every: 0.25,
      overrides: [{ id: 'vessel.outline', value: 5 }],
    });
    // 1 m2 of bottom and 5 m of walls around it, 2 m deep.
    expect(scenario.vessels[0]).toMatchObject({ volume: 2, surface: 11 });
    expect(scenario.flows[0]).toMatchObject({ rate: 48 });
  });

  it('leaves out actions past the end of a run cut short, and repeats plans over one made longer', () => {
    const short = readScenario(smallSystem, { file: 'small.yaml', days: 10 });
    expect(short.actions.map(({ at }) => at)).toEqual([7]);
    const long = readScenario(smallSystem, { file: 'small.yaml', days: 36 });
    expect(long.actions.map(({ at }) => at)).toEqual([7, 10, 10.25, 14, 21, 28, 35]);
  });

  it('reads daily values from a column of a CSV file beside the file', () => {
    const text = edited(['et0: 4 mm/d', 'et0: { csv: et0.csv, column: ET0, unit: mm/d }']);
    const csv = `day,ET0\n${Array.from({ length: 30 }, (_, day) => `${day},${day / 10}`).join('\n')}\n`;
    const options = { file: 'dir/small.yaml', load: (path: string) => (path === 'dir/et0.csv' ? csv : '') };
    const { scenario, resolved } = readScenarioFully(text, options);
    expect(scenario.et0.kind === 'daily' && scenario.et0.values[29]).toBeCloseTo(0.0029, 12);
    expect(resolved.plain['climate']).toMatchObject({ et0: { unit: 'm/d' } });
    const problem = (changed: string): unknown => {
      try {
        readScenario(text, { ...options, load: () => changed });
      } catch (error) {
        return error instanceof InputError ? error.faults.map((fault) => fault.problem) : error;
      }
      return 'accepted';
    };
    expect(problem('day,et\n0,1')).toEqual(['no such column']);
    expect(problem(csv.replace('0.3', ''))).toEqual(['line 5 of the file, column ET0: no value']);
    expect(problem('ET0\n1\n2')).toEqual(['fewer days than the run']);
    expect(problem(csv.replace('0.3', '-1'))).toEqual(['line 5 of the file, column ET0: negative: -1']);
  });

  it('reports which numbers of the tables it used', () => {
    const { used } = readScenarioFully(smallSystem, { file: 'small.yaml' });
    expect(used).toContain('crop.lettuce-butterhead.days');
    expect(used).toContain('vessel.outline');
    expect(used).not.toContain('water.rain.ph');
  });
});

describe('the resolved file', () => {
  const shipped = readdirSync(scenarios).filter((file) => file.endsWith('.yaml'));
  it.each(shipped)('%s reads, and its resolved form reads to the same scenario', (file) => {
    const options = { file: fileURLToPath(new URL(file, scenarios)), load };
    const { scenario, resolved } = readScenarioFully(load(options.file), options);
    // JSON is YAML.
    const again = readScenarioFully(JSON.stringify(resolved.plain), { file: 'resolved.yaml' });
    expect(unplaced(again.scenario)).toEqual(unplaced(scenario));
    expect(again.resolved.plain).toEqual(resolved.plain);
  });

  it('says where each value came from', () => {
    const { values } = resolvedTree(smallSystem, {
      file: 'small.yaml',
      set: [{ path: 'vessels.sump.area', value: '2 m2' }],
      days: 20,
    });
    const origins = new Map(values.map(({ key, origin }) => [key, origin]));
    expect(origins.get('vessels.sump.volume')).toBe('small.yaml:12');
    expect(origins.get('vessels.sump.area')).toBe('--set');
    expect(origins.get('vessels.sump.open')).toBe('default');
    expect(origins.get('days')).toBe('--days');
  });
});

describe('a damaged file', () => {
  it('is read or refused with faults that have a file, never anything else', () => {
    const lines = smallSystem.split('\n');
    fc.assert(
      fc.property(fc.nat(lines.length - 1), fc.nat(60), fc.string({ maxLength: 3 }), (row, at, scrap) => {
        const line = lines[row] ?? '';
        const damaged = lines
          .map((old, index) => (index === row ? line.slice(0, at) + scrap + line.slice(at + 1) : old))
          .join('\n');
        try {
          expect(readScenario(damaged, { file: 'small.yaml' }).vessels.length).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          for (const { file, line: found } of (error as InputError).faults) {
            expect(file).toBe('small.yaml');
            expect(found).toBeGreaterThan(0);
          }
        }
      }),
      { numRuns: 400 },
    );
  });

  it('with any one key or value swapped for something of another kind is refused or read, never crashes', () => {
    const scraps = ['[]', '{}', '~', '-1', '.inf', 'true', '"x"', '[[1]]', '{ a: { b: 1 } }', 'constructor'];
    const slots = [...smallSystem.matchAll(/: ([^{[\n,}]+)/g)].map(({ index, 1: value = '' }) => [
      index + 2,
      value.length,
    ]);
    fc.assert(
      fc.property(fc.constantFrom(...slots), fc.constantFrom(...scraps), ([start = 0, length = 0], scrap) => {
        const text = smallSystem.slice(0, start) + scrap + smallSystem.slice(start + length);
        try {
          expect(readScenario(text, { file: 'small.yaml' }).title).not.toBe('');
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
      { numRuns: 400 },
    );
  });
});
