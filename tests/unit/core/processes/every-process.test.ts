import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import { checkClosure } from '../../../../packages/core/src/model/stoichiometry.js';
import { closeRow } from '../../../../packages/core/src/model/stoichiometry.js';
import { scopeTo } from '../../../../packages/core/src/model/scope.js';
import { processes } from '../../../../packages/core/src/processes/index.js';
import type { Process } from '../../../../packages/core/src/processes/process.js';
import { drawnConditions, drawnPoint, drawnValues } from '../../../support/process-points.js';

const source = new URL('../../../../packages/core/src/', import.meta.url);
const DRAWS = 40;
const places = (process: Process): number[] => process.reads.map((_, m) => m);

/** Largest gap between the stated partials and central differences, relative to the size of both. */
function worstPartial(process: Process, seed: number, near: number): number {
  const random = createRandom(seed);
  let worst = 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    const k = process.coefficients(drawnValues(random), drawnConditions(random));
    const v = drawnPoint(process, random, near);
    const at = places(process);
    const stated = new Float64Array(at.length).fill(Number.NaN);
    process.partials(v, at, k, stated);
    const rate = Math.abs(process.rate(v, at, k));
    for (const m of at) {
      const h = 1e-5 * v[m];
      const moved = (sign: number): number =>
        process.rate(
          v.map((value, n) => (n === m ? value + sign * h : value)),
          at,
          k,
        );
      // Four points: two leave an error of curvature where a rate bends.
      const difference = (8 * (moved(1) - moved(-1)) - (moved(2) - moved(-2))) / (12 * h);
      const size = Math.max(Math.abs(stated[m]), Math.abs(difference), rate / v[m]);
      const gap = size === 0 ? 0 : Math.abs(stated[m] - difference) / size;
      if (!(gap <= worst)) worst = gap;
    }
  }
  return worst;
}

const isProcess = (value: unknown): value is Process =>
  typeof value === 'object' && value !== null && 'stoichiometry' in value;

/** Files of a folder below the source of the library, by their path there. */
const sourceFiles = (below: string): readonly string[] =>
  readdirSync(new URL(below, source), { recursive: true })
    .map((file) => `${below}${String(file)}`)
    .filter((file) => file.endsWith('.ts'));

describe('the list of processes', () => {
  it('holds every process that a file of its folder exports, once', async () => {
    const files = sourceFiles('processes/').filter((file) => file !== 'processes/index.ts');
    const modules = await Promise.all(
      files.map(async (file) => (await import(new URL(file, source).href)) as Record<string, unknown>),
    );
    const exported = modules.flatMap((module) => Object.values(module).filter(isProcess));
    const idsOf = (list: readonly Process[]): readonly string[] => list.map(({ id }) => id).sort();
    expect(idsOf(processes)).toEqual(idsOf(exported));
    expect(new Set(idsOf(processes)).size).toBe(processes.length);
  });

  it('is known by no id but in the file of each process', () => {
    // A key of a vessel in the system file, and headings under which `why` puts parts together, have the word of a process.
    const others = new Map([
      ['capture', ['scenario/sections/vessels.ts']],
      ['denitrification', ['result/why-groups.ts']],
      ['feeding', ['result/why-groups.ts']],
    ]);
    const files = sourceFiles('').filter((file) => !file.endsWith('.generated.ts'));
    const texts = new Map(files.map((file) => [file, readFileSync(new URL(file, source), 'utf8')]));
    for (const { id } of processes) {
      const naming = files.filter((file) => texts.get(file)?.includes(`'${id}'`));
      const [own, ...rest] = naming;
      expect(own).toMatch(/^processes\/[a-z]+\.ts$/);
      expect(rest, id).toEqual(others.get(id) ?? []);
    }
  });
});

describe.each(processes.map((process) => [process.id, process] as const))('%s', (_id, process) => {
  it('states the partials of its rate (central differences at random points)', () => {
    expect(worstPartial(process, 11, 1)).toBeLessThan(1e-6);
  });

  it('states the partials of its rate near zero (central differences)', () => {
    for (const near of [1e-3, 1e-7]) expect(worstPartial(process, 12, near)).toBeLessThan(1e-6);
  });

  it('always has the same number of coefficients, all of them finite', () => {
    const random = createRandom(13);
    const sets = Array.from({ length: DRAWS }, () =>
      process.coefficients(drawnValues(random), drawnConditions(random)),
    );
    expect(new Set(sets.map((set) => set.length)).size).toBe(1);
    expect(sets.flat().every(Number.isFinite)).toBe(true);
  });

  it('closes for every conserved quantity at 50 draws of the tables', () => {
    const random = createRandom(14);
    const draws = Array.from({ length: 50 }, () => drawnValues(random));
    expect(() => {
      checkClosure(process, draws);
    }).not.toThrow();
    expect(closeRow(process, draws[0]).every(({ coefficient }) => Number.isFinite(coefficient))).toBe(true);
  });

  it('says whether the feed given decides its row, and the flow through its coefficients', () => {
    const random = createRandom(17);
    const values = drawnValues(random);
    const read: string[] = [];
    process.stoichiometry({
      value: (id) => {
        read.push(id);
        return values.value(id);
      },
    });
    const conditions = drawnConditions(random);
    process.coefficients(
      {
        value: (id) => {
          read.push(id);
          return values.value(id);
        },
      },
      conditions,
    );
    expect(read.some((id) => id.startsWith('feed.'))).toBe(process.perFeed ?? false);
    const [slow, fast] = [1, 2].map((times) =>
      process.coefficients(values, { ...conditions, inflow: conditions.inflow * times }),
    );
    expect(slow.some((coefficient, i) => coefficient !== fast[i])).toBe(process.throughFlow ?? false);
  });

  it('reads only numbers that the tables hold, for every species, crop and feed', () => {
    const parameters = createParameters();
    const random = createRandom(15);
    const read: string[] = [];
    const subject = {
      species: 'nile-tilapia',
      crop: 'lettuce-butterhead',
      feed: { name: 'grower-32', protein: 0.32 },
      product: 'potassium-hydroxide',
      lime: 'shell',
    };
    const scope = scopeTo(parameters, subject);
    const spy = {
      value: (id: string) => {
        read.push(id);
        return scope.value(id);
      },
    };
    process.coefficients(spy, drawnConditions(random));
    process.stoichiometry(spy);
    const own = read.map((id) =>
      id
        .replace(/^species\./, 'fish.nile-tilapia.')
        .replace(/^lime\.area$/, 'lime.shell.area')
        .replace(/^product\./, 'dose.potassium-hydroxide.')
        .replace(/^feed\.(?!.*\..*)/, 'feed.grower-32.')
        .replace(/^crop\.(.*)$/, (whole, rest: string) =>
          parameters.has(whole) ? whole : `crop.lettuce-butterhead.${rest}`,
        ),
    );
    expect(own.filter((id) => !parameters.has(id))).toEqual([]);
    expect(parameters.used().length).toBeGreaterThan(process.id.startsWith('capture') ? -1 : 0);
  });
});

/** What is 0 in water without a component. */
const goesWith: Readonly<Record<string, readonly string[]>> = {
  tan: ['ammonia'],
  carbon: ['carbon-dioxide', 'saturation'],
};

describe('a rate', () => {
  it.each(processes.map((process) => [process.id, process] as const))(
    'of %s is 0 where what it uses up is 0',
    (_id, process) => {
      const random = createRandom(16);
      const values = drawnValues(random);
      const k = process.coefficients(values, drawnConditions(random));
      // Alkalinity may truly be negative, and exchange with air runs both ways.
      const used = closeRow(process, values)
        .filter(
          ({ outside, coefficient, component }) => !outside && coefficient < 0 && component !== 'alkalinity',
        )
        .map(({ component }) => component);
      const running = used.filter((component) => {
        const v = drawnPoint(process, random);
        process.reads.forEach((variable, m) => {
          if (variable === component || goesWith[component]?.includes(variable)) v[m] = 0;
        });
        return process.rate(v, places(process), k) !== 0;
      });
      expect(running).toEqual([]);
    },
  );
});
