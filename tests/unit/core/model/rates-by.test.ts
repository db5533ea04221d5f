import { describe, expect, it } from 'vitest';
import * as elementary from '../../../../packages/core/src/base/elementary.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import { acidBaseConstants } from '../../../../packages/core/src/chemistry/acid-base.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../../packages/core/src/model/compile.js';
import { openRates, type Rates } from '../../../../packages/core/src/model/rates.js';
import { KERNELS } from '../../../../packages/core/src/model/rates.generated.js';
import { useModule } from '../../../../packages/core/src/model/use-module.js';
import { layWater } from '../../../../packages/core/src/model/water-look.js';
import { RateRoom } from '../../../../packages/core/src/model/rate-room.js';
import { processes } from '../../../../packages/core/src/processes/index.js';
import { compiled } from '../../../../packages/core/tools/module/compile.mjs';
import { rates as ratesMade, rateFiles } from '../../../../packages/core/tools/loops.mjs';
import { doneRun, lastOf } from '../../../support/run-of.js';
import { drawnConditions } from '../../../support/process-points.js';
import { teachingSystem } from '../../../support/teaching-system.js';

const model = compileModel(teachingSystem({ days: 12 }), createParameters());
const reached = lastOf(doneRun(model.scenario)).y;

useModule();

/** Rates under a made-up regime in which every stream runs and every other volume moves. */
function openAt(seed: number, by: 'module' | 'javascript'): Rates {
  const random = createRandom(seed);
  const rates = openRates(model, { by });
  const { regime } = rates;
  regime.time = 3;
  for (let vessel = 0; vessel < model.layout.vessels.length; vessel++) {
    regime.volume[vessel] = 0.3 + 2 * random();
    regime.slope[vessel] = vessel % 2 === 0 ? random() - 0.5 : 0;
    regime.constants[vessel] = acidBaseConstants(model.parameters, 15 + 15 * random(), 0.03 * random());
  }
  for (let s = 0; s < regime.flow.length; s++) regime.flow[s] = 20 * random();
  for (let s = 0; s < regime.source.length; s++) regime.source[s] = 5 * random();
  model.instances.forEach(({ process, values }, j) => {
    regime.coefficients[j].set(process.coefficients(values, drawnConditions(random)));
  });
  return rates;
}

/** The bits of numbers, so that 0 and -0 are two; not a number is not a number, whatever its bits. */
const bits = (values: Float64Array): string =>
  [...new BigUint64Array(values.map((value) => (Number.isNaN(value) ? Number.NaN : value)).buffer)].join();

/** All that rates give at some points, one after another, and what they remember then. */
function given(seed: number, by: 'module' | 'javascript'): readonly string[] {
  const { system, memory } = openAt(seed, by);
  const random = createRandom(seed + 100);
  const drawn = reached.map((value) => (value + 0.01) * (0.5 + random()));
  const odd = [0, 1e-12, -1e-6].map((at) => drawn.map((value) => (random() < 0.3 ? at : value)));
  const texts = [drawn, ...odd, drawn.map((value) => 1.01 * value)].flatMap((y, i) => {
    const [r, r1, rt] = [0, 1, 2].map(() => new Float64Array(system.rates));
    const dr = new Float64Array(system.dependence.column.length);
    system.evaluate(3 + 0.1 * i, y, r);
    system.linearise?.(3.05 + 0.1 * i, y, r1, dr, rt);
    return [r, r1, dr, rt].map(bits);
  });
  return [...texts, ...[memory.hydrogen, memory.origin, memory.slope].map(bits)];
}

describe('the module of the rates and the same laws as JavaScript', () => {
  it.each([1, 2, 3])('give the same bits, in bare, empty and negative places too (draw %d)', (seed) => {
    const wanted = given(seed, 'javascript');
    expect(given(seed, 'module')).toEqual(wanted);
    expect(new Set(wanted).size).toBeGreaterThan(18);
  });

  it('are two: the module has a memory and functions of its own', () => {
    expect(new RateRoom('module').open().functions).toHaveProperty('partials');
    expect(new RateRoom('javascript').open().functions).toBeUndefined();
  });

  it('have every kernel of the library, each under one name', () => {
    const kernels = new Set(processes.flatMap(({ kernel }) => (kernel === undefined ? [] : [kernel])));
    const names = [...kernels].map(({ name }) => name);
    expect([...names].sort()).toEqual([...KERNELS].sort());
    expect(new Set(names).size).toBe(names.length);
  });

  it('lay records out alike', () => {
    const { records } = ratesMade();
    const { laid, tables } = layWater(model, new RateRoom('javascript'), [], false);
    expect(Object.keys(laid)).toEqual(records.WaterTables);
    expect(Object.keys(tables.array)).toEqual(records.WaterTables);
    const [constants] = [acidBaseConstants(model.parameters, 20)];
    expect(records.AcidBaseConstants).toEqual(['k1', 'k2', 'ammonium', 'water', 'proton', 'calcite']);
    expect(Object.keys(constants).sort()).toEqual([...(records.AcidBaseConstants ?? [])].sort());
  });
});

describe('exp, log and their kin in a module', () => {
  const made = compiled(rateFiles(), { from: ['base/elementary.ts'] });
  const memory = new WebAssembly.Memory({ initial: 1 });
  const module = new WebAssembly.Module(made.bytes as BufferSource);
  const { exports } = new WebAssembly.Instance(module, { leat: { memory } });
  const ODD = [
    0,
    -0,
    1,
    -1,
    2,
    0.5,
    1e-320,
    5e-324,
    1e308,
    -1e-308,
    Infinity,
    -Infinity,
    NaN,
    709.78,
    -745.1,
  ];

  it.each(['exp', 'expm1', 'log', 'log10', 'pow10', 'floorLog2'] as const)('%s', (name) => {
    const random = createRandom(9);
    const run = exports[name] as (x: number) => number;
    const drawn = Array.from({ length: 3000 }, () => (random() - 0.5) * 10 ** Math.floor(40 * random() - 20));
    const numbers = name === 'floorLog2' ? drawn.map(Math.abs) : [...ODD, ...drawn];
    const all = (of: (x: number) => number): string => bits(Float64Array.from(numbers, of));
    expect(all(run)).toBe(all(elementary[name]));
  });

  it('pow', () => {
    const random = createRandom(10);
    const run = exports.pow as (x: number, y: number) => number;
    const odd = ODD.flatMap((x) => ODD.map((y) => [x, y]));
    const drawn = Array.from({ length: 3000 }, () => [10 ** (20 * random() - 10), 20 * random() - 10]);
    const all = (of: typeof run): string => bits(Float64Array.from([...odd, ...drawn], ([x, y]) => of(x, y)));
    expect(all(run)).toBe(all(elementary.pow));
  });
});
